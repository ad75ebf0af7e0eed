import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { FibreName } from "./fibres.js";

/** How a rope under load bears being bent round a sheave or pin. */
export interface BendCurve {
  readonly name: string;
  /** Diameter of the bend over that of the rope at which half the strength is left [-]. */
  readonly halfRatio: Coefficient;
  /** How fast the loss falls with a larger bend [-]. */
  readonly exponent: Coefficient;
}

const remembered = (value: number, low: number, high: number, place: string) =>
  coefficient({ value, unit: "1", low, high, status: "from memory", place });

/** Curves of strength left at a bend. A pull to breaking over pins of two sizes would narrow each. */
export const bendCurves = {
  wire: {
    name: "wire rope",
    halfRatio: coefficient({
      value: 1,
      unit: "1",
      low: 0.8,
      high: 1.3,
      status: "published",
      source: "wire-rope-training",
      place: "half of the strength at a ratio of 1; spread judged",
    }),
    exponent: remembered(0.8, 0.75, 1, "set so that a ratio of 40 costs up to a twentieth, as the same page says"),
  },
  tough: {
    name: "polyester, polyamide, polypropylene, HMPE",
    halfRatio: remembered(1, 0.6, 1.6, "about half of the strength over a pin as thick as the rope: sling practice"),
    exponent: remembered(1.2, 0.9, 1.5, "about 0.75 to 0.85 left at a ratio of 3, 0.90 to 0.95 at 8: sling practice"),
  },
  stiff: {
    name: "aramid, LCP, PBO",
    halfRatio: remembered(2, 1, 3.5, "sheaves two to two and a half times as large as for other fibres are asked for"),
    exponent: remembered(1.2, 0.9, 1.5, "as for other fibres"),
  },
} as const satisfies Record<string, BendCurve>;

/** What a rope that is bent is made of. */
export type BentMaterial = FibreName | "wire";

/** Curve of each material. */
export const bendCurveOf: Readonly<Record<BentMaterial, BendCurve>> = {
  wire: bendCurves.wire,
  polyamide: bendCurves.tough,
  polyester: bendCurves.tough,
  polypropylene: bendCurves.tough,
  hmpe: bendCurves.tough,
  hmpeHighModulus: bendCurves.tough,
  aramid: bendCurves.stiff,
  aramidHighModulus: bendCurves.stiff,
  lcp: bendCurves.stiff,
  pbo: bendCurves.stiff,
};
