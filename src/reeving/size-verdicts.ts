import type { BentMaterial } from "../materials/bend-strength.js";
import { blockRules, type SheaveRule, sheaveRules } from "../materials/block-rules.js";
import type { Fitting } from "../materials/block-sizes.js";
import { fibres } from "../materials/fibres.js";
import { practice } from "../materials/practice.js";
import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import { type Margins, outcomeOf, type Verdict } from "../quantity/verdict.js";
import { vocabulary } from "../quantity/vocabulary.js";
import { bendStrength } from "../rope/bend-strength.js";
import type { Band } from "../sources/band.js";

/** A change that somebody could make, and the margins that it would have. */
export interface Trial {
  readonly words: string;
  readonly margins: Margins;
}

/** The first change that holds, in the order given; `undefined` when none does. */
function firstThatHolds(trials: readonly Trial[]): string | undefined {
  return trials.find(({ margins }) => outcomeOf(margins) === "enough")?.words;
}

/** A verdict from the margins as they are and from changes, nearest first, one list for each kind of change. */
export function verdictOf(
  subject: string,
  reason: string,
  margins: Margins,
  kinds: readonly (readonly Trial[])[],
): Verdict {
  const outcome = outcomeOf(margins);
  if (outcome === "enough") return { subject, outcome, reason };
  const found = kinds.map(firstThatHolds).filter((words) => words !== undefined);
  return { subject, outcome, reason, ...(found.length > 0 && { change: found.join(", or ") }) };
}

export const mm = (metres: number) => `${figures(1000 * metres)} mm`;

/** A rope, the block it runs over, and what could be taken instead. */
export interface RopeOnBlock {
  readonly ropeDiameter: number;
  readonly block: Fitting;
  /** Blocks that can be had. */
  readonly blocks: readonly Fitting[];
  /** Diameters of rope that can be had [m]. */
  readonly ropeDiameters: readonly number[];
}

/** Blocks above a size, nearest first. */
export function larger({ block, blocks }: RopeOnBlock): Fitting[] {
  return blocks.filter(({ diameter }) => diameter > block.diameter).sort((a, b) => a.diameter - b.diameter);
}

/** All other blocks, nearest in size first. */
function otherBlocks({ block, blocks }: RopeOnBlock): Fitting[] {
  const away = ({ diameter }: Fitting) => Math.abs(diameter - block.diameter);
  return blocks.filter(({ name }) => name !== block.name).sort((a, b) => away(a) - away(b));
}

/** Ropes of another size, nearest first. */
function otherRopes({ ropeDiameter, ropeDiameters }: RopeOnBlock): number[] {
  const away = (d: number) => Math.abs(d - ropeDiameter);
  return ropeDiameters.filter((d) => d !== ropeDiameter).sort((a, b) => away(a) - away(b));
}

/**
 * Whether a sheave is large enough for its rope.
 *
 *     margin = (D/d) / q,   q of the rule
 *
 * @param input  rope [m], block, and what could be taken instead
 * @param material  fibre of the rope, or wire: for the strength that is left at the bend
 * @param rule  rule for the least sheave
 * @returns verdict; the change is the next block up, or the next rope down, that holds over the whole range of the rule and whose groove does not fail
 * @throws ValueError for impossible sizes
 * Source: dock-work-code, §12.1.2, and steelworker-blocks for wire; the other rules from memory.
 */
export function bendVerdict(
  input: RopeOnBlock & { readonly material: BentMaterial; readonly rule: SheaveRule },
): Verdict {
  const { ropeDiameter, block, material, rule } = input;
  const wanted = sheaveRules[rule];
  const ratio = (diameter: number, rope: number) =>
    within("diameterRatio", within("sheaveDiameter", diameter) / within("ropeDiameter", rope));
  const margins = (diameter: number, rope: number): Margins => ({
    middle: ratio(diameter, rope) / wanted.value,
    worst: ratio(diameter, rope) / wanted.high,
  });
  const found = ratio(block.diameter, ropeDiameter);
  const left = bendStrength({ diameterRatio: found, material });
  const percent = (share: number) => figures(100 * share, 2);
  const reason =
    `the sheave is ${figures(found, 2)} rope diameters, the rule asks for ${figures(wanted.value, 2)}` +
    (wanted.low === wanted.high ? "" : ` (${figures(wanted.low, 2)} to ${figures(wanted.high, 2)})`) +
    `; about ${percent(left.value)} % of the strength is left at the bend (${percent(left.low)} to ${percent(left.high)} %)`;
  return verdictOf(
    `${mm(ropeDiameter)} ${wordsOf(material)} on the ${block.name}`,
    reason,
    margins(block.diameter, ropeDiameter),
    [
      larger(input)
        .filter(({ grooveWidth }) => canRun(ropeDiameter, grooveWidth))
        .map(({ name, diameter }) => ({ words: `the ${name}`, margins: margins(diameter, ropeDiameter) })),
      otherRopes(input)
        .filter((rope) => canRun(rope, block.grooveWidth))
        .map((rope) => ({ words: `${mm(rope)} line`, margins: margins(block.diameter, rope) })),
    ],
  );
}

/** Name of a rope by what carries its load. */
function wordsOf(material: BentMaterial): string {
  return material === "wire" ? "wire" : `${fibres[material].name.split(",")[0]} line`;
}

