import { pure, type VocabularyEntry } from "./vocabulary-entry.js";

/** Quantities of covers, ratchets and wear. */
export const gripQuantities = {
  // Covers and ratchets
  holdRatio: pure(
    "hold ratio",
    "k_h",
    1,
    1e12,
    "3.5",
    "tension on the load side of a locked ratchet over tension on its hand side while easing",
  ),
  wearRate: pure(
    "wear rate",
    "w",
    0,
    1000,
    "0.5",
    "wear of a cover on a tread over that of a smooth cover on toothed metal under the same slide",
  ),
  chafeRate: pure(
    "fraying rate",
    "r_f",
    0,
    1000,
    "2",
    "fraying of a fibre that runs on another over that of polyester on polyester",
  ),
} as const satisfies Record<string, VocabularyEntry>;
