import type { Boat } from "../boat/boat.js";
import { byNeed, type Demand, ratingOf } from "../boat/demand.js";
import { leastDiameterOf } from "../boat/hand-diameter.js";
import { mostForces } from "../boat/judge-hand.js";
import type { ReadyLine } from "../boat/ready.js";
import type { LineStanding } from "../boat/standing.js";
import { coversHeld } from "./covers-held.js";
import { meets, ofWhatIsAsked } from "./limit.js";
import type { PlanLine, PlanOption } from "./plan-option.js";
import type { LineConflict, MeasureLimit } from "./planned-boat.js";

const diameterName = "diameter in the hand";
const coversName = "covers where it is held";
const lineName = "line to haul a metre";

/** Demands that are limits in their own unit. */
const inOwnUnit: ReadonlySet<string> = new Set([
  diameterName,
  "pull to haul",
  "hand that holds",
  "line to haul",
  "mass of the line",
  "cost of the line",
]);

/** Race demands that a plan must meet; other ones are met as well as the line can. */
const asked: ReadonlySet<string> = new Set(["run out in light air", "set shape"]);

/**
 * What of a demand counts in a plan: where somebody can be hurt also the bad end of its range, whatever else is asked; elsewhere it is
 * the middle, and the bad end when the plan is to hold there.
 */
function counted(one: Demand, end: "middle" | "worst"): number {
  return one.consequence === "injury" || end === "worst" ? ratingOf(one) : one.margins.middle;
}

/**
 * Hand forces [N], what there is of each demand over what is asked [-], diameter in the hand [mm], covers where it is held [-], line at
 * the hand for a metre at the sail [m], mass [g] and price.
 */
export function measuresOf(
  boat: Boat,
  { middle, pieces, line }: ReadyLine,
  { feel, demands, budget }: LineStanding,
  end: "middle" | "worst",
): Record<string, number> {
  const force = end === "middle" ? "value" : "high";
  return {
    hauling: feel.hauling[force],
    holding: feel.easing[force],
    "run-out load": feel.runOutLoad[force],
    ...Object.fromEntries(
      demands.filter(({ subject }) => !inOwnUnit.has(subject)).map((one) => [one.subject, counted(one, end)]),
    ),
    [diameterName]: 1000 * pieces.at(-1)!.rope.diameter,
    [coversName]: coversHeld(boat, line),
    [lineName]: middle.velocityRatio,
    "dry mass": 1000 * budget.dry[force],
    price: budget.cost,
  };
}

/** The limits of a line, and what of them none of its options keeps. */
export interface LineLimits {
  readonly limits: readonly MeasureLimit[];
  readonly conflict?: LineConflict;
}

/**
 * Limits of one line: what can hurt somebody, what the file sets, what must run out and stay, and, as well as the line can, the rest.
 *
 * @param boat  boat
 * @param line  its options; the first is the line as it is
 * @param demands  of the line as it is
 * @param robust  whether race demands must hold at the bad end too
 * @returns limits that some option keeps; where none keeps all that is asked, the conflict, and limits as near to it as they get
 */
export function limitsOfLine(boat: Boat, line: PlanLine, demands: readonly Demand[], robust: boolean): LineLimits {
  const options = line.options.map((option) => withMeasures(option, robust));
  const described = boat.lines[line.name]!;
  const { pull, hold } = mostForces(boat.limits, described, boat.crew[described.hand]!);
  const { mostLine, mass, cost } = described.limits ?? {};
  const most = (measure: string, bound: number, unit = "N"): MeasureLimit => {
    return { kind: "measure", line: line.name, measure, sense: "at most", bound, unit };
  };
  const least = (measure: string, bound: number, unit = ofWhatIsAsked): MeasureLimit => {
    return { kind: "measure", line: line.name, measure, sense: "at least", bound, unit };
  };
  const sorted = demands.filter(({ subject }) => !inOwnUnit.has(subject)).sort(byNeed);
  const all = (some: readonly Demand[]) => some.map(({ subject }) => least(subject, 1));
  const injury = all(sorted.filter(({ consequence }) => consequence === "injury"));
  const needed = [
    ...all(sorted.filter(({ consequence, subject }) => consequence === "race" && asked.has(subject))),
    most("hauling", pull),
    ...(described.heldBy === "hand" ? [most("holding", hold)] : []),
    ...(mostLine === undefined ? [] : [most(lineName, mostLine, "m")]),
    ...(mass === undefined ? [] : [most("dry mass", 1000 * mass, "g")]),
    ...(cost === undefined ? [] : [most("price", cost.amount, cost.currency)]),
  ];
  const right = [
    ...all(sorted.filter(({ consequence, subject }) => consequence === "race" && !asked.has(subject))),
    ...(options[0]!.measures[coversName] === 1 ? [least(coversName, 1, "1")] : []),
    least(diameterName, Number((1000 * leastDiameterOf(boat, described).value).toPrecision(6)), "mm"),
    ...all(sorted.filter(({ consequence }) => consequence === "comfort")),
  ];
  const safe = options.filter((option) => injury.every((limit) => meets(option, limit)));
  if (safe.length === 0) {
    const [best] = [...options].sort((one, other) => broken(one, injury).length - broken(other, injury).length);
    const conflict = { line: line.name, limits: broken(best!, injury), planned: false };
    return { limits: [], conflict };
  }
  const strict = asWellAsCanBe(safe, needed);
  const lowered = needed.filter((limit, index) => strict.limits[index]!.bound !== limit.bound);
  return {
    limits: [...injury, ...strict.limits, ...asWellAsCanBe(strict.left, right).limits],
    ...(lowered.length > 0 && { conflict: { line: line.name, limits: lowered, planned: true } }),
  };
}

const broken = (option: PlanOption, limits: readonly MeasureLimit[]) => limits.filter((limit) => !meets(option, limit));

function withMeasures(option: PlanOption, robust: boolean): PlanOption {
  return { ...option, measures: (robust ? option.measuresRobust : undefined) ?? option.measures };
}

/** Limits one after the other: each as it is where some option that is left gets there, otherwise at the best that one reaches. */
function asWellAsCanBe(options: readonly PlanOption[], wanted: readonly MeasureLimit[]) {
  const limits: MeasureLimit[] = [];
  let left = options;
  for (const limit of wanted) {
    const reached = left.map(({ measures }) => measures[limit.measure]!);
    const bound =
      limit.sense === "at least"
        ? Math.min(limit.bound, Math.max(...reached))
        : Math.max(limit.bound, Math.min(...reached));
    const met = { ...limit, bound };
    limits.push(met);
    left = left.filter((option) => meets(option, met));
  }
  return { limits, left };
}
