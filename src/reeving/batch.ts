import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { balancedStep } from "./batch-balance.js";
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
import { pullingTurns, ropeStep, turnsStep } from "./batch-rope.js";
import type { OneWayStep } from "./batch-step.js";
import { type Line, prepareLine } from "./line.js";
import { type Mechanism, mechanismOf } from "./mechanism.js";
import type { Direction } from "./mechanism-loads.js";
import { powerLawGain, powerLawStep } from "./power-law.js";
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
 * Factors must be 0 or more; a load or factor that is not a number gives an answer that is not a number.
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
  const haul = stepsOf(line, lawOf, columns.sliding, "hauling");
  const ease = stepsOf(line, lawOf, columns.sliding, "easing");
  const fillers = [...laws.values()];
  const chunk = new Float64Array(chunkSize);
  const run = (steps: readonly OneWayStep[], load: Float64Array, from: number, count: number, out: Float64Array) => {
    for (let i = 0; i < count; i++) chunk[i] = load[from + i]!;
    for (const step of steps) step(chunk, count);
    for (let i = 0; i < count; i++) out[from + i] = chunk[i]!;
  };
  return {
    solve: (cases, result) => {
      checkArrays(cases, result);
      const { load } = cases;
      for (let from = 0; from < load.length; from += chunkSize) {
        const count = Math.min(chunkSize, load.length - from);
        pointAt(columns, cases, from);
        for (const { fill } of fillers) fill(columns, count);
        run(haul, load, from, count, result.hauling);
        run(ease, load, from, count, result.easing);
      }
    },
  };
}

type LawOf = (turn: Turn, mode: Mode) => LawColumns;

/** Both directions through the whole line, as few steps as it allows: turns in a row are passed in one. */
function stepsOf(line: Line, lawOf: LawOf, sliding: FactorColumn, direction: Direction): OneWayStep[] {
  const steps: OneWayStep[] = [];
  let row: AffineColumns[] = [];
  const closeRow = () => {
    if (row.length > 0) steps.push(turnsStep(row));
    row = [];
  };
  /** The law of a turn that is the same straight line at every load. */
  const columnsOf = (turn: Turn) =>
    lawOf(turn, turn.kind === "ratchet" && direction === "easing" ? "gripped" : "free")[direction];
  for (const station of line.stations) {
    if (station.kind === "tackle") {
      const mechanism = mechanismOf(station.reeving, line.rope);
      closeRow();
      if (isOneRope(mechanism)) {
        const columns = mechanism.turns.map(({ turn }) => columnsOf(turn));
        steps.push(ropeStep(mechanism, columns));
        row = columns.slice(pullingTurns(mechanism));
      } else {
        const laws = mechanism.turns.map(({ turn }) => ({
          free: lawOf(turn, "free"),
          gripped: lawOf(turn, "gripped"),
        }));
        steps.push(balancedStep(mechanism, laws, direction));
      }
    } else if (isStraight(station, direction)) {
      row.push(columnsOf(station));
    } else {
      closeRow();
      steps.push(bentStep({ station, lawOf, sliding, direction }));
    }
  }
  closeRow();
  return steps;
}

/** One rope that passes every turn towards the hand, on one moving block, without a ratchet that senses load. */
function isOneRope({ moving, turns }: Mechanism): boolean {
  return moving.length === 1 && turns.every(({ passing, law }) => passing > 0 && law.grip === undefined);
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
  readonly sliding: FactorColumn;
  readonly direction: Direction;
}

/** Cleat, ring with friction that falls with load, load-sensing ratchet. */
function bentStep({ station, lawOf, sliding, direction }: BentInput): OneWayStep {
  if (station.kind === "cleat") return cleatStep(station, direction);
  if (station.kind === "ratchet")
    return sensingStep(station, lawOf(station, "free").easing, lawOf(station, "gripped").easing);
  const ring = station as Ring;
  return powerLawStepOf(ring, lawOf({ ...ring, frictionCoefficient: 0 }, "free")[direction], sliding, direction);
}

function cleatStep(cleat: Cleat, direction: Direction): OneWayStep {
  const change = cleat.closed ? (direction === "hauling" ? (cleat.drag ?? 0) : -cleat.holdLoad) : 0;
  return (tensions, count) => {
    for (let i = 0; i < count; i++) tensions[i] = Math.max(0, tensions[i]! + change);
  };
}

/** A load-sensing ratchet, easing: it grips where the block load with a free sheave reaches the engage load. */
function sensingStep(ratchet: Ratchet, free: AffineColumns, gripped: AffineColumns): OneWayStep {
  const engageLoad = ratchet.engageLoad ?? 0;
  const fold = 4 * Math.sin(ratchet.wrapAngle / 2) ** 2;
  return (tensions, count) => {
    for (let i = 0; i < count; i++) {
      const pulled = tensions[i]!;
      const rolling = Math.max(0, free.slope[i]! * pulled + free.offset[i]!);
      const held = Math.max(0, gripped.slope[i]! * pulled + gripped.offset[i]!);
      const block = Math.sqrt((pulled - rolling) ** 2 + pulled * rolling * fold);
      tensions[i] = block >= engageLoad ? held : rolling;
    }
  };
}

/** The columns hold the bending alone; the power law follows it on the way in and comes before it on the way out. */
function powerLawStepOf(ring: Ring, bending: AffineColumns, sliding: FactorColumn, direction: Direction): OneWayStep {
  const { exponent, referenceTension } = ring.loadDependence!;
  const { frictionCoefficient, wrapAngle } = ring;
  const gain = powerLawGain({ frictionCoefficient, wrapAngle, referenceTension, loadExponent: exponent });
  const x = 1 - exponent;
  const { slope, offset } = bending;
  const hauls = direction === "hauling";
  return (tensions, count) => {
    for (let i = 0; i < count; i++) {
      const own = gain * sliding.values[sliding.base + i]!;
      const tension = hauls
        ? powerLawStep(slope[i]! * tensions[i]! + offset[i]!, own, x)
        : slope[i]! * powerLawStep(tensions[i]!, -own, x) + offset[i]!;
      tensions[i] = Math.max(0, tension);
    }
  };
}

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
  let least = 0;
  let most = 0;
  for (let i = 0; i < load.length; i++) {
    least = Math.min(least, load[i]!);
    most = Math.max(most, load[i]!);
  }
  within("loadTension", least);
  within("loadTension", most);
}
