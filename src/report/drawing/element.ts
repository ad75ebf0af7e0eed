import { escapeHtml } from "../../notebook/escape.js";

type Attribute = string | number | undefined;

/** A number as SVG needs it: tenths of a pixel. */
export function tenths(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/**
 * An SVG element as text.
 *
 * @param name  element
 * @param attributes  numbers are written in tenths; those without a value are left out
 * @param content  markup inside
 * @returns markup
 * Example: element("line", { x1: 0, x2: 1.26 }) → '<line x1="0" x2="1.3"/>'
 */
export function element(name: string, attributes: Readonly<Record<string, Attribute>>, content = ""): string {
  let opening = `<${name}`;
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) opening += ` ${key}="${typeof value === "number" ? tenths(value) : escapeHtml(value)}"`;
  }
  return content === "" ? `${opening}/>` : `${opening}>${content}</${name}>`;
}

/** Words of a drawing. */
export interface Words {
  readonly lines: readonly string[];
  readonly x: number;
  /** Middle of the whole block. */
  readonly middle: number;
  readonly lineHeight: number;
  readonly attributes?: Readonly<Record<string, Attribute>>;
}

/** Baseline below the middle of a line, as a share of the height of the line. */
export const baseline = 0.28;

/** Lines of text, one under the other. */
export function textBlock({ lines, x, middle, lineHeight, attributes = {} }: Words): string {
  const first = middle - ((lines.length - 1) / 2) * lineHeight + baseline * lineHeight;
  const [only = ""] = lines;
  const content =
    lines.length === 1
      ? escapeHtml(only)
      : lines
          .map((line, index) => element("tspan", { x, dy: index === 0 ? undefined : lineHeight }, escapeHtml(line)))
          .join(" ");
  return element("text", { x, y: first, ...attributes }, content);
}
