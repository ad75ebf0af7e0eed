import type { Boat } from "./boat.js";
import { boughtFor } from "./bought.js";
import { byNeed, type Demand, isOpen, ratingOf } from "./demand.js";
import type { CheckedDemand, LineCheck } from "./line-check.js";

/** A force of the hand before and after [N]. */
export interface HandChange {
  readonly what: "haul" | "hold";
  readonly before: number;
  readonly after: number;
}

/** One of the few things that are worth doing first. */
export interface ThingToDo {
  readonly line: string;
  /** The demand that asks for it. */
  readonly because: Demand;
  /** A change of the line; a measurement, where only that tells; or what would have to give. */
  readonly kind: "change" | "measure" | "give";
  readonly words: string;
  /** What a change does: other demands that it meets as well, the hand, mass [kg], what is bought, and what it must not make worse. */
  readonly does?: {
    readonly alsoMeets: readonly string[];
    readonly hand: HandChange;
    readonly mass: number;
    readonly price: number;
    readonly watch?: Demand;
  };
}

/** Most things that stand at the top. */
const most = 3;

/**
 * At most three things to do, from all lines of a boat, in the order of all advice.
 *
 * @param boat  boat
 * @param lines  checks of its lines
 * @returns changes, measurements, or what would have to give; a demand of which little is known asks for none
 */
export function thingsToDo(boat: Boat, lines: readonly LineCheck[]): ThingToDo[] {
  const open = lines
    .flatMap((line) => line.demands.filter((one) => isOpen(one) && !one.wide).map((because) => ({ line, because })))
    .sort((one, other) => byNeed(one.because, other.because));
  const things: ThingToDo[] = [];
  for (const { line, because } of open) {
    const thing = thingFor(boat, line, because);
    const known = things.some((one) => one.line === thing.line && one.words === thing.words);
    if (!known) things.push(thing);
    if (things.length === most) break;
  }
  return things;
}

function thingFor(boat: Boat, line: LineCheck, because: CheckedDemand): ThingToDo {
  const { proposal, settle, gives = "" } = because;
  const about = { line: line.name, because };
  if (proposal === undefined)
    return because.outcome === "can't tell" && settle !== undefined
      ? { ...about, kind: "measure", words: settle }
      : { ...about, kind: "give", words: gives };
  const { standing } = proposal;
  const meets = line.demands.filter(
    (one) => isOpen(one) && !standing.demands.some((then) => then.subject === one.subject && isOpen(then)),
  );
  const lowered = standing.demands
    .filter((then) => then.consequence === "injury" && line.demands.some((now) => isLowered(now, then)))
    .sort((one, other) => ratingOf(one) - ratingOf(other));
  const what = boat.lines[line.name]!.heldBy === "hand" ? "hold" : "haul";
  const force = ({ feel }: Pick<LineCheck, "feel">) => (what === "hold" ? feel.easing.value : feel.hauling.value);
  return {
    ...about,
    kind: "change",
    words: proposal.words,
    does: {
      alsoMeets: meets.map(({ subject }) => subject).filter((subject) => subject !== because.subject),
      hand: { what, before: force(line), after: force(standing) },
      mass: standing.budget.dry.value - line.budget.dry.value,
      price: boughtFor(boat, boat.lines[line.name]!, proposal.boat.lines[line.name]!),
      ...(lowered[0] !== undefined && { watch: lowered[0] }),
    },
  };
}

function isLowered(now: Demand, then: Demand): boolean {
  return now.subject === then.subject && ratingOf(then) < 0.99 * ratingOf(now);
}
