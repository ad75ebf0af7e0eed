import type { Boat } from "../boat/boat.js";
import type { LineStanding } from "../boat/check.js";
import { leastDiameterOf } from "../boat/hand-diameter.js";
import { mostForces } from "../boat/judge-hand.js";
import type { Judgement } from "../boat/judgement.js";
import type { ReadyLine } from "../boat/ready.js";
import type { Margins } from "../quantity/verdict.js";
import { coversHeld } from "./covers-held.js";
import { meets } from "./limit.js";
import type { PlanLine, PlanOption } from "./plan-option.js";
import type { MeasureLimit } from "./planned-boat.js";

/** Margins that a boat file asks for. */
const asked = ["strength margin", "cleat margin", "run-out margin", "movement margin", "day margin"] as const;

/** Margins that must be right; where nothing that keeps the other limits gets there, as right as some way does. */
const kept = ["fit margin", "wear margin", "comfort margin", "burn margin"] as const;

/** Margins of rules of thumb and of people. */
const byRule: ReadonlySet<string> = new Set(["fit margin", "wear margin", "comfort margin", "day margin"]);

type MarginName = (typeof asked)[number] | (typeof kept)[number];

/** The margin that a judgement goes into; hand forces are measures of their own. */
function marginOf({ aspect, subject }: Judgement): MarginName | undefined {
  if (aspect === "strong") return "strength margin";
  if (aspect === "runs") return subject.startsWith("hand") ? "burn margin" : "run-out margin";
  if (aspect === "stays") return "movement margin";
  if (aspect === "holds" && subject.endsWith("day")) return "day margin";
  if (aspect === "holds") return subject.startsWith("cleat") ? "cleat margin" : undefined;
  if (aspect === "weighs" || aspect === "costs") return undefined;
  if (aspect === "hauls") return subject.startsWith("thickness") ? "comfort margin" : undefined;
  return subject.startsWith("groove") || subject.startsWith("size") ? "fit margin" : "wear margin";
}

const diameterName = "diameter in the hand";
const coversName = "covers where it is held";
const lineName = "line to haul a metre";

/**
 * Hand forces [N], least margin of each kind [-], infinite where nothing of the kind is asked, diameter in the hand [mm], covers where
 * it is held [-], line at the hand for a metre at the sail [m], mass [g] and price.
 */
export function measuresOf(
  boat: Boat,
  { middle, pieces, line }: ReadyLine,
  { feel, judgements, budget }: LineStanding,
  end: keyof Margins,
): Record<string, number> {
  const force = end === "middle" ? "value" : "high";
  const margin = (name: MarginName) => {
    const all = judgements.filter((one) => marginOf(one) === name).map(({ margins }) => margins);
    // A plan guards against friction, load and strength; rules of thumb and the spread of people are taken at their middle.
    if (byRule.has(name)) return Math.min(Number.POSITIVE_INFINITY, ...all.map(({ middle: usual }) => usual));
    // At the weak end of its range a rope is asked for less; it must still be strong enough in the middle.
    return Math.min(Number.POSITIVE_INFINITY, ...all.flatMap((one) => [one.middle, one[end]]));
  };
  const margins = Object.fromEntries([...asked, ...kept].map((name) => [name, margin(name)]));
  const harder = end === "middle" ? 1 : feel.easing.high / Math.max(feel.easing.value, 1e-9);
  return {
    hauling: feel.hauling[force],
    holding: feel.easing[force],
    "run-out load": feel.runOutLoad[force],
    ...margins,
    "day margin": margins["day margin"]! / harder,
    "comfort margin": margins["comfort margin"]! / harder,
    [diameterName]: 1000 * pieces.at(-1)!.rope.diameter,
    [coversName]: coversHeld(boat, line),
    [lineName]: middle.velocityRatio,
    "dry mass": 1000 * budget.dry[force],
    price: budget.cost,
  };
}

/** Limits of one line, as the boat file sets them; its first option is the line as it is. */
export function limitsOfLine(boat: Boat, { name: line, options }: PlanLine, robust: boolean): MeasureLimit[] {
  const measuresAt = (option: PlanOption) => (robust ? option.measuresRobust : undefined) ?? option.measures;
  const now = measuresAt(options[0]!);
  const described = boat.lines[line]!;
  const { hand, heldBy } = described;
  const { pull, hold } = mostForces(boat.limits, described, boat.crew[hand]!);
  const { mostLine, mass, cost } = described.limits ?? {};
  const most = (measure: string, bound: number, unit = "N"): MeasureLimit => {
    return { kind: "measure", line, measure, sense: "at most", bound, unit };
  };
  const least = (measure: string, bound: number, unit?: string): MeasureLimit => {
    return { kind: "measure", line, measure, sense: "at least", bound, ...(unit !== undefined && { unit }) };
  };
  const there = (name: MarginName) => Number.isFinite(now[name]!);
  const needed = [
    most("hauling", pull),
    ...(heldBy === "hand" ? [most("holding", hold)] : []),
    ...asked.filter(there).map((name) => least(name, 1)),
    ...(mostLine === undefined ? [] : [most(lineName, mostLine, "m")]),
    ...(mass === undefined ? [] : [most("dry mass", 1000 * mass, "g")]),
    ...(cost === undefined ? [] : [most("price", cost.amount, cost.currency)]),
  ];
  const right = [
    ...kept.filter(there).map((name) => least(name, 1)),
    ...(now[coversName] === 1 ? [least(coversName, 1)] : []),
    least(diameterName, Number((1000 * leastDiameterOf(boat, described).value).toPrecision(6)), "mm"),
  ];
  const at = (option: PlanOption) => ({ ...option, measures: measuresAt(option) });
  return [...needed, ...asRightAsCanBe(options.map(at), needed, right)];
}

/** Limits that must be right, one after the other: each as it is where some option gets there, otherwise at the best that one reaches. */
function asRightAsCanBe(
  options: readonly PlanOption[],
  needed: readonly MeasureLimit[],
  right: readonly MeasureLimit[],
): MeasureLimit[] {
  const found: MeasureLimit[] = [];
  let left = options.filter((option) => needed.every((limit) => meets(option, limit)));
  for (const limit of right) {
    const reached = left.map(({ measures }) => measures[limit.measure]!);
    const now = options[0]!.measures[limit.measure]!;
    const best = reached.length > 0 ? Math.max(...reached) : now;
    const bound = Math.min(limit.bound, best);
    found.push({ ...limit, bound });
    left = left.filter((option) => meets(option, { ...limit, bound }));
  }
  return found;
}
