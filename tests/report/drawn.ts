/** One panel as read back from the markup of a drawing: in the units of its axes, by way of its own ticks. */
export interface DrawnPanel {
  readonly ticks: { readonly x: readonly Tick[]; readonly y: readonly Tick[]; readonly upper: readonly Tick[] };
  readonly ranges: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
  readonly curves: readonly DrawnCurve[];
  readonly limits: readonly { readonly name: string; readonly value: number }[];
  readonly words: readonly string[];
  /** Units of the axes that one pixel takes. */
  readonly pixel: { readonly x: number; readonly y: number };
}

interface Tick {
  readonly label: string;
  /** Where it stands, in pixels of the drawing. */
  readonly place: number;
}

interface DrawnCurve {
  readonly name: string;
  readonly isMarks: boolean;
  readonly dash: string | undefined;
  readonly stroke: string | undefined;
  /** Parts between gaps. */
  readonly parts: readonly (readonly (readonly [number, number])[])[];
}

function plain(text: string): string {
  return text
    .replace(/<[^>]*>/gu, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");
}

function attribute(tag: string, name: string): string | undefined {
  return new RegExp(` ${name}="([^"]*)"`, "u").exec(tag)?.[1];
}

function texts(markup: string): { tag: string; text: string }[] {
  return [...markup.matchAll(/<text([^>]*)>(.*?)<\/text>/gsu)].map(([, tag = "", text = ""]) => ({
    tag,
    text: plain(text),
  }));
}

function ticksOf(panel: string, kind: string, along: "x" | "y"): Tick[] {
  const group = new RegExp(`<g class="ticks ${kind}"[^>]*>(.*?)</g>`, "su").exec(panel)?.[1] ?? "";
  return texts(group).map(({ tag, text }) => ({ label: text, place: Number(attribute(tag, along)) }));
}

export function numberOf(label: string): number {
  return Number(label.replaceAll("\u202f", "").replace("−", "-"));
}

/** From places to values, by two ticks. */
function inverse(ticks: readonly Tick[]): (place: number) => number {
  const [first, last] = [ticks[0], ticks.at(-1)];
  if (first === undefined || last === undefined || first === last) throw new Error("fewer than two ticks");
  const perPixel = (numberOf(last.label) - numberOf(first.label)) / (last.place - first.place);
  return (place) => numberOf(first.label) + (place - first.place) * perPixel;
}

/** All panels of a drawing. */
export function drawnPanels(svg: string): DrawnPanel[] {
  return svg
    .split('<g class="panel">')
    .slice(1)
    .map((panel) => {
      const ticks = {
        x: ticksOf(panel, "x", "x"),
        y: ticksOf(panel, "y", "y"),
        upper: ticksOf(panel, "upper", "x"),
      };
      const plot = /<svg[^>]*class="plot[^"]*"[^>]*>/u.exec(panel)?.[0] ?? "";
      const [left = 0, top = 0, width = 0, height = 0] = ["x", "y", "width", "height"].map((name) =>
        Number(attribute(plot, name)),
      );
      // Numbers at the side stand on a baseline, all as far below their tick: the grid tells where the ticks are.
      const grid = [...(/class="grid" d="([^"]*)"/u.exec(panel)?.[1] ?? "").matchAll(/M[\d.-]+ ([\d.-]+)h/gu)];
      const x = inverse(ticks.x);
      const y = inverse(ticks.y.map((tick, index) => ({ ...tick, place: Number(grid[index]?.[1]) })));
      const place = (right: number, down: number) => [x(left + right), y(top + down)] as const;
      const curves = [...panel.matchAll(/<path data-curve="([^"]*)"([^>]*)>/gu)].map(([, name = "", tag = ""]) => ({
        name: plain(name),
        isMarks: tag.includes("marker:url("),
        dash: attribute(tag, "stroke-dasharray"),
        stroke: attribute(tag, "stroke"),
        parts: (attribute(tag, "d") ?? "")
          .replaceAll("Z", "")
          .split("M")
          .slice(1)
          .map((part) => {
            let [right, down] = [0, 0];
            // The first pair is a place, the others are steps from one place to the next.
            const numbers = [...part.matchAll(/-?(?:\d+\.?\d*|\.\d+)/gu)].map(([text]) => Number(text));
            return Array.from({ length: numbers.length / 2 }, (_, index) => {
              right += numbers[2 * index] ?? Number.NaN;
              down += numbers[2 * index + 1] ?? Number.NaN;
              return place(right, down);
            });
          }),
      }));
      const limits = [...panel.matchAll(/data-limit="([^"]*)" d="M0 ([\d.-]+)h/gu)].map(([, name = "", down]) => ({
        name: plain(name),
        value: place(0, Number(down))[1],
      }));
      const [start, end] = [place(0, height), place(width, 0)];
      return {
        ticks,
        ranges: { x: [start[0], end[0]] as const, y: [start[1], end[1]] as const },
        curves,
        limits,
        words: texts(panel).map(({ text }) => text.trim()),
        pixel: { x: Math.abs(place(1, 0)[0] - place(0, 0)[0]), y: Math.abs(place(0, 1)[1] - place(0, 0)[1]) },
      };
    });
}
