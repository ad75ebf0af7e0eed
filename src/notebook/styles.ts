import type { Figure } from "./output.js";
import type { Palette } from "./palette.js";

/** How a series is drawn: the same in every panel. */
export interface SeriesStyle {
  readonly colour: string;
  readonly width: number;
  /** Of a plain curve; hauling is always solid and easing always dashed. */
  readonly dash: string;
  readonly symbol: string;
  readonly accent: boolean;
}

const quietDashes = ["dot", "dashdot", "longdashdot", "longdash"] as const;
const quietSymbols = ["circle-open", "square-open", "diamond-open", "triangle-up-open", "x-thin-open"] as const;

/** Styles by series name. A series alone in its figure is the one that the figure is about. */
export function seriesStyles(figure: Figure, palette: Palette): Map<string, SeriesStyle> {
  const all = figure.panels.flatMap(({ series }) => series);
  const names = [...new Set(all.map(({ name }) => name))];
  const accented = new Set(all.filter(({ highlight }) => highlight === true).map(({ name }) => name));
  if (names.length === 1) for (const name of names) accented.add(name);
  const quiets = [palette.quiet1, palette.quiet2, palette.quiet3, palette.quiet4];
  const styles = new Map<string, SeriesStyle>();
  let quiet = 0;
  for (const name of names) {
    if (accented.has(name)) {
      styles.set(name, { colour: palette.water, width: 3, dash: "solid", symbol: "circle", accent: true });
    } else {
      const pick = <T>(from: readonly T[], otherwise: T): T => from[quiet % from.length] ?? otherwise;
      styles.set(name, {
        colour: pick(quiets, palette.quiet1),
        width: 1.5,
        dash: pick(quietDashes, "dot"),
        symbol: pick(quietSymbols, "circle-open"),
        accent: false,
      });
      quiet += 1;
    }
  }
  return styles;
}
