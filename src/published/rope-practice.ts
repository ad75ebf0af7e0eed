import { fastening } from "../materials/lashing-shackle.js";
import { lashingRounds } from "../rope/lashing.js";
import { taper } from "../rope/taper.js";
import { howThin } from "../rope/thinnest.js";
import { practiceRow } from "./published-row.js";
import type { CheckSet } from "./row.js";

/** Thinnest stripped HMPE on strength alone: spliced, round a small block, a season old, safety factor 5 [mm]. */
function thinnestOnStrength(workingLoad: number): number {
  const { thinnest } = howThin(
    { fibre: "hmpeHighModulus", construction: "bareBraid" },
    { workingLoad, safetyFactor: 5, ends: ["splice"], use: "season", wet: false },
  );
  return 1000 * (thinnest?.diameter ?? Number.NaN);
}

const cleatLine = {
  covered: { fibre: "hmpe", construction: "coveredCore", coverFibre: "polyester", diameter: 0.005 },
  reach: 5,
  travel: 0.4,
  velocityRatio: 2,
  clearance: 0.4,
  tail: 0.6,
} as const;

/** Least and most rounds with which twine at both ends of its common sizes carries 1 kN five times over. */
const rounds = (diameter: number) =>
  lashingRounds({
    twine: { fibre: "hmpeHighModulus", construction: "bareBraid", diameter },
    gap: 0.03,
    eyeDiameter: 0.005,
    load: 5000,
  });

/** What the trade says about thin lines and lashings. */
export const strengthPractice: CheckSet = {
  topic: "strength",
  rows: [
    practiceRow(
      "thin-control-line-light",
      "thinnest HMPE for a control line of 3 mm under 420 N, on strength alone",
      "2.15",
      "mm",
      "lines of 3 to 4 mm can usually come down to 1.8 to 2.5 mm on strength; loads are those of the demo skiff, invented",
      () => thinnestOnStrength(420),
      0.35,
    ),
    practiceRow(
      "thin-control-line-heavy",
      "thinnest HMPE for a control line of 4 mm under 800 N, on strength alone",
      "2.15",
      "mm",
      "lines of 3 to 4 mm can usually come down to 1.8 to 2.5 mm on strength; loads are those of the demo skiff, invented",
      () => thinnestOnStrength(800),
      0.35,
    ),
    practiceRow(
      "lashing-thin-twine",
      "rounds of 0.9 mm twine that carry 1 kN five times over",
      "10",
      "1",
      "lashings are tied with twine of 0.9 to 1.8 mm in a few to some twenty rounds",
      () => rounds(fastening.lashingTwine.low),
      9,
    ),
    practiceRow(
      "lashing-thick-twine",
      "rounds of 1.8 mm twine that carry 1 kN five times over",
      "5",
      "1",
      "lashings are tied with twine of 0.9 to 1.8 mm in a few rounds",
      () => rounds(fastening.lashingTwine.high),
      4,
    ),
  ],
};

/** What the trade says about tapers. */
export const taperPractice: CheckSet = {
  topic: "taper",
  rows: [
    practiceRow(
      "taper-minutes",
      "time to strip and taper one line",
      "15",
      "min",
      "about a quarter of an hour for a taper",
      () =>
        taper({
          ...cleatLine,
          bare: { fibre: "hmpe", construction: "bareBraid", diameter: 0.00325 },
          join: "strip",
        }).time.value / 60,
    ),
    practiceRow(
      "taper-thin-core",
      "thinnest core of high-modulus HMPE beyond the cleat of a 5 mm covered line under 450 N",
      "2",
      "mm",
      "5 mm covered through the cleat, 2 mm core beyond; shops sell 1.8 and 2 mm",
      () => thinnestOnStrength(450),
      0.25,
    ),
  ],
};
