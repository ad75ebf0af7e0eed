import { ropeFromYarn } from "../rope/break-load.js";
import { blendRegain, moistureContent, moistureRegain } from "../rope/wet-mass.js";
import { breakingLength, roundDiameter, roundLinearDensity, specificStrength } from "../rope/yarn.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Whole column as far as the copy could be read: material, MPa, g/cm³, printed kN·m/kg. */
const specific = [
  ["concrete", 12, 2.3, "5.22"],
  ["rubber", 15, 0.92, "16.3"],
  ["copper", 220, 8.92, "24.7"],
  ["polypropylene-low", 25, 0.9, "28"],
  ["polypropylene-high", 40, 0.9, "44"],
  ["abs-low", 41, 1.05, "39"],
  ["abs-high", 45, 1.05, "43"],
  ["polyoxymethylene", 69, 1.42, "49"],
  ["stainless-steel", 505, 8, "63.1"],
  ["brass", 580, 8.55, "67.8"],
  ["moulded-polyamide", 78, 1.13, "69.0"],
] as const;

const polyester = 0.004;
const cotton = 0.085;

const textile: readonly CheckRow[] = [
  publishedRow(
    "textile-formulas",
    "decitex",
    "diameter of a fibre of 1 dtex, density 1",
    "11.3",
    "µm",
    "fibre diameter",
    () => 1e6 * roundDiameter({ linearDensity: 1e-7, density: 1000 }),
  ),
  publishedRow(
    "textile-formulas",
    "denier",
    "diameter of a fibre of 1 denier, density 1",
    "11.9",
    "µm",
    "fibre diameter",
    () => 1e6 * roundDiameter({ linearDensity: 1e-6 / 9, density: 1000 }),
  ),
  publishedRow(
    "gate-textile",
    "denier",
    "fineness of a fibre of 21 µm, 1.3 g/cm³",
    "4.05",
    "denier",
    "2003, question 44",
    () => 9e6 * roundLinearDensity({ diameter: 21e-6, density: 1300 }),
  ),
];

const moisture: readonly CheckRow[] = [
  publishedRow(
    "textile-regain-notes",
    "regain",
    "regain at a moisture content of 7 %",
    "7.53",
    "%",
    "example",
    () => 100 * moistureRegain(0.07),
  ),
  publishedRow(
    "textile-regain-notes",
    "content",
    "moisture content of 105 grains with 100 dry",
    "4.76",
    "%",
    "example",
    () => 100 * moistureContent(0.05),
  ),
  publishedRow(
    "textile-regain-notes",
    "water",
    "water in 56 g of dry fibre at a content of 5 %",
    "2.95",
    "g",
    "example",
    () => 56 * moistureRegain(0.05),
  ),
  publishedRow(
    "textile-regain-notes",
    "blend",
    "regain of 65/35 polyester and cotton",
    "3.235",
    "%",
    "example",
    () =>
      100 *
      blendRegain([
        { share: 0.65, regain: polyester },
        { share: 0.35, regain: cotton },
      ]),
  ),
  publishedRow(
    "conditioned-yarn",
    "content",
    "moisture content of cotton at a regain of 8.5 %",
    "7.83",
    "%",
    "worked example",
    () => 100 * moistureContent(cotton),
  ),
  publishedRow(
    "invoice-weight",
    "blend",
    "regain of 60/40 cotton and viscose",
    "10.3",
    "%",
    "first example",
    () =>
      100 *
      blendRegain([
        { share: 0.6, regain: cotton },
        { share: 0.4, regain: 0.13 },
      ]),
  ),
  publishedRow(
    "invoice-weight",
    "content",
    "moisture content of that blend",
    "9.34",
    "%",
    "first example",
    () => 100 * moistureContent(0.103),
  ),
  publishedRow(
    "invoice-weight",
    "mass",
    "20 t of 80/20 polyester and cotton at 4 % content, conditioned",
    "19587.84",
    "kg",
    "second example",
    () =>
      20_000 *
      (1 - 0.04) *
      (1 +
        blendRegain([
          { share: 0.8, regain: polyester },
          { share: 0.2, regain: cotton },
        ])),
  ),
];

/** A figure of a manuscript kept with its programs: worked, not printed in a journal. */
function manuscript(id: string, quantity: string, printed: string, unit: string, compute: () => number): CheckRow {
  const place = "figure 9 of a manuscript on the transport of statues, kept with its programs: not a print";
  const evidence = "independent";
  return {
    id: `vegetable-rope-${id}`,
    quantity,
    printed,
    unit,
    evidence,
    status: "published",
    source: "statue-rope",
    place,
    compute,
  };
}

/** Fibre of 916 MPa, packed to 65 %, of whose strength the rope keeps 75 %. */
const vegetableRope = (diameter: number) => {
  const density = 1500;
  return ropeFromYarn({
    specificStrength: specificStrength({ stress: 916e6, density }),
    linearDensity: roundLinearDensity({ diameter, density, fill: 0.65 }),
    conversion: 0.75,
  });
};

/** Yarns, moisture, and the way from fibre to rope. */
export const yarnChecks: CheckSet = {
  topic: "strength",
  rows: [
    ...specific.map(([name, stress, density, printed]) =>
      publishedRow(
        "specific-strength-table",
        name,
        `specific strength of ${name.replaceAll("-", " ")}, ${stress} MPa and ${density} g/cm³`,
        printed,
        "kN m/kg",
        "table of examples; its column in km is cut instead of rounded and left out",
        () => specificStrength({ stress: 1e6 * stress, density: 1000 * density }) / 1000,
      ),
    ),
    ...textile,
    ...moisture,
    manuscript("10-mm", "break load of 10 mm rope of vegetable fibre", "35", "kN", () => vegetableRope(0.01) / 1000),
    manuscript("45-mm", "break load of 45 mm rope of vegetable fibre", "710", "kN", () => vegetableRope(0.045) / 1000),
    {
      id: "breaking-length-of-its-own-weight",
      quantity: "tension at the top of a hanging yarn of its breaking length over its break load",
      printed: "1",
      unit: "1",
      evidence: "exact",
      status: "published",
      source: "statics",
      place: "definition",
      readingError: 1e-12,
      compute: () => (breakingLength(840_000) * 1e-4 * 9.80665) / (840_000 * 1e-4),
    },
  ],
};
