import { splicing } from "../materials/splicing.js";
import { Refusal } from "../quantity/errors.js";
import { prepareLine } from "../reeving/line.js";
import type { Station } from "../reeving/reeving.js";
import { handForcesOfSize, type SizedLine } from "../reeving/size-gain.js";
import type { Sheave } from "../reeving/station.js";
import { lineMass } from "../rope/line-mass.js";
import { type Taper, taper } from "../rope/taper.js";
import type { LineJob } from "../rope/thin-limits.js";
import type { PlanBlock, PlanCatalogue, PlanRope, PlanTaper } from "./catalogue.js";
import { largestBlockLoad, marginMeasures } from "./option-strength.js";
import { PlanError } from "./plan-error.js";
import type { Piece, PlanLine, PlanOption } from "./plan-option.js";

/** What a line has to do, whatever it is made of. */
export interface PlanJob {
  readonly name: string;
  /** Stations from load to hand, given the block that is tried. */
  readonly stations: (sheave: Sheave) => readonly Station[];
  /** Blocks to buy for the line [-]; with 0 only ropes are tried. */
  readonly blocks: number;
  /** Of these, how many hang in the rig [-]. */
  readonly blocksAloft: number;
  /** Pull of the sail at the wind of the plan [N]. */
  readonly load: number;
  /** Rope from the sail end to cleat or hand, hauled in; travel of the sail end; cover before the cleat; tail behind it [m]. */
  readonly reach: number;
  readonly travel: number;
  readonly clearance: number;
  readonly tail: number;
  /** Share of the rope that hangs in the rig [-]. */
  readonly aloftShare: number;
  /** Eyes and other splices of the line, before any taper [-]. */
  readonly splices: number;
  /** What rope and ends must stand. */
  readonly demands: Omit<LineJob, "handTension" | "sheave">;
  readonly weight?: number;
}

/** A combination that cannot be made, and why. */
export interface OptionLeftOut {
  readonly option: string;
  readonly reason: string;
}

/**
 * Makes the options of a line: every rope, plain or tapered, with every block, each worked out once.
 *
 *     hand force, dead band and run-out load from the stations; margins from the limits of rope and block;
 *     mass, price, pieces and time from length, taper and number of blocks
 *
 * Measures: `hauling`, `easing`, `dead band`, `run-out load` [N]; `strength margin`, `hand comfort margin`, `stretch margin`,
 * `cleat margin`, `groove margin`, `block margin`: what there is over what is asked for [-]. All blocks of a line are of one size.
 * A tapered line runs over its blocks with the thin part.
 *
 * @param job  stations, load [N], lengths [m], demands
 * @param catalogue  ropes and blocks
 * @returns line ready for the plan, and combinations that cannot be made with the reason
 * @throws PlanError when nothing in the catalogue can be made into the line
 */
export function optionsOf(
  job: PlanJob,
  { ropes, blocks }: PlanCatalogue,
): { line: PlanLine; leftOut: readonly OptionLeftOut[] } {
  const tried = job.blocks === 0 ? blocks.slice(0, 1) : blocks;
  const leftOut: OptionLeftOut[] = [];
  const options: PlanOption[] = [];
  for (const rope of ropes) {
    for (const thin of [undefined, ...(rope.tapers ?? [])]) {
      for (const block of tried) {
        const kit: Kit = { job, rope, block, thin };
        try {
          options.push(optionOf(kit));
        } catch (error) {
          if (!(error instanceof Refusal)) throw error;
          leftOut.push({ option: idOf(kit), reason: error.message });
        }
      }
    }
  }
  if (options.length === 0) refuseAll(job, leftOut);
  const { name, weight } = job;
  return { line: { name, options, ...(weight !== undefined && { weight }) }, leftOut };
}

interface Kit {
  readonly job: PlanJob;
  readonly rope: PlanRope;
  readonly block: PlanBlock;
  readonly thin: PlanTaper | undefined;
}

function partsOf<T>({ job, rope, thin, block }: Kit, pick: (one: { id: string; words: string }) => T): T[] {
  return [rope, ...(thin ? [thin] : []), ...(job.blocks > 0 ? [block] : [])].map(pick);
}

const idOf = (kit: Kit) => partsOf(kit, ({ id }) => id).join(" + ");

function optionOf(kit: Kit): PlanOption {
  const { job, block } = kit;
  const plan = lengthsOf(kit);
  const tapered = plan.taper;
  const splices = job.splices + (tapered?.splices ?? 0);
  return {
    id: idOf(kit),
    words: partsOf(kit, ({ words }) => words).join(", "),
    ...physicsOf(kit, sizedLine(kit)),
    mass: massOf(kit, plan),
    cost: costOf(kit, plan),
    splices,
    minutes: (splices * splicing.taperTime.value) / 60,
    pieces: piecesOf(kit, plan),
    parts: job.blocks > 0 ? [{ part: block.id, count: job.blocks }] : [],
  };
}

