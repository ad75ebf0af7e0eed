import { tackle } from "../../dist/reeving/tackle.js";

const sheave = {
  kind: "sheave",
  name: "sheave",
  diameter: 0.04,
  wrapAngle: Math.PI,
  pinRadius: 0.011,
  bearingFriction: 0.01,
  drag: 0.05,
};

/** A tackle of six parts, a lead block and a ratchet: what the solvers are timed on. */
export const line = {
  rope: { diameter: 0.006, stiffness: { tensionTerm: 60, constantTerm: 40, diameterTerm: 1e6 } },
  stations: [
    { kind: "tackle", name: "tackle", reeving: tackle({ parts: 6, hauledFrom: "fixed", turn: sheave }) },
    { ...sheave, name: "lead block" },
    { ...sheave, kind: "ratchet", name: "ratchet", treadFriction: 0.32 },
  ],
};
