import { textWidth, wrapText } from "./drawing/textwidth.js";

/** Kinds of text on a sheet as its style sets them: size and height of a line [px], how wide its letters are over those that drawings reckon with. */
const texts = {
  question: { size: 28, line: 31.4, wide: 1 },
  smallQuestion: { size: 20, line: 22.4, wide: 1 },
  figcaption: { size: 12.7, line: 16.5, wide: 1 },
  caption: { size: 10.4, line: 14.1, wide: 0.9 },
  rule: { size: 14, line: 18.9, wide: 1 },
  smallRule: { size: 12.7, line: 17.1, wide: 1 },
  range: { size: 11.7, line: 0, wide: 0.9 },
  smallRange: { size: 10.9, line: 0, wide: 0.9 },
  tableCaption: { size: 12.7, line: 16.5, wide: 0.9 },
  head: { size: 11.8, line: 14.7, wide: 1 },
  cell: { size: 11.8, line: 14.7, wide: 0.9 },
} as const;

export type SheetText = keyof typeof texts;

/** Height that a text takes [px] on a width [px], with the gap to what follows. */
export function textHeight(text: string, kind: SheetText, width: number): number {
  const { size, line, wide } = texts[kind];
  return wrapText(text, size * wide, width).length * line + gapBelow;
}

/** Lines of a rule with its range behind it, in smaller letters. */
function ruleHeight([text, range = ""]: readonly [text: string, range?: string], dense: boolean): number {
  const [large, small] = dense ? ([texts.smallRule, texts.smallRange] as const) : ([texts.rule, texts.range] as const);
  const long = textWidth(text, large.size * large.wide) + textWidth(` ${range}`, small.size * small.wide);
  // A line ends where the next word has no room.
  return Math.ceil(long / (width - 19 - 30)) * large.line + gapBelow;
}

const gapBelow = 5;
const width = 688;
/** Height of a sheet without its edges; and of what every sheet has: head, foot, rules' heading, gaps between its parts [px]. */
const inside = 1121 - 60;
const always = 30 + 102 + 32 + 6 * 13;
/** Least height of a row of the table, and what lies beside the words of a cell [px]. */
const row = { least: 27.3, around: 7, beside: 14 } as const;

/** Words of a sheet beside its pictures. */
export interface SheetWords {
  readonly question: string;
  readonly caption: string;
  readonly heading: string;
  /** Rules, each with its range. */
  readonly rules: readonly (readonly [text: string, range?: string])[];
  readonly table: {
    readonly caption: string;
    readonly columns: readonly string[];
    readonly rows: readonly (readonly string[])[];
  };
  /** Whether question and rules are set small. */
  readonly dense: boolean;
}

/**
 * Room for the pictures on a sheet: what words and table leave of its height.
 *
 * @param words  all words of the sheet beside its pictures
 * @returns height [px]; below 0 where there is none. An estimate: where letters are wider, the picture gives way
 * Example: roomForPictures({ question: "Why?", caption: "", heading: "", rules: [["Because."]], table: { caption: "", columns: ["a"], rows: [[]] }, dense: false }) > 300 → true
 */
export function roomForPictures({ question, caption, heading, rules, table, dense }: SheetWords): number {
  const cellWidth = width / table.columns.length - row.beside;
  const cells = (all: readonly string[], kind: "head" | "cell") =>
    Math.max(0, ...all.map((text) => textHeight(text, kind, cellWidth) - gapBelow)) + row.around;
  const taken = [
    textHeight(question, dense ? "smallQuestion" : "question", width),
    textHeight(heading, "figcaption", width),
    textHeight(caption, "caption", width),
    ...rules.map((rule) => ruleHeight(rule, dense)),
    textHeight(`To fill in. ${table.caption}`, "tableCaption", width),
    cells(table.columns, "head"),
    ...table.rows.map((one) => Math.max(row.least, cells(one, "cell"))),
  ];
  return inside - always - taken.reduce((sum, one) => sum + one, 0);
}
