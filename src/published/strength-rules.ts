import { fastening } from "../materials/lashing-shackle.js";
import { strengthRules } from "../materials/strength-rules.js";
import { convert } from "../quantity/parse.js";
import { shackle, shackleFor } from "../rope/lashing.js";
import { squareRule, squareRuleSize, workingLoad } from "../rope/rules.js";
import { publishedRow } from "./published-row.js";
import type { CheckSet } from "./row.js";

const inch = 0.0254;
const pounds = (newtons: number) => convert(newtons, "N", "lbf");
const tonnes = (newtons: number) => newtons / 9806.65;
const shortTons = (newtons: number) => pounds(newtons) / 2000;
const by = (factor: { readonly value: number }, size: number) => squareRule({ factor: factor.value, size });

/** Least strength of cord by diameter in millimetres, in kN. */
const cords = [
  [4, "3.2"],
  [5, "5.0"],
  [6, "7.2"],
  [7, "9.8"],
  [8, "12.8"],
] as const;

/** Printed rules and worked examples for the strength of ropes and shackles. */
export const strengthRuleChecks: CheckSet = {
  topic: "strength",
  rows: [
    ...cords.map(([size, printed]) =>
      publishedRow(
        "en-564",
        `${size}-mm`,
        `least break load of ${size} mm cord`,
        printed,
        "kN",
        "strength table; one coefficient for five sizes",
        () => by(strengthRules.accessoryCord, size / 1000) / 1000,
      ),
    ),
    publishedRow("navy-cordage", "manila", "break load of manila, 3 in round", "8100", "lbf", "fibre line", () =>
      pounds(by(strengthRules.manila, 3 * inch)),
    ),
    publishedRow("navy-cordage", "nylon", "break load of nylon, 2.5 in round", "15000", "lbf", "fibre line", () =>
      pounds(by(strengthRules.nylon, 2.5 * inch)),
    ),
    publishedRow(
      "navy-cordage",
      "size",
      "circumference of fibre line for 5 short tons",
      "8.66",
      "in",
      "lifting a given weight",
      () => squareRuleSize({ factor: strengthRules.fibreLine.value, load: convert(10_000, "lbf", "N") }) / inch,
    ),
    publishedRow("uscg-cordage", "manila", "break load of manila, 1.57 in round", "2218", "lbf", "example", () =>
      pounds(by(strengthRules.manila, 1.57 * inch)),
    ),
    publishedRow("uscg-cordage", "nylon", "break load of nylon, 1.57 in round", "5546", "lbf", "example", () =>
      pounds(strengthRules.nylonOfManila.value * by(strengthRules.manila, 1.57 * inch)),
    ),
    publishedRow("deck-training-notes", "manila", "break load of 24 mm manila", "2.88", "tonnes", "example", () =>
      tonnes(by(strengthRules.manilaByDiameter, 0.024)),
    ),
    publishedRow("deck-training-notes", "pp", "break load of 24 mm polypropylene", "7.48", "tonnes", "example", () =>
      tonnes(by(strengthRules.polypropylene, 0.024)),
    ),
    publishedRow("deck-training-notes", "pe", "break load of 24 mm polyethylene", "5.43", "tonnes", "example", () =>
      tonnes(by(strengthRules.polyethylene, 0.024)),
    ),
    publishedRow("safe-load-notes", "wire", "safe load of 12 mm steel wire", "1.15", "tonnes", "example", () =>
      tonnes(by(strengthRules.steelWire, 0.012)),
    ),
    publishedRow("nautical-knowledge-3", "factor", "working load of 600 kg, factor 6", "100", "kg", "example", () =>
      workingLoad({ breakLoad: 600, safetyFactor: 6 }),
    ),
    publishedRow(
      "watch-officer-reviewer",
      "nylon",
      "working load of 15 000 lbf, factor 5",
      "3000",
      "lbf",
      "worked question",
      () => pounds(workingLoad({ breakLoad: convert(15_000, "lbf", "N"), safetyFactor: 5 })),
    ),
    publishedRow(
      "rope-strength-table",
      "three-eighths",
      "safe load of 3/8 in polyester and polyolefin rope, 2700 lbf by 12",
      "1.00",
      "kN",
      "table and note on the factor",
      () => workingLoad({ breakLoad: convert(2700, "lbf", "N"), safetyFactor: 12 }) / 1000,
    ),
    publishedRow("imo-css-annex-13", "wire", "securing load of wire used once, 125 kN", "100", "kN", "example 1", () =>
      workingLoad({ breakLoad: 125, safetyFactor: 1 / 0.8 }),
    ),
    publishedRow("imo-css-annex-13", "shackle", "securing load of a shackle, 180 kN", "90", "kN", "example 1", () =>
      workingLoad({ breakLoad: 180, safetyFactor: 2 }),
    ),
    publishedRow(
      "imo-css-annex-13",
      "strength",
      "calculated strength of 90 kN, factor 1.5",
      "60",
      "kN",
      "example 1",
      () => workingLoad({ breakLoad: 90, safetyFactor: 1.5 }),
    ),
    publishedRow(
      "navy-steelworker",
      "tons",
      "working load of a 5/8 in shackle",
      "1.1719",
      "short tons",
      "shackles",
      () => shortTons(shackle({ barDiameter: 0.625 * inch }).workingLoad.value),
    ),
    publishedRow("navy-steelworker", "pounds", "working load of a 5/8 in shackle", "2343.8", "lbf", "shackles", () =>
      pounds(shackle({ barDiameter: 0.625 * inch }).workingLoad.value),
    ),
    publishedRow(
      "rigging-exam",
      "size",
      "bar of the shackle for 5.1 short tons",
      "1.30",
      "in",
      "worked example",
      () => shackleFor(convert(5.1 * 2000, "lbf", "N")) / inch,
    ),
    {
      id: "shackle-rule-in-two-units",
      quantity: "three short tons a square inch, in N/mm²",
      printed: "41.37",
      unit: "N/mm^2",
      evidence: "exact",
      status: "published",
      source: "statics",
      place: "arithmetic of units",
      compute: () => fastening.shackleWorkingStress.value / 1e6,
    },
  ],
};
