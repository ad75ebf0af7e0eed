import { creepLaws } from "../materials/creep.js";
import { stiffnessRatios } from "../materials/elasticity.js";
import { creepStrain } from "../rope/creep.js";
import { quickStiffness, segmentStretch, slowStiffness, stiffnessFromTest } from "../rope/stretch.js";
import { practiceRow, publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

const round = (diameter: number) => (Math.PI / 4) * diameter ** 2;

const towCable = { length: 9.3, axialStiffness: 2e11 * round(0.01), tension: 1070 };

const stretchRows: readonly CheckRow[] = [
  publishedRow(
    "climber-rope",
    "modulus",
    "stiffness of a nylon rope of 45.0 m and 7.0 mm that stretches 1.10 m under 65.0 kg, over its area, in 100 MPa",
    "6.78",
    "1e8 Pa",
    "chapter 11; g = 9.81",
    () => stiffnessFromTest({ tension: 65 * 9.81, length: 45, stretch: 1.1 }) / round(0.007) / 1e8,
  ),
  publishedRow(
    "tow-cable",
    "strain",
    "strain of a steel cable of 5 mm radius under 1070 N, in hundred-thousandths",
    "6.8",
    "1e-5",
    "answer",
    () => (1e5 * segmentStretch(towCable)) / towCable.length,
  ),
  publishedRow(
    "tow-cable",
    "stretch",
    "stretch of 9.3 m of that cable, in tenths of a millimetre",
    "6.3",
    "1e-4 m",
    "answer",
    () => 1e4 * segmentStretch(towCable),
  ),
  publishedRow(
    "truck-cable",
    "stretch",
    "stretch of a steel cable of 9.1 m and 5 mm radius under 800 N",
    "0.5",
    "mm",
    "answer, printed to one digit",
    () => 1000 * segmentStretch({ length: 9.1, axialStiffness: 2e11 * round(0.01), tension: 800 }),
  ),
  publishedRow(
    "hanging-cable",
    "own-weight",
    "stretch of a cable of 500 m, 2.4 kg/m, 3 cm² under its own weight",
    "0.49",
    "m",
    "answer; g = 9.8",
    () => segmentStretch({ length: 500, axialStiffness: 2e10 * 3e-4, tension: 0, farTension: 500 * 2.4 * 9.8 }),
  ),
  publishedRow(
    "openstax-cable",
    "cable-car",
    "stretch of a steel cable of 3020 m and 5.6 cm under 3.0 MN",
    "18",
    "m",
    "example 5.3, printed to two digits",
    () => segmentStretch({ length: 3020, axialStiffness: 210e9 * round(0.056), tension: 3e6 }),
  ),
];

function worked(id: string, quantity: string, printed: string, unit: string, compute: () => number): CheckRow {
  return {
    id: `mooring-rope-properties-${id}`,
    quantity,
    printed,
    unit,
    evidence: "independent",
    status: "published",
    source: "mooring-rope-properties",
    place: "printed coefficients, worked by hand",
    compute,
  };
}

const kinds = [
  ["polyester", "1.43", "19.6"],
  ["polyamide", "4.00", "9.88"],
  ["hmpe", "0.357", "69.8"],
] as const;

const ratioRows = kinds.flatMap(([kind, strain, quick]): CheckRow[] => {
  const ratio = stiffnessRatios[kind];
  return [
    worked(`${kind}-strain`, `strain of a big ${ratio.name} rope at a fifth of its break load`, strain, "%", () => {
      const { value } = slowStiffness({ ratio, breakLoad: 1000 });
      return 100 * segmentStretch({ length: 1, axialStiffness: value, tension: 200 });
    }),
    worked(
      `${kind}-quick`,
      `quick stiffness of a big ${ratio.name} rope over its break load, about a fifth of break`,
      quick,
      "1",
      () => quickStiffness({ ratio, breakLoad: 1, loadShare: 0.2 }).value,
    ),
  ];
});

const practiceRows: readonly CheckRow[] = [
  practiceRow(
    "first-hour-creeps-most",
    "creep of aramid in its first hour over that of its first day, marked a minute after loading",
    "0.5",
    "1",
    "most of the creep comes early: about half of a day's creep in its first hour",
    () => {
      const after = (duration: number) =>
        creepStrain({ law: creepLaws.aramid, loadShare: 0.2, settling: 60, duration, temperature: 293.15 }).value;
      return after(3600) / after(86400);
    },
    0.1,
  ),
];

/** Worked examples of stretch, and what is known of creep. */
export const setShapeExamples: CheckSet = { topic: "cleat", rows: [...stretchRows, ...ratioRows, ...practiceRows] };
