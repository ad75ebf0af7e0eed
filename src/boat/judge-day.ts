import { acceptableEffort } from "../crew/acceptable-effort.js";
import { crewDays } from "../crew/crew-days.js";
import { dayIntervals, type Repeat } from "../crew/day-schedule.js";
import { heldPerNewton, holdCauses } from "../crew/grip-demand.js";
import type { HandHold } from "../crew/hand-hold.js";
import { fatigueSets, personalSpread } from "../materials/people-fatigue.js";
import { protocolFactor } from "../materials/people-grip.js";
import { figures } from "../quantity/print.js";
import { type Band, bandOf } from "../sources/band.js";
import type { Boat } from "./boat.js";
import type { BoatDay } from "./day.js";
import { type Demand, demand } from "./demand.js";
import type { Feel } from "./judge-hand.js";
import { coverOf } from "./pieces.js";
import { lineOf, type ReadyLine } from "./ready.js";

/** Loads of one line over the day, over that of its design wind: stretch by stretch [s, -]. */
export function dayOf({ length, races }: BoatDay, name: string) {
  const repeat = (key: "gusts" | "tacks" | "rests", one: Repeat | undefined) =>
    one === undefined ? {} : { [key]: one };
  return dayIntervals({
    length,
    races: races.map((race) => ({
      name: race.name,
      start: race.start,
      legs: race.legs.map(({ name: leg, length: time, holds, gusts, tacks, rests }) => ({
        name: leg,
        length: time,
        load: Object.hasOwn(holds, name) ? holds[name]! : 0,
        ...repeat("gusts", gusts),
        ...repeat("tacks", tacks),
        ...repeat("rests", rests),
      })),
    })),
  });
}

/** Lines that anybody holds in a day. */
export function heldInDay({ races }: BoatDay): string[] {
  return [...new Set(races.flatMap(({ legs }) => legs.flatMap(({ holds }) => Object.keys(holds))))];
}

/** A line in the hand of somebody: how it is held, and its force for each level of load of the day. */
interface HeldLine {
  readonly hold: HandHold;
  /** Which level of load each stretch has. */
  readonly levels: readonly number[];
  /** Forces of the levels, for a factor on all loads [N]. */
  readonly forces: (factor: number) => readonly number[];
}

/** The hold on thinner lines is not known: they are held as one of 4 mm. */
const thinnestHeld = 0.004;

function heldLine(
  { conditions }: Boat,
  day: BoatDay,
  { name, line, loads, pieces, hand, middle }: ReadyLine,
): HeldLine {
  const { rope } = pieces.at(-1)!;
  const shares = dayOf(day, name).map(({ load }) => load);
  const known = [...new Set(shares)];
  const force = (load: number) => (load === 0 ? 0 : Math.max(0, middle.handForces(load).easing - (line.tailDrag ?? 0)));
  return {
    hold: {
      cover: coverOf(rope, conditions.wet),
      diameter: Math.max(thinnestHeld, rope.diameter),
      hands: hand.hands ?? 1,
      glove: hand.gloves === true,
    },
    levels: shares.map((share) => known.indexOf(share)),
    forces: (factor) => known.map((share) => force(share * factor * loads.design.value)),
  };
}

/** The subject of this demand; it takes longer to work out than all others together. */
export const dayDemand = "hand through the day";

const most = 64;
const halvings = 12;
/** Nearer than this the factor need not be known [-]. */
const near = 1.002;

/** Shares of a day for which an acceptable effort is known [-]. */
const [leastDuty, mostDuty] = [0.005, 0.9];

/** Time in which a hand holds any of the lines [s], and its share of the day [-]. */
function heldTime(lines: readonly HeldLine[], lengths: Float64Array) {
  const now = lines.map(({ forces }) => forces(1));
  const holds = (at: number) => lines.some(({ levels }, index) => now[index]![levels[at]!]! > 0);
  const held = lengths.reduce((sum, length, at) => (holds(at) ? sum + length : sum), 0);
  return { held, share: held / lengths.reduce((sum, length) => sum + length, 0) };
}