/** The line with the rope that runs over its blocks. */
function sizedLine({ job, rope, block, thin }: Kit): SizedLine {
  const { make, stiffness } = thin ?? rope;
  return {
    ropeDiameter: make.diameter,
    stiffness,
    bearing: block.bearing,
    drag: block.drag,
    stations: (sheave) => job.stations({ ...sheave, grooveWidth: block.grooveWidth }),
  };
}

function physicsOf(
  { job, rope, block, thin }: Kit,
  line: SizedLine,
): Pick<PlanOption, "handForce" | "handForceRobust" | "measures" | "measuresRobust"> {
  const { hauling, easing, runOutLoad } = handForcesOfSize(line, block.sheaveDiameter, job.load);
  const { cleat, ...carried } = job.demands;
  const held: LineJob = { ...job.demands, handTension: hauling.value };
  const { sheaveDiameter: diameter, grooveWidth } = block;
  const running: LineJob = { ...carried, ...(job.blocks > 0 && { sheave: { diameter, grooveWidth } }) };
  const margins = marginMeasures({ make: rope.make, job: held }, { make: (thin ?? rope).make, job: running });
  const pull = job.blocks > 0 ? largestBlockLoad(line, diameter, job.load) : undefined;
  const forces = (haul: number, ease: number, runOut: number, most?: number) => ({
    hauling: haul,
    easing: ease,
    "dead band": haul - ease,
    "run-out load": runOut,
    ...(most !== undefined && { "block margin": block.workingLoad / Math.max(1e-9, most) }),
  });
  return {
    handForce: hauling.value,
    handForceRobust: hauling.high,
    measures: { ...forces(hauling.value, easing.value, runOutLoad.value, pull?.value), ...margins.measures },
    measuresRobust: {
      ...forces(hauling.high, Math.max(0, easing.low), runOutLoad.high, pull?.high),
      ...margins.measuresRobust,
    },
  };
}

interface Lengths {
  readonly lineLength: number;
  readonly taper?: Taper;
}

function lengthsOf(kit: Kit): Lengths {
  const { job, rope, thin } = kit;
  const velocityRatio = velocityRatioOf(kit);
  if (!thin) return { lineLength: job.reach + velocityRatio * job.travel + job.tail };
  const tapered = taper({ ...job, covered: rope.make, bare: thin.make, join: thin.join, velocityRatio });
  return { lineLength: tapered.lineLength, taper: tapered };
}

/** Geometry alone: any rope and sheave will do. */
function velocityRatioOf({ job, rope, block }: Kit): number {
  const sheave: Sheave = {
    kind: "sheave",
    name: "sheave",
    diameter: block.sheaveDiameter,
    wrapAngle: Math.PI,
    pinRadius: block.sheaveDiameter / 8,
    bearingFriction: 0,
  };
  const stiffness = { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 };
  return prepareLine({ rope: { diameter: rope.make.diameter, stiffness }, stations: job.stations(sheave) })
    .velocityRatio;
}

function massOf({ job, rope, block }: Kit, { lineLength, taper: tapered }: Lengths): PlanOption["mass"] {
  const whole = lineMass([{ make: rope.make, length: lineLength }]);
  const dry = whole.dry.value - (tapered?.saved.dry.value ?? 0);
  const wet = whole.wet.value - (tapered?.saved.wet.value ?? 0);
  const blocks = job.blocks * block.mass;
  return { dry: dry + blocks, wet: wet + blocks, aloft: job.aloftShare * dry + job.blocksAloft * block.mass };
}

function costOf({ job, rope, block, thin }: Kit, { lineLength, taper: tapered }: Lengths): number {
  const covered = tapered?.cut.covered ?? lineLength;
  const bare = tapered?.cut.bare ?? 0;
  return Math.round(covered * rope.pricePerMetre + bare * (thin?.pricePerMetre ?? 0) + job.blocks * block.price);
}

function piecesOf({ rope, thin }: Kit, { lineLength, taper: tapered }: Lengths): Piece[] {
  if (!tapered || !thin) return [{ rope: rope.id, length: lineLength }];
  const place = { join: thin.join, bareLength: tapered.bareLength, joinLength: tapered.joinLength.value };
  const covered: Piece = { rope: rope.id, length: tapered.cut.covered, use: "covered part", taper: place };
  if (thin.join === "strip") return [{ ...covered, use: "whole line, cover stripped" }];
  return [covered, { rope: thin.id, length: tapered.cut.bare, use: "running part" }];
}

function refuseAll({ name }: PlanJob, leftOut: readonly OptionLeftOut[]): never {
  throw new PlanError({
    quantity: `options of the line "${name}"`,
    value: leftOut[0] === undefined ? "an empty catalogue" : `nothing that can be made; first: ${leftOut[0].reason}`,
    allowed: "one rope, and one block where the line needs blocks",
    advice: "Add what fits to the catalogue.",
  });
}
