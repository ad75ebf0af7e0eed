import { within } from "../quantity/guard.js";
import { insideModel } from "./validity.js";

/** Wind on a sail, and the edge that carries a part of it. */
export interface WindOnEdge {
  /** Part of the sail force that the edge carries [-]. */
  readonly share: number;
  /** Force of the wind on the sail [N]. */
  readonly sailForce: number;
  /** Length of the edge along which it carries that part [m]. */
  readonly edgeLength: number;
}

/**
 * Wind load on a metre of an edge that carries its part of the sail force evenly.
 *
 *     w = share · F / L
 *
 * @param share       part of the sail force [-], 0 to 1: what an edge carries is taken, not computed
 * @param sailForce   F [N]
 * @param edgeLength  L [m]
 * @returns wind load on a metre of the edge w [N/m]
 * @throws ValueError for numbers that cannot be
 * Valid for an even load.
 * Source: statics.
 * Example: windOnEdge({ share: 0.5, sailForce: 100, edgeLength: 5 }) → 10
 */
export function windOnEdge({ share, sailForce, edgeLength }: WindOnEdge): number {
  return (within("share", share) * within("sailForce", sailForce)) / within("lineLength", edgeLength);
}

/** An edge of a sail, or a strip of cloth, that carries wind between two corners. */
export interface EdgeInput {
  /** Wind load on a metre of the straight line between the corners [N/m]. */
  readonly edgeLoad: number;
  /** Length of the straight line between the corners [m]. */
  readonly chord: number;
  /** Depth of the edge below that line, in its middle [m]. */
  readonly sag: number;
}

/** Pull of a sagging edge. */
export interface EdgePull {
  /** Tension along the straight line between the corners [N]. */
  readonly chordTension: number;
  /** Half of the wind load, which each corner takes across that line [N]. */
  readonly crossPull: number;
  /** Tension in the edge at its end [N]. */
  readonly endTension: number;
}

/**
 * Pull of an edge of a sail that carries an even wind load with a given sag.
 *
 *     H = w · L² / (8 · s),  T_end = sqrt(H² + (w · L / 2)²)
 *
 * @param edgeLoad  w [N/m], 0 to 10 000
 * @param chord     L [m], 0.05 to 50
 * @param sag       s [m], from 0.2 % to 25 % of the chord
 * @returns tension along the chord H, pull across it w · L / 2, and tension at the end T_end [N]
 * Valid for an edge without weight that bends as a parabola; a deep edge under pressure is nearer to a circular arc, which pulls 3 % less at a sag of 10 % and 12 % less at 25 %.
 * Source: statics, parabolic cable.
 * Example: edgePull({ edgeLoad: 10, chord: 5, sag: 0.25 }).chordTension → 125
 */
export function edgePull({ edgeLoad, chord, sag }: EdgeInput): EdgePull {
  const w = within("edgeLoad", edgeLoad);
  const length = within("lineLength", chord, 0.05, 50);
  const depth = insideModel({
    quantity: "sag of an edge",
    value: within("sag", sag),
    unit: "m",
    minimum: 0.002 * length,
    maximum: 0.25 * length,
    advice: "A straighter edge would need a load without limit; a deeper one is no shallow parabola.",
  });
  const chordTension = (w * length ** 2) / (8 * depth);
  const crossPull = (w * length) / 2;
  return { chordTension, crossPull, endTension: Math.hypot(chordTension, crossPull) };
}