/** Largest factor on all loads at which the hand lasts the day [-]. */
function factorOf(lasts: (factor: number) => boolean): number {
  let [low, high] = lasts(1) ? [1, 2] : [1 / most, 1];
  while (high < most && high > 1 && lasts(high)) [low, high] = [high, 2 * high];
  if (high >= most) return most;
  for (let turn = 0; turn < halvings && high / low > near; turn += 1) {
    const middle = Math.sqrt(low * high);
    if (lasts(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * Whether the hand that holds a line lasts the day of the boat, with all lines that it holds.
 *
 *     margin = largest factor on all loads at which the grip that is asked for stays below the grip that is left,
 *     and its mean while the hand holds below what is acceptable for that share of the day
 *
 * The second counts because the model of fatigue recovers too well in the pauses of a day.
 */
export function judgeDay(boat: Boat, ready: ReadyLine, { easing }: Feel): Demand[] {
  const { day } = boat;
  const { name, line, hand } = ready;
  if (day === undefined || hand.grip === undefined) return [];
  const names = heldInDay(day);
  if (line.heldBy !== "hand" || !names.includes(name)) return [];
  const others = names.filter((other) => other !== name && boat.lines[other]!.hand === line.hand);
  const lines = [ready, ...others.map((other) => lineOf(boat, other))].map((one) => heldLine(boat, day, one));
  const lengths = Float64Array.from(dayOf(day, name), ({ length }) => length);
  const set = fatigueSets.hand;
  const { held, share } = heldTime(lines, lengths);
  const spread = Math.max(easing.value, 1e-9);
  const inputs: Record<string, Band> = {
    ...holdCauses(lines[0]!.hold),
    protocol: protocolFactor,
    fatigue: personalSpread.fatigue,
    recovery: personalSpread.recovery,
    rest: set.restFactor,
    effort: acceptableEffort({ dutyCycle: Math.min(mostDuty, Math.max(leastDuty, share)) }),
    line: { value: 1, low: Math.max(1e-6, easing.low / spread), high: easing.high / spread },
  };
  const forcesAt = new Map<number, readonly (readonly number[])[]>();
  const forces = (factor: number) => {
    const before = forcesAt.get(factor) ?? lines.map((one) => one.forces(factor));
    forcesAt.set(factor, before);
    return before;
  };
  const factor = bandOf(inputs, (values) => {
    const gripFor = lines.map(({ hold }) => {
      const own = holdCauses(hold);
      const friction = (own.friction.value * values.friction!) / inputs.friction!.value;
      return (values.line ?? 1) / heldPerNewton(hold, { ...(values as Values), friction });
    });
    const crews = {
      holdingTension: Float64Array.of(hand.grip! * values.protocol!),
      fatigueRate: Float64Array.of(set.fatigueRate.value * values.fatigue!),
      recoveryRate: Float64Array.of(set.recoveryRate.value * values.recovery!),
      restFactor: Float64Array.of(values.rest!),
    };
    const handForces = new Float64Array(lengths.length);
    return factorOf((times) => {
      handForces.fill(0);
      for (const [index, each] of forces(times).entries()) {
        const { levels } = lines[index]!;
        for (let at = 0; at < handForces.length; at += 1) handForces[at]! += each[levels[at]!]! * gripFor[index]!;
      }
      const asked = handForces.reduce((sum, force, at) => sum + force * lengths[at]!, 0);
      if (asked > values.effort! * held * crews.holdingTension[0]!) return false;
      return crewDays({ day: { lengths, handForces }, crews, group: "hand" }).givesOut[0] === Number.POSITIVE_INFINITY;
    });
  });
  const { value, low, high } = factor;
  return [
    demand({
      subject: dayDemand,
      consequence: "race",
      margin: factor,
      reason: `${line.hand} lasts the day of this file up to ${figures(value, 2)} times its loads, likely ${figures(low, 2)} to ${figures(high, 2)}`,
      settle: "hold the line through a practice race and see how the grip is afterwards",
    }),
  ];
}

type Values = Parameters<typeof heldPerNewton>[1];
