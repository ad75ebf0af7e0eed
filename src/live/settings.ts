import type { AnySettings, Control, Controls, SettingValue } from "../notebook/control.js";
import { firstUnits, printed } from "../notebook/measure.js";
import { ValueError } from "../quantity/errors.js";

/** As many digits as a setting can have. */
const mostDigits = 12;

/** Settings that nobody has touched. */
export function initialSettings(controls: Controls): AnySettings {
  return Object.fromEntries(Object.entries(controls).map(([name, { initial }]) => [name, initial]));
}

/** Words for what a control takes. */
export function allowedBy(control: Control): string {
  switch (control.kind) {
    case "range":
      return `a number from ${control.minimum} to ${valueWords(control, control.maximum)}`;
    case "choice":
      return control.options.map(({ value }) => value).join(", ");
    case "switch":
      return "on, off";
  }
}

/** Whether a control takes a value. */
function takes(control: Control, value: unknown): value is SettingValue {
  switch (control.kind) {
    case "range":
      return typeof value === "number" && value >= control.minimum && value <= control.maximum;
    case "choice":
      return control.options.some((option) => option.value === value);
    case "switch":
      return typeof value === "boolean";
  }
}

function refused(quantity: string, value: unknown, allowed: string): ValueError {
  return new ValueError({ quantity, value: String(value), allowed, advice: "Nothing is moved into range for you." });
}

/**
 * Completes settings with what nobody has touched, and refuses those that the controls do not take.
 *
 * @param controls  controls by name
 * @param given  values of some or all controls
 * @returns a value for each control
 * @throws ValueError for an unknown name, a value of the wrong kind, or one out of range
 */
export function wholeSettings(controls: Controls, given: AnySettings): AnySettings {
  for (const [name, value] of Object.entries(given)) {
    const control = controls[name];
    if (control === undefined) throw refused("setting", name, Object.keys(controls).join(", "));
    if (!takes(control, value)) throw refused(`${control.label} (${name})`, value, allowedBy(control));
  }
  return { ...initialSettings(controls), ...given };
}

/** A value as a reader knows it: numbers with the unit in which they are kept. */
export function valueWords(control: Control, value: SettingValue): string {
  if (control.kind === "range") return printed(control.measure, Number(value), firstUnits, mostDigits);
  if (control.kind === "choice")
    return control.options.find((option) => option.value === value)?.label ?? String(value);
  return valueText(value);
}

/** A value as an address writes it. */
export function valueText(value: SettingValue): string {
  return typeof value === "boolean" ? (value ? "on" : "off") : String(value);
}

/** Value of a control from an address; undefined when the control does not take it. */
export function valueFrom(control: Control, text: string): SettingValue | undefined {
  const value = control.kind === "range" ? numberFrom(text) : control.kind === "switch" ? switchFrom(text) : text;
  return takes(control, value) ? value : undefined;
}

function numberFrom(text: string): number {
  return /^-?\d+(?:\.\d+)?$/u.test(text) ? Number(text) : Number.NaN;
}

function switchFrom(text: string): boolean | undefined {
  return text === "on" ? true : text === "off" ? false : undefined;
}
