import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { front } from "../../src/plan/front.js";
import { loadSolver, type Solver } from "../../src/plan/solver.js";
import { allowed, amountsOf, inOrder, lineOf, wholeBoat } from "./whole-boat.js";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

/** Amounts that no other amounts beat, each once. */
function unbeaten(all: readonly number[][]): number[][] {
  const own = [...new Map(all.map((one) => [one.join(), one])).values()];
  const beaten = (one: number[]) => own.some((other) => other !== one && other.every((value, i) => value <= one[i]!));
  return own.filter((one) => !beaten(one)).sort(inOrder);
}

/** A busy machine may be slow; nothing here is about time. */
describe("the front", () => {
  it("is the whole front of trying every choice, where that is small", () => {
    fc.assert(
      fc.property(wholeBoat, (boat) => {
        const small = { ...boat, lines: boat.lines.slice(0, 3) };
        const expected = unbeaten(allowed(small).map(amountsOf));
        const found = front(solver, small, { atLeast: 1000 });
        expect(found.complete).toBe(true);
        expect(found.points.map(({ choice }) => amountsOf(choice.map(({ option }) => option)))).toEqual(expected);
      }),
      { seed: 7, numRuns: 25 },
    );
  });

  it("gives as many points as are wanted, proven, none beaten by any choice", () => {
    const lines = Array.from({ length: 5 }, (_, i) =>
      lineOf(
        `line ${i}`,
        Array.from({ length: 6 }, (__, j) => ({
          milligrams: 1000 * (20 + 9 * j + ((i * 7 + j * 5) % 8)),
          cents: 900 + 150 * ((i + 2 * j) % 7),
          millinewtons: 1000 * (90 - 12 * j + ((i * 3 + j) % 5)),
          reach: j,
        })),
      ),
    );
    const found = front(solver, { lines, limits: [] });
    expect(found.points.length).toBeGreaterThanOrEqual(25);
    expect(found.complete).toBe(false);
    expect(found.points.flatMap(({ proofs }) => proofs.map(({ gap }) => gap)).every((gap) => gap === 0)).toBe(true);
    const all = unbeaten(allowed({ lines, limits: [] }).map(amountsOf)).map(String);
    for (const { choice } of found.points) expect(all).toContain(String(amountsOf(choice.map(({ option }) => option))));
    const [lightest, easiest] = [found.points[0]!, found.points.at(-1)!].map(({ totals }) => totals.handForce);
    expect(easiest).toBeLessThan(lightest!);
  });

  it("is empty where no choice meets the limits, and one point where there is one choice", () => {
    const lines = [lineOf("only", [{ milligrams: 9000, cents: 700, millinewtons: 8000, reach: 1 }])];
    expect(front(solver, { lines, limits: [] }).points).toHaveLength(1);
    const none = front(solver, { lines, limits: [{ kind: "total", total: "cost", atMost: 699 }] });
    expect(none).toMatchObject({ points: [], complete: true });
  });

  it("works for two totals as well", () => {
    fc.assert(
      fc.property(wholeBoat, (boat) => {
        const small = { ...boat, lines: boat.lines.slice(0, 3) };
        const pairs = (all: readonly number[][]) => all.map(([mass, force]) => [mass!, force!]);
        const found = front(solver, small, { goal: ["dry", "handForce"], atLeast: 1000 });
        const amounts = found.points.map(({ choice }) => amountsOf(choice.map(({ option }) => option)));
        expect(pairs(amounts)).toEqual(unbeaten(pairs(allowed(small).map(amountsOf))));
      }),
      { seed: 7, numRuns: 25 },
    );
  });
});
