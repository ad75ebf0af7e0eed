import { Refusal } from "../quantity/errors.js";
import { figures } from "../quantity/print.js";
import { outcomeOf, type Verdict } from "../quantity/verdict.js";
import type { Band } from "../sources/band.js";
import type { Boat } from "./boat.js";
import { added, type Budget, budgetOf } from "./budget.js";
import { judgeDiameter } from "./hand-diameter.js";
import { judgeBudget } from "./judge-budget.js";
import { judgeCleat, judgeShape } from "./judge-cleat.js";
import { judgeDay } from "./judge-day.js";
import { judgeEase } from "./judge-ease.js";
import { type Feel, feelOf, judgeHand, judgeRunOut } from "./judge-hand.js";
import { judgeStrength } from "./judge-strength.js";
import { judgeWear } from "./judge-wear.js";
import { byNeed, isSafe, type Judgement, worseBy } from "./judgement.js";
import type { LineLoads } from "./loads.js";
import { lineOf, withLine } from "./ready.js";
import { type LineTrial, lineTrials } from "./trials.js";

/** How a line of a boat stands, before anything is tried to mend it. */
export interface LineStanding {
  readonly name: string;
  readonly loads: LineLoads;
  readonly feel: Feel;
  readonly judgements: readonly Judgement[];
  readonly budget: Budget;
}

/** How a line stands, with the nearest change for everything that does not hold. */
export interface LineCheck extends LineStanding {
  /** What to mend first; absent when everything holds. */
  readonly first?: Judgement;
  /** False when the line fails a limit that can hurt somebody: it breaks, or is not held. */
  readonly safe: boolean;
}

/** How a whole boat stands. */
export interface BoatCheck {
  readonly name: string;
  readonly lines: readonly LineCheck[];
  /** Rope and hardware of all lines [kg]. */
  readonly dry: Band;
  readonly wet: Band;
  readonly cost: number;
  readonly currency: string;
  /** Mass and cost against the limits of the file; none where it sets none. */
  readonly totals: readonly Verdict[];
  /** What to mend first of all: fails before doubts, what can hurt somebody before the rest. */
  readonly first?: Judgement & { readonly line: string };
  readonly safe: boolean;
}

/**
 * How a line of a boat stands against everything that is asked of it.
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @returns loads [N], what the hand feels [N], judgements with margins [-], mass [kg] and cost
 * @throws ValueError for a name that no line has, and whatever the models refuse
 */
export function lineStanding(boat: Boat, name: string): LineStanding {
  const ready = lineOf(boat, name);
  const feel = feelOf(ready);
  const budget = budgetOf(boat, ready);
  return {
    name,
    loads: ready.loads,
    feel,
    judgements: [
      ...judgeHand(boat, ready, feel),
      judgeDiameter(boat, ready),
      ...judgeDay(boat, ready, feel),
      ...judgeCleat(boat, ready),
      ...judgeRunOut(ready, feel),
      ...judgeEase(ready, feel),
      ...judgeShape(boat, ready),
      ...judgeWear(boat, ready),
      ...judgeStrength(boat, ready),
      ...judgeBudget(ready, budget),
    ],
    budget,
  };
}

/**
 * How a line stands, with the nearest single change of the catalogue that mends each thing and makes nothing else worse.
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @returns standing with changes, and what to mend first
 * @throws ValueError for a name that no line has
 */
export function checkLine(boat: Boat, name: string): LineCheck {
  const standing = lineStanding(boat, name);
  const tried = new Map<LineTrial, readonly Judgement[]>();
  const trials = lineTrials(boat, boat.lines[name]!);
  const outcomeAt = (trial: LineTrial) => {
    const known = tried.get(trial) ?? judgementsOf(withLine(boat, name, trial.line), name);
    tried.set(trial, known);
    return known;
  };
  const judgements = standing.judgements.map((one) => {
    if (one.outcome === "holds") return one;
    for (const price of prices) {
      const trial = trials.find((each) => mends({ one, now: standing.judgements, after: outcomeAt(each), price }));
      if (trial !== undefined)
        return { ...one, change: changeWords(one, standing.judgements, trial, outcomeAt(trial)) };
    }
    return one;
  });
  const [first] = judgements.filter(({ outcome }) => outcome !== "holds").sort(byDanger);
  return {
    ...standing,
    judgements,
    ...(first !== undefined && { first }),
    safe: judgements.every(isSafe),
  };
}

