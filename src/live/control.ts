import type { ChoiceControl, Control, RangeControl, SwitchControl } from "../notebook/control.js";

/** Type of the value that a control gives. */
type ValueOf<One extends Control> = One extends RangeControl
  ? number
  : One extends ChoiceControl<infer Option>
    ? Option
    : boolean;

/** A value for each of some controls; none for a control that is not there. */
export type SettingsOf<Named extends Readonly<Record<string, Control>>> = {
  readonly [Name in keyof Named]: ValueOf<NonNullable<Named[Name]>>;
};

/** A number that the reader may slide, in the first unit of its measure. */
export function slide(fields: Omit<RangeControl, "kind">): RangeControl {
  return { kind: "range", ...fields };
}

/** A number of the page that the reader may slide: steps are counted from there and digits cut alike, so that the slider stands just on it. */
export function slideFrom({ minimum, maximum, step, initial, ...fields }: Omit<RangeControl, "kind">): RangeControl {
  const [down, up] = [initial - minimum, maximum - initial].map((room) => Math.max(1, Math.floor(room / step + 1e-9)));
  const at = (steps: number) => Number((initial + steps * step).toPrecision(12));
  const below = initial > step ? Math.min(down!, Math.ceil(initial / step) - 1) : 0;
  return slide({ ...fields, minimum: at(-below), maximum: at(up!), step, initial: at(0) });
}

/** One of a few things, by their values and the words for them. */
export function choice<const Words extends Readonly<Record<string, string>>>(
  label: string,
  words: Words,
  initial: keyof Words & string,
): ChoiceControl<keyof Words & string> {
  const options = (Object.entries(words) as [keyof Words & string, string][]).map(([value, one]) => ({
    value,
    label: one,
  }));
  return { kind: "choice", label, options, initial };
}

/** Something that is so, or not. */
export function toggle(label: string, initial = false): SwitchControl {
  return { kind: "switch", label, initial };
}
