import { ValueError } from "../quantity/errors.js";
import { convert } from "../quantity/parse.js";
import { printQuantity } from "../quantity/quantity-text.js";
import { lastStep, type Working } from "./working.js";

const printed = /^\s*(?:about |nearly |over |some )?([−-]?\d+(?:\.\d+)?)(?:\s*(%|°C?|[A-Za-z][A-Za-z/²³]*))?/u;

/** Half of the last digit that a number is printed with; a whole number that ends in zeros may have two figures. */
function halfDigit(digits: string): number {
  const decimals = digits.split(".")[1]?.length ?? 0;
  if (decimals > 0) return 0.5 * 10 ** -decimals;
  const zeros = /0*$/u.exec(digits)?.[0].length ?? 0;
  return 0.5 * 10 ** Math.min(zeros, Math.max(0, digits.replace(/[−-]/u, "").length - 2));
}

/** The value in the unit that stands behind a number; nothing when the unit is not known. */
export function inUnit(value: number, from: string, written: string | undefined): number | undefined {
  if (written === undefined) return from === "1" ? value : undefined;
  if (written === "%") return from === "1" ? 100 * value : undefined;
  const unit = written.replace("°C", "degC").replace("°", "deg").replace("²", "^2").replace("³", "^3");
  try {
    return convert(value, from, unit === "knots" ? "kn" : unit);
  } catch {
    return undefined;
  }
}

/**
 * Refuses a number in print that is not the number of its working.
 *
 *     |printed − worked| ≤ half the last printed digit, in the printed unit
 *
 * @param where  what the number belongs to, for the message
 * @param text  as printed, such as `86 N (8.8 kgf)`; a text that does not begin with a number, or has another unit, passes
 * @param working  how it was worked out
 * @throws ValueError when both differ
 * Example: checkAgreement("hold", "86 N", worked(formulas.deadBand, { haulingForce: 90, easingForce: 4 })) → undefined
 */
export function checkAgreement(where: string, text: string, working: Working): void {
  const [, digits, unit] = printed.exec(text.replaceAll(/(?<=\d)[\u202f\u00a0](?=\d)/gu, "")) ?? [];
  const { quantity, value, unit: own } = lastStep(working).result;
  if (digits === undefined || /× 10|\de/u.test(text)) return;
  const worked = inUnit(value, own, unit);
  if (worked === undefined) return;
  const shown = Number(digits.replace("−", "-"));
  if (Math.abs(shown - worked) <= halfDigit(digits) * (1 + 1e-9)) return;
  throw new ValueError({
    quantity: where,
    value: `"${text}"`,
    allowed: `the number of its working: ${printQuantity(quantity, value)}`,
    advice: "Print the number that was worked out, or give it its own working.",
  });
}
