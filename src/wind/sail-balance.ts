import { standardGravity } from "../quantity/constants.js";
import { within } from "../quantity/guard.js";
import { insideModel } from "./validity.js";

/** A force or a way in the axes of a sail: aft along its foot, to lee across it, up along its luff. */
export interface SailVector {
  readonly aft: number;
  readonly lee: number;
  readonly up: number;
}

/** One thing for each edge of a sail. */
export interface OnEdges<Thing> {
  readonly luff: Thing;
  readonly leech: Thing;
  readonly foot: Thing;
}

/** A sail with its edges in tension. */
export interface BalanceInput {
  /** Straight lengths between the corners [m]. */
  readonly lengths: OnEdges<number>;
  /** Pull of each edge along the straight line between its corners [N]. */
  readonly pulls: OnEdges<number>;
  /** Force of the wind, square to the sail [N]. */
  readonly windForce: number;
  /** Parts of that force that luff and leech carry [-]; the foot carries the rest. */
  readonly shares: Pick<OnEdges<number>, "luff" | "leech">;
  /** [kg] */
  readonly sailMass: number;
  /** What takes the wind on the luff: mast or stay along it, or its own two ends when it is set flying. */
  readonly luffOn: "mast" | "stay" | "flying";
}

/** What holds a sail: the forces that it puts on its three corners and on what runs along its luff [N]. */
export interface SailBalance {
  readonly head: SailVector;
  readonly tack: SailVector;
  readonly clew: SailVector;
  /** On the mast or stay; nothing when it is set flying. */
  readonly alongLuff: SailVector;
  /** Place of the clew from the tack [m]; the head is up the luff. */
  readonly clewAt: SailVector;
}

const none: SailVector = { aft: 0, lee: 0, up: 0 };

/**
 * The forces that a sail puts on its corners: each edge pulls its two corners towards each other, and half of the wind on it goes to each.
 *
 *     corner = Σ over its two edges of H · u + ½ w L · lee,   head also bears the weight;   Σ of all = wind + weight
 *
 * On a mast or stay the wind on the luff goes into that, all along. So a halyard carries the luff and the leech: the pull of the leech
 * times the cosine at the head, the weight, and the pull that tack or downhaul gives the luff.
 *
 * @param lengths  straight lengths of luff, leech, foot [m], a triangle
 * @param pulls  H of each along that line [N], 0 to 1 000 000
 * @param windForce  square to the sail [N]
 * @param shares  parts of it on luff and leech [-], together at most 1
 * @param sailMass  [kg]
 * @param luffOn  what takes the wind on the luff
 * @returns forces of the sail on what holds it [N], and where the clew is [m]
 * @throws ValueError for lengths that are no triangle, or numbers that cannot be
 * Valid for a flat sail that stands upright, with its weight hung on the head.
 * Source: statics, balance of forces. Example: sailBalance({ lengths: { luff: 4, leech: 5, foot: 3 }, pulls: { luff: 0, leech: 100, foot: 0 }, windForce: 0, shares: { luff: 0.3, leech: 0.4 }, sailMass: 0, luffOn: "mast" }).head.up → -80
 */
export function sailBalance({ lengths, pulls, windForce, shares, sailMass, luffOn }: BalanceInput): SailBalance {
  const clewAt = clewOf(lengths);
  const wind = within("sailForce", windForce);
  const onLuff = within("share", shares.luff) * wind;
  const onLeech = within("share", shares.leech) * wind;
  const onFoot =
    insideModel({
      quantity: "part of the sail force on the foot",
      value: 1 - shares.luff - shares.leech,
      unit: "1",
      minimum: -1e-12,
      maximum: 1,
      advice: "Luff and leech carry at most the whole force together.",
    }) * wind;
  const { luff, leech, foot } = lengths;
  const up: SailVector = { aft: 0, lee: 0, up: 1 };
  const toClewFromHead = scaled(added(clewAt, { aft: 0, lee: 0, up: -luff }), 1 / leech);
  const toClewFromTack = scaled(clewAt, 1 / foot);
  const leePull = (newtons: number): SailVector => ({ aft: 0, lee: newtons, up: 0 });
  const ends = luffOn === "flying" ? onLuff / 2 : 0;
  const weight: SailVector = { aft: 0, lee: 0, up: -within("mass", sailMass) * standardGravity };
  const [h, l, f] = [pulls.luff, pulls.leech, pulls.foot].map((pull) => within("tension", pull)) as [
    number,
    number,
    number,
  ];
  return {
    head: added(scaled(up, -h), scaled(toClewFromHead, l), leePull(ends + onLeech / 2), weight),
    tack: added(scaled(up, h), scaled(toClewFromTack, f), leePull(ends + onFoot / 2)),
    clew: added(scaled(toClewFromHead, -l), scaled(toClewFromTack, -f), leePull((onLeech + onFoot) / 2)),
    alongLuff: luffOn === "flying" ? none : leePull(onLuff),
    clewAt,
  };
}

