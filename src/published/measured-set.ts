import type { SourceId } from "../sources/bibliography.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";

/** What one person measured, with the bands foretold for it. */
export interface MeasuredSet {
  readonly id: string;
  readonly name: string;
  /** What the bands are about: ropes with what they run over, or hands. */
  readonly about: "lines" | "people";
  readonly source: SourceId;
  readonly place: string;
  readonly points: readonly MeasuredPoint[];
}

/** Points whose bands are worked out when they are asked for. */
export interface LazySet extends Omit<MeasuredSet, "points" | "about"> {
  readonly points: () => readonly MeasuredPoint[];
}
