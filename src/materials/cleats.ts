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
  /** Diameter below which the jaws meet before they pinch [m]. */
  readonly thinnest: Coefficient;
  /** Load that jaws and fastening stand [N]. */
  readonly stands: Coefficient;
}

/** A fixed V groove whose ridges draw the rope down into it. */
export interface ClamCleat {
  readonly kind: "clam";
  readonly name: string;
  readonly ridges: Surface;
  readonly grooveAngle: Coefficient;
  /** Angle between ridges and rope [rad]. */
  readonly ridgeAngle: Coefficient;
  /** Friction of the rope along the ridges [-]. */
  readonly wallFriction: Coefficient;
  /** Force with which the hand snapped the rope in [N]. */
  readonly press: Coefficient;
  /** Diameter below which the rope lies on the bottom of the groove [m]. */
  readonly thinnest: Coefficient;
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
  readonly stands: Coefficient;
}

/** Two horns, a base between them, and a rope wound round. */
export interface HornCleat {
  readonly kind: "horn";
  readonly name: string;
  readonly surface: Surface;
  /** Turns that one crossing of a figure of eight is worth [-]. */
  readonly eightTurns: Coefficient;
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
  thinnest: judged(0.002, 0.0025, 0.004, "m", "gap left when the jaws touch their stops"),
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
  clam: {
    kind: "clam",
    name: "V cleat",
    ridges,
    grooveAngle: judged(30 * degree, 40 * degree, 55 * degree, "rad", "moulded and cast grooves of small boats"),
    ridgeAngle: judged(35 * degree, 42 * degree, 50 * degree, "rad", "ridges lean towards the load"),
    wallFriction: judged(0.1, 0.2, 0.35, "1", "cover along smooth ridges"),
    press: judged(40, 80, 150, "N", "a hand that snaps the rope down"),
    thinnest: judged(0.003, 0.004, 0.005, "m", "a groove made for 5 to 8 mm; see where your rope touches"),
    stands: judged(600, 1300, 3000, "N", "plastic or aluminium on two small screws; the maker's figure decides"),
  },
  jammer: {
    kind: "jammer",
    name: "lever jammer",
    jaw: treads.ribbed,
    plate: treads.smooth,
    camAngle: judged(20 * degree, 27 * degree, 34 * degree, "rad", "a jaw that a lever must hold shut"),
    handle: judged(25, 50, 100, "N", "push at which the handle snaps over"),
    leverRatio: judged(3, 5, 8, "1", "handle of 100 mm on a jaw of 20 mm"),
    stands: judged(1500, 3500, 7000, "N", "four screws through a deck; the maker's figure decides"),
  },
  horn: {
    kind: "horn",
    name: "horn cleat",
    surface: surfaces.anodised,
    eightTurns: judged(0.6, 1, 1.3, "1", "a crossing bends the rope round both horns, half a turn each"),
    stands: judged(1500, 4000, 8000, "N", "two bolts; the maker's figure decides"),
  },
} as const satisfies Record<string, CamCleat | ClamCleat | Jammer | HornCleat>;

/** What grips have in common. */
export const gripRecords = {
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
