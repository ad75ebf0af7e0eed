import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** A surface over which a rope slides. */
export interface Surface {
  readonly name: string;
  /** Friction coefficient of a smooth 24-strand polyester cover, dry, sliding part only [-]. */
  readonly friction: Coefficient;
}

function tested(name: string, low: number, value: number, high: number, rows: string): Surface {
  const place = `raise-and-lower tests, ${rows}; bending taken off with the 90° and 180° rows`;
  return {
    name,
    friction: coefficient({ value, unit: "1", low, high, status: "published", source: "delaney-2022", place }),
  };
}

function remembered(name: string, low: number, value: number, high: number, place: string): Surface {
  return { name, friction: coefficient({ value, unit: "1", low, high, status: "from memory", place }) };
}

/** Surfaces that do not turn: rings, bars, posts. */
export const surfaces = {
  aluminium: tested("plain aluminium", 0.08, 0.1, 0.16, "50 mm bar"),
  anodised: tested("anodised aluminium", 0.07, 0.1, 0.15, "60 mm bar"),
  galvanised: tested("galvanised steel", 0.12, 0.17, 0.22, "43 mm bar"),
  polishedSteel: remembered("polished steel", 0.08, 0.12, 0.18, "polyester rope on smooth steel, handbook range"),
} as const satisfies Record<string, Surface>;

/** Name of a surface that does not turn. */
export type SurfaceName = keyof typeof surfaces;

/** Treads of ratchet sheaves: what the rope lies on when the sheave is locked. */
export const treads = {
  smooth: remembered("smooth tread", 0.1, 0.15, 0.2, "as an anodised ring, a little worn"),
  ribbed: remembered("ribbed soft tread", 0.18, 0.27, 0.4, "no printed value found; rubber-like ribs"),
  faceted: remembered("faceted tread", 0.2, 0.32, 0.5, "no printed value found; rope is bent at each facet"),
  toothed: remembered("toothed metal tread", 0.25, 0.42, 0.65, "no printed value found; teeth bite between strands"),
} as const satisfies Record<string, Surface>;

/** Name of a tread. */
export type TreadName = keyof typeof treads;
