import { blockRules, type SheaveRule, sheaveRules } from "../materials/block-rules.js";
import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";

/**
 * Least sheave for a rope, by a rule of the trade.
 *
 *     D = q · d
 *
 * @param ropeDiameter  d [m], above 0
 * @param rule  dockWork, braided, twisted, stiffFibre or wire
 * @returns groove-bottom diameter with the range of the rule [m]
 * @throws ValueError outside this range
 * Source: dock-work-code, §12.1.2, and steelworker-blocks for wire; the others from memory. Example: leastSheave({ ropeDiameter: 0.006, rule: "dockWork" }).value → 0.033
 */
export function leastSheave({
  ropeDiameter,
  rule,
}: {
  readonly ropeDiameter: number;
  readonly rule: SheaveRule;
}): Band {
  const d = within("ropeDiameter", ropeDiameter);
  const { value, low, high } = sheaveRules[rule];
  return { value: value * d, low: low * d, high: high * d };
}

/**
 * Least radius to which a rope should be bent.
 *
 *     R = 4 · d
 *
 * @param ropeDiameter  d [m], above 0
 * @returns radius of the bend [m]
 * Source: delaney-2022, p. 82. Example: leastBendRadius(0.01) → 0.04
 */
export function leastBendRadius(ropeDiameter: number): number {
  return blockRules.bendRadius.value * within("ropeDiameter", ropeDiameter);
}

/**
 * Length of the shell of a block for fibre line.
 *
 *     L = 3 · π · d
 *
 * @param ropeDiameter  d [m], above 0
 * @returns length of the shell [m]
 * Source: army-blocks, §20-2. Example: shellLength(0.008) → 0.0754
 */
export function shellLength(ropeDiameter: number): number {
  return blockRules.shellCircumferences.value * Math.PI * within("ropeDiameter", ropeDiameter);
}

/**
 * Sheave of a block for fibre line by the rule of twice the circumference.
 *
 *     D = 2 · π · d
 *
 * @param ropeDiameter  d [m], above 0
 * @returns diameter of the sheave [m]
 * Source: steelworker-blocks, block to line ratio. Example: sheaveByCircumference(0.008) → 0.0503
 */
export function sheaveByCircumference(ropeDiameter: number): number {
  return blockRules.sheaveCircumferences.value * Math.PI * within("ropeDiameter", ropeDiameter);
}

/**
 * The next size in stock that is not smaller than what is needed.
 *
 * @param needed  size that is needed [any unit]
 * @param stock  sizes that can be had [same unit]
 * @returns the smallest of them that is enough [same unit]
 * @throws ValueError when none is
 * Source: army-blocks, §20-2: go to the next larger size. Example: nextInStock(10.5, [8, 10, 12, 14]) → 12
 */
export function nextInStock(needed: number, stock: readonly number[]): number {
  const enough = stock.filter((size) => size >= needed);
  if (enough.length > 0) return Math.min(...enough);
  throw new ValueError({
    quantity: "size in stock",
    value: `${needed} needed, ${stock.join(", ")} in stock`,
    allowed: "a stock that holds a size not below what is needed",
    advice: "Take a thinner rope, or look for a larger block.",
  });
}

/** Groove that a rope asks for. */
export interface Groove {
  /** [m] */
  readonly radius: number;
  /** Twice the radius [m]. */
  readonly width: number;
  /** [m] */
  readonly depth: number;
}

/**
 * Least groove for a fibre rope.
 *
 *     r = d/2 + 1 mm,   depth = d/3
 *
 * @param ropeDiameter  d [m], above 0
 * @returns radius, width and depth of the groove [m]
 * Source: dock-work-code, §12.1.2. Example: leastGroove(0.02).width → 0.022
 */
export function leastGroove(ropeDiameter: number): Groove {
  const d = within("ropeDiameter", ropeDiameter);
  const radius = d / 2 + blockRules.grooveMargin.value;
  return { radius, width: 2 * radius, depth: blockRules.grooveDepth.value * d };
}

/**
 * Diameter at the middle of the rope that lies on a sheave or drum.
 *
 *     D_pitch = D + d
 *
 * @param sheaveDiameter  D, bottom of the groove [m], above 0
 * @param ropeDiameter  d [m], above 0
 * @returns pitch diameter [m]
 * Source: bhavikatti-solids, example 6.11. Example: pitchDiameter({ sheaveDiameter: 0.04, ropeDiameter: 0.006 }) → 0.046
 */
export function pitchDiameter({
  sheaveDiameter,
  ropeDiameter,
}: {
  readonly sheaveDiameter: number;
  readonly ropeDiameter: number;
}): number {
  return within("sheaveDiameter", sheaveDiameter) + within("ropeDiameter", ropeDiameter);
}
