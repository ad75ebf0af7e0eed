import type { CamCleat, HornCleat, Jammer, VeeCleat } from "../materials/cleats.js";
import type { Cover } from "../materials/covers.js";
import type { Surface } from "../materials/surfaces.js";
import { drumSurface, type Winch } from "../materials/winches.js";
import { within } from "../quantity/guard.js";
import { figures } from "../quantity/print.js";
import { type Band, bandOf } from "../sources/band.js";
import { tailNeeded } from "./horn.js";
import { jammerRanges, jammerRelease } from "./jammer.js";
import { bestPullAngle, liftOutForce } from "./lift-out.js";
import { frictionRange } from "./slip-load.js";

/** What it takes to let a loaded line go. */
export interface LetGo {
  /** Largest force that a hand has to bring up on the way, with its range [N]. */
  readonly effort: Band;
  /** That force over what the hand pulls for a moment, with its range [-]. */
  readonly share: Band;
  /** How it is done. */
  readonly how: string;
  /** Whether the line then runs through the hand, or by itself. */
  readonly runs: "through the hand" | "by itself";
  /** Pull on the tail with each number of turns that is left on, most first; of what is wound round something alone. */
  readonly turnByTurn?: readonly TurnLeft[];
}

/** Turns that are left on, and the hand that then holds the line. */
export interface TurnLeft {
  /** Whole turns and crossings that are still on, in turns [-]. */
  readonly turns: number;
  /** Pull on the tail [N]. */
  readonly hand: Band;
}

/** A loaded line, and the hand that is to let it go. */
export interface Loaded {
  /** Load on the line where it is held, with its range [N]. */
  readonly tension: Band;
  /** What the hand pulls for a moment [N]. */
  readonly hand: { readonly pull: number };
}

/** A covered line in a cleat of a kind. */
export interface InCleat<Kind> extends Loaded {
  readonly cleat: Kind;
  readonly cover: Cover;
}

/** A line round a horn or a drum. */
export interface Wound<Kind> extends InCleat<Kind> {
  /** Turns round the base or the drum [-]. */
  readonly turns: number;
  /** Crossings over the horns [-]. */
  readonly eights: number;
}

/** A line in anything that holds one. */
export interface Held extends Loaded {
  /** Cleat or winch, or a hand, with or without a ratchet before it. */
  readonly cleat: CamCleat | VeeCleat | Jammer | HornCleat | Winch | { readonly kind: "hand" };
  readonly cover: Cover;
  /** Turns round a horn or a drum, and crossings over horns [-]; none when absent. */
  readonly turns?: number;
  readonly eights?: number;
}

/**
 * What it takes to let a loaded line go, whatever holds it.
 *
 *     the largest force on the way, by the model of its kind
 *
 * @param cleat  cam, V cleat, jammer, horn or winch, or `{ kind: "hand" }` for a hand, with or without a ratchet
 * @param cover  strands, fibre and state of the cover
 * @param turns  round a horn or a drum [-]; eights: crossings over horns [-]
 * @param tension  load where the line is held, with its range [N]
 * @param hand  what it pulls for a moment [N], above 0
 * @returns effort [N], its share of what the hand pulls [-], a word on how, and whether the line then runs through the hand
 * @throws ValueError outside these ranges
 * Source: statics; euler-1769. Example: letGo({ cleat: { kind: "hand" }, cover: { strands: 16, fibre: "polyester", wet: false }, tension: { value: 300, low: 200, high: 400 }, hand: { pull: 300 } }).effort.value → 0
 */
export function letGo({ cleat, turns = 0, eights = 0, ...line }: Held): LetGo {
  switch (cleat.kind) {
    case "cam":
    case "vee":
      return liftLetGo({ ...line, cleat });
    case "jammer":
      return jammerLetGo({ ...line, cleat });
    case "horn":
    case "winch":
      return woundLetGo({ ...line, cleat, turns, eights });
    case "hand":
      return result({ effort: { value: 0, low: 0, high: 0 }, hand: line.hand }, "through the hand", ["open the hand"]);
  }
}

/**
 * Pull that brings a line out of a cam or V cleat: hauled tighter, then up.
 *
 *     least F over the direction of the pull
 *
 * @param held  cam or V cleat [records], cover, tension [N] and hand [N]
 * @returns effort, share and words; the line then runs through the hand that pulled
 * @throws ValueError outside the ranges of the lift
 * Valid for a tail that the hand reaches behind the cleat. Source: statics; frye-cam-angles: the rope must first be pulled tighter.
 */