/** How a rope fits a groove: over 1 fits. */
function grooveMargins(rope: number, grooveWidth: number): { narrow: Margins; wide: Margins; jam: Margins } {
  const g = within("grooveRatio", within("grooveWidth", grooveWidth) / within("ropeDiameter", rope));
  const { cheekContactRatio } = practice;
  const { grooveTooWide, cheekGap, jamRatio } = blockRules;
  return {
    narrow: { middle: g / cheekContactRatio.value, worst: g / cheekContactRatio.high },
    wide: { middle: grooveTooWide.value / g, worst: grooveTooWide.low / g },
    jam: {
      middle: rope / (cheekGap.value * jamRatio.value),
      worst: rope / Math.max(cheekGap.high * jamRatio.value, cheekGap.value * jamRatio.high),
    },
  };
}

/** The least of these margins. */
export function grooveFit(rope: number, grooveWidth: number): Margins {
  const all = Object.values(grooveMargins(rope, grooveWidth));
  return { middle: Math.min(...all.map(({ middle }) => middle)), worst: Math.min(...all.map(({ worst }) => worst)) };
}

/** Whether the groove ratio is one that can exist. */
function canEnter(rope: number, grooveWidth: number): boolean {
  const { minimum, maximum } = vocabulary.grooveRatio;
  return grooveWidth / rope >= minimum && grooveWidth / rope <= maximum;
}

/** Whether a groove does not fail a rope, at its middle. */
function canRun(rope: number, grooveWidth: number): boolean {
  return canEnter(rope, grooveWidth) && outcomeOf(grooveFit(rope, grooveWidth)) !== "not enough";
}

/**
 * Whether a groove fits its rope: not so narrow that the cheeks rub, not so wide that the rope lies flat or gets past the sheave.
 *
 *     1.10 ≤ b/d ≤ about 2.2,   d ≥ about 2 gaps between sheave and cheek
 *
 * @param input  rope [m], block, and what could be taken instead
 * @returns verdict; the change is the block nearest in size, or the nearest rope, that fits over the whole range of the limits
 * @throws ValueError for impossible sizes
 * Source: common practice for 1.10; the other limits come from memory.
 */
export function grooveVerdict(input: RopeOnBlock): Verdict {
  const { ropeDiameter, block } = input;
  const { narrow, wide, jam } = grooveMargins(ropeDiameter, block.grooveWidth);
  const { grooveTooWide: wideAt } = blockRules;
  const width = `the groove is ${figures(block.grooveWidth / ropeDiameter)} rope diameters wide`;
  const reasons = [
    [narrow, `${width}, below ${practice.cheekContactRatio.value.toFixed(2)} the rope rubs on the cheeks`],
    [
      wide,
      `${width}, above about ${figures(wideAt.value)} (${figures(wideAt.low)} to ${figures(wideAt.high)}) the rope lies flat and to one side`,
    ],
    [jam, `a ${mm(ropeDiameter)} rope can be drawn into a gap of ${mm(blockRules.cheekGap.value)} beside the sheave`],
  ] as const;
  const [, worst] = reasons.reduce((bad, one) => (one[0].worst < bad[0].worst ? one : bad));
  const margins = grooveFit(ropeDiameter, block.grooveWidth);
  return verdictOf(
    `${mm(ropeDiameter)} line in the groove of the ${block.name}`,
    outcomeOf(margins) === "enough" ? `${width}: it fits` : worst,
    margins,
    [
      otherBlocks(input)
        .filter(({ grooveWidth }) => canEnter(ropeDiameter, grooveWidth))
        .map(({ name, grooveWidth }) => ({ words: `the ${name}`, margins: grooveFit(ropeDiameter, grooveWidth) })),
      otherRopes(input)
        .filter((rope) => canEnter(rope, block.grooveWidth))
        .map((rope) => ({ words: `${mm(rope)} line`, margins: grooveFit(rope, block.grooveWidth) })),
    ],
  );
}

/** A way to lead a line, and the least load at which it goes out by itself. */
export interface LeadChoice {
  readonly words: string;
  readonly runOutLoad: Band;
}

/**
 * Whether a line goes out by itself under the load that the lightest air gives it.
 *
 *     margin = load / run-out load
 *
 * @param subject  what is judged
 * @param load  what the lightest air gives [N], above 0
 * @param runOutLoad  least load at which the line goes out, with its range [N]
 * @param changes  other leads, nearest change first
 * @returns verdict; the change is the first lead that goes out over the whole of its range
 * @throws ValueError for an impossible load
 * Source: statics, the two loads compared.
 */
export function runOutVerdict({
  subject,
  load,
  runOutLoad,
  changes,
}: {
  readonly subject: string;
  readonly load: number;
  readonly runOutLoad: Band;
  readonly changes: readonly LeadChoice[];
}): Verdict {
  within("loadTension", load, 1e-9);
  const margins = (needed: Band): Margins => ({ middle: load / needed.value, worst: load / needed.high });
  const reason =
    `the sail gives ${figures(load, 2)} N, the line goes out by itself from ${figures(runOutLoad.value, 2)} N` +
    ` (${figures(runOutLoad.low, 2)} to ${figures(runOutLoad.high, 2)} N)`;
  return verdictOf(subject, reason, margins(runOutLoad), [
    changes.map(({ words, runOutLoad: needed }) => ({ words, margins: margins(needed) })),
  ]);
}
