import { safetyFactors } from "../materials/safety.js";
import { figures, printForce } from "../quantity/print.js";
import { blockLoad } from "../reeving/block-load.js";
import type { StationState } from "../reeving/line.js";
import { lineLimits } from "../rope/thin-limits.js";
import type { Boat, BoatStation } from "./boat.js";
import { type Demand, demand, marginOver } from "./demand.js";
import type { ReadyLine } from "./ready.js";

/** Whether rope and hardware stand the gusts. */
export function judgeStrength(boat: Boat, ready: ReadyLine): Demand[] {
  return [...judgeRopes(ready), ...judgeHardware(boat, ready)];
}

function judgeRopes({ pieces }: ReadyLine): Demand[] {
  return pieces.flatMap(({ make, job, name }, at) => {
    const subject = pieces.length === 1 ? "strength of the rope" : `strength of piece ${at + 1}`;
    return lineLimits(make, job)
      .filter((limit) => limit.name === "strength")
      .map(({ margin, least, reason }) =>
        demand({
          subject,
          consequence: "injury",
          margin,
          least,
          reason: `${name}: ${reason}`,
          settle: "take the maker's rated strength into the file, or have an offcut with this end pulled to breaking",
        }),
      );
  });
}

/** Load on one sheave or ring [N]; in a tackle the rope comes back, half a turn. */
function loadOn({ kind }: BoatStation, { blocks, parts, handTension }: StationState): number {
  if (kind !== "tackle") return Math.max(0, ...blocks.map(({ load }) => load));
  const tension = Math.max(handTension, ...parts);
  return blockLoad({ loadTension: tension, handTension: tension, wrapAngle: Math.PI });
}

function judgeHardware({ catalogue }: Boat, { placed, over, loads }: ReadyLine): Demand[] {
  return placed.flatMap(({ station }, at) => {
    if (station.kind === "cleat") return [];
    const name = station.kind === "ring" ? station.ring : station.block;
    const { workingLoad } = station.kind === "ring" ? catalogue.rings[name]! : catalogue.blocks[name]!;
    const load = over({ gust: loads.gust }, (run, { gust }) =>
      loadOn(station, run.state(Math.max(0, gust!), "hauling").stations[at]!),
    );
    return [
      demand({
        subject: `working load at ${station.name}`,
        consequence: "injury",
        margin: marginOver(workingLoad, load),
        least: safetyFactors.hardwareWeakEnd.value,
        reason: `a gust pulls on the ${name} with ${printForce(load.value)}, up to ${figures(load.high, 2)} N; it is rated for ${printForce(workingLoad)}`,
        settle: "pull on the sheet with a hand scale in a steady wind, and write it into the file",
      }),
    ];
  });
}
