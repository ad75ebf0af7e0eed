import type { Panel, Series } from "./output.js";

/** Words at a curve of a series. */
export interface CurveName {
  readonly text: string;
  /** The curve that bears them. */
  readonly curve: "hauling" | "easing" | "line" | "points";
  readonly values: readonly (number | null)[];
}

/** Whether a series is the pair whose names say which curve is hauling and which is easing; alone it needs no name. */
type Keyed = "no" | "named" | "alone";

/** What is written at the curves of a series in its panel: its name, and at one pair which curve is which. */
export function curveNames(panel: Panel, series: Series): CurveName[] {
  const { name, hauling, easing, line, points } = series;
  const keyed = keyedIn(panel, series);
  if (keyed !== "no" && hauling !== undefined && easing !== undefined) {
    return [
      { text: keyed === "alone" ? "hauling" : `${name}, hauling`, curve: "hauling", values: hauling },
      { text: "easing", curve: "easing", values: easing },
    ];
  }
  for (const [curve, values] of Object.entries({ hauling, easing, line, points }))
    if (values !== undefined) return [{ text: name, curve: curve as CurveName["curve"], values }];
  return [];
}

function keyedIn({ series }: Panel, one: Series): Keyed {
  const directed = series.filter(({ hauling, easing }) => hauling !== undefined || easing !== undefined);
  const pairs = directed.filter(({ hauling, easing }) => hauling !== undefined && easing !== undefined);
  const key = pairs.find(({ highlight }) => highlight === true) ?? pairs[0];
  if (one !== key) return "no";
  return directed.length === 1 ? "alone" : "named";
}
