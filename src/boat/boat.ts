import type { RopeUse } from "../materials/ageing.js";
import type { bearings } from "../materials/bearings.js";
import type { cleats } from "../materials/cleats.js";
import type { ConstructionName } from "../materials/constructions.js";
import type { StrandCount } from "../materials/covers.js";
import type { RopeEndName } from "../materials/ends.js";
import type { FibreName } from "../materials/fibres.js";
import type { SurfaceName, TreadName } from "../materials/surfaces.js";
import type { SailEdition } from "../wind/coefficients.js";
import type { SailName } from "../wind/sail-table.js";
import type { BoatDay } from "./day.js";

/** Things by the name that the boat file gives them. */
export type Named<Thing> = Readonly<Record<string, Thing>>;

/** What somebody on board can pull. */
export interface CrewMember {
  /** Force that one hand keeps up all day [N]. */
  readonly hold: number;
  /** Force for a short haul [N]. */
  readonly pull: number;
  /** Largest grip of one rested hand on a handle [N]; asked for where a day is to be judged. */
  readonly grip?: number;
  /** Hands that hold a line; one when absent. */
  readonly hands?: 1 | 2;
  /** False when absent. */
  readonly gloves?: boolean;
}

/** Wind, air and water for which the boat is checked. */
export interface Conditions {
  /** True wind that the boat is set up for [m/s]. */
  readonly designWind: number;
  /** Lightest true wind in which it is sailed [m/s]. */
  readonly lightWind: number;
  readonly gustFactor: number;
  readonly airTemperature: number;
  readonly airPressure: number;
  readonly wet: boolean;
}

/** Load of a sheet from the force on the sail, or as it was measured. */
export type SheetGeometry =
  | {
      readonly kind: "boom";
      readonly boomAngle: number;
      readonly forceLever: number;
      readonly sheetLever: number;
      readonly sheetSlope: number;
    }
  | {
      readonly kind: "clew";
      readonly leech: number;
      readonly leechSag: number;
      /** Part of the sail force that the leech carries [-]. */
      readonly leechShare: number;
      readonly clewAngle: number;
      readonly leadAngle: number;
    }
  | {
      readonly kind: "measured";
      readonly load: number;
      /** Apparent wind in which it was measured [m/s]. */
      readonly at: number;
    };

/** A sail and the course on which it loads its lines. */
export interface SailOnBoat {
  readonly edition: SailEdition;
  readonly table: SailName;
  readonly area: number;
  readonly mass?: number;
  /** Angle from the bow to the true wind [rad]. */
  readonly course: number;
  readonly boatSpeed: { readonly design: number; readonly light: number };
  readonly sheet?: SheetGeometry;
  /** Straight lengths between its corners [m]: with them halyard, tack and outhaul follow from its balance. */
  readonly edges?: { readonly luff: number; readonly leech: number; readonly foot: number };
  /** What the luff is on; a mast under a boom, otherwise set flying, when absent. */
  readonly luffOn?: "mast" | "stay" | "flying";
  /** Luff that carries its own wind load; the part of the sail force on it [-]. */
  readonly halyard?: { readonly luff: number; readonly luffSag: number; readonly luffShare: number };
}

/** What holds a corner of a sail. */
export const sailCorners = ["sheet", "halyard", "tack", "outhaul"] as const;

/** One of them. */
export type SailCorner = (typeof sailCorners)[number];

/** Where the load of a line comes from. */
export type LoadSource =
  | {
      readonly kind: "sail";
      readonly sail: string;
      readonly corner: SailCorner;
      /** A halyard that ends in a lock at the head: the line only hoists. */
      readonly lock?: boolean;
      /** Part of that load that this line takes [-]; all of it when absent. */
      readonly share?: number;
    }
  | {
      readonly kind: "stated";
      /** In the design wind, no gust [N]. */
      readonly design: number;
      /** In light air [N]; absent: nobody asks whether the line goes out by itself. */
      readonly light?: number;
      /**
       * What makes it grow in a gust: the wind, with its square; a weight and what the crew sets do not. When absent a sheet and a vang
       * grow with the wind, a halyard and another control line are set.
       */
      readonly grows?: "wind" | "weight" | "set";
      /** How far the truth may lie from these numbers, as a part of them [-]; 0 when absent. */
      readonly spread?: number;
    };

/** A length of a rope of the catalogue. */
export interface RopePiece {
  readonly rope: string;
  readonly length: number;
}

/** A place on the boat: ahead, to lee, up, from any one point [m]. */
export type BoatPlace = readonly [ahead: number, lee: number, up: number];