export function liftLetGo({ cleat, cover, tension, hand }: InCleat<CamCleat | VeeCleat>): LetGo {
  const pullAngle = bestPullAngle({ cleat, cover, load: tension.value });
  const effort = liftOutForce({ cleat, cover, load: tension, pullAngle });
  const up = liftOutForce({ cleat, cover, load: tension, pullAngle: Math.PI / 2 });
  const degrees = figures((180 / Math.PI) * pullAngle, 2);
  return result({ effort, hand }, "through the hand", [
    `haul it tighter, ${degrees}° above the line, until it lifts out`,
    `straight up it takes ${figures(up.value, 2)} N`,
  ]);
}

/**
 * Pull on the tail of a line that is taken off a horn or a drum turn by turn, and surged.
 *
 *     T_hand = T · exp(−2 π N μ), with the last full turn on
 *
 * @param held  horn or winch [records], cover, turns and crossings [-], tension [N] and hand [N]
 * @returns effort with the last full turn on, share, words, and the pull on the tail with each number of turns left
 * @throws ValueError outside the ranges of the capstan
 * Valid once the hitch is off; crossings come off before turns. Source: euler-1769, capstan equation.
 */
export function woundLetGo({ cleat, cover, turns, eights, tension, hand }: Wound<HornCleat | Winch>): LetGo {
  const [surface, crossing]: readonly [Surface, Band] =
    cleat.kind === "horn" ? [cleat.surface, cleat.eightTurns] : [drumSurface, { value: 1, low: 1, high: 1 }];
  const base = within("turnCount", turns, 0, 15);
  const over = within("turnCount", eights, 0, 10);
  const ranges = { load: tension, frictionCoefficient: frictionRange(cover, surface), crossing };
  const pullWith = (left: number, crossings: number): TurnLeft => ({
    turns: left + crossings * crossing.value,
    hand: bandOf(ranges, ({ crossing: worth, ...values }) =>
      tailNeeded({ ...values, turns: left + crossings * worth }),
    ),
  });
  const turnByTurn = [
    ...oneByOne(over).map((crossings) => pullWith(base, crossings)),
    ...oneByOne(base).flatMap((left) => (left < 1 ? [] : [pullWith(left, 0)])),
  ];
  const last = turnByTurn.at(-1) ?? pullWith(base, over);
  return {
    ...result({ effort: last.hand, hand }, "through the hand", [
      cleat.kind === "horn"
        ? "hitch and crossings off"
        : cleat.selfTailing
          ? "the tail out of its jaws"
          : "tail in the hand",
      "then turn by turn, the hand surging the load",
      `with ${figures(last.turns, 2)} left it pulls ${figures(last.hand.value, 2)} N`,
    ]),
    turnByTurn,
  };
}

/**
 * Push on the handle that opens a jammer under load.
 *
 *     H of jammerRelease over the ranges of jammer and cover
 *
 * @param held  jammer [records], cover, tension [N] and hand [N]
 * @returns effort on the handle, share and words; the line then runs by itself, unless turns on a winch or a hand hold its tail
 * Source: statics; common practice: made to be opened under load.
 */
export function jammerLetGo({ cleat, cover, tension, hand }: InCleat<Jammer>): LetGo {
  const effort = bandOf({ ...jammerRanges(cleat, cover), load: tension }, jammerRelease);
  return result({ effort, hand }, "by itself", [
    "tail in a hand or round a winch, then the handle over",
    "once it is open the whole load runs",
  ]);
}

/** Effort and its share of what the hand pulls. */
function result(
  { effort, hand }: { readonly effort: Band; readonly hand: Loaded["hand"] },
  runs: LetGo["runs"],
  how: readonly string[],
): LetGo {
  const pull = within("handTension", hand.pull, 1e-6);
  const share = { value: effort.value / pull, low: effort.low / pull, high: effort.high / pull };
  return { effort, share, how: how.join("; "), runs };
}

/** What is on, and what is left after each that comes off, above zero. */
function oneByOne(on: number): number[] {
  return Array.from({ length: Math.ceil(on) }, (_, off) => on - off);
}
