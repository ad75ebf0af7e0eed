import { lineLaw } from "../../src/calibration/line-law.js";
import { turnShare } from "../../src/calibration/turn-share.js";
import { coverFriction, fibreFactors, strandFactors, wetFactors } from "../../src/materials/covers.js";
import { practice } from "../../src/materials/practice.js";
import { treads } from "../../src/materials/surfaces.js";
import { apparentFriction } from "../../src/reeving/apparent-friction.js";
import { bearingRatio } from "../../src/reeving/bearing.js";
import { bendingLaw } from "../../src/reeving/bending.js";
import { blockLoad } from "../../src/reeving/block-load.js";
import { cheekContact } from "../../src/reeving/cheek.js";
import { prepareLine } from "../../src/reeving/line.js";
import { mechanismOf } from "../../src/reeving/mechanism.js";
import { loadDependentFriction } from "../../src/reeving/power-law.js";
import { holdingWrap } from "../../src/reeving/ratchet-hold.js";
import type { Station } from "../../src/reeving/reeving.js";
import { efficiency, leadLineFactor, ratioFromRaiseLower, tenthRulePull } from "../../src/reeving/rules.js";
import { capstanRatio, holdingFriction } from "../../src/reeving/sliding.js";
import type { Measured, Rope } from "../../src/reeving/station.js";
import { firstSystem, thirdSystem } from "../../src/reeving/systems.js";
import { tackle } from "../../src/reeving/tackle.js";
import { type Case, mirror } from "./cases.js";

export const limp: Rope = { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };

export const known = (tensionRatio: number, drag = 0, name = "turn"): Measured => ({
  kind: "measured",
  name,
  tensionRatio,
  drag,
});

const forces = (stations: readonly Station[], load: number) => prepareLine({ rope: limp, stations }).handForces(load);
const equalTurns = (count: number, ratio: number, drag: number) =>
  Array.from({ length: Math.round(count) }, (_, index) => known(ratio, drag, `turn ${index}`));

/** A purchase of a number of parts, its hauling part led on over as many sheaves more as are asked for. */
const purchase = (parts: number, sheaves: number, ratio: number): Station => ({
  kind: "tackle",
  name: "purchase",
  reeving: tackle({
    parts,
    hauledFrom: sheaves < parts ? "moving" : "fixed",
    turn: known(ratio),
    leadBlocks: Math.max(0, sheaves - parts),
  }),
});

const exact = (value: number) => ({ value, low: value, high: value, standardError: 0 });
const lawOf = (ratio: number, drag: number) => ({ ratio: exact(ratio), drag: exact(drag), correlation: 0 });

const angle = [0.1, 8] as const;
const friction = [0.02, 0.5] as const;
const ratio = [1.02, 1.6] as const;
const load = [50, 2000] as const;
const drag = [0.1, 2] as const;
const diameter = [0.002, 0.012] as const;
const sheave = [0.015, 0.08] as const;
const few = [2, 5] as const;
const bent = { sheaveDiameter: sheave, ropeDiameter: diameter } as const;

const turnOf = { turnRatio: ratio, bendRatio: ratio, bendDrag: drag, constantDrag: drag } as const;
type TurnOf = Readonly<Record<keyof typeof turnOf, number>>;
const turn = (v: TurnOf) => known(v.turnRatio, v.constantDrag);
const bend = (v: TurnOf) => known(v.bendRatio, v.bendDrag, "bend");

/** A contact of less than one rope diameter, whatever is drawn. */
const short = {
  ropeDiameter: [0.006, 0.012],
  wrapAngle: [0.05, 0.2],
  fullContact: [practice.fullBendContact.value, practice.fullBendContact.value],
} as const;
const shortlyBent = (size: { ropeDiameter: number; wrapAngle: number }, stiffness: Rope["stiffness"]) =>
  bendingLaw({ ...size, sheaveDiameter: 0.02, stiffness });

/** Whole numbers from a spread one: the formulas hold for whole counts. */
const whole = Math.round;

