import type { Boat, BoatLine } from "../boat/boat.js";
import { budgetOf, piecesAt } from "../boat/budget.js";
import type { Demand } from "../boat/demand.js";
import { lineOf, type ReadyLine, withLine } from "../boat/ready.js";
import { type LineStanding, lineStanding } from "../boat/standing.js";
import { thingAt } from "../boat/suits.js";
import type { LineTrial } from "../boat/trials.js";
import { splicing } from "../materials/splicing.js";
import { Refusal } from "../quantity/errors.js";
import { choiceFrom } from "./choice.js";
import { limitsOfLine, measuresOf } from "./line-measures.js";
import { asItIs, waysOf } from "./line-ways.js";
import type { Chosen, Part, PlanLine, PlanOption } from "./plan-option.js";
import type { PlanLimit, PlannedBoat } from "./planned-boat.js";
import { robustBoat } from "./robust.js";
import { worthKeeping } from "./worth-keeping.js";

/**
 * A boat file as a boat to plan: for each line the ways to make it, each worked out as `checkLine` does, and the file's limits.
 *
 *     options = the line as it is, with another rope, other hardware, more or fewer parts, and some of these together; at most 40 a line
 *
 * Limits of each line: what can hurt somebody, with the bad end of its range; the pull of the crew, run-out, movement, its own mass, price
 * and line to haul. The rest as well as the line can. Where nothing in the catalogue keeps all that is asked, the conflict is told, line
 * by line: the line is planned as near to it as it gets, or, where somebody could be hurt, stays as it is, and the others are planned.
 * More parts take more rope and more blocks. Mass and cost where the file limits them.
 *
 * @param boat  from `loadBoat`
 * @param robust  all limits must hold at the bad end of the range: 95th percentile
 * @param progress  hears of each line before its options are worked out: its name, how many are done, how many there are [-]
 * @returns lines with options, limits, conflicts
 * @throws whatever the models refuse about a line as it is; a change that they refuse is left out
 * Valid for lines that are changed one by one: a line is tried beside the others as they are; lengths stay those of the file but for the parts of a purchase.
 */
export function plannedBoatOf(boat: Boat, { robust = false, progress }: PlanWishes = {}): PlannedBoat {
  const lines = linesOf(boat, progress);
  const own = lines.map(({ line, demands }) => limitsOfLine(boat, line, demands, robust));
  const conflicts = own.flatMap(({ conflict }) => (conflict === undefined ? [] : [conflict]));
  const currency = Object.values(boat.catalogue.ropes)[0]?.price.currency ?? "";
  const planned: PlannedBoat = {
    lines: lines.map(({ line }, index) => {
      const { limits, conflict } = own[index]!;
      return conflict?.planned === false
        ? { ...line, options: line.options.slice(0, 1) }
        : worthKeeping(line, limits, robust);
    }),
    limits: [...own.flatMap(({ limits }) => limits), ...totalLimits(boat)],
    ...(conflicts.length > 0 && { conflicts }),
    ...(currency !== "" && { currency }),
  };
  return robust ? robustBoat(planned) : planned;
}

/** How a boat is to be planned. */
export interface PlanWishes {
  /** Whether race demands must hold at the bad end of their range, too. */
  readonly robust?: boolean;
  /** Hears of each line before its options are worked out: its name, how many are done, how many there are. */
  readonly progress?: (line: string, done: number, all: number) => void;
}

/** A line with all its options, and the demands on it as it is. */
interface WorkedOut {
  readonly line: PlanLine;
  readonly demands: readonly Demand[];
}

/** By boat: they are the same whether limits must hold at the bad end or not. */
const workedOut = new WeakMap<Boat, readonly WorkedOut[]>();

function linesOf(boat: Boat, progress: PlanWishes["progress"]): readonly WorkedOut[] {
  const known = workedOut.get(boat);
  if (known !== undefined) return known;
  const all = Object.entries(boat.lines);
  const lines = all.map(([name, line], index): WorkedOut => {
    progress?.(name, index, all.length);
    const options = waysOf(boat, line).flatMap((way) => optionOf(boat, name, way));
    return { line: { name, options: sameMeasures(options) }, demands: lineStanding(boat, name).demands };
  });
  workedOut.set(boat, lines);
  return lines;
}

