import { bearings } from "../materials/bearings.js";
import { hauling, hoisting } from "../materials/hauling.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { hillForce, meanForce } from "../motion/hill.js";
import { haul } from "../motion/hoist.js";
import type { MovingLine } from "../motion/moving-line.js";
import { letOut } from "../motion/run-out.js";
import { type HoistedSail, halyardRope, sailComingDown, sailGoingUp } from "../motion/sail.js";
import { stiffnessOf } from "../reeving/bending.js";
import { type Line, prepareLine } from "../reeving/line.js";
import { type RopeMake, ropeLinearDensity } from "../rope/make.js";
import { wetLinearDensity } from "../rope/wet-mass.js";
import { practiceRow } from "./published-row.js";
import type { CheckSet } from "./row.js";

const lift = 6.5;
const covered: RopeMake = {
  fibre: "hmpe",
  construction: "coveredCore",
  coverFibre: "polyester",
  diameter: 0.006,
};
const bare: RopeMake = { fibre: "hmpe", construction: "bareBraid", diameter: 0.0039 };

/** A halyard over masthead and mast foot. */
function lineWith(make: RopeMake, sheave: number): Line {
  const { friction, radiusShare } = bearings.plain;
  const block = (name: string, wrapAngle: number) => ({
    kind: "sheave" as const,
    name,
    wrapAngle,
    diameter: sheave,
    pinRadius: (radiusShare.value * sheave) / 2,
    bearingFriction: friction.value,
  });
  const law = make === bare ? stiffnessLaws.bareCore : stiffnessLaws.braidedCover;
  return {
    rope: { diameter: make.diameter, stiffness: stiffnessOf(law) },
    stations: [block("masthead", Math.PI), block("mast foot", Math.PI / 2)],
  };
}

/** One rig of a few that are all tried. */
interface Rig {
  readonly make: RopeMake;
  readonly sheave: number;
  readonly wet: boolean;
  /** Force that presses the sail on the rig [N]. */
  readonly pressing: number;
}

const every: readonly Rig[] = [covered, bare].flatMap((make) =>
  [0.02, 0.03, 0.05].flatMap((sheave) =>
    [false, true].flatMap((wet) => [0, 15, 30].map((pressing) => ({ make, sheave, wet, pressing }))),
  ),
);

function moving({ make, sheave, wet, pressing }: Rig, sailAt: "bottom" | "top"): MovingLine {
  const linearDensity = (wet ? wetLinearDensity : ropeLinearDensity)(make).value;
  const sail: HoistedSail = {
    sailMass: wet ? 2.4 : 1.5,
    lift,
    headShare: 0.05,
    pressing,
    rubbing: hoisting.rubbing.value,
    fallDrag: 0.3,
  };
  return {
    line: prepareLine(lineWith(make, sheave)),
    load: sailAt === "bottom" ? sailGoingUp(sail) : sailComingDown(sail),
    rope: halyardRope({ linearDensity, lift, handSide: 8, handDrop: 6 }, sailAt),
  };
}

const pull = meanForce(
  hillForce({
    greatestPull: hauling.greatestPull.value,
    greatestSpeed: hauling.greatestSpeed.value,
    curvature: hauling.curvature.value,
  }),
  {
    strokeLength: hauling.strokeLength.value,
    cycleRate: hauling.cycleRate.value,
    pullingShare: hauling.pullingShare.value,
  },
);
const up = (rig: Rig) => haul({ moving: moving(rig, "bottom"), lift, hand: pull }).time;
const down = (rig: Rig) => {
  const { stall, time } = letOut({ moving: moving(rig, "top"), lift });
  return stall === undefined ? time : Number.POSITIVE_INFINITY;
};

/** Percent of the rigs for which something is true. */
function share(rigs: readonly Rig[], isTrue: (rig: Rig) => boolean): number {
  return (100 * rigs.filter(isTrue).length) / rigs.length;
}

const dry = every.filter(({ wet }) => !wet);
const withCover = every.filter(({ make }) => make === covered);
const small = every.filter(({ sheave }) => sheave < 0.05);

/** Rules of the trade about hoisting and dropping. */
export const motionPractice: CheckSet = {
  topic: "motion",
  rows: [
    practiceRow(
      "wet-hoist",
      "rigs that hoist slower with sail and halyard wet",
      "100",
      "%",
      "wet gear goes up slower",
      () => share(dry, (rig) => up({ ...rig, wet: true }) > up(rig)),
    ),
    practiceRow(
      "core-drop",
      "rigs whose drop is sooner over with a stripped core",
      "100",
      "%",
      "a thin, stripped halyard lets a sail down faster",
      () => share(withCover, (rig) => down({ ...rig, make: bare }) < down(rig)),
    ),
    practiceRow(
      "bigger-sheave",
      "rigs that hoist and drop faster over sheaves of 50 mm",
      "100",
      "%",
      "bigger sheaves run easier",
      () => share(small, (rig) => [up, down].every((time) => time({ ...rig, sheave: 0.05 }) < time(rig))),
    ),
    practiceRow(
      "lee-drop",
      "rigs whose drop is sooner over where the wind presses half as hard",
      "100",
      "%",
      "drop in the lee of the mainsail",
      () =>
        share(
          every.filter(({ pressing }) => pressing > 0),
          (rig) => down({ ...rig, pressing: rig.pressing / 2 }) < down(rig),
        ),
    ),
  ],
};