/** What fastens a block, ring or cleat to the boat. */
export type Attachment =
  /** An eye, strap or screw whose load somebody stated [N]. */
  | { readonly kind: "rated"; readonly ratedLoad: number }
  /** Twine of the catalogue between two eyes; the gap and the bar of the thinner eye [m]. */
  | {
      readonly kind: "lashing";
      readonly twine: string;
      readonly rounds: number;
      readonly gap: number;
      readonly bar: number;
    }
  /** A steel shackle by its bar [m]. */
  | { readonly kind: "shackle"; readonly bar: number };

interface OnTheWay {
  readonly name: string;
  readonly at?: BoatPlace;
  readonly attached?: Attachment;
  /** Rope from the station before, or from the sail, to here, hauled in [m]. */
  readonly distance?: number;
}

/** A block or ratchet of the catalogue. */
export interface BlockStation extends OnTheWay {
  readonly kind: "block";
  readonly block: string;
  readonly wrap: number;
  /** Lines that share it; 1 when absent. */
  readonly lines?: number;
}

/** A ring of the catalogue. */
export interface RingStation extends OnTheWay {
  readonly kind: "ring";
  readonly ring: string;
  readonly wrap: number;
  readonly lines?: number;
}

/** A purchase of blocks of the catalogue. */
export interface TackleStation extends OnTheWay {
  readonly kind: "tackle";
  readonly parts: number;
  readonly hauledFrom: "moving" | "fixed";
  readonly block: string;
  readonly leadBlocks?: number;
  /** Length of one part, hauled in [m]. */
  readonly length?: number;
  /** Length of one part, all let out [m]: what a part more or less takes of the rope. */
  readonly letOut?: number;
  /** Other numbers of parts that there is room for; one or two more or fewer when absent, none when empty. */
  readonly otherParts?: readonly number[];
}

/** A cleat of the catalogue. */
export interface CleatStation extends OnTheWay {
  readonly kind: "cleat";
  readonly cleat: string;
  /** For a horn: turns round its base, and crossings over its horns. */
  readonly turns?: number;
  readonly eights?: number;
  /** Whether a locking hitch finishes it; when absent, on halyards and control lines that have a crossing. */
  readonly hitch?: boolean;
}

/** Anything that a line of a boat meets on its way from sail to hand. */
export type BoatStation = BlockStation | RingStation | TackleStation | CleatStation;

/** How far a set line may move the sail. */
export interface Movement {
  /** Movement at the sail that is still right [m]. */
  readonly allowed: number;
  /** Load that the sail drops for each metre that it is given [N/m]. */
  readonly give: number;
  /** Time under load before the line was set or marked [s]. */
  readonly settled: number;
  /** Time from then to the end of the leg [s]. */
  readonly after: number;
}

/** What one line must keep to. */
export interface OwnLimits {
  /** Thinnest that it may be where the hand works it [m]; by the custom of its kind when absent. */
  readonly leastDiameter?: number;
  /** Most pull to haul it, and to hold it, in the design wind [N]; the crew's own figures when absent. */
  readonly hauling?: number;
  readonly holding?: number;
  /** Most line that the hand hauls for each metre at the sail [m]. */
  readonly mostLine?: number;
  /** Dry mass of the line with its hardware [kg]. */
  readonly mass?: number;
  readonly cost?: Price;
}

/** How a line ends: at the sail or where it is made fast, at the hand, and what is tied or spliced in between. */
export interface LineEnds {
  readonly sail: RopeEndName;
  readonly hand?: RopeEndName;
  readonly between?: readonly RopeEndName[];
}

/** A line let out fast through the hand. */
export interface FastEase {
  /** [m/s] */
  readonly speed: number;
  /** [s] */
  readonly duration: number;
}

/** Kinds of lines: what they are for. A vang is a control line that must come free under load. */
export const lineKinds = ["sheet", "halyard", "vang", "control"] as const;

/** A line of the boat. */
export interface BoatLine {
  readonly kind: (typeof lineKinds)[number];
  readonly note?: string;
  readonly load: LoadSource;
  /** Pieces from the sail to the hand. */
  readonly rope: readonly RopePiece[];
  /** Stations from the sail to the hand. */
  readonly path: readonly BoatStation[];
  readonly heldBy: "hand" | "cleat";
  /** Who of the crew works it. */
  readonly hand: string;
  readonly ends: LineEnds;
  readonly use: RopeUse;
  /** What an inspection found, and when: it stands in the place of `use`. */
  readonly inspected?: { readonly on: string; readonly found: RopeUse };
  readonly daysInSun?: number;
  /** Places of the sail end and of the hand, where angles are to be worked out. */
  readonly sailAt?: BoatPlace;
  readonly handAt?: BoatPlace;
  /** How many such lines the boat has, one on each side; 1 when absent. */
  readonly count?: 1 | 2;
  /** Whether it can be hauled at both its ends at once, or has none because they are joined. */
  readonly form?: "double-ended" | "endless";
  /** Pull that drags the loose tail along [N]. */
  readonly tailDrag?: number;
  readonly movement?: Movement;
  /** Lines that it rubs on while it runs. */
  readonly touches?: readonly string[];
  /** For this line instead of the boat's. */
  readonly safetyFactor?: number;
  /** How fast it is let out through the hand; by custom when absent. */
  readonly ease?: FastEase;
  readonly limits?: OwnLimits;
}

