import { type CreepLaw, creepLaws } from "../materials/creep.js";
import type { FibreName } from "../materials/fibres.js";
import { figures, printForce } from "../quantity/print.js";
import { holdVerdict } from "../reeving/hold.js";
import { prepareJoined } from "../reeving/joined-lines.js";
import { shapeLost } from "../reeving/set-shape.js";
import { shapeVerdict } from "../reeving/shape-verdict.js";
import { breakLoad, ropeStiffness } from "../rope/break-load.js";
import { creepStrain } from "../rope/creep.js";
import { lineLimits } from "../rope/thin-limits.js";
import { type Band, bandOf } from "../sources/band.js";
import type { Boat, BoatLine } from "./boat.js";
import { cleatIn, gustAt, type HeldPlace, slipLoadIn } from "./cleat-hold.js";
import { type Demand, demand, marginOver } from "./demand.js";
import { letGoOf } from "./let-go.js";
import type { ReadyLine } from "./ready.js";

/** Whether the cleat takes the rope, and, where it holds the line, whether it holds the gusts. */
export function judgeCleat(boat: Boat, ready: ReadyLine): Demand[] {
  const held = cleatIn(ready);
  if (held === undefined) return [];
  const { at, piece } = held;
  const fit = lineLimits(piece.make, piece.job)
    .filter(({ name }) => name === "cleat")
    .map(({ margin, reason }) => demand({ subject: "size of rope in the cleat", consequence: "race", margin, reason }));
  if (ready.line.heldBy !== "cleat") return fit;
  const slipLoad = slipLoadIn(boat, ready, held);
  const load = gustAt(ready, at);
  const { reason } = holdVerdict({ subject: "", slipLoad, load, changes: [] });
  const margin: Band = {
    value: slipLoad.value / Math.max(load.value, 1e-9),
    low: slipLoad.low / Math.max(load.high, 1e-9),
    high: slipLoad.high / Math.max(load.low, 1e-9),
  };
  const holds = demand({
    subject: "cleat in a gust",
    consequence: "injury",
    margin,
    reason: `the rope ${reason}`,
    settle: "pull on the cleated line with a hand scale until it slips",
  });
  return [holds, judgeLetGo(boat, ready), ...fit];
}

/** Lines that must come free at once: what is set for a leg can wait for the next lull. */
const comesFree: ReadonlySet<BoatLine["kind"]> = new Set<BoatLine["kind"]>(["sheet", "vang"]);

/** Whether whoever works the line can let it go under the load of a gust. */
function judgeLetGo(boat: Boat, ready: ReadyLine): Demand {
  const { effort, share, how } = letGoOf(boat, ready);
  const { line, hand } = ready;
  return demand({
    subject: "let go in a gust",
    consequence: comesFree.has(line.kind) ? "injury" : "comfort",
    margin: marginOver(1, share),
    reason: `it takes ${printForce(effort.value)}, up to ${figures(effort.high, 2)} N: ${how}; ${line.hand} pulls ${printForce(hand.pull)}`,
    settle: "load the line with a person's weight and let it go",
  });
}

/** Creep law of a fibre; those of which nothing is known have none. */
const creepOf: Readonly<Partial<Record<FibreName, CreepLaw>>> = {
  polyester: creepLaws.polyester,
  aramid: creepLaws.aramid,
  aramidHighModulus: creepLaws.aramid,
  hmpe: creepLaws.hmpe,
  hmpeHighModulus: creepLaws.hmpe,
  lcp: creepLaws.lcp,
};

const nothing: Band = { value: 0, low: 0, high: 0 };

/** Whether a set line keeps the sail where it was put: stretch in gusts, creep, slip at the cleat. */
export function judgeShape(boat: Boat, ready: ReadyLine): Demand[] {
  const held = cleatIn(ready);
  const { movement } = ready.line;
  if (held === undefined || movement === undefined || ready.line.heldBy !== "cleat") return [];
  const { make } = ready.pieces[0]!;
  const stiffness = ropeStiffness(make);
  const strength = breakLoad(make).value;
  const law = creepOf[make.fibre];
  const lost = shapeLost({
    line: ready.middle,
    spans: ready.spans.filter(({ after }) => after <= held.at),
    stiffnessFactor: { value: 1, low: stiffness.low / stiffness.value, high: stiffness.high / stiffness.value },
    setLoad: ready.loads.design.value,
    gustLoad: ready.loads.gust,
    creep: (tension) =>
      law === undefined
        ? nothing
        : creepStrain({
            law,
            loadShare: Math.min(1, tension / strength),
            settling: movement.settled,
            duration: movement.after,
            temperature: boat.conditions.airTemperature,
          }),
    slipLoad: slipLoadAtSail(ready, held, slipLoadIn(boat, ready, held)),
    giveStiffness: { value: movement.give, low: movement.give, high: movement.give },
  }).total;
  const { reason } = shapeVerdict({ subject: "", lost, allowed: movement.allowed, changes: [] });
  const left = law === undefined ? "; creep is left out, none is known of this fibre" : "";
  return [
    demand({
      subject: "set shape",
      consequence: "race",
      margin: marginOver(movement.allowed, lost),
      reason: `the sail ${reason}${left}`,
      settle: "mark the line at the cleat, sail a leg, and measure how far the mark has moved",
    }),
  ];
}

/** Load at the sail at which the line slips through its closed cleat, friction on the way helping. */
function slipLoadAtSail({ parts }: ReadyLine, { station }: HeldPlace, slipLoad: Band): Band {
  return bandOf({ slipLoad }, (values) => {
    const closed = parts.map((part) => ({
      ...part,
      stations: part.stations.map((one) =>
        one.kind === "cleat" && one.name === station.name
          ? { ...one, closed: true, holdLoad: Math.max(0, values.slipLoad) }
          : one,
      ),
    }));
    return prepareJoined(closed).runOutLoad();
  });
}
