import { figures, printForce } from "../quantity/print.js";
import type { HandForces, PreparedLine } from "../reeving/line.js";
import { lineLimits } from "../rope/thin-limits.js";
import type { Band } from "../sources/band.js";
import type { Boat, BoatLine, CrewMember } from "./boat.js";
import { type Demand, demand, marginOver } from "./demand.js";
import type { ReadyLine } from "./ready.js";

/** A force is never below nothing, however wide its range. */
function notBelowNothing({ value, low, high }: Band): Band {
  return { value, low: Math.max(0, low), high };
}

/** What of a line made ready decides what the hand feels. */
export interface FeltLine extends Pick<ReadyLine, "over"> {
  readonly loads: Pick<ReadyLine["loads"], "design">;
  readonly line: Pick<ReadyLine["line"], "tailDrag">;
}

/** What the hand feels on a line in the design wind, and from which load it goes out, with ranges [N]. */
export interface Feel {
  readonly hauling: Band;
  readonly easing: Band;
  readonly runOutLoad: Band;
}

/**
 * What the hand feels on a line of a boat in the design wind, between gusts.
 *
 * @param ready  a line made ready by `lineOf`
 * @returns hauling and easing force, and the load from which the line goes out by itself with its tail [N]
 */
export function feelOf({ over, loads, line }: FeltLine): Feel {
  const load = { load: loads.design };
  // Both forces come from one state of the line.
  const known = new Map<string, HandForces>();
  const forcesOf = (run: PreparedLine, values: Readonly<Record<string, number>>) => {
    const key = Object.values(values).join(" ");
    const forces = known.get(key) ?? run.handForces(Math.max(0, values.load!));
    known.set(key, forces);
    return forces;
  };
  const tail = line.tailDrag ?? 0;
  return {
    hauling: notBelowNothing(over(load, (run, values) => forcesOf(run, values).hauling)),
    easing: notBelowNothing(over(load, (run, values) => forcesOf(run, values).easing)),
    runOutLoad: notBelowNothing(over({}, (run) => run.runOutLoad(tail))),
  };
}

const range = ({ low, high }: Band) => `${figures(low, 2)} to ${figures(high, 2)} N`;

/** Most that a hand hauls and holds on a line [N]: the crew's figures, or less where boat or line sets a limit. */
export function mostForces(
  limits: Boat["limits"],
  line: BoatLine,
  { hold, pull }: CrewMember,
): { readonly pull: number; readonly hold: number } {
  const { hauling = pull, holding = hold } = line.limits ?? {};
  return { pull: Math.min(pull, hauling), hold: Math.min(hold, holding, limits.handForce ?? hold) };
}

/** Whether the hand can hold the line, and haul it. */
export function judgeHand({ limits }: Boat, { line, hand, pieces }: ReadyLine, { hauling, easing }: Feel): Demand[] {
  const { pull, hold: most } = mostForces(limits, line, hand);
  const hauls = demand({
    subject: "pull to haul",
    consequence: "race",
    margin: marginOver(pull, hauling),
    reason: `hauling asks for ${printForce(hauling.value)}, likely ${range(hauling)}; ${pull < hand.pull ? "the line is allowed" : `${line.hand} pulls`} ${printForce(pull)}`,
    settle: "haul it over a hand scale",
  });
  if (line.heldBy === "cleat") return [hauls];
  const holds = demand({
    subject: "hand that holds",
    consequence: "race",
    margin: marginOver(most, easing),
    reason: `holding asks for ${printForce(easing.value)}, likely ${range(easing)}; ${line.hand} keeps up ${printForce(most)}`,
    settle: "hold it with a hand scale between hand and line, and ease until it runs",
  });
  const last = pieces.at(-1)!;
  const comfort = lineLimits(last.make, { ...last.job, handTension: easing.value })
    .filter(({ name }) => name === "hand comfort")
    .map(({ margin, reason }) =>
      demand({ subject: "thickness in the hand", consequence: "comfort", ground: "custom", margin, reason }),
    );
  return [holds, hauls, ...comfort];
}

/** Whether the line goes out by itself in light air. */
export function judgeRunOut({ loads, line, over: across }: ReadyLine, { runOutLoad }: Feel): Demand[] {
  const { light } = loads;
  // An endless line is pulled out by its other part.
  if (light === undefined || line.form === "endless") return [];
  const tail = line.tailDrag ?? 0;
  const margin = across({ light }, (run, values) => Math.max(0, values.light!) / Math.max(1e-9, run.runOutLoad(tail)));
  return [
    demand({
      subject: "run out in light air",
      consequence: "race",
      margin,
      reason: `light air gives ${figures(light.value, 2)} N, likely ${range(light)}; the line goes out from ${figures(runOutLoad.value, 2)} N, likely ${range(runOutLoad)}`,
      settle: "let go of it in light air and see whether it runs",
    }),
  ];
}
