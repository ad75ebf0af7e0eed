import type { Line } from "../reeving/line.js";
import { prepareLine } from "../reeving/line.js";
import type { Band } from "../sources/band.js";
import type { DayColumns } from "./crew-days.js";
import type { Interval } from "./day-schedule.js";
import type { HandHold } from "./hand-hold.js";

/** One way to rig a sheet: purchase, cover, ratchet, and how the hand holds it. */
export interface SheetOption {
  readonly name: string;
  /** What it consists of, such as purchase, cover and tread: options that share more are nearer. */
  readonly parts: readonly string[];
  readonly hold: HandHold;
  /** Bands of the line, by name: frictions, bending. */
  readonly causes: Readonly<Record<string, Band>>;
  /** Makes the line from one value of each cause. */
  readonly lineWith: (values: Readonly<Record<string, number>>) => Line;
}

/** The line of an option at the middle of its bands. */
export function middleValues({ causes }: SheetOption): Record<string, number> {
  return Object.fromEntries(Object.entries(causes).map(([name, band]) => [name, band.value]));
}

/**
 * A day as the hand feels it: what is left to hold of each load behind one way to rig the sheet.
 *
 *     T_hand = what is left to hold while the line just goes out, for the load of each stretch times a factor
 *
 * @param intervals  stretches of the day [s], with their loads [N]
 * @param option  the sheet
 * @param values  one value of each cause [SI]; the middle ones when absent
 * @param factor  on all loads [-], 0 or more; 1 when absent
 * @returns lengths [s] and hand forces [N]; a load that the line holds alone leaves a resting hand
 * @throws whatever the line refuses
 * Valid for a hand that holds and does not haul; hauling takes seconds of a day.
 * Source: statics. Example: dayAtHand({ intervals: dayIntervals({ length: 9, races: [] }), option: { name: "bare", parts: [], hold: { cover: { strands: 16, fibre: "polyester", wet: false }, diameter: 0.008, hands: 1 }, causes: {}, lineWith: () => ({ rope: { diameter: 0.008, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }) } }).handForces[0] → 0
 */
export function dayAtHand({
  intervals,
  option,
  values = middleValues(option),
  factor = 1,
}: {
  readonly intervals: readonly Interval[];
  readonly option: SheetOption;
  readonly values?: Readonly<Record<string, number>>;
  readonly factor?: number;
}): DayColumns {
  return dayByFactor(dayTable(intervals), option, values)(factor);
}

/** A day as columns: lengths of its stretches, its loads, and which load belongs to each stretch. */
export interface DayTable {
  readonly lengths: Float64Array;
  readonly loads: readonly number[];
  readonly places: Uint32Array;
}

/** Sorts the stretches of a day by their loads. */
export function dayTable(intervals: readonly Interval[]): DayTable {
  const lengths = new Float64Array(intervals.length);
  const places = new Uint32Array(intervals.length);
  const placeOf = new Map<number, number>();
  intervals.forEach(({ length, load }, index) => {
    const place = placeOf.get(load) ?? placeOf.size;
    placeOf.set(load, place);
    lengths[index] = length;
    places[index] = place;
  });
  return { lengths, loads: [...placeOf.keys()], places };
}

/** A day under one factor after the other: the line is prepared once, and each load is asked for once a factor. */
export function dayByFactor(
  { lengths, loads, places }: DayTable,
  option: SheetOption,
  values: Readonly<Record<string, number>>,
): (factor: number) => DayColumns {
  const line = prepareLine(option.lineWith(values));
  return (factor) => {
    const held = loads.map((load) => line.handForce(factor * load, "easing"));
    const handForces = new Float64Array(places.length);
    for (let index = 0; index < places.length; index++) handForces[index] = held[places[index]!]!;
    return { lengths, handForces };
  };
}