/** Where the clew is, from the three lengths. */
function clewOf({ luff, leech, foot }: OnEdges<number>): SailVector {
  for (const length of [luff, leech, foot]) within("lineLength", length, 0.05, 50);
  const up = (luff ** 2 + foot ** 2 - leech ** 2) / (2 * luff);
  const aft = insideModel({
    quantity: "edges of a sail: square of the way from the luff to the clew",
    value: foot ** 2 - up ** 2,
    unit: "m^2",
    minimum: 1e-6,
    maximum: 2500,
    advice: "Each edge must be shorter than the other two together.",
  });
  return { aft: Math.sqrt(aft), lee: 0, up };
}

/**
 * A force times a factor.
 *
 * @param vector  force [N]
 * @param factor  [-]
 * @returns force [N]
 * Source: statics.
 */
function scaled({ aft, lee, up }: SailVector, factor: number): SailVector {
  return { aft: factor * aft, lee: factor * lee, up: factor * up };
}

function added(...vectors: readonly SailVector[]): SailVector {
  return vectors.reduce((sum, one) => ({ aft: sum.aft + one.aft, lee: sum.lee + one.lee, up: sum.up + one.up }), none);
}

/**
 * Load of the halyard from the balance of its sail.
 *
 * @param balance  forces of the sail on its corners [N]
 * @param luffOn  on a mast or stay what pulls aft and to lee at the head goes into that; set flying the halyard takes all of it
 * @returns tension of the halyard where it leaves the head [N], a lock or a 2:1 left out
 * Source: statics. Example: halyardOf({ head: { aft: 30, lee: 40, up: -100 }, tack: { aft: 0, lee: 0, up: 0 }, clew: { aft: 0, lee: 0, up: 0 }, alongLuff: { aft: 0, lee: 0, up: 0 }, clewAt: { aft: 1, lee: 0, up: 0 } }, "mast") → 100
 */
export function halyardOf({ head }: SailBalance, luffOn: BalanceInput["luffOn"]): number {
  return luffOn === "flying" ? Math.hypot(head.aft, head.lee, head.up) : Math.max(0, -head.up);
}

/**
 * Load of what holds the tack down: a downhaul on a mast or stay, a tack line where the sail is set flying.
 *
 * @param balance  forces of the sail on its corners [N]
 * @param luffOn  as for the halyard
 * @returns pull [N]
 * Source: statics. Example: tackOf({ head: { aft: 0, lee: 0, up: 0 }, tack: { aft: 30, lee: 0, up: 100 }, clew: { aft: 0, lee: 0, up: 0 }, alongLuff: { aft: 0, lee: 0, up: 0 }, clewAt: { aft: 1, lee: 0, up: 0 } }, "mast") → 100
 */
export function tackOf({ tack }: SailBalance, luffOn: BalanceInput["luffOn"]): number {
  return luffOn === "flying" ? Math.hypot(tack.aft, tack.lee, tack.up) : Math.max(0, tack.up);
}

/**
 * Load of an outhaul along the boom.
 *
 * @param balance  forces of the sail on its corners [N]
 * @returns pull of the clew towards the mast [N]; a strap on the boom takes the lift
 * Source: statics. Example: outhaulOf({ head: { aft: 0, lee: 0, up: 0 }, tack: { aft: 0, lee: 0, up: 0 }, clew: { aft: -50, lee: 0, up: 90 }, alongLuff: { aft: 0, lee: 0, up: 0 }, clewAt: { aft: 2, lee: 0, up: 0 } }) → 50
 */
export function outhaulOf({ clew }: SailBalance): number {
  return Math.max(0, -clew.aft);
}