/** A sum of money; a boat file has one currency, or none. */
export interface Price {
  readonly amount: number;
  /** The user's own word, such as `EUR`; empty when there is none. */
  readonly currency: string;
}

/** A rope that can be had; price of a metre. */
export interface CatalogueRope {
  readonly fibre: FibreName;
  readonly construction: ConstructionName;
  readonly cover?: { readonly fibre: FibreName; readonly strands: StrandCount };
  readonly diameter: number;
  /** Of a metre, dry, as weighed [kg/m]; worked out when absent. */
  readonly mass?: number;
  /** Break load that the maker states [N]; worked out from the fibre when absent. */
  readonly ratedStrength?: number;
  readonly price: Price;
}

interface Hardware {
  /** Kinds of lines that it is for; all when absent. Nothing else is proposed for them. */
  readonly for?: readonly BoatLine["kind"][];
  readonly mass: number;
  readonly price: Price;
}

/** A single block; with a ratchet, or without. */
export interface CatalogueBlock extends Hardware {
  /** Bottom of the groove [m]. */
  readonly diameter: number;
  readonly groove: number;
  readonly bearing: keyof typeof bearings;
  readonly workingLoad: number;
  readonly ratchet?: { readonly tread: TreadName; readonly engageLoad?: number };
  /** A sheave that is built into mast or deck: it takes the place of such a one only. */
  readonly builtIn?: boolean;
}

/** A ring that can be had. */
export interface CatalogueRing extends Hardware {
  /** Diameter round which it bends the rope [m]. */
  readonly diameter: number;
  /** Width of the hole [m]. */
  readonly opening: number;
  readonly surface: SurfaceName;
  readonly workingLoad: number;
}

/** A cleat that can be had. */
export interface CatalogueCleat extends Hardware {
  readonly type: keyof typeof cleats;
  readonly thinnest: number;
  readonly thickest: number;
  /** Load that the maker allows [N]; judged from the size when absent. */
  readonly ratedLoad?: number;
}

/** A winch that can be had. */
export interface CatalogueWinch extends Hardware {
  /** Middle of the winch to the rope on its drum [m]. */
  readonly drumRadius: number;
  readonly handleLength: number;
  /** Turns of the handle for one of the drum, one for each gear [-]. */
  readonly gearRatios: readonly number[];
  readonly selfTailing: boolean;
  /** Load that the maker allows [N]. */
  readonly ratedLoad: number;
}

/** What can be had, with the user's own masses and prices. */
export interface Catalogue {
  readonly ropes: Named<CatalogueRope>;
  readonly blocks: Named<CatalogueBlock>;
  readonly rings: Named<CatalogueRing>;
  readonly cleats: Named<CatalogueCleat>;
  readonly winches?: Named<CatalogueWinch>;
}

/** What the boat must keep to. */
export interface Limits {
  /** Most that any hand holds [N]; the crew's own figures when absent. */
  readonly handForce?: number;
  readonly safetyFactor: number;
  /** True wind from which sheets must go out by themselves [m/s]; the light wind when absent. */
  readonly runOutWind?: number;
  /** Thinnest that a line held by hand may be there [m]; by the custom of its kind when absent. */
  readonly leastDiameter?: number;
  /** Dry mass of all lines and their hardware [kg]. */
  readonly mass?: number;
  readonly cost?: Price;
}

/** A boat as its file describes it, in SI. */
export interface Boat {
  /** Of the form of the file. */
  readonly version: 2;
  readonly name: string;
  readonly note?: string;
  readonly invented?: boolean;
  readonly crew: Named<CrewMember>;
  readonly conditions: Conditions;
  readonly sails: Named<SailOnBoat>;
  readonly lines: Named<BoatLine>;
  readonly catalogue: Catalogue;
  readonly limits: Limits;
  /** A day on the water, for whoever holds lines by hand. */
  readonly day?: BoatDay;
}
