/** One reading of a line with a hand scale: what was hung, what it took to haul and to ease it. */
export interface Reading {
  /** Line of the file, counted from 1. */
  readonly row: number;
  /** Name of the line, as it was typed. */
  readonly line: string;
  /** Load at the far end [N]. */
  readonly load: number;
  /** Pull at which the load just comes in [N]; absent where it was not read. */
  readonly haul?: number;
  /** Pull at which the load just goes out [N]; absent where it was not read. */
  readonly ease?: number;
  /** Step of the scale [N]. */
  readonly resolution: number;
  readonly wet: boolean;
  /** Equal turns of the line; absent where nobody counted them. */
  readonly turns?: number;
  /** Metres hauled for each metre that the load moves; 1 when absent. */
  readonly purchase?: number;
}

/** Way in which the line moved. */
export type Way = "hauling" | "easing";

/** One pull of a reading. */
export interface Observation {
  readonly row: number;
  readonly way: Way;
  /** Load over purchase: the tension that the loss of the line acts on [N]. */
  readonly tension: number;
  /** What the scale showed [N]. */
  readonly force: number;
  readonly resolution: number;
}
