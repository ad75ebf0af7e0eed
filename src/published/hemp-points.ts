import { stiffnessLaws } from "../materials/stiffness.js";
import { convert } from "../quantity/parse.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";
import { exactly, hempPurchase, overBars, overWheel, point } from "./loss-bands.js";
import { bearingInputs, untoldSizes } from "./measured-loss.js";

const { whiteHemp } = stiffnessLaws;
const { cord, fallRope, fallRatio, modelRope, modelRatio } = untoldSizes;
const pounds = (value: number) => convert(value, "lbf", "N");

/** A wooden sheave under four loads. */
export const ballSheave = (): MeasuredPoint[] =>
  [7, 14, 21, 28].map((load) =>
    point(
      `pull over load, wooden sheave, ${load} lbf`,
      1 + 0.5 / 7,
      0.25 / load,
      overWheel({
        load: pounds(load),
        law: whiteHemp,
        rope: cord,
        groove: exactly(convert(3.5, "inch", "m")),
        bearing: bearingInputs.plain,
      }),
    ),
  );

/** Hemp over two iron studs. */
export const ballStuds = (): MeasuredPoint[] => [
  point(
    "pull over load, hemp over two iron studs",
    47 / 14,
    0.5 / 14,
    overBars({
      load: pounds(14),
      law: whiteHemp,
      rope: cord,
      bar: exactly(convert(0.6, "inch", "m")),
      friction: { surface: untoldSizes.hempOnIron },
      wraps: [Math.PI / 2, Math.PI / 2],
    }),
  ),
];

/** Working tackles of one to six parts. */
export const receipts = (): MeasuredPoint[] =>
  [1.1, 0.62, 0.45, 0.37, 0.32, 0.28].map((pull, index) =>
    point(
      `pull over load, ${index + 1} ${index === 0 ? "part" : "parts"}`,
      pull,
      index === 0 ? 0.05 : 0.005,
      hempPurchase(index + 1, fallRope, fallRatio),
    ),
  );

/** Test blocks at their best. */
export const lineham = (): MeasuredPoint[] =>
  (
    [
      [1, 1.195, 0.0005],
      [2, 1 / 1.52, 0.005 / 1.52 ** 2],
      [4, 1 / 2.25, 0.005 / 2.25 ** 2],
    ] as const
  ).map(([parts, pull, halfStep]) =>
    point(`pull over load, block of ${parts}`, pull, halfStep, hempPurchase(parts, modelRope, modelRatio)),
  );