/** Judgements of a line that is tried; none where a model refuses it. */
function judgementsOf(boat: Boat, name: string): readonly Judgement[] {
  try {
    return lineStanding(boat, name).judgements;
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

/** What a change may cost, least first: doubts about the thing itself, doubts about others. */
const prices = [
  { itself: false, others: false },
  { itself: true, others: false },
  { itself: false, others: true },
  { itself: true, others: true },
] as const;

interface Mending {
  readonly one: Judgement;
  readonly now: readonly Judgement[];
  readonly after: readonly Judgement[];
  readonly price: (typeof prices)[number];
}

/** Whether a trial mends one thing at no higher price. */
function mends({ one, now, after, price }: Mending): boolean {
  if (after.length === 0) return false;
  const mended = after.find(({ subject }) => subject === one.subject)?.outcome ?? "holds";
  if (price.itself ? worseBy(mended, one.outcome) >= 0 : mended !== "holds") return false;
  const worse = worsened(now, after);
  return price.others ? worse.every(({ outcome }) => outcome === "doubtful") : worse.length === 0;
}

/** What a trial makes worse; what it brings along may be in doubt. */
function worsened(now: readonly Judgement[], after: readonly Judgement[]): Judgement[] {
  return after.filter((one) => {
    const before = now.find(({ subject }) => subject === one.subject);
    return worseBy(one.outcome, before?.outcome ?? "doubtful") > 0;
  });
}

function changeWords(one: Judgement, now: readonly Judgement[], trial: LineTrial, after: readonly Judgement[]): string {
  const mended = after.find(({ subject }) => subject === one.subject);
  const doubts = worsened(now, after).map(({ subject }) => subject);
  if (mended?.outcome === "doubtful") doubts.unshift("this");
  const reason = mended === undefined ? "" : `: ${mended.reason}`;
  return `${trial.words}${reason}${doubts.length === 0 ? "" : ` (then in doubt: ${doubts.join(", ")})`}`;
}

/** What can hurt somebody first, then by need. */
function byDanger(one: Judgement, other: Judgement): number {
  return Number(isSafe(one)) - Number(isSafe(other)) || byNeed(one, other);
}

/**
 * How a whole boat stands: every line, the sums, and what to mend first.
 *
 * @param boat  boat
 * @returns checks line by line, masses [kg] and cost, verdicts on the sums
 * Valid as an estimate for comparing: rated strength, class rules and a qualified rigger decide.
 */
export function checkBoat(boat: Boat): BoatCheck {
  const lines = Object.keys(boat.lines).map((name) => checkLine(boat, name));
  const nothing: Band = { value: 0, low: 0, high: 0 };
  const sum = (of: (budget: Budget) => Band) => lines.reduce((total, { budget }) => added(total, of(budget)), nothing);
  const dry = sum((budget) => budget.dry);
  const cost = lines.reduce((total, { budget }) => total + budget.cost, 0);
  const [first] = lines
    .flatMap((line) => (line.first === undefined ? [] : [{ ...line.first, line: line.name }]))
    .sort(byDanger);
  const [rope] = Object.values(boat.catalogue.ropes);
  return {
    name: boat.name,
    lines,
    dry,
    wet: sum((budget) => budget.wet),
    cost,
    currency: rope?.price.currency ?? "",
    totals: totalsOf(boat, dry, cost),
    ...(first !== undefined && { first }),
    safe: lines.every(({ safe }) => safe),
  };
}

function totalsOf({ limits }: Boat, dry: Band, cost: number): Verdict[] {
  const totals: Verdict[] = [];
  if (limits.mass !== undefined)
    totals.push({
      subject: "mass of all lines, dry",
      outcome: outcomeOf({ middle: limits.mass / dry.value, worst: limits.mass / dry.high }),
      reason: `${figures(dry.value)} kg, up to ${figures(dry.high)} kg; ${figures(limits.mass)} kg are allowed`,
    });
  if (limits.cost !== undefined)
    totals.push({
      subject: "cost of all lines",
      outcome: outcomeOf({ middle: limits.cost.amount / cost, worst: limits.cost.amount / cost }),
      reason: `${figures(cost, 4)} ${limits.cost.currency}; ${figures(limits.cost.amount, 4)} ${limits.cost.currency} are allowed`,
    });
  return totals;
}
