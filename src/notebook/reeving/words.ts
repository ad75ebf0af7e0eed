import { figures, printForce } from "../../quantity/print.js";
import type { StationState } from "../../reeving/line.js";
import type { Direction } from "../../reeving/mechanism-loads.js";
import type { TextLine } from "./shapes.js";
import { directions, type RopeAtStation, type Strips } from "./strips.js";
import { firstLines, wrapped } from "./wrapped.js";

/** Words for the two ends of a line. */
export interface EndWords {
  /** What pulls; `load` when absent. */
  readonly load?: string;
  /** Who holds; `hand` when absent. */
  readonly hand?: string;
}

const mostNameLines = 3;

function nameLines(name: string, role: TextLine["role"], room: number): TextLine[] {
  return firstLines(wrapped({ text: name, role, bold: true }, room), mostNameLines);
}

/** Words beside a station: its name, what is lost there, what pulls behind it. */
export function stationLines(
  { station }: RopeAtStation,
  state: StationState,
  { moves, room }: { readonly moves: boolean; readonly room: number },
): TextLine[] {
  const notes = [
    ...partsNote(state),
    ...(station.kind === "cleat" && station.closed ? [`closed, holds ${figures(station.holdLoad)} N`] : []),
    ...("lines" in station && (station.lines ?? 1) > 1 ? [`shared by ${station.lines} lines`] : []),
    ...(station.kind === "cleat" && !station.closed
      ? ["open, loses nothing"]
      : moves
        ? [`loses ${figures(state.loss)} N`]
        : []),
  ];
  return [
    ...nameLines(station.name, "ink", room),
    ...notes.flatMap((text) => wrapped({ text, role: "quiet1" }, room)),
    ...wrapped({ text: `${figures(state.handTension)} N after it`, role: "rope" }, room),
  ];
}

function partsNote({ parts }: StationState): string[] {
  if (parts.length === 0) return [];
  const least = figures(Math.min(...parts));
  const most = figures(Math.max(...parts));
  return [least === most ? `parts: ${least} N` : `parts: ${least} to ${most} N`];
}

/** Words at an end of the line. */
export function endLines(word: string, force: number, role: "rope" | "water", room: number): TextLine[] {
  return [...nameLines(word, role, room), ...wrapped({ text: printForce(force), role, bold: true }, room)];
}

/** Heading of a strip. */
export function stripTitle(strips: Strips, direction: Direction): string {
  if (direction === "hauling") return "Hauling: the line comes in";
  if (strips.states.easing.moves) return "Easing: the line goes out";
  const { runOutLoad } = strips;
  const from = runOutLoad < 1e6 ? `; it would from ${printForce(runOutLoad)}` : "";
  return `Easing: under this load the line does not go out by itself${from}`;
}

/** What the strips do not say by themselves. */
export function footNote({ load, velocityRatio }: Strips): string {
  const metres = figures(velocityRatio);
  const ratio = metres === "1" ? "" : `, and haul ${metres} m of line for each metre that the load moves`;
  return `Without loss the hand would pull ${printForce(load / velocityRatio)}${ratio}. Losses are given as the hand feels them.`;
}

/**
 * What a drawing shows, in sentences.
 *
 * @param strips  stations and states
 * @param words  words for load and hand
 * @returns load, tension behind every station and force at the hand, for both ways
 */
export function describedStrips(strips: Strips, { load = "load", hand = "hand" }: EndWords): string {
  const ways = directions.map((direction) => {
    const { stations, handForce, moves } = strips.states[direction];
    const steps = stations.map(({ name, handTension }) => `after ${name} ${figures(handTension)} N`);
    const end = moves ? "" : ", and the line does not go out by itself";
    return `${direction === "hauling" ? "Hauling" : "Easing"}: ${[...steps, `${hand} ${printForce(handForce)}`].join(", ")}${end}.`;
  });
  return `A line from the ${load} of ${printForce(strips.load)} to the ${hand}. ${ways.join(" ")}`;
}
