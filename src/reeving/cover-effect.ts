import type { Bearing } from "../materials/bearings.js";
import { type Cover, type CoverFriction, coverFriction } from "../materials/covers.js";
import { type StiffnessLaw, stiffnessLaws } from "../materials/stiffness.js";
import { type TreadName, treads } from "../materials/surfaces.js";
import { within } from "../quantity/guard.js";
import { type Band, bandsOf } from "../sources/band.js";
import type { Stiffness } from "./bending.js";
import { type Line, prepareLine } from "./line.js";
import { capstanRatio } from "./sliding.js";

/** What a cover, a tread and a bearing bring into a line, as plain numbers. */
export interface LineFriction {
  /** Friction of the cover on the tread [-]. */
  readonly treadFriction: number;
  /** Friction of the bearing at its radius [-]. */
  readonly bearingFriction: number;
  /** That radius over the radius of the sheave [-]. */
  readonly radiusShare: number;
  readonly stiffness: Stiffness;
}

/** One line, to be tried with several covers. */
export interface CoverTrial {
  /** Makes the line from the numbers of a cover, a tread and a bearing. */
  readonly lineWith: (friction: LineFriction) => Line;
  readonly covers: readonly Cover[];
  readonly tread: TreadName;
  readonly bearing: Bearing;
  readonly load: number;
  /** Pull that drags the loose tail to the last station, hand open [N]; none when absent. */
  readonly tailDrag?: Band;
}

/** What one cover does to a line. */
export interface CoverEffect {
  readonly cover: Cover;
  readonly tread: TreadName;
  readonly friction: CoverFriction;
  /** Hand force while the line comes in [N]. */
  readonly hauling: Band;
  /** Hand force while the line goes out [N]. */
  readonly easing: Band;
  /** Least load at which the line goes out by itself and takes its tail along [N]. */
  readonly runOutLoad: Band;
  /** Hold ratio of the treads of all ratchets in the line [-]; 1 without one. */
  readonly holdRatio: Band;
}

/** Bands of one trial: the cover on its tread, the bearing, the stiffness of the rope. */
function causes(cover: Cover, { tread, bearing }: Pick<CoverTrial, "tread" | "bearing">) {
  const rope: StiffnessLaw = cover.fibre === "bareCore" ? stiffnessLaws.bareCore : stiffnessLaws.braidedCover;
  const { tensionTerm, constantTerm, diameterTerm } = rope;
  const { friction: bearingFriction, radiusShare } = bearing;
  const treadFriction: Band = coverFriction(cover, treads[tread]);
  return { treadFriction, bearingFriction, radiusShare, tensionTerm, constantTerm, diameterTerm };
}

const nothing: Band = { value: 0, low: 0, high: 0 };

/** A force is never below nothing, however wide its range. */
function notBelowNothing({ value, low, high }: Band): Band {
  return { value, low: Math.max(0, low), high };
}

/** The line with its tail lying loose behind the last station: it has to be dragged along. */
function withTail(line: Line, drag: number): Line {
  return { ...line, stations: [...line.stations, { kind: "measured", name: "loose tail", tensionRatio: 1, drag }] };
}

/** Hold ratios of the ratchets of a line, one after the other. */
function holdOf({ stations }: Line): number {
  return stations.reduce(
    (product, one) =>
      one.kind === "ratchet"
        ? product * capstanRatio({ frictionCoefficient: one.treadFriction, wrapAngle: one.wrapAngle })
        : product,
    1,
  );
}

/**
 * The same line with one cover after the other: what the hand hauls and holds, what the ratchet holds, when it runs out.
 *
 *     each result from the ranges of cover, tread, bearing and stiffness, added in squares
 *
 * @param lineWith  makes the line from friction and stiffness, such as `(friction) => ({ rope, stations })`
 * @param covers  covers to try; a stripped core bends as a stripped core
 * @param tread  tread of its ratchets
 * @param bearing  bearing of its sheaves
 * @param load  load at the end of the line [N], 0 to 1e6
 * @param tailDrag  pull that drags the loose tail along when the hand is open [N], 0 or more; the treads multiply it
 * @returns one effect for each cover, in the given order: forces [N] and hold ratio [-] with their ranges
 * @throws ValueError for an impossible load, and whatever the line refuses
 * Valid for clean covers of one diameter. Ratchets inside tackles count in the forces, not in the hold ratio.
 * Source: statics; the ranges are those of the records. Example: coverEffects({ lineWith: ({ treadFriction, bearingFriction, radiusShare, stiffness }) => ({ rope: { diameter: 0.007, stiffness }, stations: [{ kind: "ratchet", name: "ratchet", diameter: 0.055, wrapAngle: 2.79, pinRadius: 0.0275 * radiusShare, bearingFriction, treadFriction }] }), covers: [{ strands: 8, fibre: "polyester", wet: false }], tread: "faceted", bearing: bearings.ball, load: 200 })[0].holdRatio.value → 3.34
 */
export function coverEffects({
  lineWith,
  covers,
  tread,
  bearing,
  load,
  tailDrag = nothing,
}: CoverTrial): CoverEffect[] {
  within("loadTension", load);
  return covers.map((cover) => {
    const inputs = { ...causes(cover, { tread, bearing }), tail: tailDrag };
    const bands = bandsOf(inputs, ({ treadFriction, bearingFriction, radiusShare, tail, ...stiffness }) => {
      const line = lineWith({ treadFriction, bearingFriction, radiusShare, stiffness });
      const { hauling, easing } = prepareLine(line).handForces(load);
      return { hauling, easing, runOutLoad: prepareLine(withTail(line, tail)).runOutLoad(), holdRatio: holdOf(line) };
    });
    return {
      cover,
      tread,
      friction: coverFriction(cover, treads[tread]),
      ...bands,
      easing: notBelowNothing(bands.easing),
      runOutLoad: notBelowNothing(bands.runOutLoad),
    };
  });
}
