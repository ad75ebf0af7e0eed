import { describe, expect, it } from "vitest";
import type { Boat } from "../../src/boat/boat.js";
import { gustOnBoard, lineLoads, loadConflicts } from "../../src/boat/loads.js";
import { standardGravity } from "../../src/quantity/constants.js";
import { small } from "./small-boat.js";

const edges = "    sheet: { kind: boom";
const withEdges = (...more: readonly (readonly [string, string])[]): Boat =>
  small([edges, `    edges: { luff: 5.4 m, leech: 5.7 m, foot: 2.2 m }\n${edges}`], ...more);
const stated = "{ kind: stated, design: 200 N, light: 29 N, spread: 0.1 }";

describe("the halyard of a sail with edges", () => {
  const halyard = (load: string) => {
    const boat = withEdges([stated, load]);
    return lineLoads(boat, boat.lines.halyard!);
  };

  it("carries the leech: more than the sheet pulls down at the clew, and more than the weight", () => {
    const boat = withEdges();
    const sheet = lineLoads(boat, boat.lines.mainsheet!).design;
    const { design, gust, light } = halyard("{ kind: sail, sail: main, corner: halyard }");
    const down = sheet.value * Math.sin((50 / 180) * Math.PI);
    // The leech holds the moment of the sheet about the mast, less what the vang holds.
    expect(design.value).toBeGreaterThan((down * 2) / 2.2);
    expect(design.low).toBeLessThan(design.value);
    expect(design.high / design.low).toBeGreaterThan(1.5);
    expect(gust.value).toBeGreaterThan(design.value);
    expect(light!.value).toBeCloseTo(3 * standardGravity, 9);
  });

  it("is half of it for a share of a half, and only the weight below a lock", () => {
    const whole = halyard("{ kind: sail, sail: main, corner: halyard }").design.value;
    expect(halyard("{ kind: sail, sail: main, corner: halyard, share: 0.5 }").design.value).toBeCloseTo(whole / 2, 9);
    const locked = halyard("{ kind: sail, sail: main, corner: halyard, lock: true }");
    expect([locked.design.value, locked.gust.value]).toEqual([3 * standardGravity, 3 * standardGravity]);
  });

  it("that is stated against its balance is told with both figures", () => {
    expect(loadConflicts(small())).toEqual([]);
    const named = (design: number) =>
      withEdges(["  halyard:\n", "  main halyard:\n"], [stated, `{ kind: stated, design: ${design} N, spread: 0.1 }`]);
    const [told, ...more] = loadConflicts(named(60));
    expect(more).toEqual([]);
    expect(told).toMatch(
      /^main halyard: the file states 60 N; the balance of the main asks for \d+ N, likely \d+ to \d+ N$/u,
    );
    const asked = Number(/asks for (\d+) N/u.exec(told!)![1]);
    expect(loadConflicts(named(asked))).toEqual([]);
  });

  it("asks for edges where the file has none", () => {
    expect(() => small([stated, "{ kind: sail, sail: main, corner: halyard }"])).toThrow(/edges: \{ luff/u);
  });
});

describe("a gust", () => {
  it("is put on the true wind: upwind it grows less on board than its square", () => {
    const boat = small();
    const { design, gust } = lineLoads(boat, boat.lines.mainsheet!);
    const growth = gust.value / design.value;
    expect(growth).toBeGreaterThan(1);
    expect(growth).toBeLessThan(1.2 ** 2);
    expect(growth).toBeCloseTo(gustOnBoard(boat), 1);
  });

  it("makes no weight heavier, and nothing that the crew has set", () => {
    const growth = (grows: string) => {
      const boat = small(["{ kind: stated, design: 150 N }", `{ kind: stated, design: 150 N${grows} }`]);
      const { design, gust } = lineLoads(boat, boat.lines.outhaul!);
      return gust.value / design.value;
    };
    expect(growth("")).toBe(1);
    expect(growth(", grows: weight")).toBe(1);
    expect(growth(", grows: set")).toBe(1);
    expect(growth(", grows: wind")).toBeCloseTo(gustOnBoard(small()), 12);
  });
});

describe("the range of a sheet load", () => {
  const spread = (boat: Boat) => {
    const { low, high } = lineLoads(boat, boat.lines.mainsheet!).design;
    return Math.sqrt(high / low);
  };

  it("is about a factor of one and a half either way where nothing was measured, and narrower after one reading", () => {
    const guessed = spread(small());
    expect(guessed).toBeGreaterThan(1.25);
    expect(guessed).toBeLessThan(1.8);
    const read = spread(
      small([
        "{ kind: boom, boomAngle: 5 deg, forceLever: 0.9 m, sheetLever: 2 m, sheetSlope: 50 deg }",
        "{ kind: measured, load: 220 N, at: 16 kn }",
      ]),
    );
    expect(read).toBeLessThan(0.85 * guessed);
    expect(read).toBeGreaterThan(1.05);
  });
});
