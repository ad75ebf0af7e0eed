import { figures, printForce } from "../quantity/print.js";
import { blockLoad } from "../reeving/block-load.js";
import type { StationState } from "../reeving/line.js";
import { lineLimits } from "../rope/thin-limits.js";
import type { Boat, BoatStation } from "./boat.js";
import { type Judgement, judged } from "./judgement.js";
import type { ReadyLine } from "./ready.js";

/** Whether rope and hardware stand the gusts. */
export function judgeStrength(boat: Boat, ready: ReadyLine): Judgement[] {
  return [...judgeRopes(ready), ...judgeHardware(boat, ready)];
}

function judgeRopes({ pieces }: ReadyLine): Judgement[] {
  return pieces.flatMap(({ make, job, name }, at) => {
    const subject = pieces.length === 1 ? "strength of the rope" : `strength of piece ${at + 1}`;
    return lineLimits(make, job)
      .filter((limit) => limit.name === "strength")
      .map(({ margins, reason }) => judged("strong", subject, margins, `${name}: ${reason}`));
  });
}

/** Load on one sheave or ring [N]; in a tackle the rope comes back, half a turn. */
function loadOn({ kind }: BoatStation, { blocks, parts, handTension }: StationState): number {
  if (kind !== "tackle") return Math.max(0, ...blocks.map(({ load }) => load));
  const tension = Math.max(handTension, ...parts);
  return blockLoad({ loadTension: tension, handTension: tension, wrapAngle: Math.PI });
}

function judgeHardware({ catalogue }: Boat, { placed, over, loads }: ReadyLine): Judgement[] {
  return placed.flatMap(({ station }, at) => {
    if (station.kind === "cleat") return [];
    const name = station.kind === "ring" ? station.ring : station.block;
    const { workingLoad } = station.kind === "ring" ? catalogue.rings[name]! : catalogue.blocks[name]!;
    const load = over({ gust: loads.gust }, (run, { gust }) =>
      loadOn(station, run.state(Math.max(0, gust!), "hauling").stations[at]!),
    );
    return [
      judged(
        "strong",
        `working load at ${station.name}`,
        { middle: workingLoad / Math.max(load.value, 1e-9), worst: workingLoad / Math.max(load.high, 1e-9) },
        `a gust pulls on the ${name} with ${printForce(load.value)}, up to ${figures(load.high, 2)} N; it is good for ${printForce(workingLoad)}`,
      ),
    ];
  });
}
