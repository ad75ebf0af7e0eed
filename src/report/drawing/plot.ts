import { scaleLinear } from "d3-scale";
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
  const { x, y } = box.ranges;
  return {
    ...box,
    x: scaleLinear([x.low, x.high], [0, box.width]),
    y: scaleLinear([y.low, y.high], [box.height, 0]),
  };
}

/** Whether a value lies on an axis. */
export function within(value: number, { low, high }: Range): boolean {
  return value >= low && value <= high;
}
