import type { Boat } from "./boat.js";
import { type Budget, budgetOf } from "./budget.js";
import type { Demand } from "./demand.js";
import { judgeDiameter } from "./hand-diameter.js";
import { judgeAttachments } from "./judge-attachment.js";
import { judgeBudget } from "./judge-budget.js";
import { judgeCleat, judgeShape } from "./judge-cleat.js";
import { judgeDay } from "./judge-day.js";
import { judgeEase } from "./judge-ease.js";
import { type Feel, feelOf, judgeHand, judgeRunOut } from "./judge-hand.js";
import { judgeStrength } from "./judge-strength.js";
import { judgeWear } from "./judge-wear.js";
import type { LineLoads } from "./loads.js";
import { lineOf } from "./ready.js";

/** How a line of a boat stands, before anything is tried to mend it. */
export interface LineStanding {
  readonly name: string;
  readonly loads: LineLoads;
  readonly feel: Feel;
  readonly demands: readonly Demand[];
  readonly budget: Budget;
}

/**
 * How a line of a boat stands against everything that is asked of it.
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @param wanted  `day: false` leaves the day out, which takes longest
 * @returns loads [N], what the hand feels [N], demands with margins [-], mass [kg] and cost
 * @throws ValueError for a name that no line has, and whatever the models refuse
 */
export function lineStanding(boat: Boat, name: string, { day = true }: { readonly day?: boolean } = {}): LineStanding {
  const ready = lineOf(boat, name);
  const feel = feelOf(ready);
  const budget = budgetOf(boat, ready);
  return {
    name,
    loads: ready.loads,
    feel,
    demands: [
      ...judgeStrength(boat, ready),
      ...judgeAttachments(boat, ready),
      ...judgeCleat(boat, ready),
      ...judgeEase(ready, feel),
      ...judgeHand(boat, ready, feel),
      judgeDiameter(boat, ready),
      ...(day ? judgeDay(boat, ready, feel) : []),
      ...judgeRunOut(ready, feel),
      ...judgeShape(boat, ready),
      ...judgeWear(boat, ready),
      ...judgeBudget(ready, budget),
    ],
    budget,
  };
}
