import { prepareJoined } from "../../reeving/joined-lines.js";
import type { Line, LineState } from "../../reeving/line.js";
import type { Direction } from "../../reeving/mechanism-loads.js";
import type { Station } from "../../reeving/reeving.js";
import type { Rope } from "../../reeving/station.js";

/** A line of one rope, or of several joined one after the other from the load to the hand. */
export type DrawnLine = Line | readonly Line[];

/** A station with the rope that runs through it. */
export interface RopeAtStation {
  readonly station: Station;
  readonly rope: Rope;
}

/** A line under one load, both ways. */
export interface Strips {
  readonly stations: readonly RopeAtStation[];
  readonly load: number;
  readonly velocityRatio: number;
  readonly runOutLoad: number;
  readonly states: Readonly<Record<Direction, LineState>>;
  /** Largest tension anywhere in either state [N]. */
  readonly largest: number;
}

/** The two ways of a line, in the order in which they are drawn. */
export const directions: readonly Direction[] = ["hauling", "easing"];

/** Pieces of a line: a single one stands for itself. */
function piecesOf(line: DrawnLine): readonly Line[] {
  return isList(line) ? line : [line];
}

function isList(line: DrawnLine): line is readonly Line[] {
  return Array.isArray(line);
}

/**
 * Works out everything that a drawing of a line shows.
 *
 * @param line  rope and stations, or several joined from the load to the hand
 * @param load  load at the sail end [N]
 * @returns stations and their states for both ways [N]
 * @throws ReevingError for a line that is put together wrong, ValueError for impossible numbers
 */
export function stripsOf(line: DrawnLine, load: number): Strips {
  const pieces = piecesOf(line);
  const prepared = prepareJoined(pieces);
  const states = { hauling: prepared.state(load, "hauling"), easing: prepared.state(load, "easing") };
  const tensions = directions.flatMap((direction) =>
    states[direction].stations.flatMap(({ loadTension, handTension, parts }) => [loadTension, handTension, ...parts]),
  );
  return {
    stations: pieces.flatMap(({ rope, stations }) => stations.map((station) => ({ station, rope }))),
    load,
    velocityRatio: prepared.velocityRatio,
    runOutLoad: prepared.runOutLoad(),
    states,
    largest: tensions.reduce((most, tension) => Math.max(most, tension), load),
  };
}
