import { stiffnessLaws } from "../materials/stiffness.js";
import { convert } from "../quantity/parse.js";
import { bearingRatio } from "../reeving/bearing.js";
import { bendingLaw, stiffnessOf } from "../reeving/bending.js";
import { blockLoad } from "../reeving/block-load.js";
import { energyBalance } from "../reeving/energy.js";
import { pulledSide } from "../reeving/law.js";
import { efficiency } from "../reeving/rules.js";
import { tackle } from "../reeving/tackle.js";
import { cascade, frictionless } from "./purchase-models.js";
import type { CheckRow, CheckSet } from "./row.js";
import { cordOver } from "./turn-models.js";

const published = { evidence: "published", status: "published" } as const;

/** One sheave, four loads: the first reading gives the ratio, the others must follow from it. */
const ballRows = (
  [
    [14, "1.0"],
    [21, "1.5"],
    [28, "2.0"],
  ] as const
).map(
  ([load, printed]): CheckRow => ({
    ...published,
    id: `ball-mechanics-sheave-${load}`,
    quantity: `extra pull that starts a sheave under ${load} lbf, from the reading under 7 lbf`,
    printed,
    unit: "lbf",
    source: "ball-mechanics",
    place: "art. 168",
    compute: () =>
      cordOver({ kind: "measured", name: "sheave", tensionRatio: 7.5 / 7 }).handForces(load).hauling - load,
  }),
);

const lowering = cordOver({ kind: "measured", name: "sheave", tensionRatio: 1 / 0.8 });

/** Leg tension under 2000 lb for an angle of the legs from the horizontal, as a purchase of two parts at an angle. */
const slingRows = (
  [
    [60, "1155"],
    [45, "1414"],
    [30, "2000"],
    [15, "3864"],
  ] as const
).map(
  ([degrees, printed]): CheckRow => ({
    ...published,
    id: `sling-legs-${degrees}`,
    quantity: `tension in each of two legs at ${degrees}° to the horizontal under 2000 lbf`,
    printed,
    unit: "lbf",
    source: "sling-legs",
    place: "example 11.3",
    compute: () => {
      const spreadAngle = ((90 - degrees) * Math.PI) / 180;
      return cascade(tackle({ parts: 2, hauledFrom: "fixed", turn: frictionless, spreadAngle })).handForces(2000)
        .hauling;
    },
  }),
);

/** Pin model on a printed geometry: tread radius 27.559 mm, shaft radius 9.525 mm. */
const pinRows = (
  [
    [0.049, "1.0345"],
    [0.1, "1.0716"],
    [0.2, "1.1485"],
  ] as const
).map(
  ([bearingFriction, printed]): CheckRow => ({
    id: `donzelli-1999-pin-${bearingFriction}`,
    quantity: `tension ratio of a plain pin, friction ${bearingFriction}, half a turn`,
    printed,
    unit: "1",
    evidence: "independent",
    status: "from memory",
    source: "donzelli-1999",
    place: "geometry of Table 1; formula (R + μ r) / (R − μ r) from memory",
    compute: () => bearingRatio({ bearingFriction, pinRadius: 0.009525, pitchDiameter: 0.055118, wrapAngle: Math.PI }),
  }),
);

/** Extra pull of white hemp by the printed law, worked by hand. */
function hempRow(diameter: number, radius: number, printed: string): CheckRow {
  const inches = (value: number) => convert(value, "inch", "m");
  return {
    id: `britannica-1911-hemp-${diameter}`,
    quantity: `extra pull to bend white hemp of ${diameter} in round an effective radius of ${radius} in, 100 lbf`,
    printed,
    unit: "lbf",
    evidence: "independent",
    status: "published",
    source: "britannica-1911",
    place: "eq. 68 evaluated by hand",
    compute: () => {
      const tension = convert(100, "lbf", "N");
      const law = bendingLaw({
        ropeDiameter: inches(diameter),
        sheaveDiameter: inches(2 * radius - diameter),
        wrapAngle: Math.PI,
        stiffness: stiffnessOf(stiffnessLaws.whiteHemp),
      });
      return convert(pulledSide(law, tension) - tension, "N", "lbf");
    },
  };
}

const angleRows = (
  [
    [0, "2.00"],
    [30, "1.93"],
    [60, "1.73"],
    [90, "1.41"],
    [120, "1.00"],
    [150, "0.52"],
  ] as const
).map(
  ([between, printed]): CheckRow => ({
    id: `block-load-${between}`,
    quantity: `block load over tension, ${between}° between the parts`,
    printed,
    unit: "1",
    evidence: "exact",
    status: "published",
    source: "statics",
    place: "2 cos(φ/2)",
    compute: () => blockLoad({ loadTension: 1, handTension: 1, wrapAngle: ((180 - between) * Math.PI) / 180 }),
  }),
);

const rows: readonly CheckRow[] = [
  ...ballRows,
  {
    ...published,
    id: "prattley-2016-rod",
    quantity: "efficiency of a 9 mm rope over a 10 mm rod, from a pull of 0.188 kN under 0.1 kN",
    printed: "53",
    unit: "%",
    source: "prattley-2016",
    place: "table",
    compute: () => 100 * efficiency({ load: 0.1, pull: 0.188, velocityRatio: 1 }),
  },
  {
    ...published,
    id: "poysti-2020-lost-work",
    quantity: "work lost in a sheave of 80 % when 980 N are lowered by 10 m",
    printed: "1960",
    unit: "J",
    source: "poysti-2020",
    place: "energy of a lowering",
    compute: () => 10 * energyBalance({ state: lowering.state(980, "easing"), velocityRatio: 1 }).lost,
  },
  ...slingRows,
  ...pinRows,
  hempRow(1, 6, "1.3636"),
  hempRow(0.315, 1, "0.6005"),
  ...angleRows,
];

/** Sheaves, pins, bending and angles. */
export const sheaveExamples: CheckSet = { topic: "turn", rows };