export const mechanicsCases: Readonly<Record<string, Case>> = {
  capstan: mirror({ frictionCoefficient: friction, wrapAngle: angle }, capstanRatio),
  capstanFriction: mirror({ tensionRatio: [1.1, 7], wrapAngle: [1.1, 8] }, holdingFriction),
  capstanAngle: mirror({ tensionRatio: ratio, frictionCoefficient: friction }, holdingWrap),
  haulingTurn: mirror(
    { tensionRatio: ratio, loadTension: load, constantDrag: drag },
    (v) => forces([known(v.tensionRatio, v.constantDrag)], v.loadTension).hauling,
  ),
  easingTurn: mirror(
    { tensionRatio: ratio, loadTension: load, constantDrag: drag },
    (v) => forces([known(v.tensionRatio, v.constantDrag)], v.loadTension).easing,
  ),
  hauledTurn: mirror({ ...turnOf, loadTension: load }, (v) => forces([bend(v), turn(v)], v.loadTension).hauling),
  easedTurn: mirror({ ...turnOf, loadTension: load }, (v) => forces([turn(v), bend(v)], v.loadTension).easing),
  runOutTurn: mirror({ ...turnOf, handTension: load }, (v) =>
    prepareLine({ rope: limp, stations: [turn(v), bend(v)] }).runOutLoad(v.handTension),
  ),
  runOutMeasured: mirror({ tensionRatio: ratio, handTension: load, constantDrag: drag }, (v) =>
    prepareLine({ rope: limp, stations: [known(v.tensionRatio, v.constantDrag)] }).runOutLoad(v.handTension),
  ),
  shortBend: mirror(
    { bendingCoefficient: [0, 200], ...short },
    ({ bendingCoefficient: tensionTerm, ...v }) =>
      shortlyBent(v, { tensionTerm, constantTerm: 0, diameterTerm: 0 }).ratio,
  ),
  shortBendDrag: mirror(
    { bendingDrag: [1, 100], bendingDragOfSize: [1, 1e6], ...short },
    (v) => shortlyBent(v, { tensionTerm: 0, constantTerm: v.bendingDrag, diameterTerm: v.bendingDragOfSize }).drag,
  ),
  coverFriction: {
    inputs: {
      surface: [0.05, 0.5],
      strands: [strandFactors[8].value],
      fibre: [fibreFactors.aramidBlend.value],
      water: [wetFactors.aramidBlend.value],
    },
    code: ({ surface }) => {
      const friction = { ...treads.faceted.friction, value: surface!, low: surface!, high: surface! };
      return coverFriction({ strands: 8, fibre: "aramidBlend", wet: true }, { name: "tread", friction }).value;
    },
  },
  bending: mirror(
    { bendingCoefficient: [0, 200], ...bent },
    ({ bendingCoefficient: tensionTerm, ...size }) =>
      bendingLaw({ ...size, wrapAngle: Math.PI, stiffness: { tensionTerm, constantTerm: 0, diameterTerm: 0 } }).ratio,
  ),
  bendingDrag: mirror(
    { bendingDrag: [1, 100], bendingDragOfSize: [1, 1e6], ...bent },
    (v) =>
      bendingLaw({
        ...v,
        wrapAngle: Math.PI,
        stiffness: { tensionTerm: 0, constantTerm: v.bendingDrag, diameterTerm: v.bendingDragOfSize },
      }).drag,
  ),
  bearingHalfTurn: mirror({ pitchRadius: [0.01, 0.04], bearingFriction: [0.01, 0.4], pinRadius: [0.002, 0.008] }, (v) =>
    bearingRatio({ ...v, pitchDiameter: 2 * v.pitchRadius, wrapAngle: Math.PI }),
  ),
  cheek: {
    inputs: { cheekFriction: [practice.cheekFriction.value], share: [0.01, 0.3], wrapAngle: angle },
    code: ({ share, wrapAngle }) => {
      const limit = practice.cheekContactRatio.value;
      const grooveRatio = limit - (share! / practice.cheekPressureShare.value) * (limit - 1);
      return cheekContact({ ropeDiameter: 0.01, grooveWidth: 0.01 * grooveRatio, wrapAngle: wrapAngle! }).ratio;
    },
  },
  ratchetHand: mirror({ loadTension: load, frictionCoefficient: friction, wrapAngle: [0.5, 3.1] }, (v) => {
    const bare = {
      kind: "ratchet" as const,
      name: "ratchet",
      diameter: 1,
      bearingFriction: 0,
      pinRadius: 0.004,
      treadFriction: v.frictionCoefficient,
      wrapAngle: v.wrapAngle,
    };
    return forces([bare], v.loadTension).easing;
  }),
  apparentFriction: mirror({ raisingForce: [110, 400], loweringForce: [20, 100], wrapAngle: [1, 6] }, apparentFriction),
  measuredRatio: mirror({ raisingForce: [110, 400], loweringForce: [20, 100] }, ratioFromRaiseLower),
  blockLoad: mirror({ loadTension: [200, 400], handTension: [50, 150], wrapAngle: [0, 3.1] }, blockLoad),
  loadDependentFriction: mirror(
    { frictionAtReference: friction, loadFactor: [0.1, 10], loadExponent: [0.6, 1] },
    ({ frictionAtReference: frictionCoefficient, loadFactor: loadRatio, loadExponent }) =>
      loadDependentFriction({ frictionCoefficient, loadRatio, loadExponent }),
  ),
  haulingChain: mirror(
    { tensionRatio: ratio, loadTension: load, constantDrag: drag, count: few },
    (v) => forces(equalTurns(v.count, v.tensionRatio, v.constantDrag), v.loadTension).hauling,
  ),
  easingChain: mirror(
    { tensionRatio: ratio, loadTension: [200, 2000], constantDrag: drag, count: few },
    (v) => forces(equalTurns(v.count, v.tensionRatio, v.constantDrag), v.loadTension).easing,
  ),
  runOutLoad: mirror(
    { constantDrag: drag, tensionRatio: ratio, count: few },
    (v) => forces(equalTurns(v.count, v.tensionRatio, v.constantDrag), 0).runOutLoad,
  ),
  deadBand: mirror({ haulingForce: [110, 400], easingForce: [20, 100] }, ({ haulingForce, easingForce }) => {
    // A turn that hauls with the one force and eases with the other has the root of their ratio, and the load between.
    const turn = known(Math.sqrt(haulingForce / easingForce));
    return forces([turn], Math.sqrt(haulingForce * easingForce)).deadBand;
  }),
  frictionless: mirror(
    { loadTension: load, velocityRatio: few },
    (v) => forces([purchase(whole(v.velocityRatio), whole(v.velocityRatio), 1)], v.loadTension).hauling,
  ),
  haulingTackle: mirror(
    { loadTension: load, tensionRatio: ratio, ropeParts: few, sheaveCount: [1, 6] },
    (v) => v.loadTension * leadLineFactor({ tensionRatio: v.tensionRatio, parts: v.ropeParts, sheaves: v.sheaveCount }),
  ),
  easingTackle: {
    inputs: { loadTension: load, tensionRatio: ratio, ropeParts: few, sheaveCount: [4, 7] },
    code: ({ loadTension, tensionRatio, ropeParts, sheaveCount }) =>
      forces([purchase(ropeParts!, sheaveCount!, tensionRatio!)], loadTension!).easing,
  },
  tenthRule: mirror({ loadTension: load, sheaveCount: [0, 8], share: [0.02, 0.2], ropeParts: few }, (v) =>
    tenthRulePull({ load: v.loadTension, parts: v.ropeParts, sheaves: v.sheaveCount, sharePerSheave: v.share }),
  ),
  efficiency: mirror({ loadTension: [100, 300], velocityRatio: few, haulingForce: [200, 400] }, (v) =>
    efficiency({ load: v.loadTension, pull: v.haulingForce, velocityRatio: v.velocityRatio }),
  ),
  firstSystem: mirror(
    { count: few },
    ({ count }) => mechanismOf(firstSystem({ ropes: count, turn: known(1) }), limp).velocityRatio,
  ),
  thirdSystem: mirror(
    { count: few },
    ({ count }) => mechanismOf(thirdSystem({ ropes: count, turn: known(1) }), limp).velocityRatio,
  ),
  turnOfLine: mirror(
    { tensionRatio: ratio, count: few },
    (v) => turnShare(lawOf(v.tensionRatio, 1), { turns: v.count }).ratio.value,
  ),
  dragOfTurn: mirror(
    { constantDrag: drag, turnRatio: ratio, count: few },
    (v) => turnShare(lawOf(v.turnRatio ** v.count, v.constantDrag), { turns: v.count }).drag.value,
  ),
  ratioOfLine: {
    inputs: { velocityRatio: few, pullAtTwice: [400, 500], pullAtOnce: [100, 200], loadTension: load },
    code: ({ velocityRatio, pullAtTwice, pullAtOnce, loadTension }) => {
      // The line that pulls so at both loads: one part with ratio and drag, the load divided by the purchase.
      const part = loadTension! / velocityRatio!;
      const slope = (pullAtTwice! - pullAtOnce!) / part;
      return slope >= 1 && pullAtOnce! >= slope * part
        ? lineLaw({ rope: limp, stations: [known(slope, pullAtOnce! - slope * part)] }, part).ratio
        : Number.NaN;
    },
  },
  dragOfLine: mirror(
    { haulingForce: [1500, 2000], tensionRatio: ratio, loadTension: [50, 500], velocityRatio: few },
    (v) => {
      const part = v.loadTension / v.velocityRatio;
      const line = { rope: limp, stations: [known(v.tensionRatio, v.haulingForce - v.tensionRatio * part)] };
      return lineLaw(line, part).drag;
    },
  ),
};
