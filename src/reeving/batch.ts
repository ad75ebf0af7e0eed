import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { vocabulary } from "../quantity/vocabulary.js";
import { balancedStep, type TurnColumns } from "./batch-balance.js";
import {
  type AffineColumns,
  chunkSize,
  type FactorColumn,
  type FactorColumns,
  type LawColumns,
  lawColumns,
  lawKey,
  type Mode,
} from "./batch-law.js";
import { type BatchStep, passedRun, type RopeRun, runStep, tackleRun } from "./batch-rope.js";
import { type Line, prepareLine } from "./line.js";
import { type SlidingSteps, slidingSteps } from "./load-dependence.js";
import { type Mechanism, mechanismOf } from "./mechanism.js";
import type { Direction } from "./mechanism-loads.js";
import { powerLawStep } from "./power-law.js";
import type { Station, Tackle } from "./reeving.js";
import { type FactorName, factorNames } from "./scaled.js";
import type { Cleat, Ratchet, Ring, Turn } from "./station.js";

/** Many cases of one line: a load each, and factors on the coefficients of its causes. */
export interface BatchCases {
  /** [N] */
  readonly load: Float64Array;
  /** Factor on the coefficients of a cause [-], one for each case; 1 when absent. */
  readonly factors?: Readonly<Partial<Record<FactorName, Float64Array>>>;
}

/** Where the answers go; arrays as long as the loads. */
export interface BatchResult {
  /** [N] */
  readonly hauling: Float64Array;
  /** [N] */
  readonly easing: Float64Array;
}

/** A line ready for many cases. */
export interface BatchSolver {
  /** Fills the result for all cases. */
  solve(cases: BatchCases, result: BatchResult): void;
}

/**
 * Makes a line ready for millions of cases: the same physics as for one, on typed arrays, without allocation in the loop.
 *
 *     result[i] = prepareLine(scaledLine(line, factors[i])).handForces(load[i])
 *
 * @param line  rope and stations [m, rad, N]
 * @returns solver for loads [N] and factors [-]
 * @throws ReevingError or ValueError for a line that cannot exist; ValueError for arrays of different length, and for a load that cannot exist
 * Factors must be 0 or more; a factor that is not a number gives an answer that is not a number.
 * Source: statics, as the single solver.
 */
export function compileBatch(line: Line): BatchSolver {
  prepareLine(line);
  const laws = new Map<string, LawColumns>();
  const lawOf: LawOf = (turn, mode) => {
    const key = lawKey(turn, mode);
    const law = laws.get(key) ?? lawColumns(turn, line.rope, mode);
    laws.set(key, law);
    return law;
  };
  const columns = emptyColumns();
  const haul = stepsOf(line, lawOf, columns, "hauling");
  const ease = stepsOf(line, lawOf, columns, "easing");
  const fillers = [...laws.values()];
  const run = (steps: readonly BatchStep[], load: Float64Array, out: Float64Array, from: number, count: number) => {
    let source = load;
    for (const step of steps) {
      step(source, out, from, count);
      source = out;
    }
  };
  return {
    solve: (cases, result) => {
      checkArrays(cases, result);
      const { load } = cases;
      if (line.stations.length === 0) {
        result.hauling.set(load);
        result.easing.set(load);
      }
      for (let from = 0; from < load.length; from += chunkSize) {
        const count = Math.min(chunkSize, load.length - from);
        pointAt(columns, cases, from);
        for (const { fill } of fillers) fill(columns, count);
        run(haul, load, result.hauling, from, count);
        run(ease, load, result.easing, from, count);
      }
    },
  };
}

type LawOf = (turn: Turn, mode: Mode) => LawColumns;

/** The steps of a whole line in one direction, as few as it allows: neighbours of one law are passed in one go. */
function stepsOf(line: Line, lawOf: LawOf, factors: FactorColumns, direction: Direction): BatchStep[] {
  const steps: BatchStep[] = [];
  let open: RopeRun | undefined;
  const close = () => {
    if (open) steps.push(runStep(open));
    open = undefined;
  };
  const columnsOf = (turn: Turn): AffineColumns =>
    lawOf(turn, turn.kind === "ratchet" && direction === "easing" ? "gripped" : "free")[direction];
  const pass = (columns: AffineColumns) => {
    if (open?.slope === columns.slope) {
      open = { ...open, passedTurns: open.passedTurns + 1 };
    } else {
      close();
      open = passedRun(columns, 1);
    }
  };
  for (const station of line.stations) {
    if (station.kind === "tackle") {
      close();
      const mechanism = mechanismOf(station.reeving, line.rope);
      const columns = mechanism.turns.map(({ turn }) => columnsOf(turn));
      open = tackleRun(mechanism, columns);
      if (open) for (const law of columns.slice(open.pullingTurns)) pass(law);
      else steps.push(balancedStep(mechanism, bothLaws(mechanism, lawOf), direction));
    } else if (isStraight(station, direction)) {
      pass(columnsOf(station));
    } else {
      close();
      steps.push(bentStep({ station, lawOf, factors, direction }));
    }
  }
  close();
  return steps;
}

