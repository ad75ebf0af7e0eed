import type { Measure } from "./measure.js";

/** A number that the reader may slide. */
export interface RangeControl {
  readonly kind: "range";
  readonly label: string;
  readonly measure: Measure;
  /** In the first unit of the measure, as all numbers of the control. */
  readonly minimum: number;
  readonly maximum: number;
  readonly step: number;
  readonly initial: number;
}

/** One of a few things. */
export interface ChoiceControl<Option extends string = string> {
  readonly kind: "choice";
  readonly label: string;
  readonly options: readonly { readonly value: Option; readonly label: string }[];
  readonly initial: Option;
}

/** Something that is so, or not. */
export interface SwitchControl {
  readonly kind: "switch";
  readonly label: string;
  readonly initial: boolean;
}

/** What a reader may set. */
export type Control = RangeControl | ChoiceControl | SwitchControl;

/** Controls by the short names under which an address knows them. */
export type Controls = Readonly<Record<string, Control>>;

/** Value of any control. */
export type SettingValue = number | string | boolean;

/** A value for each control, by name. */
export type AnySettings = Readonly<Record<string, SettingValue>>;
