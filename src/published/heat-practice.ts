import type { HeatFibre } from "../materials/thermal.js";
import type { Outcome, Verdict } from "../quantity/verdict.js";
import { handVerdict, touchVerdict } from "../rope/heat-verdict.js";
import { sunlightRetained } from "../rope/sunlight.js";
import { practiceRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

const marks = { enough: 1, "can't tell": 0.5, "not enough": 0 } as const satisfies Record<Outcome, number>;
const mark = ({ outcome }: Verdict) => marks[outcome];
const scale = "1 it stands, 0 it does not";
const within = 0.25;

const hot = { value: 473.15, low: 473.15, high: 473.15 } as const;

function touched(fibre: HeatFibre, printed: "0" | "1", words: string, place: string): CheckRow {
  return practiceRow(
    `touch-${words.replaceAll(" ", "-")}`,
    `${words} touched at 200 °C: ${scale}`,
    printed,
    "1",
    place,
    () => mark(touchVerdict({ fibre, temperature: hot })),
    within,
  );
}

const season = 60;

const rows: readonly CheckRow[] = [
  touched("polyester", "0", "polyester", "it melts at a touch of 200 °C; the damage band is set with this in mind"),
  touched("aramidBlend", "1", "aramid blend", "a cover with aramid resists"),
  touched("pbo", "1", "pbo", "it is unchanged"),
  practiceRow(
    "sun-pbo",
    `PBO after ${season} days in the sun, keeps half its strength at best: 1 yes, 0 no`,
    "0",
    "1",
    "PBO loses its strength in sunlight",
    () => (sunlightRetained({ fibre: "pbo", days: season }).high >= 0.5 ? 1 : 0),
    within,
  ),
  practiceRow(
    "hand-let-go",
    `bare hand that takes 150 N out of a sheet running 4 m/s for 2 s: ${scale}`,
    "0",
    "1",
    "a sheet that runs away is let go, not stopped with the hand",
    () => mark(handVerdict({ fibre: "polyester", ropeDiameter: 0.008, gloved: false, speed: 4, duration: 2 }, 150)),
    within,
  ),
];

/** What the trade knows about heat, beside the models. */
export const heatPractice: CheckSet = { topic: "heat", rows };
