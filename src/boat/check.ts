import { figures } from "../quantity/print.js";
import type { Band } from "../sources/band.js";
import type { Boat } from "./boat.js";
import { added, type Budget } from "./budget.js";
import { byNeed, type Demand, demand, exactly, marginOver } from "./demand.js";
import { checkLine, type LineCheck } from "./line-check.js";
import { loadConflicts } from "./loads.js";
import { type ThingToDo, thingsToDo } from "./things-to-do.js";

/** How a whole boat stands. */
export interface BoatCheck {
  readonly name: string;
  /** At most three, the most needed first. */
  readonly thingsToDo: readonly ThingToDo[];
  readonly lines: readonly LineCheck[];
  /** Rope and hardware of all lines [kg]. */
  readonly dry: Band;
  readonly wet: Band;
  readonly cost: number;
  readonly currency: string;
  /** Mass and cost against the limits of the file; none where it sets none. */
  readonly totals: readonly Demand[];
  /** Loads of the file that contradict the balance of a sail, in words with both figures. */
  readonly contradictions: readonly string[];
  readonly safe: boolean;
}

/**
 * How a whole boat stands: three things to do, every line, the sums.
 *
 * @param boat  boat
 * @returns checks line by line, masses [kg] and cost, demands on the sums
 * Valid as an estimate for comparing: rated strength, class rules and a qualified rigger decide.
 */
export function checkBoat(boat: Boat): BoatCheck {
  const lines = Object.keys(boat.lines).map((name) => checkLine(boat, name));
  const nothing: Band = { value: 0, low: 0, high: 0 };
  const sum = (of: (budget: Budget) => Band) => lines.reduce((total, { budget }) => added(total, of(budget)), nothing);
  const dry = sum((budget) => budget.dry);
  const cost = lines.reduce((total, { budget }) => total + budget.cost, 0);
  const [rope] = Object.values(boat.catalogue.ropes);
  return {
    name: boat.name,
    thingsToDo: thingsToDo(boat, lines),
    lines,
    dry,
    wet: sum((budget) => budget.wet),
    cost,
    currency: rope?.price.currency ?? "",
    totals: totalsOf(boat, dry, cost),
    contradictions: loadConflicts(boat),
    safe: lines.every(({ safe }) => safe),
  };
}

function totalsOf({ limits }: Boat, dry: Band, cost: number): Demand[] {
  const totals: Demand[] = [];
  if (limits.mass !== undefined)
    totals.push(
      demand({
        subject: "mass of all lines, dry",
        consequence: "race",
        margin: marginOver(limits.mass, dry),
        reason: `${figures(dry.value)} kg, up to ${figures(dry.high)} kg; ${figures(limits.mass)} kg are allowed`,
        settle: "weigh the lines, dry",
      }),
    );
  if (limits.cost !== undefined)
    totals.push(
      demand({
        subject: "cost of all lines",
        consequence: "race",
        margin: exactly(limits.cost.amount / Math.max(cost, 1e-9)),
        reason: `${figures(cost, 4)} ${limits.cost.currency}; ${figures(limits.cost.amount, 4)} ${limits.cost.currency} are allowed`,
      }),
    );
  return totals.sort(byNeed);
}
