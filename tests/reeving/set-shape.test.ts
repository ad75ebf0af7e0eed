import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { type ShapeInput, shapeLost, slipLoadAtSail, stretchAtSail } from "../../src/reeving/set-shape.js";
import { tackle } from "../../src/reeving/tackle.js";
import { limp, num, seed, wheel } from "./builders.js";

const EA = 50_000;
const exactly = (value: number) => ({ value, low: value, high: value });
const bare = prepareLine({ rope: limp, stations: [] });
const overBlock = prepareLine({ rope: limp, stations: [wheel(1.1)] });
const purchase = (parts: number, ratio: number) =>
  prepareLine({
    rope: limp,
    stations: [
      { kind: "tackle", name: "purchase", reeving: tackle({ parts, hauledFrom: "fixed", turn: wheel(ratio) }) },
    ],
  });

describe("stretch at the sail", () => {
  it("of a line without stations is that of the rope", () => {
    fc.assert(
      fc.property(num(0, 2000), num(0.1, 30), (load, length) => {
        const moved = stretchAtSail({
          line: bare,
          load,
          direction: "easing",
          spans: [{ after: 0, length, axialStiffness: EA }],
        });
        expect(moved).toBeCloseTo((load * length) / EA, 12);
      }),
      seed,
    );
  });

  it("takes the tension of each piece: more behind a block after hauling, less while the sail pulls", () => {
    const spans = [{ after: 1, length: 5, axialStiffness: EA }];
    const moved = (direction: "hauling" | "easing") => stretchAtSail({ line: overBlock, load: 500, direction, spans });
    expect(moved("hauling")).toBeCloseTo((550 * 5) / EA, 12);
    expect(moved("easing")).toBeCloseTo((500 / 1.1) * (5 / EA), 12);
  });

  it("behind a purchase counts by its tension and by its velocity ratio", () => {
    for (const parts of [2, 3, 4]) {
      const spans = [{ after: 1, length: 6, axialStiffness: EA }];
      const moved = stretchAtSail({ line: purchase(parts, 1), load: 600, direction: "easing", spans });
      expect(moved).toBeCloseTo(((600 / parts) * 6) / EA / parts, 12);
    }
  });

  it("agrees with virtual work inside a frictionless purchase", () => {
    for (const parts of [2, 3, 4]) {
      const spans = [{ after: 0, inside: true, length: 2, axialStiffness: EA }];
      const moved = stretchAtSail({ line: purchase(parts, 1), load: 600, direction: "easing", spans });
      const { stations } = purchase(parts, 1).state(600, "easing");
      const work = stations[0]!.parts.reduce((sum, tension) => sum + (tension * tension * 2) / EA, 0);
      expect(moved * 600).toBeCloseTo(work, 9);
    }
  });

  it("refuses a piece that lies nowhere", () => {
    for (const span of [
      { after: 1, length: 1, axialStiffness: EA },
      { after: -1, length: 1, axialStiffness: EA },
      { after: 0.5, length: 1, axialStiffness: EA },
      { after: 0, inside: true, length: 1, axialStiffness: EA },
    ])
      expect(() => stretchAtSail({ line: bare, load: 1, direction: "easing", spans: [span] })).toThrow(ReevingError);
    expect(() =>
      stretchAtSail({
        line: bare,
        load: 1,
        direction: "easing",
        spans: [{ after: 0, length: -1, axialStiffness: EA }],
      }),
    ).toThrow(ValueError);
  });
});

describe("slip load at the sail", () => {
  const cleated = (ratio: number): Line => ({
    rope: limp,
    stations: [wheel(ratio), { kind: "cleat", name: "cleat", closed: true, holdLoad: 0 }],
  });

  it("is raised by friction between sail and cleat", () => {
    const slip = slipLoadAtSail({ line: cleated(1.2), slipLoad: { value: 300, low: 200, high: 400 } });
    expect(slip.value).toBeCloseTo(360, 9);
    expect(slip.low).toBeCloseTo(240, 9);
    expect(slip.high).toBeCloseTo(480, 9);
  });

  it("refuses a line that nothing holds", () =>
    expect(() => slipLoadAtSail({ line: { rope: limp, stations: [wheel(1)] }, slipLoad: exactly(1) })).toThrow(
      ReevingError,
    ));
});

describe("shape lost", () => {
  const input: ShapeInput = {
    line: bare,
    spans: [{ after: 0, length: 10, axialStiffness: EA }],
    stiffnessFactor: exactly(1),
    setLoad: 500,
    gustLoad: exactly(700),
    creep: (tension) => exactly(tension / 500 / 1000),
    slipLoad: exactly(1000),
    giveStiffness: exactly(2000),
  };

  it("adds stretch and creep, and no slip while the cleat holds", () => {
    const lost = shapeLost(input);
    expect(lost.stretch.value).toBeCloseTo((200 * 10) / EA, 12);
    expect(lost.creep.value).toBeCloseTo(0.01, 12);
    expect(lost.slip).toEqual(exactly(0));
    expect(lost.total.value).toBeCloseTo(0.05, 12);
    expect(lost.holds).toBe("enough");
  });

  it("slips until the sail has dropped the rest of the gust", () => {
    fc.assert(
      fc.property(num(1, 699), num(100, 1e4), (slip, give) => {
        const lost = shapeLost({ ...input, slipLoad: exactly(slip), giveStiffness: exactly(give) });
        expect(700 - lost.slip.value * give).toBeCloseTo(slip, 6);
        expect(lost.holds).toBe("not enough");
      }),
      seed,
    );
    expect(shapeLost({ ...input, slipLoad: exactly(700) }).slip.value).toBe(0);
  });

  it("is nothing for a rope that neither stretches nor creeps", () => {
    const lost = shapeLost({
      ...input,
      spans: [{ after: 0, length: 10, axialStiffness: 1e9 }],
      creep: () => exactly(0),
    });
    expect(lost.total.value).toBeLessThan(1e-5);
  });

  it("says doubtful, with a range from nothing, when the ranges of slip and gust overlap", () => {
    const lost = shapeLost({
      ...input,
      slipLoad: { value: 900, low: 500, high: 1500 },
      gustLoad: { value: 700, low: 600, high: 800 },
    });
    expect(lost.holds).toBe("can't tell");
    expect(lost.slip.value).toBe(0);
    expect(lost.slip.high).toBeGreaterThan(0.05);
    expect(lost.slip.low).toBe(0);
  });

  it("keeps every range in order, and widens with a wider stiffness", () => {
    const wide = shapeLost({
      ...input,
      stiffnessFactor: { value: 1, low: 0.5, high: 1.5 },
      gustLoad: { value: 700, low: 600, high: 900 },
    });
    for (const { low, value, high } of [wide.stretch, wide.creep, wide.slip, wide.total])
      expect(low >= 0 && low <= value && value <= high).toBe(true);
    expect(wide.stretch.high).toBeGreaterThan(shapeLost(input).stretch.high);
  });

  it("does not count a lull as a gain", () =>
    expect(shapeLost({ ...input, gustLoad: exactly(300) }).stretch.value).toBe(0));
});
