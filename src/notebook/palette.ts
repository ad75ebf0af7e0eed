/** Colours by role; the shapes of lines and their labels carry the meaning without them. */
export interface Palette {
  /** Text and axes. */
  readonly ink: string;
  /** Series that are not the one a figure is about. */
  readonly quiet1: string;
  readonly quiet2: string;
  readonly quiet3: string;
  readonly quiet4: string;
  /** What is ours to change: the series that a figure is about. */
  readonly water: string;
  /** What the load does. */
  readonly rope: string;
  /** Limits and cautions only. */
  readonly brick: string;
  /** Dead band between hauling and easing. */
  readonly tint: string;
  /** 90 % band of a curve. */
  readonly band: string;
  readonly paper: string;
  readonly grid: string;
}

/** Ink on warm paper white. */
export const lightPalette: Palette = {
  ink: "#1f1d1a",
  quiet1: "#56626e",
  quiet2: "#5a6848",
  quiet3: "#735c78",
  quiet4: "#7a6350",
  water: "#0f4c75",
  rope: "#7a5230",
  brick: "#a3322a",
  tint: "rgba(15, 76, 117, 0.14)",
  band: "rgba(86, 98, 110, 0.2)",
  paper: "#fbf8f1",
  grid: "#e6dfd1",
};

/** Warm white on deep grey. */
export const darkPalette: Palette = {
  ink: "#ece7dc",
  quiet1: "#a3b1be",
  quiet2: "#a9b898",
  quiet3: "#bfa6c4",
  quiet4: "#c4ab97",
  water: "#7db8e0",
  rope: "#d0a679",
  brick: "#ee8b7d",
  tint: "rgba(125, 184, 224, 0.18)",
  band: "rgba(163, 177, 190, 0.24)",
  paper: "#17191b",
  grid: "#303438",
};