function bothLaws(mechanism: Mechanism, lawOf: LawOf): TurnColumns[] {
  return mechanism.turns.map(({ turn }) => ({ free: lawOf(turn, "free"), gripped: lawOf(turn, "gripped") }));
}

/** A station whose hand tension is one straight line over the load tension. */
function isStraight(station: Station, direction: Direction): station is Turn {
  if (station.kind === "cleat" || station.kind === "tackle") return false;
  if (station.kind === "ring") return station.loadDependence === undefined;
  return !(station.kind === "ratchet" && station.engageLoad !== undefined && direction === "easing");
}

interface BentInput {
  readonly station: Exclude<Station, Tackle>;
  readonly lawOf: LawOf;
  readonly factors: FactorColumns;
  readonly direction: Direction;
}

/** Cleat, ring with friction that falls with load, load-sensing ratchet. */
function bentStep({ station, lawOf, factors, direction }: BentInput): BatchStep {
  if (station.kind === "cleat") return cleatStep(station, direction);
  if (station.kind === "ratchet")
    return sensingStep(station, lawOf(station, "free").easing, lawOf(station, "gripped").easing);
  const steps = slidingSteps(station as Ring);
  return powerLawStepOf(steps, lawOf(steps.bent, "free")[direction], factors, direction);
}

function cleatStep(cleat: Cleat, direction: Direction): BatchStep {
  const change = cleat.closed ? (direction === "hauling" ? (cleat.drag ?? 0) : -cleat.holdLoad) : 0;
  return (source, target, from, count) => {
    for (let i = 0; i < count; i++) target[from + i] = Math.max(0, source[from + i]! + change);
  };
}

/** A load-sensing ratchet, easing: it grips where the block load with a free sheave reaches the engage load. */
function sensingStep(ratchet: Ratchet, free: AffineColumns, gripped: AffineColumns): BatchStep {
  const engageLoad = ratchet.engageLoad ?? 0;
  const fold = 4 * Math.sin(ratchet.wrapAngle / 2) ** 2;
  return (source, target, from, count) => {
    for (let i = 0; i < count; i++) {
      const pulled = source[from + i]!;
      const rolling = Math.max(0, free.slope[i]! * pulled + free.offset[i]!);
      const held = Math.max(0, gripped.slope[i]! * pulled + gripped.offset[i]!);
      const block = Math.sqrt((pulled - rolling) ** 2 + pulled * rolling * fold);
      target[from + i] = block >= engageLoad ? held : rolling;
    }
  };
}

/** The columns hold the bending alone; power law and drag follow it on the way in and come before it on the way out. */
function powerLawStepOf(
  { gain, x, drag }: SlidingSteps,
  { slope, offset }: AffineColumns,
  factors: FactorColumns,
  direction: Direction,
): BatchStep {
  const { sliding, drag: dragFactor } = factors;
  const hauls = direction === "hauling";
  return (source, target, from, count) => {
    for (let i = 0; i < count; i++) {
      const own = gain * sliding.values[sliding.base + i]!;
      const held = drag * dragFactor.values[dragFactor.base + i]!;
      const before = source[from + i]!;
      const tension = hauls
        ? powerLawStep(slope[i]! * before + offset[i]!, own, x) + held
        : slope[i]! * powerLawStep(Math.max(0, before - held), -own, x) + offset[i]!;
      target[from + i] = Math.max(0, tension);
    }
  };
}

const heaviest = vocabulary.loadTension.maximum;

const ones = new Float64Array(chunkSize).fill(1);

function emptyColumns(): FactorColumns {
  const column = (): FactorColumn => ({ values: ones, base: 0 });
  return { bearing: column(), bending: column(), sliding: column(), tread: column(), drag: column() };
}

function pointAt(columns: FactorColumns, cases: BatchCases, from: number): void {
  for (const name of factorNames) {
    const values = cases.factors?.[name];
    columns[name].values = values ?? ones;
    columns[name].base = values ? from : 0;
  }
}

function checkArrays({ load, factors }: BatchCases, { hauling, easing }: BatchResult): void {
  const arrays = { hauling, easing, ...factors };
  for (const [name, array] of Object.entries(arrays)) {
    if (array.length === load.length) continue;
    throw new ValueError({
      quantity: `array "${name}" of a batch`,
      value: `${array.length} values`,
      allowed: `${load.length} values, as many as loads`,
      advice: "Give one value for each case.",
    });
  }
  for (let i = 0; i < load.length; i++) if (!(load[i]! >= 0 && load[i]! <= heaviest)) within("loadTension", load[i]!);
}
