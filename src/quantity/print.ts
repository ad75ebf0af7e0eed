import { standardGravity } from "./constants.js";
import { superscripts } from "./superscripts.js";

/**
 * A number with few significant figures, without exponent where a reader would not expect one.
 *
 * @param value  number in any unit [any]; one that is not finite is shown as ∞, −∞ or –
 * @param digits  significant figures [-], 1 to 21, by default 3
 * @returns text [same unit] such as `85`, `0.0123`, `12 400`
 * Example: figures(85.4321) → "85.4"
 */
export function figures(value: number, digits = 3): string {
  if (!Number.isFinite(value)) return value > 0 ? "∞" : value < 0 ? "−∞" : "–";
  const rounded = Number(value.toPrecision(digits));
  const size = Math.abs(rounded);
  if (size !== 0 && (size < 1e-4 || size >= 1e7)) return powerOfTen(rounded);
  return formatter(digits, size >= 1e4)
    .format(rounded)
    .replaceAll(",", "\u202f")
    .replace("-", "−");
}

const formatters = new Map<string, Intl.NumberFormat>();

function formatter(digits: number, useGrouping: boolean): Intl.NumberFormat {
  const key = `${digits} ${useGrouping}`;
  const known = formatters.get(key) ?? new Intl.NumberFormat("en", { maximumSignificantDigits: digits, useGrouping });
  formatters.set(key, known);
  return known;
}

/** Such as `1.5 × 10⁻⁵`. */
function powerOfTen(value: number): string {
  const [mantissa = "", exponent = ""] = value.toExponential().replace("+", "").split("e");
  const raised = exponent.replaceAll(/[-\d]/gu, (sign) => superscripts[sign] ?? sign);
  return `${mantissa.replace("-", "−")} × 10${raised}`;
}

/**
 * A force for a reader: newtons first, kilograms-force in brackets.
 *
 * @param newtons  force [N]
 * @returns text such as `86 N (8.8 kgf)`
 * Example: printForce(86.3) → "86.3 N (8.8 kgf)"
 */
export function printForce(newtons: number): string {
  return `${figures(newtons)} N (${figures(newtons / standardGravity, 2)} kgf)`;
}
