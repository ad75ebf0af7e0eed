/** What every turn of a rope round something can have. */
interface TurnFields {
  readonly name: string;
  /** Angle over which the rope touches [rad]. */
  readonly wrapAngle: number;
  /** Diameter at the bottom of the groove, or of the bar [m]. */
  readonly diameter: number;
  /** How many lines share the station; 1 when absent. */
  readonly lines?: number;
  /** Loss that does not depend on load [N]; 0 when absent. */
  readonly drag?: number;
}

/** A wheel in a block. */
export interface Sheave extends TurnFields {
  readonly kind: "sheave";
  readonly pinRadius: number;
  readonly bearingFriction: number;
  /** Absent: wide enough. */
  readonly grooveWidth?: number;
}

/** A surface that does not turn: ring, thimble, fairlead, bar. */
export interface Ring extends TurnFields {
  readonly kind: "ring";
  readonly frictionCoefficient: number;
  /** Friction that falls with load: exponent n and the tension at which the coefficient holds [N]. */
  readonly loadDependence?: { readonly exponent: number; readonly referenceTension: number };
}

/** A sheave that turns while hauling and is locked while easing. */
export interface Ratchet extends Omit<Sheave, "kind"> {
  readonly kind: "ratchet";
  /** Friction coefficient of the line on the tread of the locked sheave [-]. */
  readonly treadFriction: number;
  /** Load-sensing ratchet: block load, sheave free, above which it locks [N]. Absent: always on. */
  readonly engageLoad?: number;
}

/** A cleat: open it does nothing, closed it holds up to its hold load. */
export interface Cleat {
  readonly kind: "cleat";
  readonly name: string;
  readonly closed: boolean;
  /** Load at which the closed cleat lets the line slip [N]. */
  readonly holdLoad: number;
  /** Pull lost in the jaws while hauling [N]; 0 when absent. */
  readonly drag?: number;
}

/** A turn whose loss was measured or printed as a ratio. */
export interface Measured {
  readonly kind: "measured";
  readonly name: string;
  readonly tensionRatio: number;
  readonly drag?: number;
  /** For the block load [rad]; half a turn when absent. */
  readonly wrapAngle?: number;
}

/** A single turn of the line. */
export type Turn = Sheave | Ring | Ratchet | Measured;

/** The rope that runs through the stations. */
export interface Rope {
  /** [m] */
  readonly diameter: number;
  readonly stiffness: {
    readonly tensionTerm: number;
    readonly constantTerm: number;
    readonly diameterTerm: number;
  };
}
