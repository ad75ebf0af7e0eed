import type { CheckResult } from "../published/row.js";
import type { Verdict } from "../quantity/verdict.js";
import type { Coefficient } from "../sources/coefficient.js";
import type { CurveWorking } from "../working/curve-working.js";
import type { Working } from "../working/working.js";
import type { AnySettings, Controls } from "./control.js";
import type { Measure } from "./measure.js";
import type { DrawnLine } from "./reeving/strips.js";
import type { EndWords } from "./reeving/words.js";

/** Ends of the 90 % band of a curve, one for each place along the lower axis; `null` leaves a gap. */
export interface SeriesBand {
  readonly low: readonly (number | null)[];
  readonly high: readonly (number | null)[];
}

/** One curve pair or curve of a figure. Numbers are in the units of the figure's axes. */
export interface Series {
  readonly name: string;
  readonly x: readonly number[];
  /** Hauling: drawn solid. With easing, the dead band between them is tinted. `null` breaks the line. */
  readonly hauling?: readonly (number | null)[];
  /** Easing: drawn dashed in the colour of the series. */
  readonly easing?: readonly (number | null)[];
  /** A plain curve, for figures that have no direction. */
  readonly line?: readonly (number | null)[];
  /** Measured or published points. */
  readonly points?: readonly (number | null)[];
  /** Bands of its curves: tinted, with their ends in the table of numbers. */
  readonly bands?: Readonly<Partial<Record<"hauling" | "easing" | "line", SeriesBand>>>;
  /** How the points of its curves come about: one number of each unfolds in the table of numbers. */
  readonly worked?: Readonly<Partial<Record<"hauling" | "easing" | "line" | "points", CurveWorking>>>;
  /** The one series that the figure is about; the others are drawn quiet. */
  readonly highlight?: boolean;
}

/** A thin labelled rule across the chart: what a hand can hold, a break load. */
export interface Limit {
  readonly name: string;
  readonly value: number;
  /** Range in which the limit may lie. */
  readonly low?: number;
  readonly high?: number;
}

/** One chart; several make small multiples with the same axes. */
export interface Panel {
  readonly title: string;
  readonly series: readonly Series[];
  readonly limits?: readonly Limit[];
}

/** An axis: quantity and unit, as the vocabulary file titles it. */
export interface Axis {
  readonly title: string;
  readonly minimum?: number;
  readonly maximum?: number;
}

/** A second scale along the top: marks at values of the lower axis. */
export interface TopScale {
  readonly title: string;
  readonly marks: readonly { readonly at: number; readonly label: string }[];
}

/** A figure as data: any renderer can draw it. */
export interface Figure {
  readonly kind: "figure";
  /** Lower case with hyphens; unique in the notebook. */
  readonly name: string;
  /** States the finding, not the axes. */
  readonly title: string;
  readonly caption: string;
  /** The finding and the end values, for a reader without sight. */
  readonly altText: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly top?: TopScale;
  readonly panels: readonly Panel[];
}

