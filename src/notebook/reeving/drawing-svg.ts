import { escapeHtml } from "../escape.js";
import { lightPalette } from "../palette.js";
import type { Drawing } from "./reeving-drawing.js";
import { type Point, type Role, type Shape, textLead, textSize } from "./shapes.js";

/** Dashes of a rope that goes out [px]. */
const dash = [11, 4] as const;

interface SvgOptions {
  readonly width: number;
  readonly title?: string | undefined;
  readonly altText?: string | undefined;
  /** Whether it stands on a page that has the colours. */
  readonly onPage?: boolean;
}

/**
 * A drawing as SVG that stands by itself: colours are those of the page, or those for light paper.
 *
 * @param drawing  from `reevingDrawing`
 * @param width  room on the page [px]: the widest arrangement that fits is taken
 * @param title  short name, read out first
 * @param altText  finding, read out before the description
 * @param onPage  whether the page has the colours, so that those for light paper are left out
 * @returns text of one svg element
 * Example: drawingSvg(drawing, { width: 900 })
 */
export function drawingSvg(
  { arrangements, description }: Drawing,
  { width, title = "The line from load to hand", altText = "", onPage = false }: SvgOptions,
): string {
  const chosen = arrangements.find((one) => one.width <= width) ?? arrangements.at(-1)!;
  const colour: Colour = (role) => (onPage ? `var(--${role})` : `var(--${role}, ${lightPalette[role]})`);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="reeving-drawing" role="img" viewBox="0 0 ${chosen.width} ${chosen.height}" width="100%" style="max-width:${chosen.width}px;height:auto" font-family="var(--sans, system-ui, sans-serif)" font-size="${textSize}" fill="none" stroke-linecap="round" stroke-linejoin="round">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(`${altText} ${description}`.trim())}</desc>`,
    ...strokesTogether(chosen.shapes).map((group) =>
      group.length === 1 ? shapeSvg(group[0]!, colour) : pathSvg(group, colour),
    ),
    "</svg>",
  ].join("\n");
}

/** A colour of the palette as an attribute has it. */
type Colour = (role: Role) => string;

const plain: Colour = (role) => role;

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}

function places(points: readonly Point[]): string {
  return points.map(([x, y]) => `${tenths(x)},${tenths(y)}`).join(" ");
}

/** Characters that no page may hold are left out. */
function escaped(text: string): string {
  return escapeHtml(text.replaceAll(/[\p{Cc}\p{Cs}]/gu, " "));
}

/** How a shape is stroked, where nothing but that tells it from its neighbours: an open line, or a rope without dashes. */
function strokeOf(shape: Shape, colour: Colour): string | undefined {
  if (shape.kind === "line" && shape.fill === undefined)
    return `stroke="${colour(shape.stroke)}" stroke-width="${shape.width}"`;
  if (shape.kind === "rope" && shape.dashedFrom === undefined)
    return `stroke="${colour("rope")}" stroke-width="${tenths(shape.width)}"`;
  return undefined;
}

/** Shapes in their order; neighbours of one stroke together. */
function strokesTogether(shapes: readonly Shape[]): (readonly [Shape, ...Shape[]])[] {
  const groups: [Shape, ...Shape[]][] = [];
  for (const shape of shapes) {
    const last = groups.at(-1);
    const stroke = strokeOf(shape, plain);
    if (last !== undefined && stroke !== undefined && strokeOf(last[0], plain) === stroke) last.push(shape);
    else groups.push([shape]);
  }
  return groups;
}

/** Lines of one stroke as one element. */
function pathSvg(group: readonly [Shape, ...Shape[]], colour: Colour): string {
  const lines = group.map((shape) => ("points" in shape ? `M${places(shape.points)}` : ""));
  return `<path d="${lines.join("")}" ${strokeOf(group[0], colour) ?? ""}/>`;
}

function shapeSvg(shape: Shape, colour: Colour): string {
  switch (shape.kind) {
    case "rope": {
      const { points, width, dashedFrom } = shape;
      const line =
        dashedFrom === undefined
          ? ""
          : ` stroke-linecap="butt" stroke-dasharray="${dash.join(" ")}" stroke-dashoffset="${tenths(dashedFrom % (dash[0] + dash[1]))}"`;
      return `<polyline points="${places(points)}" stroke="${colour("rope")}" stroke-width="${tenths(width)}"${line}/>`;
    }
    case "line": {
      const { points, stroke, width, fill } = shape;
      const element = fill === undefined ? "polyline" : "polygon";
      const inside = fill === undefined ? "" : ` fill="${colour(fill)}"`;
      return `<${element} points="${places(points)}"${inside} stroke="${colour(stroke)}" stroke-width="${width}"/>`;
    }
    case "circle": {
      const { at, radius, stroke, width, fill } = shape;
      return `<circle cx="${tenths(at[0])}" cy="${tenths(at[1])}" r="${tenths(radius)}" fill="${colour(fill)}" stroke="${colour(stroke)}" stroke-width="${tenths(width)}"/>`;
    }
    case "text": {
      const { at, lines, anchor } = shape;
      return lines
        .map(
          ({ text, role, bold }, index) =>
            `<text x="${tenths(at[0])}" y="${tenths(at[1] + index * textLead)}" ${anchor === "start" ? "" : `text-anchor="${anchor}" `}fill="${colour(role)}"${bold === true ? ' font-weight="600"' : ""}>${escaped(text)}</text>`,
        )
        .join("\n");
    }
  }
}
