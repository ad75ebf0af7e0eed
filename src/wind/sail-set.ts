import { type Coefficient, coefficient } from "../sources/coefficient.js";

function judged(value: number, low: number, high: number, place: string): Coefficient {
  return coefficient({ value, unit: "1", low, high, status: "from memory", place });
}

/** How far what a file says of a sail may be off where nobody measured it, over what it says [-], and how a sail is usually set. */
export const sailSet = {
  /** Sag of an edge. */
  sag: judged(1, 0.72, 1.4, "sag read by eye from the deck; a photograph along the edge narrows it"),
  /** Part of the sail force that an edge carries. */
  share: judged(1, 0.78, 1.25, "nobody has measured how a sail shares its wind among its edges"),
  /** Lead of a sheet against the foot. */
  lead: judged(1, 0.87, 1.13, "leads move with the trim: about five degrees either way"),
  /** Steepness of a sheet: its downward over its level part. */
  steepness: judged(1, 0.7, 1.4, "the slope of a sheet moves with traveller and twist: about seven degrees either way"),
  /** Distance of the middle of the wind from the mast. */
  lever: judged(1, 0.78, 1.28, "the middle of the wind moves with trim and twist"),
  /** A load that a scale showed, in another wind or on another day. */
  reading: judged(1, 0.85, 1.18, "hand scale, and the wind that was guessed with it"),
  /** Pull of the luff over that of the leech, on a mast or stay: what downhaul and halyard were set to. */
  luffOverLeech: judged(0.25, 0.08, 0.6, "from a soft luff to a hard downhaul; a scale on the downhaul tells"),
  /** Pull of the foot over that of the leech. */
  footOverLeech: judged(0.25, 0.1, 0.5, "from an eased outhaul to a flat foot"),
  /** Part of the leech's moment that a vang holds while the sheet is in. */
  vangShare: judged(0.2, 0, 0.5, "sheeted in upwind the sheet holds most of the leech"),
} as const satisfies Record<string, Coefficient>;
