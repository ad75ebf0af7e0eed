import { bearings } from "../materials/bearings.js";
import { fibreFactors } from "../materials/covers.js";
import { ropeEnds } from "../materials/ends.js";
import { type StiffnessLaw, stiffnessLaws } from "../materials/stiffness.js";
import { surfaces } from "../materials/surfaces.js";
import { type Line, prepareLine } from "../reeving/line.js";
import type { Station } from "../reeving/reeving.js";
import type { Ring, Rope, Sheave } from "../reeving/station.js";
import { tackle } from "../reeving/tackle.js";
import type { Band } from "../sources/band.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";
import { boundsOf } from "../uncertainty/distribution.js";
import { sampledBand } from "../uncertainty/sampled-band.js";

function untold(low: number, value: number, high: number, unit: string, place: string): Coefficient {
  return coefficient({ value, unit, low, high, status: "from memory", place });
}

const { plain, ball } = bearings;

/** What the sources of measured losses do not tell, with the range that it may have had. */
export const untoldSizes = {
  cord: untold(0.005, 0.007, 0.01, "m", "hemp cord of a lecture model, not told"),
  fallRope: untold(0.012, 0.019, 0.028, "m", "rope of a working tackle, not told"),
  fallRatio: untold(4, 5.5, 8, "1", "sheave over rope of wooden blocks, not told; practice asks for 5 to 6"),
  modelRope: untold(0.006, 0.01, 0.016, "m", "rope of a test block, not told"),
  modelRatio: untold(3, 5, 8, "1", "sheave over rope of a test block, not told"),
  rescueSheave: untold(0.02, 0.032, 0.05, "m", "groove of a rescue pulley, not told; 20 to 50 mm are sold"),
  hookBar: untold(0.009, 0.0115, 0.013, "m", "bar of a karabiner, not told"),
  climbingRope: untold(0.008, 0.0095, 0.011, "m", "rope not told"),
  edge: untold(0.004, 0.012, 0.04, "m", "diameter of the rounded edges of sawn timber, not told"),
  rescueBearing: untold(
    ball.friction.low,
    Math.sqrt(ball.friction.value * plain.friction.value),
    plain.friction.high,
    "1",
    "ball or plain bearing, not told: from the lower end of one to the upper end of the other",
  ),
  rescueShare: untold(
    plain.radiusShare.low,
    Math.sqrt(ball.radiusShare.value * plain.radiusShare.value),
    ball.radiusShare.high,
    "1",
    "as its friction",
  ),
  hempOnIron: coefficient({
    value: 0.23,
    unit: "1",
    low: 0.18,
    high: 0.28,
    status: "published",
    source: "lineham-mechanics",
    place: "hemp rope on iron pulleys, 0.28 down to 0.18",
  }),
  ropeOnTimber: untold(
    0.2,
    0.33,
    0.5,
    "1",
    "handbooks: hemp on planed wood 0.33, on rough wood 0.5; smoother covers less",
  ),
} as const satisfies Record<string, Coefficient>;

/** The records of the library that the bands of measured losses are made of, by words for a reader. */
export const lossRecords: Readonly<Record<string, Coefficient>> = {
  "friction of a plain bearing": plain.friction,
  "its radius over that of the sheave": plain.radiusShare,
  "friction of a ball bearing": ball.friction,
  "radius of its balls over that of the sheave": ball.radiusShare,
  "bending of hemp, part that grows with tension": stiffnessLaws.whiteHemp.tensionTerm,
  "bending of hemp, constant part": stiffnessLaws.whiteHemp.constantTerm,
  "bending of hemp, part that grows with thickness": stiffnessLaws.whiteHemp.diameterTerm,
  "bending of a braided rope, part that grows with tension": stiffnessLaws.braidedCover.tensionTerm,
  "bending of a braided rope, constant part": stiffnessLaws.braidedCover.constantTerm,
  "bending of a braided rope, part that grows with thickness": stiffnessLaws.braidedCover.diameterTerm,
  "bending of a bare core, part that grows with tension": stiffnessLaws.bareCore.tensionTerm,
  "bending of a bare core, constant part": stiffnessLaws.bareCore.constantTerm,
  "bending of a bare core, part that grows with thickness": stiffnessLaws.bareCore.diameterTerm,
  "cover on polished steel": surfaces.polishedSteel.friction,
  "cover on anodised aluminium": surfaces.anodised.friction,
  "bare core over polyester": fibreFactors.bareCore,
  "strength that a knot leaves in HMPE": ropeEnds.anyKnot.retained.hmpe,
};

type Draws = Readonly<Record<string, number>>;
type Inputs = Readonly<Record<string, Band>>;

/** The inputs of a rope: its stiffness, one draw for all three parts, since it is one rope. */
export const stiffnessInput = (law: StiffnessLaw): Inputs => ({ stiffness: law.tensionTerm });

/** A rope of a law whose three parts share the draw of the first. */
export function ropeOf(law: StiffnessLaw, diameter: number, tensionTerm: number): Rope {
  const factor = tensionTerm / law.tensionTerm.value;
  return {
    diameter,
    stiffness: {
      tensionTerm,
      constantTerm: factor * law.constantTerm.value,
      diameterTerm: factor * law.diameterTerm.value,
    },
  };
}

/** A wheel of a groove diameter, half a turn, with drawn bearing. */
export function wheelOf(name: string, diameter: number, { friction, share }: Draws): Sheave {
  return {
    kind: "sheave",
    name,
    diameter,
    wrapAngle: Math.PI,
    pinRadius: (share! * diameter) / 2,
    bearingFriction: friction!,
  };
}

/** A bar that does not turn. */
export function barOf(name: string, diameter: number, frictionCoefficient: number, wrapAngle = Math.PI): Ring {
  return { kind: "ring", name, diameter, wrapAngle, frictionCoefficient };
}

/** A purchase of natural-fibre rope on such wheels, hauled from the fixed block. */
export function purchaseOf(parts: number, wheel: Sheave): Station {
  return { kind: "tackle", name: "purchase", reeving: tackle({ parts, hauledFrom: "fixed", turn: wheel }) };
}

/** Band of hand force over load of a line that is built anew for every draw. */
export function handShare(
  direction: "hauling" | "easing",
  load: number,
  inputs: Inputs,
  build: (draws: Draws) => Line,
): Band {
  return sampledBand(inputs, (draws) => prepareLine(build(draws)).handForces(load)[direction] / load, {
    samples: 512,
    bounds: {
      friction: boundsOf("bearingFriction"),
      share: { maximum: 0.95 },
      surface: boundsOf("frictionCoefficient"),
      stiffness: boundsOf("bendingCoefficient"),
    },
  });
}

/** Bearings as inputs. */
export const bearingInputs = {
  plain: { friction: plain.friction, share: plain.radiusShare },
  ball: { friction: ball.friction, share: ball.radiusShare },
  untold: { friction: untoldSizes.rescueBearing, share: untoldSizes.rescueShare },
} as const;
