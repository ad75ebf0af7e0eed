import { enduranceTime } from "../crew/endurance.js";
import { ratesOf, steppedEndurance } from "../crew/fatigue.js";
import type { MuscleGroup } from "../materials/people-fatigue.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

const page = "fatigue-validation-page";
const shares = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
/** Step of the printed integrations [s]. */
const step = 0.02;

const words: Readonly<Record<MuscleGroup, string>> = { hand: "grip", elbow: "elbow", general: "all joints" };

const law: Readonly<Record<MuscleGroup, string>> = {
  hand: "1367 448 233 147 102 76.4 59.6 48.1 39.8",
  elbow: "2916 630 257 136 83.2 55.6 39.5 29.4 22.7",
  general: "2093 531 238 135 86.5 60.3 44.4 34.1 27.0",
};

const model: Readonly<Record<MuscleGroup, string>> = {
  hand: "1385 473 258 161 106 69.6 44.4 25.8 11.4",
  elbow: "2796 566 293 179 116 75.8 48.1 27.8 12.3",
  general: "2045 517 272 167 108 71.0 45.1 26.1 11.5",
};

const errors: Readonly<Record<MuscleGroup, string>> = {
  hand: "1 6 11 10 3 -9 -25 -46 -71",
  elbow: "-4 -10 14 31 39 36 22 -6 -46",
  general: "-2 -3 14 24 25 18 2 -23 -57",
};

const stepped = (group: MuscleGroup, share: number) => steppedEndurance({ share, ...ratesOf(group), step });

function rowsOf(
  printed: Readonly<Record<MuscleGroup, string>>,
  id: string,
  quantity: (who: string, percent: number) => string,
  unit: string,
  place: string,
  compute: (group: MuscleGroup, share: number) => number,
): CheckRow[] {
  return (Object.keys(printed) as MuscleGroup[]).flatMap((group) =>
    printed[group].split(" ").map((digits, index) => {
      const share = shares[index]!;
      const percent = Math.round(100 * share);
      const what = quantity(words[group], percent);
      return publishedRow(page, `${id}-${group}-${percent}`, what, digits, unit, place, () => compute(group, share));
    }),
  );
}

/** Endurance times by law and by model, and what the model errs. */
export const crewEndurance: CheckSet = {
  topic: "crew",
  rows: [
    ...rowsOf(
      law,
      "law",
      (who, percent) => `endurance time by the power law, ${who}, ${percent} % of maximum`,
      "s",
      "table of the law of 2010",
      (group, share) => enduranceTime({ group, share }),
    ),
    ...rowsOf(
      model,
      "model",
      (who, percent) => `endurance time of the three-compartment model, ${who}, ${percent} % of maximum`,
      "s",
      "table of the fits of 2012, integrated at 0.02 s",
      stepped,
    ),
    ...rowsOf(
      errors,
      "error",
      (who, percent) => `error of the model against the power law, ${who}, ${percent} % of maximum`,
      "%",
      "table of the fits of 2012, in brackets",
      (group, share) => 100 * (stepped(group, share) / enduranceTime({ group, share }) - 1),
    ),
  ],
};
