import { type Coefficient, coefficient } from "../sources/coefficient.js";
import { type Surface, surfaces, treads } from "./surfaces.js";

/** Two spring-loaded jaws that turn about pivots and pinch the rope between them. */
export interface CamCleat {
  readonly kind: "cam";
  readonly name: string;
  /** What the rope meets on the jaw. */
  readonly jaw: Surface;
  /** Angle between the jaw at the rope and the line to its pivot [rad]. */
  readonly camAngle: Coefficient;
  /** Radius of the pivot over the distance from pivot to rope [-]. */
  readonly pivotShare: Coefficient;
  readonly pivotFriction: Coefficient;
  /** Force of one jaw's spring, taken at the rope [N]. */
  readonly spring: Coefficient;
  /** Length of a jaw over the thickest rope of the cleat [-]. */
  readonly jawShare: Coefficient;
  /** Load that a cleat for ropes up to 8 mm stands, jaws and fastening [N]. */
  readonly stands: Coefficient;
}

/** A fixed V groove whose ridges draw the rope down into it. */
export interface VeeCleat {
  readonly kind: "vee";
  readonly name: string;
  readonly ridges: Surface;
  readonly grooveAngle: Coefficient;
  /** Angle between ridges and rope [rad]. */
  readonly ridgeAngle: Coefficient;
  /** Friction of the rope along the ridges [-]. */
  readonly wallFriction: Coefficient;
  /** Force with which the hand snapped the rope in [N]. */
  readonly press: Coefficient;
  /** Friction of a loaded rope that is drawn out between the ridges [-]. */
  readonly releaseFriction: Coefficient;
  /** Length of the groove over the thickest rope of the cleat [-]. */
  readonly jawShare: Coefficient;
  /** Load that a V cleat for ropes up to 8 mm stands [N]. */
  readonly stands: Coefficient;
}

/** One jaw that a lever presses on the rope against a plate. */
export interface Jammer {
  readonly kind: "jammer";
  readonly name: string;
  readonly jaw: Surface;
  readonly plate: Surface;
  readonly camAngle: Coefficient;
  /** Hand on the handle [N]. */
  readonly handle: Coefficient;
  /** Force at the jaw over force on the handle [-]. */
  readonly leverRatio: Coefficient;
  /** Length of the jaw over the thickest rope of the jammer [-]. */
  readonly jawShare: Coefficient;
  /** Load that a jammer for ropes up to 8 mm holds before the rope creeps through [N]. */
  readonly stands: Coefficient;
}

/** Two horns, a base between them, and a rope wound round. */
export interface HornCleat {
  readonly kind: "horn";
  readonly name: string;
  readonly surface: Surface;
  /** Turns that one crossing of a figure of eight is worth [-]. */
  readonly eightTurns: Coefficient;
  /** Load that a horn for ropes up to 8 mm stands [N]. */
  readonly stands: Coefficient;
}

const degree = Math.PI / 180;

/** Nobody printed it: judged, with the way to measure it. */
function judged(low: number, value: number, high: number, unit: string, place: string): Coefficient {
  return coefficient({ value, unit, low, high, status: "from memory", place });
}

const camGeometry = {
  camAngle: judged(
    6 * degree,
    9 * degree,
    13 * degree,
    "rad",
    "small-boat cams; an angle gauge on the jaws narrows it",
  ),
  pivotShare: judged(0.15, 0.22, 0.3, "1", "pin of 3 to 4 mm in a jaw of 15 mm; callipers narrow it"),
  pivotFriction: judged(0.02, 0.1, 0.25, "1", "balls or a plain pin, clean or salted"),
  spring: judged(3, 7, 15, "N", "a scale hooked to one jaw narrows it"),
  jawShare: judged(1.6, 2.2, 3, "1", "jaws of 16 to 20 mm for ropes up to 8 mm; callipers narrow it"),
  stands: judged(700, 1500, 3500, "N", "jaws of plastic or aluminium on two small screws; the maker's figure decides"),
} as const;

/** Friction of worn-down teeth: no printed value. */
const wornTeeth: Surface = { name: "worn teeth", friction: treads.smooth.friction };

const ridges: Surface = {
  name: "ridges of a V groove",
  friction: judged(0.5, 0.8, 1.2, "1", "no printed value found; ridges take hold between the strands of a cover"),
};

