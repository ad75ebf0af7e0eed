import type { Panel, Series } from "../notebook/output.js";
import type { CurveWorking } from "../working/curve-working.js";

/** How a curve of a series runs, and so how it is drawn. */
type CurveKind = "hauling" | "easing" | "line" | "points";

type Values = readonly (number | null)[];

/** One curve of a panel. */
export interface Curve {
  readonly series: Series;
  readonly kind: CurveKind;
  /** Words for a table column. */
  readonly name: string;
  readonly y: Values;
  /** Ends of its 90 % band. */
  readonly band: { readonly low: Values; readonly high: Values } | undefined;
  readonly worked: CurveWorking | undefined;
}

/** All curves of a panel, in the order of its series. */
export function curvesOf(panel: Panel): Curve[] {
  const kinds: readonly CurveKind[] = ["hauling", "easing", "line", "points"];
  return panel.series.flatMap((series) =>
    kinds.flatMap((kind) => {
      const y = series[kind];
      const ending = kind === "line" ? "" : `, ${kind}`;
      const band = kind === "points" ? undefined : series.bands?.[kind];
      return y === undefined
        ? []
        : [{ series, kind, y, band, worked: series.worked?.[kind], name: `${series.name}${ending}` }];
    }),
  );
}
