import type { LiveModel } from "../../src/live/model.js";
import { liveModels } from "../../src/live/models.js";
import type { AnySettings, SettingValue } from "../../src/notebook/control.js";

/** A model by its name. */
export const named = (name: string): LiveModel => liveModels.find((model) => model.name === name)!;

/** Number of one result. */
export function value(model: LiveModel, label: string, settings: AnySettings = {}): number {
  return model.compute(settings).results.find((result) => result.label === label)!.value;
}

/** Numbers of a result along a control from end to end. */
export function along(name: string, label: string, control: string, others: AnySettings = {}): number[] {
  const model = named(name);
  const known = model.controls[control]!;
  const places: SettingValue[] =
    known.kind === "range"
      ? Array.from({ length: 9 }, (_, i) => known.minimum + ((known.maximum - known.minimum) * i) / 8)
      : known.kind === "choice"
        ? known.options.map((option) => option.value)
        : [false, true];
  return places.map((place) => value(model, label, { ...others, [control]: place }));
}

export const rises = (values: readonly number[]) => values.every((one, i) => i === 0 || one > values[i - 1]!);
export const falls = (values: readonly number[]) => rises([...values].reverse());
