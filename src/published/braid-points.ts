import { fibreFactors } from "../materials/covers.js";
import { ropeEnds } from "../materials/ends.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { surfaces } from "../materials/surfaces.js";
import { convert } from "../quantity/parse.js";
import type { Band } from "../sources/band.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";
import { exactly, overBars, overWheel, point } from "./loss-bands.js";
import { bearingInputs, untoldSizes } from "./measured-loss.js";
import { type RaiseLowerTest, raiseLowerTests } from "./raise-and-lower.js";

const { braidedCover, bareCore } = stiffnessLaws;
const { rescueSheave, hookBar, climbingRope, edge } = untoldSizes;
const pounds = (value: number) => convert(value, "lbf", "N");

/** Both ways of each printed test over bars of a kind, as the bands foretell them. */
function bothWays(
  kind: string,
  over: (test: RaiseLowerTest) => Pick<Parameters<typeof overBars>[0], "bar" | "friction" | "wraps">,
): MeasuredPoint[] {
  return raiseLowerTests
    .filter(({ bar }) => bar.endsWith(kind))
    .flatMap((test) =>
      (["hauling", "easing"] as const).map((direction) =>
        point(
          `${direction === "hauling" ? "raising" : "lowering"} over load, ${test.bar}`,
          (direction === "hauling" ? test.raise : test.lower) / 75,
          0.5 / 75,
          overBars({
            direction,
            load: convert(75, "kgf", "N"),
            law: braidedCover,
            rope: exactly(0.011),
            ...over(test),
          }),
        ),
      ),
    );
}

/** Raising and lowering over thin steel bars. */
export const thinBars = (): MeasuredPoint[] =>
  bothWays("mm steel", ({ barDiameter }) => ({
    bar: exactly(barDiameter!),
    friction: { surface: surfaces.polishedSteel.friction },
  }));

/** Raising and lowering over sawn timber. */
export const timber = (): MeasuredPoint[] =>
  bothWays("timber", () => ({
    bar: edge,
    friction: { surface: untoldSizes.ropeOnTimber },
    wraps: [Math.PI / 2, Math.PI / 2],
  }));

/** One and a half turns on a roller: it held at 14 and slipped at 19. */
export const roller = (): MeasuredPoint[] => [
  point(
    "load over hold, one and a half turns on a pine roller",
    16.5,
    2.5,
    invert(
      overBars({
        direction: "easing",
        load: 20,
        law: braidedCover,
        rope: exactly(0.004),
        bar: { value: 0.04, low: 0.02, high: 0.07 },
        friction: { surface: untoldSizes.ropeOnTimber },
        wraps: [3 * Math.PI],
      }),
    ),
  ),
];

const invert = ({ value, low, high }: Band): Band => ({ value: 1 / value, low: 1 / high, high: 1 / low });

/** Pull that lifts one kilonewton over rescue pulleys, as printed. */
const pulleyPulls = ["1.10", "1.12", "1.15", "1.16", "1.25", "1.25", "1.14", "1.35", "1.07"] as const;

/** Pull that lifts one kilonewton over rescue pulleys and karabiners. */
export const rescuePulleys = (): MeasuredPoint[] => {
  const wheel = overWheel({
    load: 1000,
    law: braidedCover,
    rope: exactly(0.011),
    groove: rescueSheave,
    bearing: bearingInputs.untold,
  });
  const bars = (wraps: readonly number[]) =>
    overBars({
      load: 1000,
      law: braidedCover,
      rope: exactly(0.011),
      bar: hookBar,
      friction: { surface: surfaces.anodised.friction },
      wraps,
    });
  return [
    ...pulleyPulls.map((pull, index) => point(`pull over load, pulley ${index + 1}`, Number(pull), 0.005, wheel)),
    point("pull over load, one karabiner", 1.69, 0.005, bars([Math.PI])),
    point("pull over load, two karabiners", 1.86, 0.005, bars([Math.PI / 2, Math.PI / 2])),
  ];
};

/** A wheel and a bar under 0.1 kN. */
export const prattley = (): MeasuredPoint[] => [
  point(
    "pull over load, 25 mm wheel",
    1.2,
    0.1,
    overWheel({
      load: 100,
      law: braidedCover,
      rope: exactly(0.009),
      groove: exactly(0.025),
      bearing: bearingInputs.untold,
    }),
  ),
  point(
    "pull over load, 10 mm bar",
    1.88,
    0.1,
    overBars({
      load: 100,
      law: braidedCover,
      rope: exactly(0.009),
      bar: exactly(0.01),
      friction: { surface: surfaces.anodised.friction },
    }),
  ),
];

/** A bare braid over one and two bars. */
export const stockman = (): MeasuredPoint[] =>
  (
    [
      ["one steel karabiner", 60, [Math.PI]],
      ["two steel karabiners", 48, [Math.PI / 2, Math.PI / 2]],
    ] as const
  ).map(([words, percent, wraps]) =>
    point(
      `pull over load, bare HMPE over ${words}`,
      100 / percent,
      50 / percent ** 2,
      overBars({
        load: pounds(5.32),
        law: bareCore,
        rope: exactly(0.0032),
        bar: exactly(0.01),
        friction: { surface: surfaces.polishedSteel.friction, fibre: fibreFactors.bareCore },
        wraps,
      }),
    ),
  );

/** Raising and lowering over a pulley and a karabiner. */
export const canyoning = (): MeasuredPoint[] =>
  (
    [
      ["pulley", "hauling", 13],
      ["pulley", "easing", 8],
      ["karabiner", "hauling", 23],
      ["karabiner", "easing", 5],
    ] as const
  ).map(([thing, direction, hand]) => {
    const common = { direction, load: pounds(11), law: braidedCover, rope: climbingRope };
    return point(
      `${direction === "hauling" ? "raising" : "lowering"} over load, ${thing}`,
      hand / 11,
      1 / 11,
      thing === "pulley"
        ? overWheel({ ...common, groove: rescueSheave, bearing: bearingInputs.untold })
        : overBars({ ...common, bar: hookBar, friction: { surface: surfaces.anodised.friction } }),
    );
  });

/** Strength that knots leave in HMPE cord; the record of such knots was set without them. */
export const hmpeKnots = (): MeasuredPoint[] =>
  (
    [
      ["figure of eight", 0.33],
      ["bowline", 0.33],
      ["taut-line hitch", 0.39],
      ["double stevedore", 0.49],
      ["cow hitch", 0.57],
    ] as const
  ).map(([knot, retained]) => point(`strength left in HMPE, ${knot}`, retained, 0.005, ropeEnds.anyKnot.retained.hmpe));
