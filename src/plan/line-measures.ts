import type { Boat } from "../boat/boat.js";
import type { LineStanding } from "../boat/check.js";
import type { Judgement } from "../boat/judgement.js";
import type { Margins } from "../quantity/verdict.js";
import { meets } from "./limit.js";
import type { PlanLine, PlanOption } from "./plan-option.js";
import type { MeasureLimit } from "./planned-boat.js";

/** Margins that a boat file asks for. */
const asked = ["strength margin", "cleat margin", "run-out margin", "movement margin"] as const;

/** Margins that must be right; where nothing that is strong enough and can be hauled gets there, no worse than now. */
const kept = ["fit margin", "wear margin", "comfort margin"] as const;

type MarginName = (typeof asked)[number] | (typeof kept)[number];

/** The margin that a judgement goes into; hand forces are measures of their own. */
function marginOf({ aspect, subject }: Judgement): MarginName | undefined {
  if (aspect === "strong") return "strength margin";
  if (aspect === "runs") return "run-out margin";
  if (aspect === "stays") return "movement margin";
  if (aspect === "holds") return subject.startsWith("cleat") ? "cleat margin" : undefined;
  if (aspect === "hauls") return subject.startsWith("thickness") ? "comfort margin" : undefined;
  return subject.startsWith("groove") || subject.startsWith("size") ? "fit margin" : "wear margin";
}

/** Hand forces [N] and the least margin of each kind [-]; infinite where nothing of the kind is asked. */
export function measuresOf({ feel, judgements }: LineStanding, end: keyof Margins): Record<string, number> {
  const force = end === "middle" ? "value" : "high";
  const margin = (name: MarginName) => {
    const all = judgements.filter((one) => marginOf(one) === name).map(({ margins }) => margins);
    // At the weak end of its range a rope is asked for less; it must still be strong enough in the middle.
    return Math.min(Number.POSITIVE_INFINITY, ...all.flatMap((one) => [one.middle, one[end]]));
  };
  return {
    hauling: feel.hauling[force],
    holding: feel.easing[force],
    "run-out load": feel.runOutLoad[force],
    ...Object.fromEntries([...asked, ...kept].map((name) => [name, margin(name)])),
  };
}

/** Limits of one line, as the boat file sets them; its first option is the line as it is. */
export function limitsOfLine(boat: Boat, { name: line, options }: PlanLine, robust: boolean): MeasureLimit[] {
  const measuresAt = (option: PlanOption) => (robust ? option.measuresRobust : undefined) ?? option.measures;
  const now = measuresAt(options[0]!);
  const { hand, heldBy } = boat.lines[line]!;
  const { hold, pull } = boat.crew[hand]!;
  const most = (measure: string, bound: number): MeasureLimit => {
    return { kind: "measure", line, measure, sense: "at most", bound, unit: "N" };
  };
  const least = (measure: string, bound: number): MeasureLimit => {
    return { kind: "measure", line, measure, sense: "at least", bound };
  };
  const there = (name: MarginName) => Number.isFinite(now[name]!);
  const needed = [
    most("hauling", pull),
    ...(heldBy === "hand" ? [most("holding", Math.min(hold, boat.limits.handForce ?? hold))] : []),
    ...asked.filter(there).map((name) => least(name, 1)),
  ];
  const right = kept.filter(there).map((name) => least(name, 1));
  const passes = (option: PlanOption) =>
    [...needed, ...right].every((limit) => meets({ ...option, measures: measuresAt(option) }, limit));
  const held = options.some(passes) ? right : right.map((one) => ({ ...one, bound: Math.min(1, now[one.measure]!) }));
  return [...needed, ...held];
}
