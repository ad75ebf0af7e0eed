import { UnitError } from "../quantity/errors.js";
import { convert } from "../quantity/parse.js";
import { quoted, ReadingError } from "./reading-error.js";

/** Where a force stands, and what its file says of units and decimals. */
export interface ForceCell {
  readonly row: number;
  readonly column: string;
  readonly text: string;
  /** Unit in the head of the column. */
  readonly unit: string | undefined;
  /** Sign that is the decimal point with certainty. */
  readonly decimal: "," | "." | undefined;
}

const written = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/u;
const likeThousands = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/u;
const factors = new Map<string, number>();

/** Units that name a mass, with the force that a scale marked so shows. */
const scaleMarks: Readonly<Record<string, string>> = { kg: "kgf", kilogram: "kgf", lb: "lbf", lbs: "lbf", g: "gf" };

/** Newtons of one unit of force. */
export function newtonsPerUnit(unit: string, where: Pick<ForceCell, "row" | "column">): number {
  const known = factors.get(unit);
  if (known !== undefined) return known;
  try {
    const factor = unit === "gf" ? convert(0.001, "kgf", "N") : convert(1, unit, "N");
    if (factors.size < 100) factors.set(unit, factor);
    return factor;
  } catch (error) {
    if (!(error instanceof UnitError)) throw error;
    const marked = scaleMarks[unit];
    throw new ReadingError({
      ...where,
      value: `the unit ${quoted(unit)}`,
      allowed: "a unit of force: N, daN, kN, kgf, gf or lbf",
      advice:
        marked === undefined
          ? "Write it like 12 kgf, or put the unit in the head of the column: load [N]."
          : `A scale marked ${unit} shows force when it is pulled: write ${marked}.`,
    });
  }
}

/**
 * Reads a force as a person types it: decimal point or comma, unit beside it or in the head of its column.
 *
 * @param cell  text with its place
 * @returns force [N], of either sign
 * @throws ReadingError when it is no number, could be read two ways, or has no unit or a wrong one
 */
export function forceOf(cell: ForceCell): number {
  const { text, row, column, decimal } = cell;
  const match = written.exec(text.replace("−", "-").replaceAll(/(\d)[\u00a0\u202f](?=\d)/gu, "$1"));
  const digits = match?.[1] ?? "";
  const unit = match?.[2]?.replace(/^\[(.*)\]$/u, "$1") || cell.unit;
  if (!match || !/^(?:$|[\p{L}[])/u.test(match[2] ?? "")) {
    throw new ReadingError({
      row,
      column,
      value: quoted(text),
      allowed: "a number with a decimal point or comma, and its unit",
      advice: "Write it like 12.5 kgf; formulas are not worked out: write their result.",
    });
  }
  if (likeThousands.test(digits) && !(decimal !== undefined && digits.includes(decimal))) {
    throw new ReadingError({
      row,
      column,
      value: `${quoted(text)}, which could be a thousand times more or less`,
      allowed: "a number that can be read one way only",
      advice: "Leave out marks of thousands, and give one or two decimals: 1250 or 1.25.",
    });
  }
  if (unit === undefined) {
    throw new ReadingError({
      row,
      column,
      value: `${quoted(text)} without a unit`,
      allowed: "a unit of force beside the number or in the head of the column",
      advice: `Write ${text} kgf, or name the column ${column} [kgf].`,
    });
  }
  const newtons = Number(digits.replace(",", ".")) * newtonsPerUnit(unit, { row, column });
  if (Math.abs(newtons) <= 1e6) return newtons;
  throw new ReadingError({
    row,
    column,
    value: quoted(text),
    allowed: "at most 1000 kN: no rope of a small boat carries more",
    advice: "Look at the unit and the decimal point.",
  });
}
