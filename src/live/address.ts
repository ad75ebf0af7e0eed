import type { AnySettings, Controls } from "../notebook/control.js";
import { chosenUnits, firstUnits, type Units } from "../notebook/measure.js";
import { allowedBy, initialSettings, valueFrom, valueText, valueWords } from "./settings.js";

/** What the part of an address behind `#` begins with when it carries a setting. */
const opening = "try:";

/** A setting, and the units in which it is shown. */
export interface Shared {
  readonly settings: AnySettings;
  readonly units: Units;
}

/** A setting from an address. */
export interface ReadAddress extends Shared {
  /** What the address asked for and cannot have, in words. */
  readonly refusals: readonly string[];
}

const unitNames = Object.keys(chosenUnits) as (keyof Units)[];

/**
 * The part of an address that carries a setting: only what differs from the page's own.
 *
 * @param controls  controls of the page
 * @param shared  setting and units
 * @returns text such as `#try:wind=14&wet=on`; empty when nothing differs
 */
export function addressOf(controls: Controls, { settings, units }: Shared): string {
  const initial = initialSettings(controls);
  const changed = Object.keys(controls)
    .filter((name) => settings[name] !== initial[name])
    .map((name) => `${name}=${encodeURIComponent(valueText(settings[name]!))}`);
  const chosen = unitNames
    .filter((name) => units[name] !== firstUnits[name])
    .map((name) => `unit-${name}=${encodeURIComponent(units[name])}`);
  const parts = [...changed, ...chosen];
  return parts.length === 0 ? "" : `#${opening}${parts.join("&")}`;
}

/**
 * A setting from the part of an address behind `#`.
 *
 * @param controls  controls of the page
 * @param text  from `#` on
 * @returns setting, units and what was refused; undefined when the address carries no setting
 */
export function readAddress(controls: Controls, text: string): ReadAddress | undefined {
  const inner = text.replace(/^#/u, "");
  if (!inner.startsWith(opening)) return undefined;
  const settings = { ...initialSettings(controls) };
  const units: Record<string, string> = { ...firstUnits };
  const refusals: string[] = [];
  for (const part of inner.slice(opening.length).split("&").filter(Boolean)) {
    const [name = "", written = ""] = decoded(part);
    const control = Object.hasOwn(controls, name) ? controls[name] : undefined;
    const unit = unitNames.find((one) => name === `unit-${one}`);
    if (control !== undefined) {
      const value = valueFrom(control, written);
      if (value === undefined)
        refusals.push(
          `${control.label}: “${written}” is not possible here (${allowedBy(control)}); ${valueWords(control, control.initial)} is used.`,
        );
      else settings[name] = value;
    } else if (unit !== undefined) {
      if (Object.hasOwn(chosenUnits[unit], written)) units[unit] = written;
      else refusals.push(`Unit “${written}” is not known (${Object.keys(chosenUnits[unit]).join(", ")}).`);
    } else refusals.push(`“${name}” is nothing that can be set here.`);
  }
  return { settings, units: units as unknown as Units, refusals };
}

/** Name and value of one part; as it stands where it is no proper escape. */
function decoded(part: string): [string, string] {
  const at = part.indexOf("=");
  const [name, value] = at < 0 ? [part, ""] : [part.slice(0, at), part.slice(at + 1)];
  try {
    return [name, decodeURIComponent(value)];
  } catch {
    return [name, value];
  }
}
