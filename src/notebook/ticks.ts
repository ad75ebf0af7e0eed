import { ticks } from "d3-array";
import { tickFormat } from "d3-scale";
import type { Range } from "./scale.js";

/** How a figure is laid out: for a phone, one panel on a wide page, or several side by side. */
export type Form = "narrow" | "single" | "several";

/** About how many ticks a lower axis has room for. */
const lowerTicks: Readonly<Record<Form, number>> = { narrow: 4, single: 8, several: 4 };
const sideTicks = 5;

/** A tick of an axis with its number as printed. */
export interface Tick {
  readonly at: number;
  readonly label: string;
}

/**
 * Ticks of an axis: the same for every way in which a figure is drawn.
 *
 * @param range  ends of the axis
 * @param axis  `x` for the lower axis, `y` for the one at the side
 * @param form  how the figure is laid out
 * @returns round values inside the range, with as many decimals as their step needs
 * Example: axisTicks({ low: 0, high: 1 }, "y", "single").map(({ label }) => label) → ["0.0", "0.2", "0.4", "0.6", "0.8", "1.0"]
 */
export function axisTicks({ low, high }: Range, axis: "x" | "y", form: Form): Tick[] {
  const count = axis === "x" ? lowerTicks[form] : sideTicks;
  const format = tickFormat(low, high, count);
  return ticks(low, high, count).map((at) => ({ at, label: grouped(format(at), Math.abs(at)) }));
}

/** Numbers from ten thousand up stand in groups of three digits. */
function grouped(text: string, size: number): string {
  return text.replaceAll(",", size >= 1e4 ? "\u202f" : "");
}
