import { ropeLinearDensity } from "../rope/make.js";
import { wetLinearDensity } from "../rope/wet-mass.js";
import type { Band } from "../sources/band.js";
import type { Boat, BoatStation, Price } from "./boat.js";
import type { ReadyLine } from "./ready.js";

/** What a line weighs and costs. */
export interface Budget {
  /** Rope, dry and after it was under water [kg]. */
  readonly rope: { readonly dry: Band; readonly wet: Band };
  /** Blocks, rings and cleats [kg]. */
  readonly hardware: number;
  /** Rope and hardware [kg]. */
  readonly dry: Band;
  readonly wet: Band;
  /** Rope and hardware, in the currency of the file. */
  readonly cost: number;
}

const nothing: Band = { value: 0, low: 0, high: 0 };

/** Sum of two ranges whose ends go together. */
export function added(one: Band, other: Band): Band {
  return { value: one.value + other.value, low: one.low + other.low, high: one.high + other.high };
}

const times = ({ value, low, high }: Band, factor: number): Band => ({
  value: factor * value,
  low: factor * low,
  high: factor * high,
});

/** How many of a catalogue thing a station takes: one block for each sheave of a tackle. */
export function piecesAt(station: BoatStation): number {
  if (station.kind !== "tackle") return 1;
  return station.parts - (station.hauledFrom === "moving" ? 1 : 0) + (station.leadBlocks ?? 0);
}

/** The catalogue thing at a station. */
export function hardwareAt(
  { catalogue }: Pick<Boat, "catalogue">,
  station: BoatStation,
): { readonly mass: number; readonly price: Price } {
  if (station.kind === "cleat") return catalogue.cleats[station.cleat]!;
  if (station.kind === "ring") return catalogue.rings[station.ring]!;
  return catalogue.blocks[station.block]!;
}

/** Works out what a line weighs and costs; a rope that was weighed keeps its mass, water comes on top. */
export function budgetOf(boat: Boat, { pieces, line }: ReadyLine): Budget {
  const count = line.count ?? 1;
  let dry = nothing;
  let wet = nothing;
  let cost = 0;
  for (const { make, rope, length } of pieces) {
    const model = ropeLinearDensity(make);
    const weighed = rope.mass === undefined ? model : { value: rope.mass, low: rope.mass, high: rope.mass };
    const soaked = wetLinearDensity(make);
    const water: Band = {
      value: soaked.value - model.value,
      low: soaked.low - model.low,
      high: soaked.high - model.high,
    };
    dry = added(dry, times(weighed, length));
    wet = added(wet, times(added(weighed, water), length));
    cost += length * rope.price.amount;
  }
  let hardware = 0;
  for (const station of line.path) {
    const { mass, price } = hardwareAt(boat, station);
    hardware += piecesAt(station) * mass;
    cost += piecesAt(station) * price.amount;
  }
  hardware *= count;
  cost *= count;
  const rope = { dry: times(dry, count), wet: times(wet, count) };
  const all = { value: hardware, low: hardware, high: hardware };
  return { rope, hardware, dry: added(rope.dry, all), wet: added(rope.wet, all), cost };
}
