import { fibreFactors } from "../materials/covers.js";
import { ropeEnds } from "../materials/ends.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { surfaces } from "../materials/surfaces.js";
import { convert } from "../quantity/parse.js";
import type { Band } from "../sources/band.js";
import type { SourceId } from "../sources/bibliography.js";
import type { MeasuredPoint } from "../uncertainty/coverage.js";
import {
  barOf,
  bearingInputs,
  handShare,
  purchaseOf,
  ropeOf,
  stiffnessInput,
  untoldSizes,
  wheelOf,
} from "./measured-loss.js";
import { once } from "./once.js";
import { raiseLowerTests } from "./raise-and-lower.js";

/** What one person measured, with the bands foretold for it. */
export interface MeasuredSet {
  readonly id: string;
  readonly name: string;
  readonly source: SourceId;
  readonly place: string;
  readonly points: readonly MeasuredPoint[];
}

const { whiteHemp, braidedCover, bareCore } = stiffnessLaws;
const pounds = (value: number) => convert(value, "lbf", "N");
const point = (name: string, measured: number, halfStep: number, band: Band): MeasuredPoint => ({
  name,
  measured,
  halfStep,
  band,
});

/** A single wheel of a groove and a rope, pulled or let go. */
function overWheel(input: {
  readonly direction?: "hauling" | "easing";
  readonly load: number;
  readonly law: typeof braidedCover;
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
function overBars(input: {
  readonly direction?: "hauling" | "easing";
  readonly load: number;
  readonly law: typeof braidedCover;
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

const exactly = (value: number): Band => ({ value, low: value, high: value });
const { cord, fallRope, fallRatio, modelRope, modelRatio, rescueSheave, hookBar, climbingRope, edge } = untoldSizes;

/** A purchase of hemp on plain bearings whose sizes are not told: pull over load. */
function hempPurchase(parts: number, rope: Band, ratio: Band): Band {
  return handShare("hauling", 1000, { ...stiffnessInput(whiteHemp), ...bearingInputs.plain, rope, ratio }, (draws) => ({
    rope: ropeOf(whiteHemp, draws.rope!, draws.stiffness!),
    stations: [purchaseOf(parts, wheelOf("sheave", draws.ratio! * draws.rope!, draws))],
  }));
}

const ballSheave = (): MeasuredPoint[] =>
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

const ballStuds = (): MeasuredPoint[] => [
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

const receipts = (): MeasuredPoint[] =>
  [1.1, 0.62, 0.45, 0.37, 0.32, 0.28].map((pull, index) =>
    point(
      `pull over load, ${index + 1} ${index === 0 ? "part" : "parts"}`,
      pull,
      index === 0 ? 0.05 : 0.005,
      hempPurchase(index + 1, fallRope, fallRatio),
    ),
  );

const lineham = (): MeasuredPoint[] =>
  (
    [
      [1, 1.195, 0.0005],
      [2, 1 / 1.52, 0.005 / 1.52 ** 2],
      [4, 1 / 2.25, 0.005 / 2.25 ** 2],
    ] as const
  ).map(([parts, pull, halfStep]) =>
    point(`pull over load, block of ${parts}`, pull, halfStep, hempPurchase(parts, modelRope, modelRatio)),
  );

const thinBars = (): MeasuredPoint[] =>
  raiseLowerTests
    .filter(({ bar }) => bar.endsWith("mm steel"))
    .flatMap(({ bar, barDiameter, raise, lower }) =>
      (["hauling", "easing"] as const).map((direction) =>
        point(
          `${direction === "hauling" ? "raising" : "lowering"} over load, ${bar}`,
          (direction === "hauling" ? raise : lower) / 75,
          0.5 / 75,
          overBars({
            direction,
            load: convert(75, "kgf", "N"),
            law: braidedCover,
            rope: exactly(0.011),
            bar: exactly(barDiameter!),
            friction: { surface: surfaces.polishedSteel.friction },
          }),
        ),
      ),
    );

const timber = (): MeasuredPoint[] =>
  raiseLowerTests
    .filter(({ bar }) => bar.endsWith("timber"))
    .flatMap(({ bar, raise, lower }) =>
      (["hauling", "easing"] as const).map((direction) =>
        point(
          `${direction === "hauling" ? "raising" : "lowering"} over load, ${bar}`,
          (direction === "hauling" ? raise : lower) / 75,
          0.5 / 75,
          overBars({
            direction,
            load: convert(75, "kgf", "N"),
            law: braidedCover,
            rope: exactly(0.011),
            bar: edge,
            friction: { surface: untoldSizes.ropeOnTimber },
            wraps: [Math.PI / 2, Math.PI / 2],
          }),
        ),
      ),
    );

const roller = (): MeasuredPoint[] => [
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

const rescuePulleys = (): MeasuredPoint[] => {
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

const prattley = (): MeasuredPoint[] => [
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

const stockman = (): MeasuredPoint[] =>
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

const canyoning = (): MeasuredPoint[] =>
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

const hmpeKnots = (): MeasuredPoint[] =>
  (
    [
      ["figure of eight", 0.33],
      ["bowline", 0.33],
      ["taut-line hitch", 0.39],
      ["double stevedore", 0.49],
      ["cow hitch", 0.57],
    ] as const
  ).map(([knot, retained]) => point(`strength left in HMPE, ${knot}`, retained, 0.005, ropeEnds.hmpeKnot.retained));

interface LazySet extends Omit<MeasuredSet, "points"> {
  readonly points: () => readonly MeasuredPoint[];
}

const lazySets: readonly LazySet[] = [
  {
    id: "ball-sheave",
    name: "Wooden sheave, hemp cord",
    source: "ball-mechanics",
    place: "art. 168",
    points: once(ballSheave),
  },
  {
    id: "ball-studs",
    name: "Hemp over iron studs",
    source: "ball-mechanics",
    place: "art. 156",
    points: once(ballStuds),
  },
  {
    id: "receipts",
    name: "Tackles of 1 to 6 parts",
    source: "workshop-receipts",
    place: "taps, part 6",
    points: once(receipts),
  },
  {
    id: "lineham",
    name: "Test blocks",
    source: "lineham-mechanics",
    place: "Appendix II, by experiment",
    points: once(lineham),
  },
  {
    id: "thin-bars",
    name: "Low-stretch rope over thin steel bars",
    source: "delaney-2022",
    place: "p. 88",
    points: once(thinBars),
  },
  { id: "timber", name: "Low-stretch rope over timber", source: "delaney-2022", place: "p. 88", points: once(timber) },
  {
    id: "roller",
    name: "Cord on a pine roller",
    source: "knot-guild-roller",
    place: "first post: it holds at 14 and slips at 19",
    points: once(roller),
  },
  {
    id: "rescue",
    name: "Rescue pulleys and karabiners",
    source: "delaney-devices",
    place: "p. 90; 1 kN",
    points: once(rescuePulleys),
  },
  {
    id: "prattley",
    name: "Wheel and bar, 9 mm rope",
    source: "prattley-2016",
    place: "averages of five pulls",
    points: once(prattley),
  },
  {
    id: "stockman",
    name: "Bare HMPE over karabiners",
    source: "stockman-tests",
    place: "results",
    points: once(stockman),
  },
  {
    id: "canyon",
    name: "Raising and lowering, 11 lbf",
    source: "canyon-friction",
    place: "readings at the anchor, less the load",
    points: once(canyoning),
  },
  {
    id: "hmpe-knots",
    name: "Knots in HMPE cord",
    source: "hmpe-knot-tests",
    place: "quoted tests",
    points: once(hmpeKnots),
  },
];

/**
 * The measured sets that stand against the bands, with the bands foretold for them.
 *
 * No point is among them that set the spread of a record: bars of 43 to 60 mm set the bending of braided rope and the
 * friction of rings, and concrete has no record that another source set.
 *
 * @returns sets with their points
 * Example: measuredSets().length > 6 → true
 */
export function measuredSets(): MeasuredSet[] {
  return lazySets.map((set) => ({ ...set, points: set.points() }));
}
