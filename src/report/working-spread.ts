import { printQuantityRange } from "../quantity/quantity-text.js";
import type { Working } from "../working/working.js";
import { workingRange } from "../working/working-range.js";
import { html, type Markup } from "./html.js";

/** Given numbers that are named, and the least part of the whole width that they must move to be [-]. */
const named = 3;
const leastPart = 0.1;
/** Narrower ranges are none to speak of, over the number itself [-]. */
const narrow = 0.005;

/**
 * How the range of a worked number comes about, in words: what moves it most, each alone, and all of them together.
 *
 * @param working  the working
 * @param place  of the step that gives the number, from 0
 * @returns a paragraph; nothing where its given numbers have no range, or none that shows
 */
export function rangeBlock(working: Working, place: number): Markup | undefined {
  const range = workingRange(working, place);
  if (range === undefined) return undefined;
  const { band, influences } = range;
  const width = band.high - band.low;
  if (width < narrow * Math.abs(band.value)) return undefined;
  const { quantity } = working.steps[place]!.result;
  const moving = influences.filter(({ low, high }) => high - low >= leastPart * width).slice(0, named);
  const inWords = ({ low, high }: { low: number; high: number }) => printQuantityRange(quantity, low, high);
  const each = moving.map((one) => `${one.words} ${inWords(one)}`);
  const all = inWords(band);
  const together = moving.length === 1 && inWords(moving[0]!) === all ? "" : `; together ${all}`;
  return html`<p class="note">Its range with nothing measured, each alone: ${each.join("; ")}${together}.\n`;
}
