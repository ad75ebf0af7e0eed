/** A length of rope to cut for a line. */
export interface Piece {
  /** Rope of the catalogue. */
  readonly rope: string;
  /** Length to cut [m]. */
  readonly length: number;
  /** What the piece is for, such as `covered part`. */
  readonly use?: string;
  /** Where its cover ends or where it is spliced on. */
  readonly taper?: {
    readonly join: "strip" | "splice";
    /** Thin part from the sail end [m]. */
    readonly bareLength: number;
    /** Thinned cover or buried splice [m]. */
    readonly joinLength: number;
  };
}

/** Hardware of a line: how many of one thing of the catalogue. */
export interface Part {
  readonly part: string;
  readonly count: number;
}

/** One way to make a line, with everything that was worked out about it. */
export interface PlanOption {
  /** Unlike any other of the same line. */
  readonly id: string;
  readonly words: string;
  /** [kg]; `aloft` is what hangs in the rig, dry. */
  readonly mass: { readonly dry: number; readonly wet: number; readonly aloft: number };
  /** Price in whole cents. */
  readonly cost: number;
  /** Pull of the hand at the wind of the plan [N]. */
  readonly handForce: number;
  /** The same at the 95th percentile of the friction [N]. */
  readonly handForceRobust?: number;
  /** What limits may be set on, by name, each in its own unit. */
  readonly measures: Readonly<Record<string, number>>;
  /** The same at the bad end of the range: 95th percentile of the friction. */
  readonly measuresRobust?: Readonly<Record<string, number>>;
  readonly splices: number;
  /** Time to make it [min]. */
  readonly minutes: number;
  readonly pieces: readonly Piece[];
  readonly parts: readonly Part[];
}

/** A line with all the ways to make it. */
export interface PlanLine {
  readonly name: string;
  readonly options: readonly PlanOption[];
  /** How much a newton on this line counts in the hand force of the boat [-]; 1 when absent. */
  readonly weight?: number;
}

/** The option taken for a line. */
export interface Chosen {
  readonly line: PlanLine;
  readonly option: PlanOption;
}
