import type { Panel, Series } from "../notebook/output.js";

/** How a curve of a series runs, and so how it is drawn. */
type CurveKind = "hauling" | "easing" | "line" | "points";

/** One curve of a panel. */
export interface Curve {
  readonly series: Series;
  readonly kind: CurveKind;
  /** Words for a table column. */
  readonly name: string;
  readonly y: readonly (number | null)[];
}

/** All curves of a panel for its table of numbers: each is followed by the ends of its 90 % band. */
export function tableCurvesOf(panel: Panel): Curve[] {
  return curvesOf(panel).flatMap((curve) => {
    const band = curve.kind === "points" ? undefined : curve.series.bands?.[curve.kind];
    if (band === undefined) return [curve];
    return [
      curve,
      { ...curve, y: band.low, name: `${curve.name}, 5 %` },
      { ...curve, y: band.high, name: `${curve.name}, 95 %` },
    ];
  });
}

/** All curves of a panel, in the order of its series. */
export function curvesOf(panel: Panel): Curve[] {
  const kinds: readonly CurveKind[] = ["hauling", "easing", "line", "points"];
  return panel.series.flatMap((series) =>
    kinds.flatMap((kind) => {
      const y = series[kind];
      const ending = kind === "line" ? "" : `, ${kind}`;
      return y === undefined ? [] : [{ series, kind, y, name: `${series.name}${ending}` }];
    }),
  );
}
