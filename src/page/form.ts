/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type { AnySettings, Controls, SettingValue } from "../notebook/control.js";
import { chosenUnits, firstUnits, printed, type Units } from "../notebook/measure.js";

type Field = HTMLInputElement | HTMLSelectElement;

/** Fields of each form by their names; a form keeps its fields, and to look for one takes time after each change of the page. */
const fieldsOfForms = new WeakMap<HTMLFormElement, ReadonlyMap<string, Field[]>>();

function fieldsByName(form: HTMLFormElement): ReadonlyMap<string, Field[]> {
  const all = new Map<string, Field[]>();
  for (const field of form.querySelectorAll<Field>("input[name], select[name]"))
    all.set(field.name, [...(all.get(field.name) ?? []), field]);
  fieldsOfForms.set(form, all);
  return all;
}

/** Fields of the form that have a name: one, or all radio buttons of a group. */
function fieldsNamed(form: HTMLFormElement, name: string): readonly Field[] {
  return (fieldsOfForms.get(form) ?? fieldsByName(form)).get(name) ?? [];
}

function textOf(fields: readonly Field[]): string | undefined {
  return fields.find((field) => !(field instanceof HTMLInputElement && field.type === "radio") || field.checked)?.value;
}

/** Settings as the form stands. */
export function settingsIn(form: HTMLFormElement, controls: Controls): AnySettings {
  return Object.fromEntries(
    Object.entries(controls).map(([name, control]): [string, SettingValue] => {
      const fields = fieldsNamed(form, name);
      if (control.kind === "switch") return [name, (fields[0] as HTMLInputElement).checked];
      const text = textOf(fields) ?? String(control.initial);
      return [name, control.kind === "range" ? Number(text) : text];
    }),
  );
}

/** Units as the form stands. */
export function unitsIn(form: HTMLFormElement): Units {
  const chosen = Object.keys(chosenUnits).map((name) => [
    name,
    textOf(fieldsNamed(form, `unit-${name}`)) ?? firstUnits[name as keyof Units],
  ]);
  return Object.fromEntries(chosen) as Units;
}

function put(fields: readonly Field[], value: SettingValue): void {
  for (const field of fields) {
    if (field instanceof HTMLInputElement && field.type === "radio") field.checked = field.value === value;
    else if (field instanceof HTMLInputElement && field.type === "checkbox") field.checked = value === true;
    else field.value = String(value);
  }
}

/** Puts settings and units into the form. */
export function fillForm(form: HTMLFormElement, settings: AnySettings, units: Units): void {
  for (const [name, value] of Object.entries(settings)) put(fieldsNamed(form, name), value);
  for (const [name, unit] of Object.entries(units)) put(fieldsNamed(form, `unit-${name}`), unit);
}

/** Writes beside each slider where it stands. */
export function sayWhereSlidersStand(
  form: HTMLFormElement,
  controls: Controls,
  settings: AnySettings,
  units: Units,
): void {
  for (const [name, control] of Object.entries(controls)) {
    if (control.kind !== "range") continue;
    const [field] = fieldsNamed(form, name);
    const text = printed(control.measure, Number(settings[name]), units);
    if (field === undefined || field.getAttribute("aria-valuetext") === text) continue;
    field.setAttribute("aria-valuetext", text);
    const output = field.parentElement?.querySelector("output");
    if (output) output.textContent = text;
  }
}
