import type { Range } from "../../notebook/scale.js";

/** Where the curves of a panel are drawn: a rectangle on the drawing [px], with its scales. */
export interface Plot {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly ranges: { readonly x: Range; readonly y: Range };
  /** From values to pixels inside the plot, from its upper left corner. */
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

/** A rectangle with the scales of its axes. */
export function plotOf(box: Pick<Plot, "left" | "top" | "width" | "height" | "ranges">): Plot {
  const { width, height, ranges } = box;
  const { x, y } = ranges;
  const [across, up] = [x.high - x.low, y.high - y.low];
  return {
    ...box,
    x: (value) => width * ((value - x.low) / across),
    y: (value) => height * (1 - (value - y.low) / up),
  };
}

/** Whether a value lies on an axis. */
export function within(value: number, { low, high }: Range): boolean {
  return value >= low && value <= high;
}
