import { bearings } from "../materials/bearings.js";
import { chafeRate, chafeVerdict } from "../materials/chafe.js";
import { type Cover, type CoverFibre, coverFriction, type StrandCount } from "../materials/covers.js";
import { fraying } from "../materials/rubbing.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { type Surface, surfaces, type TreadName, treads } from "../materials/surfaces.js";
import { wearVerdict } from "../materials/wear.js";
import { stiffnessOf } from "../reeving/bending.js";
import { prepareLine } from "../reeving/line.js";
import type { Sheave } from "../reeving/station.js";
import { practiceRow } from "./published-row.js";
import type { CheckSet } from "./row.js";

const places: readonly Surface[] = [...Object.values(surfaces), ...Object.values(treads)];
const counts: readonly StrandCount[] = [8, 16, 24];
const braids: readonly CoverFibre[] = ["polyester", "aramidBlend"];
const states = [false, true];

/** Part of a list for which something is true [%]. */
function share<Item>(list: readonly Item[], isTrue: (item: Item) => boolean): number {
  return (100 * list.filter(isTrue).length) / list.length;
}

/** Covers of every strand count in every fibre and state, on every surface and tread. */
const settings = places.flatMap((place) =>
  braids.flatMap((fibre) => states.map((wet) => ({ place, fibre, wet }) as const)),
);

/** Strand count that stands at a place in the order of grip everywhere; no number when the places disagree. */
function strandsAt(rank: number): number {
  const found = settings.map(({ place, fibre, wet }) => {
    const grip = (strands: StrandCount) => coverFriction({ strands, fibre, wet }, place).value;
    return [...counts].sort((one, other) => grip(other) - grip(one))[rank];
  });
  return new Set(found).size === 1 ? found[0]! : Number.NaN;
}

const grip = (fibre: CoverFibre, wet: boolean, place: Surface, strands: StrandCount) =>
  coverFriction({ strands, fibre, wet }, place).value;

const lasts = (tread: TreadName, strands: StrandCount, fibre: CoverFibre) =>
  wearVerdict({ tread, cover: { strands, fibre, wet: false } }).outcome;

/** The one strand count that lasts on toothed metal; no number when it is none or several. */
function strandsOnTeeth(): number {
  const good = counts.filter((strands) => lasts("toothed", strands, "polyester") === "enough");
  return good.length === 1 ? good[0]! : Number.NaN;
}

const pairs = counts.flatMap((strands) => braids.map((fibre): Omit<Cover, "wet"> => ({ strands, fibre })));

const block: Sheave = {
  kind: "sheave",
  name: "block",
  diameter: 0.055,
  wrapAngle: 2.8,
  pinRadius: 0.0275 * bearings.ball.radiusShare.value,
  bearingFriction: bearings.ball.friction.value,
};
const rope = { diameter: 0.007, stiffness: stiffnessOf(stiffnessLaws.braidedCover) };

/** Hauling force through a ratchet over that through the same block without one, whichever tread. */
function haulingThroughRatchet(): number {
  const plain = prepareLine({ rope, stations: [block] }).handForces(200).hauling;
  const ratios = Object.values(treads).map(
    ({ friction }) =>
      prepareLine({ rope, stations: [{ ...block, kind: "ratchet", treadFriction: friction.value }] }).handForces(200)
        .hauling / plain,
  );
  return Math.max(...ratios);
}

/** Rules of the trade about covers, treads and lines that touch. */
export const gripPractice: CheckSet = {
  topic: "grip",
  rows: [
    practiceRow("grips-most", "strands of the cover that grips most everywhere", "8", "1", "8 grip most", () =>
      strandsAt(0),
    ),
    practiceRow("grips-between", "strands of the cover in between", "16", "1", "16 lie between", () => strandsAt(1)),
    practiceRow("grips-least", "strands of the smoothest cover", "24", "1", "24 are smooth", () => strandsAt(2)),
    practiceRow(
      "wet-aramid",
      "surfaces and treads on which a wet aramid blend grips more than a dry one",
      "100",
      "%",
      "a wet aramid blend grips more, everywhere",
      () =>
        share(places, (place) =>
          counts.every(
            (strands) => grip("aramidBlend", true, place, strands) > grip("aramidBlend", false, place, strands),
          ),
        ),
    ),
    practiceRow(
      "bare-core",
      "surfaces and treads on which a stripped HMPE core runs freest, wet and dry",
      "100",
      "%",
      "a stripped core runs freest, everywhere",
      () =>
        share(places, (place) =>
          states.every((wet) =>
            braids.every(
              (fibre) => grip("bareCore", wet, place, 24) < Math.min(...counts.map((n) => grip(fibre, wet, place, n))),
            ),
          ),
        ),
    ),
    practiceRow(
      "hauling",
      "hauling force through a ratchet over that through the same block without one",
      "1.00",
      "1",
      "a ratchet holds while easing and turns while hauling",
      haulingThroughRatchet,
    ),
    practiceRow(
      "toothed-smooth",
      "strands of the polyester cover that lasts on toothed metal",
      "24",
      "1",
      "toothed metal wants a smooth cover",
      strandsOnTeeth,
    ),
    practiceRow(
      "toothed-coarse",
      "coarse covers (8 and 16 strands) on toothed metal that are judged ruinous",
      "100",
      "%",
      "coarse on toothed ruins the rope",
      () =>
        share(
          pairs.filter(({ strands }) => strands < 24),
          ({ strands, fibre }) => lasts("toothed", strands, fibre) === "not enough",
        ),
    ),
    practiceRow(
      "softer-coarse",
      "8-strand covers that last on a ribbed soft tread",
      "100",
      "%",
      "a coarse cover belongs on a softer tread",
      () => share(braids, (fibre) => lasts("ribbed", 8, fibre) === "enough"),
    ),
    practiceRow("smooth-all", "covers that last on a smooth tread", "100", "%", "a smooth tread spares any cover", () =>
      share(pairs, ({ strands, fibre }) => lasts("smooth", strands, fibre) === "enough"),
    ),
    practiceRow(
      "aramid-aramid",
      "pairs of aramid running on aramid that are judged to fray fast",
      "100",
      "%",
      "aramid running on aramid frays fast",
      () =>
        share(
          [{ first: "aramid", second: "aramid" } as const],
          (lines) => chafeVerdict(lines).outcome === "not enough",
        ),
    ),
    practiceRow(
      "polyester-beside",
      "states of friction in which polyester beside aramid stays smooth: middle and bad end",
      "100",
      "%",
      "polyester beside it stays smooth",
      () => {
        const rate = chafeRate({ fibre: "polyester", against: "aramid" });
        return share([rate.value, rate.high], (one) => one <= fraying.low);
      },
    ),
  ],
};