/** A table; numbers are printed with three significant figures unless given as text. With one column, or one more that counts its rows, a page shows a list. */
export interface Table {
  readonly kind: "table";
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

/** A computed number with its unit and its range. */
export interface Result {
  readonly kind: "result";
  readonly label: string;
  /** Value as printed, with unit. */
  readonly text: string;
  /** Range as printed, or what is assumed. */
  readonly range?: string;
  /** How the number was worked out: unfolds beside it. */
  readonly working?: Working;
}

/** Title of the page, computed, in the place of the notebook's first heading. Plain text. */
export interface Title {
  readonly kind: "title";
  readonly text: string;
}

/** The one sentence that answers the report's question; computed. Markdown. */
export interface Answer {
  readonly kind: "answer";
  readonly text: string;
}

/** A question to the reader with its computed answer, folded. Markdown. */
export interface Question {
  readonly kind: "question";
  readonly question: string;
  readonly answer: string;
}

/** One thing to keep of a report; computed. Plain text; a report shows three at most, and its handout carries them. */
export interface Rule {
  readonly kind: "rule";
  readonly text: string;
  /** Range as printed, or what is assumed. */
  readonly range: string;
}

/** A table to fill in by hand, on the handout of a report. */
export interface SheetTable {
  readonly kind: "sheetTable";
  /** What to do, in one sentence. */
  readonly caption: string;
  readonly columns: readonly string[];
  /** Texts that stand in a row already, from the left; an empty list is a blank row. */
  readonly rows: readonly (readonly string[])[];
}

/** Comparisons with expected values. */
export interface Checks {
  readonly kind: "checks";
  readonly title: string;
  readonly results: readonly CheckResult[];
}

/** Judgements about a line, each with its reason and the nearest change that passes. */
export interface Verdicts {
  readonly kind: "verdicts";
  readonly caption: string;
  readonly verdicts: readonly Verdict[];
}

/** Where the numbers nearby come from: folded, one click away. */
export interface Coefficients {
  readonly kind: "coefficients";
  readonly caption: string;
  readonly entries: readonly { readonly name: string; readonly record: Coefficient }[];
}

/** A line drawn as it is rove, with the tension along the rope. */
export interface DrawnReeving {
  readonly kind: "reeving";
  /** Lower case with hyphens; unique in the notebook. */
  readonly name: string;
  /** States the finding. */
  readonly title: string;
  readonly caption: string;
  /** The finding, for a reader without sight; load and tensions follow by themselves. */
  readonly altText?: string | undefined;
  /** Rope and stations from the load to the hand, or several ropes joined in this order. */
  readonly line: DrawnLine;
  /** Load at the sail end [N]. */
  readonly load: number;
  /** Words for the two ends; load and hand when absent. */
  readonly words?: EndWords | undefined;
}

/** How numbers of the page were worked out, each under the name by which a text marks it: `[[name: 86 N]]`. */
export interface Workings {
  readonly kind: "workings";
  readonly entries: readonly { readonly name: string; readonly working: Working }[];
}

/** A number of a live panel, as it is and as a reader sees it. */
export interface LiveResult {
  readonly label: string;
  readonly measure: Measure;
  readonly value: number;
  /** Ends of its range, in the unit of the value; both or none. */
  readonly low?: number;
  readonly high?: number;
  /** Value as printed, with unit. */
  readonly text: string;
  /** Range as printed. */
  readonly range?: string;
}

/** What a live panel shows for one setting. */
export interface LiveView {
  readonly results: readonly LiveResult[];
  readonly figure: Figure;
  /** What the numbers say, in one sentence. Plain text. */
  readonly sentence: string;
}

/** What a page gives its panel to compute with: plain data, of a kind that the model knows. */
export interface PanelFacts {
  readonly about: string;
}

/** Controls that the page computes with, and what they show before anybody touches them. */
export interface LivePanel extends LiveView {
  readonly kind: "panel";
  /** Name of the model that computes. */
  readonly model: string;
  /** Absent where the model needs nothing but its controls. */
  readonly facts?: PanelFacts;
  readonly controls: Controls;
  readonly settings: AnySettings;
}

/** Whatever a cell can show on a report page. */
export type Shown =
  | Figure
  | DrawnReeving
  | Table
  | Result
  | Title
  | Answer
  | Question
  | Checks
  | Verdicts
  | Coefficients
  | Workings
  | LivePanel
  | Rule
  | SheetTable;

/** Jupyter media type under which a shown thing travels to the report build. */
export const shownMediaType = "application/vnd.haulbook.shown+json";

/** Media type of a figure: plotly's own, with the figure itself under the key `haulbook`. */
export const figureMediaType = "application/vnd.plotly.v1+json";

/** Environment variable that the build sets: outputs travel as data instead of showing themselves. */
export const dataModeVariable = "HAULBOOK_OUTPUT";