/** What is asked of some options only is no limit for the others. */
function sameMeasures(options: readonly PlanOption[]): PlanOption[] {
  const endless = Object.fromEntries(
    options.flatMap(({ measures }) => Object.keys(measures).map((name) => [name, Number.POSITIVE_INFINITY])),
  );
  return options.map((option) => ({
    ...option,
    measures: { ...endless, ...option.measures },
    measuresRobust: { ...endless, ...option.measuresRobust },
  }));
}

/**
 * What a boat sails with now, as a choice of its plan.
 *
 * @param planned  from `plannedBoatOf`
 * @returns each line as it is
 */
export function choiceNow(planned: PlannedBoat): Chosen[] {
  return choiceFrom(planned, Object.fromEntries(planned.lines.map(({ name }) => [name, asItIs])));
}

/**
 * The boat as a plan makes it, to be checked or compared.
 *
 * @param boat  the boat that was planned
 * @param choice  option of each line that the plan takes
 * @returns a new boat; the given one stays as it is
 */
export function boatAsPlanned(boat: Boat, choice: readonly Chosen[]): Boat {
  return choice.reduce((made, { line: { name }, option }) => {
    const line = boat.lines[name];
    const way = line && waysOf(boat, line).find(({ words }) => words === option.id);
    return way ? withLine(made, name, way.line) : made;
  }, boat);
}

function totalLimits({ limits }: Boat): PlanLimit[] {
  const found: PlanLimit[] = [];
  if (limits.mass !== undefined) found.push({ kind: "total", total: "dry", atMost: limits.mass });
  if (limits.cost !== undefined) found.push({ kind: "total", total: "cost", atMost: 100 * limits.cost.amount });
  return found;
}

/** The option, or none where a model refuses what was changed. */
function optionOf(boat: Boat, name: string, { words, line }: LineTrial): PlanOption[] {
  const changed = withLine(boat, name, line);
  try {
    return [optionFrom(changed, lineOf(changed, name), lineStanding(changed, name), words)];
  } catch (error) {
    if (error instanceof Refusal && words !== asItIs) return [];
    throw error;
  }
}

function optionFrom(boat: Boat, ready: ReadyLine, standing: LineStanding, words: string): PlanOption {
  const { feel, budget } = standing;
  const { ends, rope, count: lines = 1 } = ready.line;
  const tied = [ends.sail, ends.hand, ...(ends.between ?? [])];
  const splices = lines * (tied.filter((end) => end === "splice").length + rope.length - 1);
  return {
    id: words,
    words,
    mass: { dry: budget.dry.value, wet: budget.wet.value, aloft: massAloft(boat, ready) },
    cost: Math.round(100 * budget.cost),
    handForce: feel.hauling.value,
    handForceRobust: feel.hauling.high,
    measures: measuresOf(boat, ready, standing, "middle"),
    measuresRobust: measuresOf(boat, ready, standing, "worst"),
    splices,
    minutes: (splices * splicing.taperTime.value) / 60,
    pieces: ready.line.rope.map(({ rope, length }) => ({ rope, length })),
    parts: partsOf(ready.line),
  };
}

function partsOf({ path }: BoatLine): Part[] {
  const names = [...new Set(path.map(thingAt))];
  const count = (part: string) =>
    path.filter((station) => thingAt(station) === part).reduce((sum, station) => sum + piecesAt(station), 0);
  return names.map((part) => ({ part, count: count(part) }));
}

/** Of a hoisted halyard: its first sheave, and the rope down to the second station; half the rope where no distances are given. */
function massAloft(boat: Boat, ready: ReadyLine): number {
  const { line, pieces } = ready;
  if (line.kind !== "halyard") return 0;
  const [first, second] = line.path;
  const whole = pieces.reduce((sum, { length }) => sum + length, 0);
  let left =
    first?.distance === undefined || second?.distance === undefined ? whole / 2 : first.distance + second.distance;
  const up = pieces.map((piece) => {
    const length = Math.min(left, piece.length);
    left -= length;
    return { ...piece, length };
  });
  return budgetOf(boat, { ...ready, pieces: up, line: { ...line, path: line.path.slice(0, 1) } }).dry.value;
}
