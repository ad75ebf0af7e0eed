import { describe, expect, it } from "vitest";
import { byNeed, type Demand, demand, exactly, isOpen, marginOver, ratingOf, worstOf } from "../../src/boat/demand.js";

type Asked = Parameters<typeof demand>[0];
const asked = (
  changes: Partial<Asked> & { readonly value: number; readonly low: number; readonly high?: number },
): Demand => {
  const { value, low, high = value, ...others } = changes;
  return demand({ subject: "one", consequence: "race", margin: { value, low, high }, reason: "", ...others });
};

describe("a demand", () => {
  it.each([
    ["enough", 1, 1],
    ["enough", 1.4, 1],
    ["can't tell", 1.4, 0.999],
    ["can't tell", 1, 0.5],
    ["not enough", 0.999, 0.999],
    ["not enough", 0.9, 0.2],
  ] as const)("is %s with %d in the middle and %d at the bad end", (outcome, value, low) => {
    expect(asked({ value, low }).outcome).toBe(outcome);
  });

  it("whose bad end has less to reach still fails with its middle: a rope at 0.9 of what is asked never passes", () => {
    expect(asked({ value: 0.9, low: 0.8, least: 0.5 }).outcome).toBe("not enough");
    expect(asked({ value: 1, low: 0.5, least: 0.5 }).outcome).toBe("enough");
    expect(asked({ value: 1, low: 0.499, least: 0.5 }).outcome).toBe("can't tell");
    expect(asked({ value: 3, low: 0.499, least: 0.5 }).outcome).toBe("can't tell");
  });

  it("takes no rounding for a lack: 6.6 mm over 6 mm is 1.10", () => {
    const ratio = 6.6 / 6 / 1.1;
    expect(ratio).toBeLessThan(1);
    expect(demand({ subject: "groove", consequence: "comfort", margin: exactly(ratio), reason: "" }).outcome).toBe(
      "enough",
    );
    expect(asked({ value: 1 - 1e-6, low: 1 }).outcome).toBe("not enough");
  });

  it("of custom knows no doubt, and is no open one when it is of comfort", () => {
    const custom = asked({ value: 1, low: 0.2, high: 9, ground: "custom", consequence: "comfort" });
    expect(custom).toMatchObject({ outcome: "enough", wide: false });
    const short = asked({ value: 0.9, low: 0.2, ground: "custom", consequence: "comfort" });
    expect(short.outcome).toBe("not enough");
    expect(isOpen(short)).toBe(false);
    expect(worstOf([custom, short])).toBe("enough");
  });

  it("is wide beyond a factor of three either way", () => {
    expect(asked({ value: 3, low: 1 }).wide).toBe(false);
    expect(asked({ value: 3.01, low: 1 }).wide).toBe(true);
    expect(asked({ value: 1, low: 1, high: 3.01 }).wide).toBe(true);
  });

  it("is rated by the end that is nearer to what it has to reach", () => {
    expect(ratingOf(asked({ value: 1.5, low: 0.6, least: 0.5 }))).toBeCloseTo(1.2, 12);
    expect(ratingOf(asked({ value: 1.1, low: 0.9, least: 0.5 }))).toBeCloseTo(1.1, 12);
  });
});

describe("the order of advice", () => {
  it("is consequence, then outcome, then what tells much, then shortfall", () => {
    const one = (subject: string, changes: Parameters<typeof asked>[0]) => asked({ subject, ...changes });
    const all = [
      one("comfort, far short", { value: 0.1, low: 0.1, consequence: "comfort" }),
      one("race, enough", { value: 2, low: 2 }),
      one("race, short", { value: 0.9, low: 0.8 }),
      one("race, shorter", { value: 0.4, low: 0.3 }),
      one("race, far short but wide", { value: 0.2, low: 0.01 }),
      one("injury, enough", { value: 2, low: 2, consequence: "injury" }),
      one("injury, can't tell", { value: 1.5, low: 0.9, consequence: "injury" }),
      one("injury, short", { value: 0.95, low: 0.9, consequence: "injury" }),
    ];
    for (const list of [all, [...all].reverse()])
      expect([...list].sort(byNeed).map(({ subject }) => subject)).toEqual([
        "injury, short",
        "injury, can't tell",
        "injury, enough",
        "race, shorter",
        "race, short",
        "race, far short but wide",
        "race, enough",
        "comfort, far short",
      ]);
  });
});

describe("margins", () => {
  it("over a range turn it round, and are finite over nothing", () => {
    expect(marginOver(10, { value: 5, low: 4, high: 8 })).toEqual({ value: 2, low: 1.25, high: 2.5 });
    expect(Number.isFinite(marginOver(10, { value: 0, low: -1, high: 0 }).high)).toBe(true);
  });
});