/** Cleats of a small boat. Their sizes are judged: measure your own. */
export const cleats = {
  cam: { kind: "cam", name: "cam cleat, sharp teeth", jaw: treads.toothed, ...camGeometry },
  wornCam: { kind: "cam", name: "cam cleat, worn teeth", jaw: wornTeeth, ...camGeometry },
  vee: {
    kind: "vee",
    name: "V cleat",
    ridges,
    grooveAngle: judged(30 * degree, 40 * degree, 55 * degree, "rad", "moulded and cast grooves of small boats"),
    ridgeAngle: judged(35 * degree, 42 * degree, 50 * degree, "rad", "ridges lean towards the load"),
    wallFriction: judged(0.1, 0.2, 0.35, "1", "cover along smooth ridges"),
    press: judged(40, 80, 150, "N", "a hand that snaps the rope down"),
    releaseFriction: judged(
      0.25,
      0.45,
      0.8,
      "1",
      "a loaded cover pressed between ridges; a scale on the tail narrows it",
    ),
    jawShare: judged(4, 6, 8, "1", "a groove of 50 mm for ropes up to 8 mm"),
    stands: coefficient({
      value: 2000,
      unit: "N",
      low: 900,
      high: 4400,
      status: "published",
      source: "owners-vee-list",
      place:
        "safe loads that makers name: the least of any size, and the most for 6 to 8 mm; middle judged between them",
    }),
  },
  jammer: {
    kind: "jammer",
    name: "lever jammer",
    jaw: treads.toothed,
    plate: treads.smooth,
    camAngle: judged(5 * degree, 8.5 * degree, 12 * degree, "rad", "made to lock by itself on a cover that fits"),
    handle: judged(25, 50, 100, "N", "push at which the handle snaps over"),
    leverRatio: judged(8, 12, 20, "1", "handle of 120 mm on a jaw whose pin is 10 mm away"),
    jawShare: judged(2, 3, 4.5, "1", "jaw of 24 mm for ropes up to 8 mm; callipers narrow it"),
    stands: judged(1200, 2500, 5000, "N", "small jammers of plastic and metal; the maker's figure decides"),
  },
  horn: {
    kind: "horn",
    name: "horn cleat",
    surface: surfaces.anodised,
    eightTurns: judged(0.6, 1, 1.3, "1", "a crossing bends the rope round both horns, half a turn each"),
    stands: judged(1500, 4000, 8000, "N", "two bolts; the maker's figure decides"),
  },
} as const satisfies Record<string, CamCleat | VeeCleat | Jammer | HornCleat>;

/** What grips have in common. */
export const gripRecords = {
  /** Diameter at which jaws or walls just miss the rope, over the thinnest that the cleat is made for [-]. */
  reach: judged(0.6, 0.8, 1, "1", "jaws meet a little below the thinnest rope of their label"),
  /** Load at which a cleat gives way or its rope creeps through, over the load that its maker allows [-]. */
  ratedHold: judged(0.9, 1.2, 1.8, "1", "no printed slip load found; a maker allows what is safe to hold"),
  /** Load that a cover stands in jaws, over the area on which they bite [Pa]. */
  bite: judged(5e6, 10e6, 20e6, "Pa", "no printed value found; teeth strip a cover; a pull test narrows it"),
  /** Load on a horn that a hitched rope stands, over its break load [-]. */
  hitched: coefficient({
    value: 0.75,
    unit: "1",
    low: 0.6,
    high: 0.9,
    status: "common practice",
    place: "turn, figures of eight and a locking hitch hold to near the strength of the rope",
  }),
  /** Hold of a V groove of 70° over that of a round groove [-]. */
  veeOverRound: coefficient({
    value: 1.25,
    unit: "1",
    low: 1.1,
    high: 1.4,
    status: "published",
    source: "albro-liu-1985",
    place: "about 25 % more hold; spread judged from the word about",
  }),
  /** Hold of that round groove over that of a flat surface [-]. */
  roundOverFlat: judged(
    1,
    1.13,
    4 / Math.PI,
    "1",
    "not printed: 1 if the groove does not wedge, 4/π if the rope fills it",
  ),
  /** Load on a cleat that the cover stands, over the break load of the rope [-]. */
  coverShare: judged(0.15, 0.3, 0.6, "1", "no printed value found: teeth cut or strip a cover; a pull test narrows it"),
  /** Tension that a hand leaves in the tail of a turned-up line [N]. */
  tail: judged(25, 50, 100, "N", "a hand's pull; hook a scale to the tail"),
} as const;
