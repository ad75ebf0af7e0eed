import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { FibreName } from "./fibres.js";

/** Mass of a cubic metre of water that a rope takes up [kg/m³]: lake to sea. */
export const waterDensity = coefficient({
  value: 1000,
  unit: "kg/m^3",
  low: 998,
  high: 1026,
  status: "from memory",
  place: "fresh water at 20 °C to sea water",
});

function soak(low: number, value: number, high: number, place: string): Coefficient {
  return coefficient({ value, unit: "1", low, high, status: "from memory", place });
}

const thirsty = soak(
  0.3,
  0.6,
  0.9,
  "share of the voids that stays full after a shake; weigh a coil dry and wet to narrow it",
);
const dry = soak(
  0.02,
  0.15,
  0.4,
  "fibre that water does not wet: most runs out; weigh a coil dry and wet to narrow it",
);

/** Share of the voids between the fibres that stays full of water once a wet rope has been shaken [-]. */
export const voidsFilled = {
  polyamide: thirsty,
  polyester: thirsty,
  polypropylene: dry,
  aramid: thirsty,
  aramidHighModulus: thirsty,
  hmpe: dry,
  hmpeHighModulus: dry,
  lcp: thirsty,
  pbo: thirsty,
} as const satisfies Record<FibreName, Coefficient>;
