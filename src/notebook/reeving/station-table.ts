import { figures } from "../../quantity/print.js";
import type { LineState } from "../../reeving/line.js";
import { type DrawnLine, type Strips, stripsOf } from "./strips.js";
import type { EndWords } from "./words.js";

/** Numbers of a drawing: one row for the load, every station, every block and part of a tackle, and the hand. */
export interface StationTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const columns = [
  "Where",
  "Tension after it, hauling [N]",
  "Tension after it, easing [N]",
  "Loss at the hand, hauling [N]",
  "Loss at the hand, easing [N]",
  "Load on it, hauling [N]",
  "Load on it, easing [N]",
];

const none = "–";

/**
 * The numbers behind a drawing.
 *
 * @param line  what is drawn
 * @param load  load at the sail end [N]
 * @param words  words for load and hand
 * @returns columns and rows as printed [N]
 */
export function stationTable({
  line,
  load,
  words = {},
}: {
  readonly line: DrawnLine;
  readonly load: number;
  readonly words?: EndWords | undefined;
}): StationTable {
  const strips = stripsOf(line, load);
  const { hauling, easing } = strips.states;
  return {
    columns,
    rows: [
      tensionRow(words.load ?? "load", load, load),
      ...strips.stations.flatMap((_, index) => stationRows(strips, index)),
      tensionRow(words.hand ?? "hand", hauling.handForce, easing.handForce),
    ],
  };
}

function tensionRow(name: string, hauling: number, easing: number): string[] {
  return [name, figures(hauling), figures(easing), none, none, none, none];
}

function stationRows({ stations, states }: Strips, index: number): string[][] {
  const { station } = stations[index]!;
  const hauling = states.hauling.stations[index]!;
  const easing = states.easing.stations[index]!;
  const lost = (state: LineState) => (state.moves ? figures(state.stations[index]!.loss) : none);
  const held = hauling.blocks[0];
  const eased = easing.blocks[0];
  const single = station.kind !== "tackle" && held !== undefined && eased !== undefined;
  const own = [
    station.name,
    figures(hauling.handTension),
    figures(easing.handTension),
    lost(states.hauling),
    lost(states.easing),
    single ? figures(held.load) : none,
    single ? figures(eased.load) : none,
  ];
  if (station.kind !== "tackle") return [own];
  return [
    own,
    ...hauling.parts.map((tension, part) =>
      tensionRow(`${station.name}: part ${part + 1}`, tension, easing.parts[part] ?? 0),
    ),
    ...hauling.blocks.map(({ name, load }, block) => [
      name,
      none,
      none,
      none,
      none,
      figures(load),
      figures(easing.blocks[block]?.load ?? 0),
    ]),
  ];
}
