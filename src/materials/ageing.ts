import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { FibreName } from "./fibres.js";

function remembered(low: number, value: number, high: number, place: string): Coefficient {
  return coefficient({ value, unit: "1", low, high, status: "from memory", place });
}

/** Strength left by use, sun and salt over that of the new rope [-]. Two break tests of a used rope would narrow it. */
export const useFactors = {
  new: remembered(1, 1, 1, "the reference"),
  season: remembered(0.65, 0.85, 0.97, "a season of weekends: chafe, sun, salt"),
  worn: remembered(0.4, 0.65, 0.85, "fuzzy cover, flattened or stiff places: two or three seasons"),
} as const;

/** How long a rope has been in use. */
export type RopeUse = keyof typeof useFactors;

const dryIsWet = remembered(0.95, 1, 1.05, "water does not change its strength much");

/** Strength of the wet rope over that of the dry one [-]. */
export const wetStrength = {
  polyamide: coefficient({
    value: 0.875,
    unit: "1",
    low: 0.85,
    high: 0.9,
    status: "published",
    source: "fibre-yarn-table",
    place: "remark: 10 to 15 % wet strength loss",
  }),
  polyester: dryIsWet,
  polypropylene: dryIsWet,
  aramid: dryIsWet,
  aramidHighModulus: dryIsWet,
  hmpe: dryIsWet,
  hmpeHighModulus: dryIsWet,
  lcp: dryIsWet,
  pbo: dryIsWet,
} as const satisfies Record<FibreName, Coefficient>;
