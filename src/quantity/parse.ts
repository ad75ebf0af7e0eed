import type { Unit } from "mathjs";
import { UnitError, ValueError } from "./errors.js";
import { within } from "./guard.js";
import { superscripts } from "./superscripts.js";
import { unitParser } from "./units.js";
import { type QuantityName, vocabulary } from "./vocabulary.js";
import type { VocabularyEntry } from "./vocabulary-entry.js";

const written = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)(?![\d.,])\s*(.*?)\s*$/u;

/** Signs of print as they are typed: `−6 kn`, `30°`, `15 °C`, `7 m²`, `2 × 10⁻⁵ m` and `12 400` with a narrow space. */
function asTyped(text: string): string {
  return text
    .replace(/ × 10([⁻⁰¹²³⁴-⁹]+)/u, (_, raised: string) => `e${lowered(raised)}`)
    .replaceAll("−", "-")
    .replaceAll("°C", "degC")
    .replaceAll("°", " deg")
    .replaceAll("²", "^2")
    .replaceAll("³", "^3")
    .replaceAll(/(\d)\u202f(?=\d)/gu, "$1");
}

function lowered(raised: string): string {
  const plain = Object.entries(superscripts);
  return [...raised].map((sign) => plain.find(([, high]) => high === sign)?.[0] ?? sign).join("");
}

/**
 * Reads a value with its unit as a person types it or as it is printed, and returns it in SI.
 *
 * @param name  quantity of the vocabulary; decides which units fit and which values can exist
 * @param text  number and unit, such as `12 kn`, `6 mm`, `25 kgf`, `120 lbf`, `30 deg`, `8 g/m`, `15 degC`, `30°`
 * @returns the value in the quantity's unit [SI]
 * @throws UnitError when the unit is missing, unknown or of another kind; ValueError when the value cannot exist
 * Example: parseQuantity("windSpeed", "12 kn") → 6.1733
 */
export function parseQuantity(name: QuantityName, text: string): number {
  const entry: VocabularyEntry = vocabulary[name];
  const quantity = `${entry.label} (${name})`;
  const match = written.exec(asTyped(text));
  if (!match || !Number.isFinite(Number(match[1]))) {
    throw new ValueError({
      quantity,
      value: JSON.stringify(text),
      allowed: "a finite number with a decimal point, then its unit",
      advice: `Write it like "${entry.example}".`,
    });
  }
  const value = Number(match[1]);
  const unit = match[2] ?? "";
  if (entry.unit === "1") {
    if (unit !== "") refuseUnit(quantity, unit, "a pure number without a unit", entry.example);
    return within(name, value);
  }
  if (unit === "") refuseUnit(quantity, "no unit", `a unit that fits ${entry.unit}`, entry.example);
  return within(name, toUnit({ quantity, value, unit, target: entry.unit, example: entry.example }));
}

/** A value with the unit that it has and the unit that it is wanted in. */
interface Conversion {
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
  readonly target: string;
  readonly example: string;
}

function toUnit({ quantity, value, unit, target, example }: Conversion): number {
  const math = unitParser();
  if (!Number.isFinite(value)) {
    throw new ValueError({
      quantity,
      value: `${value} ${unit}`,
      allowed: "a finite number",
      advice: `Give a number, as in "${example}".`,
    });
  }
  const read = (text: string, name: string, allowed: string): Unit => {
    try {
      return math.unit(text);
    } catch {
      return refuseUnit(quantity, `the unknown unit "${name}"`, allowed, example);
    }
  };
  const parsed = read(`${value} ${asPower(unit)}`, unit, `a unit that fits ${target}`);
  if (!parsed.equalBase(read(asPower(target), target, `a unit that fits ${unit}`))) {
    return refuseUnit(quantity, `the unit "${unit}" of another quantity`, `a unit that fits ${target}`, example);
  }
  return parsed.toNumber(asPower(target));
}

/** mathjs reads a leading `1/mm` as a number: it wants `mm^-1`. */
function asPower(unit: string): string {
  return unit.startsWith("1/") ? `${unit.slice(2)}^-1` : unit;
}

function refuseUnit(quantity: string, value: string, allowed: string, example: string): never {
  throw new UnitError({ quantity, value, allowed, advice: `Write it like "${example}".` });
}

/**
 * Converts between two units of the same kind.
 *
 * @param value  number [from]
 * @param from  unit the number has, such as `lbf`
 * @param to  unit it is wanted in, such as `N`
 * @returns the same quantity [to]
 * @throws UnitError when a unit is unknown or the two differ in kind
 * Example: convert(120, "lbf", "N") → 533.79
 */
export function convert(value: number, from: string, to: string): number {
  return toUnit({ quantity: "unit conversion", value, unit: from, target: to, example: "120 lbf" });
}
