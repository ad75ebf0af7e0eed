import { describe, expect, it } from "vitest";
import type { Boat } from "../../src/boat/boat.js";
import { dayOf } from "../../src/boat/judge-day.js";
import { coverOf } from "../../src/boat/pieces.js";
import { boatOf, rewriteBoat } from "../../src/boat/read.js";
import { lineOf } from "../../src/boat/ready.js";
import { lineStanding } from "../../src/boat/standing.js";
import { acceptableEffort } from "../../src/crew/acceptable-effort.js";
import { allDayFactor } from "../../src/crew/all-day.js";
import { holdingTension } from "../../src/crew/grip-demand.js";
import { protocolFactor } from "../../src/materials/people-grip.js";
import { prepareLine } from "../../src/reeving/line.js";
import { demoNames, demoPlace, demoText, here, smallBoat, smallBoatWith } from "./small-boat.js";

const day = (holds = "mainsheet: 0.6", extra = "") => `day: # a comment
  length: 2 h
  races:
    - name: race
      start: 10 min
      legs:
        - { name: beat, length: 12 min, holds: { ${holds} }, gusts: { every: 60 s, lasts: 10 s, factor: 1.4 }, tacks: { every: 3 min, lasts: 20 s, factor: 0 } }
        - { name: run, length: 5 min, holds: {} }${extra}
`;
const strong = ["pull: 250 N", "pull: 250 N, grip: 600 N"] as const;
const textWith = (end: string, ...changes: readonly (readonly [string, string])[]) =>
  smallBoatWith(strong, ...changes) + end;
const withDay = (end = day(), ...changes: readonly (readonly [string, string])[]): Boat =>
  boatOf(textWith(end, ...changes), here);
const lasting = (boat: Boat) =>
  lineStanding(boat, "mainsheet").demands.find(({ subject }) => subject === "hand through the day");

describe("the day of a boat", () => {
  it("is read with its units, and its loads follow one another without a gap", () => {
    const boat = withDay();
    expect(boat.day).toMatchObject({ length: 7200, races: [{ start: 600, legs: [{ length: 720 }, { holds: {} }] }] });
    const intervals = dayOf(boat.day!, "mainsheet");
    expect(intervals.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(7200, 9);
    expect([...new Set(intervals.map(({ load }) => load))].sort()).toEqual([0, 0.6, 0.84]);
    expect(dayOf(boat.day!, "outhaul").every(({ load }) => load === 0)).toBe(true);
  });

  it("keeps its comments, and every other value, when one is changed", () => {
    const path = ["day", "races", 0, "legs", 0, "length"];
    const written = rewriteBoat(textWith(day()), [{ path, value: "14 min" }], here);
    expect(written).toContain("# a comment");
    const { legs } = boatOf(written, here).day!.races[0]!;
    expect(legs[0]).toEqual({ ...withDay().day!.races[0]!.legs[0]!, length: 840 });
  });

  it.each([
    [
      "a plain number",
      day().replace("12 min", "12"),
      /the plain number 12; allowed: a text with a number and its unit/u,
    ],
    ["an unknown line", day("mainshet: 1"), /Did you mean "mainsheet"/u],
    ["a line in a cleat", day("halyard: 1"), /"halyard", which a cleat holds/u],
    ["a share that is none", day("mainsheet: 40"), /from 0 to 10/u],
    ["races that end after the day", day().replace("2 h", "20 min"), /end of race/u],
    ["gusts that overlap", day().replace("lasts: 10 s", "lasts: 70 s"), /length of gusts/u],
    ["an unknown key", day().replace("gusts:", "gust:"), /Did you mean "gusts"/u],
  ])("with %s is refused", (_, end, message) => {
    expect(() => withDay(end)).toThrow(message);
  });

  it("asks for the grip of whoever holds", () => {
    expect(() => boatOf(smallBoat + day(), here)).toThrow(/crew › helm: found no grip/u);
  });

  it.each(demoNames)("stands in %s", (name) => {
    const boat = boatOf(demoText(`${name}.yaml`), demoPlace(name));
    expect(boat.day!.races.length).toBeGreaterThan(1);
  });
});

describe("the hand through the day", () => {
  it("lasts as many times the loads as the model of crews gives for one line, and no more than efforts that come back may ask", () => {
    const boat = withDay();
    const { parts, pieces, loads } = lineOf(boat, "mainsheet");
    const { value: design } = loads.design;
    const { value } = allDayFactor({
      intervals: dayOf(boat.day!, "mainsheet").map((one) => ({ ...one, load: one.load * design })),
      maximumGrip: { value: 600, low: 600 * protocolFactor.low, high: 600 * protocolFactor.high },
      option: {
        name: "mainsheet",
        parts: [],
        hold: { cover: coverOf(pieces[0]!.rope, false), diameter: 0.007, hands: 1 },
        causes: {},
        lineWith: () => parts[0]!,
      },
    });
    // By hand: time-weighted mean of what is held, over what the hand holds at most, against the rule for its share of the day.
    const hold = { cover: coverOf(pieces[0]!.rope, false), diameter: 0.007, hands: 1 } as const;
    const most = holdingTension({ hold, maximumGrip: { value: 600, low: 600, high: 600 } }).value;
    const stretches = dayOf(boat.day!, "mainsheet").filter(({ load }) => load > 0);
    const held = stretches.reduce((sum, { length }) => sum + length, 0);
    const { value: allowed } = acceptableEffort({ dutyCycle: held / 7200 });
    const askedAt = (times: number) =>
      stretches.reduce((sum, { length, load }) => {
        const pull = prepareLine(parts[0]!).handForce(times * load * design, "easing");
        return sum + (length * pull) / held;
      }, 0) / most;
    const { middle } = lasting(boat)!.margins;
    if (askedAt(value) > allowed) expect(askedAt(middle) / allowed).toBeCloseTo(1, 2);
    else expect(middle / value).toBeCloseTo(1, 2);
    expect(middle).toBeLessThan(1.01 * value);
  });

  it("lasts longer with more grip, two hands or less load, and shorter with a second line", () => {
    const middle = (boat: Boat) => lasting(boat)!.margins.middle;
    const usual = middle(withDay());
    expect(middle(withDay(day(), ["grip: 600 N", "grip: 800 N"]))).toBeGreaterThan(usual);
    expect(middle(withDay(day(), ["grip: 600 N", "grip: 600 N, hands: 2"]))).toBeGreaterThan(usual);
    expect(middle(withDay(day("mainsheet: 0.4")))).toBeGreaterThan(usual);
    const two = withDay(day("mainsheet: 0.6, outhaul: 0.3"), [
      "path:\n      - { kind: block, name: end of the boom, block: block 40, wrap: 180 deg }\n      - { kind: cleat, name: cleat, cleat: horn, turns: 3, eights: 1 }\n    heldBy: cleat",
      "path:\n      - { kind: block, name: end of the boom, block: block 40, wrap: 180 deg }\n    heldBy: hand",
    ]);
    expect(middle(two)).toBeLessThan(usual);
  });

  it("is no danger when it fails, and is not asked without a day or of a line that nobody holds in it", () => {
    const tired = lasting(withDay(day("mainsheet: 8")))!;
    expect(tired).toMatchObject({ consequence: "race", outcome: "not enough" });
    expect(lasting(boatOf(smallBoat, here))).toBeUndefined();
    expect(lineStanding(withDay(), "halyard").demands.some(({ subject }) => subject.endsWith("the day"))).toBe(false);
  });
});
