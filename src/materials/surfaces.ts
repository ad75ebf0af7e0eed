import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** A surface over which a rope slides. */
export interface Surface {
  readonly name: string;
  /** Friction coefficient of a smooth 24-strand polyester cover, dry, sliding part only [-]. */
  readonly friction: Coefficient;
}

/** No sliding part is printed for rope on a ring: each is judged, from the source that its place names or from handbooks. */
function judged(name: string, low: number, value: number, high: number, place: string): Surface {
  return { name, friction: coefficient({ value, unit: "1", low, high, status: "from memory", place }) };
}

function onBar(bar: string): string {
  return `judged from published raise-and-lower tests on a ${bar} bar, rounded, with bending taken off; not itself printed`;
}

/** Surfaces that do not turn: rings, bars, posts. */
export const surfaces = {
  aluminium: judged("plain aluminium", 0.08, 0.1, 0.16, onBar("50 mm")),
  anodised: judged("anodised aluminium", 0.07, 0.1, 0.15, onBar("60 mm")),
  galvanised: judged("galvanised steel", 0.12, 0.17, 0.22, onBar("43 mm")),
  polishedSteel: judged("polished steel", 0.08, 0.12, 0.18, "polyester rope on smooth steel, handbook range"),
} as const satisfies Record<string, Surface>;

/** Name of a surface that does not turn. */
export type SurfaceName = keyof typeof surfaces;

/** Treads of ratchet sheaves: what the rope lies on when the sheave is locked. */
export const treads = {
  smooth: judged("smooth tread", 0.1, 0.15, 0.2, "as an anodised ring, a little worn"),
  ribbed: judged("ribbed soft tread", 0.18, 0.27, 0.4, "no printed value found; rubber-like ribs"),
  faceted: judged("faceted tread", 0.2, 0.32, 0.5, "no printed value found; rope is bent at each facet"),
  toothed: judged("toothed metal tread", 0.25, 0.42, 0.65, "no printed value found; teeth bite between strands"),
} as const satisfies Record<string, Surface>;

/** Name of a tread. */
export type TreadName = keyof typeof treads;
