import { type Band, bandOf } from "../sources/band.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { Surface } from "./surfaces.js";

/** Number of strands in a braided cover: fewer strands are thicker and stand out more. */
export type StrandCount = 8 | 16 | 24;

/** Fibre of the cover. */
export type CoverFibre = "polyester" | "aramidBlend" | "bareCore";

/** A cover in the state in which it is used. */
export interface Cover {
  readonly strands: StrandCount;
  readonly fibre: CoverFibre;
  readonly wet: boolean;
}

const order = "8 strands grip most, 24 least; no printed ratio found";

function factor(low: number, value: number, high: number, status: Coefficient["status"], place: string): Coefficient {
  return coefficient({ value, unit: "1", low, high, status, place });
}

/** Friction of a cover over that of a 24-strand cover of the same fibre. */
export const strandFactors = {
  8: factor(1.1, 1.35, 1.6, "common practice", order),
  16: factor(1, 1.15, 1.3, "common practice", order),
  24: factor(1, 1, 1, "common practice", "the reference"),
} as const satisfies Record<StrandCount, Coefficient>;

/** Friction of a dry fibre over that of dry polyester. Source: ring-pulls, for the upper end of a bare core: 20 lbf over two rings took 30 and 32 lbf. */
export const fibreFactors = {
  polyester: factor(1, 1, 1, "common practice", "the reference"),
  aramidBlend: factor(
    0.95,
    1.15,
    1.4,
    "from memory",
    "aramid on smooth steel 0.12 to 0.20 against polyester 0.12 to 0.15",
  ),
  bareCore: factor(
    0.4,
    0.6,
    1.2,
    "from memory",
    "HMPE on smooth steel 0.05 to 0.11 against polyester 0.12 to 0.15; upper end: published pulls of a thin coated braid over rings took half as much again as the load, and more",
  ),
} as const satisfies Record<CoverFibre, Coefficient>;

/** Friction of a wet cover over that of the same cover dry. */
export const wetFactors = {
  polyester: factor(0.7, 0.9, 1.1, "from memory", "water smooths polyester a little; tests disagree on the sign"),
  aramidBlend: factor(1, 1.15, 1.35, "common practice", "aramid blends grip more when wet"),
  bareCore: factor(0.7, 0.9, 1.1, "from memory", "as polyester"),
} as const satisfies Record<CoverFibre, Coefficient>;

/** A friction coefficient with its range, and the records that it was made from. */
export interface CoverFriction extends Band {
  readonly parts: readonly Coefficient[];
}

/**
 * Friction coefficient of a cover on a surface or a tread.
 *
 *     μ = μ_surface · strand factor · fibre factor · wet factor
 *
 * @param cover  strands, fibre and state
 * @param surface  surface or tread
 * @returns friction coefficient with its range [-]: spreads of the factors are added in squares of their logarithms
 * Valid for clean rope; salt, wear and glaze shift it. The factors are judged, not measured, where their records say so.
 * Source: common practice for the order of covers; each factor is a record of its own. Example: coverFriction({ strands: 24, fibre: "polyester", wet: false }, surfaces.anodised).value → 0.1
 */
export function coverFriction(cover: Cover, surface: Surface): CoverFriction {
  const parts: Coefficient[] = [surface.friction, strandFactors[cover.strands], fibreFactors[cover.fibre]];
  if (cover.wet) parts.push(wetFactors[cover.fibre]);
  const inputs = Object.fromEntries(parts.map((part, index) => [index, part]));
  return { ...bandOf(inputs, (values) => Object.values(values).reduce((product, one) => product * one, 1)), parts };
}

const fibreWords: Readonly<Record<CoverFibre, string>> = {
  polyester: "polyester",
  aramidBlend: "aramid blend",
  bareCore: "HMPE core",
};

/**
 * Words for a cover, for tables and verdicts; a stripped core has no cover strands to count.
 *
 * @param cover  strands, fibre and state
 * @returns text such as `8-strand aramid blend, wet`
 * Source: common practice, words of the trade. Example: coverName({ strands: 8, fibre: "aramidBlend", wet: true }) → "8-strand aramid blend, wet"
 */
export function coverName({ strands, fibre, wet }: Cover): string {
  return `${fibre === "bareCore" ? "stripped" : `${strands}-strand`} ${fibreWords[fibre]}, ${wet ? "wet" : "dry"}`;
}
