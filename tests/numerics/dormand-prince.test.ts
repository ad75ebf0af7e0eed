import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { integrate } from "../../src/numerics/dormand-prince.js";
import { OutsideModelError } from "../../src/quantity/errors.js";
import { evenly } from "./evenly.js";

const swing = (tolerance: number, end: number) =>
  integrate({
    derivative: (_, [x, v], rates) => {
      rates[0] = v!;
      rates[1] = -x!;
    },
    time: 0,
    state: [1, 0],
    end,
    events: [],
    tolerance,
  });

describe("steps with a tolerance", () => {
  it("follow a swing, and the closer the tighter the tolerance", () => {
    const off = [1e-4, 1e-6, 1e-8, 1e-10].map((tolerance) => Math.abs(swing(tolerance, 10).state[0]! - Math.cos(10)));
    for (const [index, error] of off.slice(1).entries()) expect(error).toBeLessThan(off[index]! / 5);
    expect(off.at(-1)).toBeLessThan(1e-8);
  });

  it("are exact to rounding where the solution is a cubic in time", () => {
    const { state, time } = integrate({
      derivative: (t, _, rates) => {
        rates[0] = 3 * t * t;
      },
      time: 1,
      state: [1],
      end: 4,
      events: [],
      tolerance: 1e-6,
    });
    expect(time).toBe(4);
    expect(state[0]).toBeCloseTo(64, 10);
  });

  it("go nowhere when there is no time", () => {
    expect(swing(1e-8, 0)).toEqual({ time: 0, state: Float64Array.of(1, 0) });
  });

  it("tell every point in order of time, with points within the steps that lie on the solution", () => {
    const seen: [number, number][] = [];
    integrate({
      derivative: (_, [x], rates) => {
        rates[0] = -x!;
      },
      time: 0,
      state: [1],
      end: 3,
      events: [],
      tolerance: 1e-9,
      onPoint: (time, state) => seen.push([time, state[0]!]),
    });
    expect(seen.length).toBeGreaterThan(20);
    for (const [index, [time, value]] of seen.entries()) {
      expect(value).toBeCloseTo(Math.exp(-time), 7);
      if (index > 0) expect(time).toBeGreaterThan(seen[index - 1]![0]);
    }
  });

  it("are refused where the rates are not finite", () => {
    const run = () =>
      integrate({
        derivative: (_, [x], rates) => {
          rates[0] = x! ** 2;
        },
        time: 0,
        state: [1],
        end: 2,
        events: [],
        tolerance: 1e-8,
      });
    expect(run).toThrow(OutsideModelError);
  });
});

describe("events", () => {
  it("are found where their function falls to zero, first come first", () => {
    fc.assert(
      fc.property(evenly(1, 50), evenly(0.1, 30), (height, gravity) => {
        const { time, state, event } = integrate({
          derivative: (_, [, v], rates) => {
            rates[0] = v!;
            rates[1] = -gravity;
          },
          time: 0,
          state: [height, 0],
          end: 1000,
          events: [(_, [x]) => x!, (_, [x]) => x! - height / 2],
          tolerance: 1e-9,
        });
        expect(event).toBe(1);
        expect(time).toBeCloseTo(Math.sqrt(height / gravity), 6);
        expect(state[0]).toBeCloseTo(height / 2, 6);
      }),
      { seed: 7, numRuns: 50 },
    );
  });

  it("that start at zero must rise first", () => {
    const { time, event } = integrate({
      derivative: (_, [, v], rates) => {
        rates[0] = v!;
        rates[1] = -2;
      },
      time: 0,
      state: [0, 3],
      end: 100,
      events: [(_, [x]) => x!],
      tolerance: 1e-9,
    });
    expect(event).toBe(0);
    expect(time).toBeCloseTo(3, 8);
  });
});
