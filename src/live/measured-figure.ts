import { type Measure, shownIn, type Units } from "../notebook/measure.js";
import type { Axis, Figure, Limit, Panel, Series, SeriesBand, TopScale } from "../notebook/output.js";
import { figures } from "../quantity/print.js";

/** An axis whose title has no unit yet; numbers are in the first unit of its measure. */
interface MeasuredAxis extends Axis {
  readonly measure: Measure;
}

/** A second scale whose marks have no words yet. */
interface MeasuredScale {
  readonly title: string;
  readonly measure: Measure;
  readonly marks: readonly { readonly at: number; readonly value: number }[];
}

/** A figure before the units of its axes are chosen. */
export interface MeasuredFigure extends Omit<Figure, "kind" | "x" | "y" | "top"> {
  readonly x: MeasuredAxis;
  readonly y: MeasuredAxis;
  readonly top?: MeasuredScale;
}

type Values = readonly (number | null)[];

function axisIn({ measure, title, minimum, maximum }: MeasuredAxis, units: Units): Axis {
  const { scale, unit } = shownIn(measure, units);
  return {
    title: unit === "" ? title : `${title} [${unit}]`,
    ...(minimum !== undefined && { minimum: scale * minimum }),
    ...(maximum !== undefined && { maximum: scale * maximum }),
  };
}

function topIn({ title, measure, marks }: MeasuredScale, acrossScale: number, units: Units): TopScale {
  const { scale, unit } = shownIn(measure, units);
  return {
    title: `${title} [${unit}]`,
    marks: marks.map(({ at, value }) => ({ at: acrossScale * at, label: figures(scale * value, 2) })),
  };
}

function scaled(values: Values, scale: number): (number | null)[] {
  return values.map((value) => (value === null ? null : scale * value));
}

const curves = ["hauling", "easing", "line", "points"] as const;

function seriesIn(series: Series, across: number, up: number): Series {
  const given = curves.flatMap((curve) => {
    const values = series[curve];
    return values === undefined ? [] : [[curve, scaled(values, up)] as const];
  });
  const bands = Object.entries(series.bands ?? {}).map(
    ([curve, { low, high }]: [string, SeriesBand]) =>
      [curve, { low: scaled(low, up), high: scaled(high, up) }] as const,
  );
  return {
    ...series,
    x: series.x.map((value) => across * value),
    ...Object.fromEntries(given),
    ...(bands.length > 0 && { bands: Object.fromEntries(bands) }),
  };
}

function limitIn({ name, value, low, high }: Limit, up: number): Limit {
  return {
    name,
    value: up * value,
    ...(low !== undefined && { low: up * low }),
    ...(high !== undefined && { high: up * high }),
  };
}

/** The figure in the units that a reader has chosen. */
export function figureIn({ x, y, top, panels, ...texts }: MeasuredFigure, units: Units): Figure {
  const across = shownIn(x.measure, units).scale;
  const up = shownIn(y.measure, units).scale;
  const panelIn = ({ title, series, limits }: Panel): Panel => ({
    title,
    series: series.map((one) => seriesIn(one, across, up)),
    ...(limits && { limits: limits.map((one) => limitIn(one, up)) }),
  });
  return {
    kind: "figure",
    ...texts,
    x: axisIn(x, units),
    y: axisIn(y, units),
    ...(top && { top: topIn(top, across, units) }),
    panels: panels.map(panelIn),
  };
}
