import { type RopeEndName, ropeEnds } from "../materials/ends.js";
import { type FibreName, fibres } from "../materials/fibres.js";
import { convert } from "../quantity/parse.js";
import { breakLoad, ropeStiffness } from "../rope/break-load.js";
import type { RopeMake } from "../rope/make.js";
import { retainedStrength } from "../rope/retained.js";
import { workingLoad } from "../rope/rules.js";
import type { Band } from "../sources/band.js";
import type { SourceId } from "../sources/bibliography.js";
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

type Make = Omit<RopeMake, "diameter">;
type Sizes = readonly (readonly [size: number, printed: string])[];

/** A model's range around its middle, on the side of what is printed. */
const side = ({ value, low, high }: Band, printed: number): number => (printed > value ? high - value : value - low);

const wide = "allowed: the model's own range, which is wide: a weak test, of the order of size only";

/** Printed break loads of ropes of one make, each within the model's own range. */
function ofMake(
  [source, id, words, place]: readonly [SourceId, string, string, string],
  unit: "kgf" | "daN" | "kN",
  make: Make,
  sizes: Sizes,
): CheckRow[] {
  return sizes.map(([size, printed]) => {
    const { value, low, high } = breakLoad({ ...make, diameter: size / 1000 });
    const factor = unit === "kgf" ? 9.80665 : unit === "daN" ? 10 : 1000;
    const band = { value: value / factor, low: low / factor, high: high / factor };
    return {
      ...publishedRow(
        source,
        `${id}-${size}-mm`,
        `break load of ${size} mm ${words}, from its fibre`,
        printed,
        unit,
        `${place}; ${wide}`,
        () => band.value,
      ),
      readingError: side(band, Number(printed)),
    };
  });
}

/** Stretch of a small braid at a fifth of its break load, in percent, both of the model. */
function stretched(id: string, words: string, make: Make, printed: string): CheckRow {
  const rope = { ...make, diameter: 0.008 };
  const pull = 20 * breakLoad(rope).value;
  const stiffness = ropeStiffness(rope);
  const band = { value: pull / stiffness.value, low: pull / stiffness.high, high: pull / stiffness.low };
  return {
    ...publishedRow(
      "line-selection",
      id,
      `stretch of ${words} at 20 % of its break load`,
      printed,
      "%",
      `table after a chandlery's guide; ${wide}`,
      () => band.value,
    ),
    readingError: side(band, Number(printed)),
  };
}

/** What an end leaves, printed in percent, within the range of its record. */
function leaves(source: SourceId, end: RopeEndName, fibre: FibreName, percent: string, place: string): CheckRow {
  const { value, low, high } = retainedStrength({ fibre, ends: [end], use: "new", wet: false });
  const band = { value: 100 * value, low: 100 * low, high: 100 * high };
  return {
    ...publishedRow(
      source,
      `${fibre}-${end.toLowerCase()}`,
      `strength that a ${ropeEnds[end].name} leaves in ${fibres[fibre].name}`,
      percent,
      "%",
      `${place}; allowed: the range of the record`,
      () => band.value,
    ),
    readingError: side(band, Number(percent)) + 1e-9,
  };
}

const works = "p. 9, table of one rope works";
const laid: Make = { fibre: "polyester", construction: "plaited" };
const doubleBraid: Make = { fibre: "polyester", construction: "doubleBraid" };
const covered: Make = { fibre: "hmpe", construction: "coveredCore", coverFibre: "polyester" };

/** Break loads, ends and stretch as ropes of small boats are printed. */
const smallRopes: readonly CheckRow[] = [
  ...ofMake(["knots-in-use", "hmpe", "HMPE braid, taken as covered", works], "kgf", covered, [
    [6, "1800"],
    [8, "3200"],
    [12, "5700"],
  ]),
  ...ofMake(["knot-test-2025", "hmpe", "covered HMPE yacht rope", "rated strength"], "daN", covered, [[10, "4132"]]),
  ...ofMake(
    ["hmpe-splice-page", "hmpe", "high-grade HMPE of 12 strands", "average of unspliced rope"],
    "kgf",
    { fibre: "hmpeHighModulus", construction: "bareBraid" },
    [[6, "5440"]],
  ),
  ...ofMake(["knots-in-use", "polyester", "polyester double braid", works], "kgf", doubleBraid, [
    [6, "1230"],
    [8, "2000"],
    [10, "2550"],
    [12, "4000"],
    [14, "6000"],
  ]),
  ...ofMake(["knots-in-use", "matt", "matt polyester 16-plait", works], "kgf", doubleBraid, [
    [6, "600"],
    [8, "1460"],
    [10, "1580"],
    [12, "3400"],
    [14, "4350"],
  ]),
  ...ofMake(["knot-test-2025", "polyester", "polyester yacht rope", "rated strength"], "daN", doubleBraid, [
    [10, "2096"],
  ]),
  ...ofMake(
    ["knots-in-use", "polyamide", "polyamide of three strands", works],
    "kgf",
    { ...laid, fibre: "polyamide" },
    [
      [6, "780"],
      [8, "1800"],
      [10, "2800"],
      [12, "3100"],
      [14, "4900"],
    ],
  ),
  ...ofMake(
    ["knots-in-use", "polypropylene", "polypropylene of three strands", works],
    "kgf",
    { ...laid, fibre: "polypropylene" },
    [
      [6, "480"],
      [8, "960"],
      [10, "1430"],
      [12, "2030"],
      [14, "2790"],
    ],
  ),
  ...ofMake(["polyester-rope-table", "polyester", "polyester of three or eight strands", "table"], "kN", laid, [
    [5, "3.40"],
    [6, "5.85"],
    [8, "9.1"],
    [10, "12.9"],
    [11.1, "17.4"],
    [12.7, "22.6"],
    [14, "28.6"],
    [16, "34.8"],
    [18, "49.8"],
    [22, "67.7"],
    [24, "88.0"],
  ]),
  stretched("polyamide", "polyamide double braid", { ...doubleBraid, fibre: "polyamide" }, "8.5"),
  stretched("polyester", "polyester double braid", doubleBraid, "2.5"),
  stretched("hmpe", "HMPE, less than", { fibre: "hmpe", construction: "bareBraid" }, "0.6"),
  leaves("knots-in-use", "bowline", "polyester", "70", "p. 9: loses 30 %"),
  leaves("knots-in-use", "figureEight", "polyester", "72", "p. 9: loses 28 %"),
  leaves("knots-in-use", "reefKnot", "polyester", "50", "p. 9: loses 50 %"),
  leaves("hartter-thesis", "bowline", "hmpe", "33", "about a third of the rated strength"),
  leaves("hartter-thesis", "figureEight", "hmpe", "33", "about a third of the rated strength"),
  leaves("knot-test-2025", "bowline", "hmpe", "50", "roughly halves the strength"),
  leaves("hmpe-knot-tests", "splice", "hmpe", "85", "long splice"),
];

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
    ...smallRopes,
    knotted("cow-hitch", 600, "cowHitch", "cow hitch", "342"),
    knotted("cow-hitch-thick", 1000, "cowHitch", "cow hitch", "570"),
  ],
};
