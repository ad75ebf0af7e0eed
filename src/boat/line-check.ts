import { figures } from "../quantity/print.js";
import type { Outcome } from "../quantity/verdict.js";
import type { Boat } from "./boat.js";
import { byNeed, type Demand, isOpen, worstOf } from "./demand.js";
import { Proposals, type Proposed } from "./proposals.js";
import { type LineStanding, lineStanding } from "./standing.js";

/** A demand with what was found against it. */
export interface CheckedDemand extends Demand {
  /** Nearest change that gives enough and makes nothing of the same or a graver consequence worse. */
  readonly proposal?: Proposed;
  /** What would have to give, where nothing that was tried helps. */
  readonly gives?: string;
}

/** How a line stands, all its demands in the order of need. */
export interface LineCheck extends Omit<LineStanding, "demands"> {
  readonly demands: readonly CheckedDemand[];
  /** The worst outcome of all that matters; comfort and custom are notes. */
  readonly outcome: Outcome;
  /** False when something that can hurt somebody is not enough. */
  readonly safe: boolean;
}

/**
 * How a line stands against everything that is asked of it, with the nearest change for what is not enough.
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @returns demands in the order of need, each open one with a change of the catalogue, two together, or what would have to give
 * @throws ValueError for a name that no line has
 */
export function checkLine(boat: Boat, name: string): LineCheck {
  const standing = lineStanding(boat, name);
  const proposals = new Proposals(boat, standing);
  const demands = [...standing.demands].sort(byNeed).map((one): CheckedDemand => {
    if (!isOpen(one)) return one;
    const proposal = isToBeMeasured(one) ? undefined : proposals.for(one);
    return proposal === undefined ? { ...one, gives: whatGives(one) } : { ...one, proposal };
  });
  return { ...standing, demands, outcome: worstOf(demands), safe: demands.every(isSafe) };
}

/** Whether a reading says more than any change: next to nothing is known, and nothing is known to be wrong. */
function isToBeMeasured({ wide, outcome, settle }: Demand): boolean {
  return wide && outcome === "can't tell" && settle !== undefined;
}

/** Whether a demand leaves everybody unhurt, as far as is known. */
function isSafe({ consequence, outcome }: Demand): boolean {
  return consequence !== "injury" || outcome !== "not enough";
}

/** What would have to give for a demand that nothing in the catalogue meets. */
function whatGives({ margins: { middle, worst }, least, outcome }: Demand): string {
  const short = outcome === "not enough" ? middle : worst / least;
  const less = 100 * (1 - short);
  return `nothing in the catalogue mends it, alone or with one other change; ${figures(Math.max(1, less), 2)} % less of what is asked would`;
}
