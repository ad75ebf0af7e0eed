import { heldLines } from "../materials/held-lines.js";
import { figures, printForce } from "../quantity/print.js";
import { type HandEase, safeLostForce } from "../rope/hand-burn.js";
import { type Band, bandOf } from "../sources/band.js";
import { type Demand, demand } from "./demand.js";
import type { Feel } from "./judge-hand.js";
import type { ReadyLine } from "./ready.js";

/** What was worked out for a fibre, a hand and an ease: it is asked again for every rope and block that is tried. */
const known = new Map<string, Band>();
const mostKnown = 500;

/** Diameter for which it is worked out [m]; the heat goes into an area that grows as the diameter does, so the force does too. */
const reference = 0.008;

function safeForce({ ropeDiameter, ...ease }: HandEase): Band {
  const key = Object.values(ease).join(" ");
  const before = known.get(key) ?? safeLostForce({ ...ease, ropeDiameter: reference }, "burn");
  if (known.size >= mostKnown) known.clear();
  known.set(key, before);
  const times = ropeDiameter / reference;
  return { value: times * before.value, low: times * before.low, high: times * before.high };
}

/** Force that a hand may take out of a line that runs: over the range of skin and hand, low also for a faster and longer ease [N]. */
function allowedForce(rope: Omit<HandEase, "speed" | "duration">, speed: Band, duration: Band): Band {
  const at = (pace: number, time: number) => safeForce({ ...rope, speed: pace, duration: time });
  const middle = at(speed.value, duration.value);
  const left = (worse: Band): Band => ({ value: 1, low: Math.min(1, worse.value / middle.value), high: 1 });
  return bandOf(
    { skin: middle, pace: left(at(speed.high, duration.value)), time: left(at(speed.value, duration.high)) },
    ({ skin, pace, time }) => skin * pace * time,
  );
}

/** Whether a bare or gloved hand stands a fast ease of a line that it holds: no burn while the line runs through it. */
export function judgeEase({ line, pieces, hand }: ReadyLine, { easing }: Feel): Demand[] {
  if (line.heldBy !== "hand" || easing.value <= 0) return [];
  const { rope } = pieces.at(-1)!;
  const sure = (value: number): Band => ({ value, low: value, high: value });
  const speed = line.ease === undefined ? heldLines.easeSpeed : sure(line.ease.speed);
  const duration = line.ease === undefined ? heldLines.easeDuration : sure(line.ease.duration);
  const runs = { fibre: rope.cover?.fibre ?? rope.fibre, ropeDiameter: rope.diameter };
  const gloved = hand.gloves === true;
  const allowed = allowedForce({ ...runs, gloved }, speed, duration);
  const margin = bandOf({ allowed, taken: easing }, (one) => one.allowed / Math.max(one.taken, 1e-9));
  return [
    demand({
      subject: "hand on a fast ease",
      consequence: "injury",
      margin,
      reason:
        `${figures(speed.value)} m/s for ${figures(duration.value)} s: a ${gloved ? "gloved" : "bare"} hand may take ` +
        `${printForce(allowed.value)} out of the line without a burn, likely ${figures(allowed.low, 2)} to ${figures(allowed.high, 2)} N; it holds ${printForce(easing.value)}`,
      settle: "time how fast the line runs on a gust, and write it into the file",
    }),
  ];
}
