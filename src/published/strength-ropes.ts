import type { RopeEndName } from "../materials/ends.js";
import { convert } from "../quantity/parse.js";
import { breakLoad } from "../rope/break-load.js";
import { retainedStrength } from "../rope/retained.js";
import { workingLoad } from "../rope/rules.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Printed least strength of unspliced eight-strand polyester, tonnes-force by diameter in millimetres, two standards. */
const plaits = [
  [8, "1.0", "1.0"],
  [10, "1.6", "1.7"],
  [12, "2.3", "2.4"],
  [14, "3.2", "3.4"],
  [16, "4.1", "4.4"],
  [18, "5.1", "5.6"],
  [20, "6.3", "6.9"],
  [22, "7.6", "8.3"],
  [24, "9.5", "10.1"],
] as const;

/** A break load worked out from the fibre beside a printed one: it must lie within the model's own range. */
function fromFibre(standard: string, column: string, size: number, printed: string): CheckRow {
  const model = breakLoad({ fibre: "polyester", construction: "plaited", diameter: size / 1000 });
  const tonnes = (newtons: number) => newtons / 9806.65;
  return {
    ...publishedRow(
      "mooring-guidelines",
      `${column}-${size}-mm`,
      `least break load of ${size} mm eight-strand polyester (${standard}), from its fibre`,
      printed,
      "tonnes",
      "table 6.5; allowed: the model's own range, which is wide: a weak test, of the order of size only",
      () => tonnes(model.value),
    ),
    readingError: tonnes(model.value - model.low),
  };
}

function knotted(id: string, load: number, end: RopeEndName, words: string, printed: string): CheckRow {
  return publishedRow(
    "hmpe-knot-tests",
    id,
    `break load of ${load} lbf HMPE with a ${words}`,
    printed,
    "lbf",
    "quoted tests",
    () => {
      const { value } = retainedStrength({ fibre: "hmpe", ends: [end], use: "new", wet: false });
      return convert(
        workingLoad({ breakLoad: convert(load, "lbf", "N"), safetyFactor: 1, retained: value }),
        "N",
        "lbf",
      );
    },
  );
}

/** Ropes worked out from their fibre, and with knots. */
export const ropeStrengthChecks: CheckSet = {
  topic: "strength",
  rows: [
    ...plaits.flatMap(([size, bs, din]) => [
      fromFibre("BS 4928", "bs-4928", size, bs),
      fromFibre("DIN 83331", "din-83331", size, din),
    ]),
    knotted("cow-hitch", 600, "cowHitch", "cow hitch", "342"),
    knotted("cow-hitch-thick", 1000, "cowHitch", "cow hitch", "570"),
  ],
};
