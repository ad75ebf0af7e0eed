import { convert } from "./parse.js";
import { figures, printForce } from "./print.js";
import { type QuantityName, vocabulary } from "./vocabulary.js";
import type { VocabularyEntry } from "./vocabulary-entry.js";

/**
 * Any quantity of the vocabulary in the unit that its readers expect; forces also in kgf.
 *
 * @param name  quantity of the vocabulary
 * @param value  number in the quantity's unit [SI]
 * @returns text such as `12 kn`, `6 mm`, `86 N (8.8 kgf)`
 * Example: printQuantity("windSpeed", 6.1733) → "12 kn"
 */
export function printQuantity(name: QuantityName, value: number): string {
  const entry: VocabularyEntry = vocabulary[name];
  if (entry.unit === "N") return printForce(value);
  if (entry.unit === "1") return figures(value);
  const shown = printedUnit(entry.shownUnit);
  return `${figures(convert(value, entry.unit, entry.shownUnit))}${shown === "°" ? "" : " "}${shown}`;
}

/**
 * A range of any quantity of the vocabulary in the unit that its readers expect.
 *
 * @param name  quantity of the vocabulary
 * @param low  its lower end, in the quantity's unit [SI]
 * @param high  its upper end [SI]
 * @returns text such as `4 to 6 mm`
 * Example: printQuantityRange("ropeDiameter", 0.004, 0.006) → "4 to 6 mm"
 */
export function printQuantityRange(name: QuantityName, low: number, high: number): string {
  const entry: VocabularyEntry = vocabulary[name];
  const text = (end: number) => figures(entry.unit === "1" ? end : convert(end, entry.unit, entry.shownUnit), 2);
  const [least, most] = [text(low), text(high)];
  if (entry.unit === "1") return `${least} to ${most}`;
  const shown = printedUnit(entry.shownUnit);
  return `${least} to ${most}${shown === "°" ? "" : " "}${shown}`;
}

/** A unit as a reader knows it: `°C`, `°`, `m²`. Example: printedUnit("kg/m^3") → "kg/m³" */
export function printedUnit(unit: string): string {
  return unit.replace("degC", "°C").replace("deg", "°").replaceAll("^2", "²").replaceAll("^3", "³");
}

/**
 * Title of an axis or table column: label and shown unit.
 *
 * @param name  quantity of the vocabulary
 * @returns text such as `Hand force [N]`
 * Example: axisTitle("handTension") → "Hand force [N]"
 */
export function axisTitle(name: QuantityName): string {
  const entry: VocabularyEntry = vocabulary[name];
  const label = entry.label.charAt(0).toUpperCase() + entry.label.slice(1);
  return entry.unit === "1" ? label : `${label} [${printedUnit(entry.shownUnit)}]`;
}
