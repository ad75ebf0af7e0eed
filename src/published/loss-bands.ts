import { stiffnessLaws } from "../materials/stiffness.js";
import type { Band } from "../sources/band.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";
import { barOf, bearingInputs, handShare, purchaseOf, ropeOf, stiffnessInput, wheelOf } from "./measured-loss.js";

type Law = typeof stiffnessLaws.braidedCover;

/** A measured point. */
export const point = (name: string, measured: number, halfStep: number, band: Band): MeasuredPoint => ({
  name,
  measured,
  halfStep,
  band,
});

/** A single wheel of a groove and a rope, pulled or let go. */
export function overWheel(input: {
  readonly direction?: "hauling" | "easing";
  readonly load: number;
  readonly law: Law;
  readonly rope: Band;
  readonly groove: Band;
  readonly bearing: { readonly friction: Band; readonly share: Band };
}): Band {
  const { direction = "hauling", load, law, rope, groove, bearing } = input;
  return handShare(direction, load, { ...stiffnessInput(law), ...bearing, rope, groove }, (draws) => ({
    rope: ropeOf(law, draws.rope!, draws.stiffness!),
    stations: [wheelOf("wheel", draws.groove!, draws)],
  }));
}

/** Bars one after another, all of one surface. */
export function overBars(input: {
  readonly direction?: "hauling" | "easing";
  readonly load: number;
  readonly law: Law;
  readonly rope: Band;
  readonly bar: Band;
  readonly friction: Readonly<Record<string, Band>>;
  readonly wraps?: readonly number[];
}): Band {
  const { direction = "hauling", load, law, rope, bar, friction, wraps = [Math.PI] } = input;
  const parts = Object.keys(friction);
  return handShare(direction, load, { ...stiffnessInput(law), ...friction, rope, bar }, (draws) => {
    const mu = parts.reduce((product, part) => product * draws[part]!, 1);
    return {
      rope: ropeOf(law, draws.rope!, draws.stiffness!),
      stations: wraps.map((wrap, index) => barOf(`bar ${index + 1}`, draws.bar!, mu, wrap)),
    };
  });
}

/** A size that the source tells. */
export const exactly = (value: number): Band => ({ value, low: value, high: value });

/** A purchase of hemp on plain bearings whose sizes are not told: pull over load. */
export function hempPurchase(parts: number, rope: Band, ratio: Band): Band {
  return handShare(
    "hauling",
    1000,
    { ...stiffnessInput(stiffnessLaws.whiteHemp), ...bearingInputs.plain, rope, ratio },
    (draws) => ({
      rope: ropeOf(stiffnessLaws.whiteHemp, draws.rope!, draws.stiffness!),
      stations: [purchaseOf(parts, wheelOf("sheave", draws.ratio! * draws.rope!, draws))],
    }),
  );
}
