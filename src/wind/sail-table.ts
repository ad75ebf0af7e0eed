import type { SourceId } from "../sources/bibliography.js";

/** Sails for which an edition may hold a table. */
export type SailName =
  /** Mainsail on a rig that can be adjusted. */
  | "main"
  /** Mainsail on a rig without adjustable stays. */
  | "mainSimpleRig"
  /** Mainsail with battens over its whole width. */
  | "mainFullBattens"
  /** Headsail on a stay, rig that can be adjusted. */
  | "jib"
  /** Headsail on a stay, rig without adjustable stays. */
  | "jibSimpleRig"
  /** Headsail on a stay with its foot on a boom. */
  | "jibOnBoom"
  /** Flat reaching headsail set flying. */
  | "codeZero"
  /** Spinnaker with two equal edges. */
  | "symmetricSpinnaker"
  /** Gennaker tacked on the centreline. */
  | "gennaker"
  /** Gennaker tacked on a pole that swings. */
  | "gennakerOnPole";

/** Lift and drag of a sail, referred to its own area, by apparent wind angle. */
export interface SailTable {
  /** Apparent wind angle [°]. */
  readonly angleDegrees: readonly number[];
  /** Lift coefficient [-]. */
  readonly lift: readonly number[];
  /** Drag coefficient without the part that lift induces [-]. */
  readonly drag: readonly number[];
}

/** Tables of one publication. */
export interface SailEditionTables {
  readonly title: string;
  readonly source: SourceId;
  readonly sails: Readonly<Partial<Record<SailName, SailTable>>>;
}
