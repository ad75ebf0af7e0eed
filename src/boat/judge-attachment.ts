import { safetyFactors } from "../materials/safety.js";
import { figures, printForce } from "../quantity/print.js";
import type { StationState } from "../reeving/line.js";
import { lashing, shackle } from "../rope/lashing.js";
import { type Band, bandOf } from "../sources/band.js";
import type { Attachment, Boat, BoatStation } from "./boat.js";
import { type Demand, demand } from "./demand.js";
import { makeOf } from "./pieces.js";
import type { ReadyLine } from "./ready.js";

/** Whether what fastens blocks, rings and cleats stands the vector sum of all that pulls there in a gust. */
export function judgeAttachments(boat: Boat, { placed, over, loads }: ReadyLine): Demand[] {
  return placed.flatMap(({ station }, at) => {
    if (station.attached === undefined) return [];
    const load = over({ gust: loads.gust }, (run, { gust }) =>
      pullOn(station, run.state(Math.max(0, gust!), station.kind === "cleat" ? "easing" : "hauling").stations[at]!),
    );
    const { good, words } = goodFor(boat, station.attached);
    const margin = bandOf({ good, load }, (one) => one.good / Math.max(one.load, 1e-9));
    return [
      demand({
        subject: `attachment of ${station.name}`,
        consequence: "injury",
        margin,
        least: safetyFactors.hardwareWeakEnd.value,
        reason: `a gust pulls on it with ${printForce(load.value)}, up to ${figures(load.high, 2)} N; ${words} is good for ${printForce(good.value)}`,
        settle: "pull on the sheet with a hand scale in a steady wind, and write it into the file",
      }),
    ];
  });
}

/** Vector sum of what pulls at a station [N]: at the block of a tackle that carries most, and of the line at a cleat. */
function pullOn({ kind }: BoatStation, { blocks, loadTension }: StationState): number {
  return kind === "cleat" ? loadTension : Math.max(0, ...blocks.map(({ load }) => load));
}

/** Load that an attachment is good for [N]; a lashing breaks at the safety factor of the boat times that. */
function goodFor(boat: Boat, attached: Attachment): { readonly good: Band; readonly words: string } {
  if (attached.kind === "rated") {
    const { ratedLoad: value } = attached;
    return { good: { value, low: value, high: value }, words: "what it is fastened with" };
  }
  if (attached.kind === "shackle")
    return { good: shackle({ barDiameter: attached.bar }).workingLoad, words: "its shackle" };
  const { twine, rounds, gap, bar } = attached;
  const { breakLoad } = lashing({ twine: makeOf(boat.catalogue.ropes, twine), rounds, gap, eyeDiameter: bar });
  const factor = boat.limits.safetyFactor;
  return {
    good: { value: breakLoad.value / factor, low: breakLoad.low / factor, high: breakLoad.high / factor },
    words: "its lashing",
  };
}
