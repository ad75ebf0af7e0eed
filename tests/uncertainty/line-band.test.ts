import { describe, expect, it } from "vitest";
import { blockLosses } from "../../src/materials/block-losses.js";
import { Refusal, ValueError } from "../../src/quantity/errors.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { scaledLine } from "../../src/reeving/scaled.js";
import { tackle } from "../../src/reeving/tackle.js";
import { bandSeries } from "../../src/uncertainty/band-series.js";
import { bandAtLoad, bandOverLoads, runOutBand } from "../../src/uncertainty/line-band.js";
import { lineSensitivity } from "../../src/uncertainty/line-sensitivity.js";
import { printBand } from "../../src/uncertainty/printed-band.js";
import { sampleInputs, type UncertainInput } from "../../src/uncertainty/uncertain-input.js";
import { cleat, limp, ratchet, ring, sheave, stiff, wheel } from "../reeving/builders.js";

const bearing: UncertainInput = { name: "bearings", turns: "bearing", record: { value: 0.12, low: 0.06, high: 0.25 } };
const bending: UncertainInput = { name: "bending", turns: "bending", record: { value: 60, low: 30, high: 110 } };
const sliding: UncertainInput = { name: "ring", turns: "sliding", record: { value: 0.12, low: 0.08, high: 0.2 } };
const tread: UncertainInput = { name: "tread", turns: "tread", record: { value: 0.35, low: 0.2, high: 0.6 } };
const drag: UncertainInput = { name: "drag", turns: "drag", record: { value: 1, low: 0.3, high: 3 } };
const gust: UncertainInput = { name: "wind", turns: "load", record: { value: 1, low: 0.7, high: 1.4 } };

const four = tackle({ parts: 4, hauledFrom: "fixed", turn: { ...sheave, drag: 0.3 } });
const sheet: Line = { rope: stiff, stations: [{ kind: "tackle", name: "4:1", reeving: four }, ring, ratchet] };
const uncertainInputs = [bearing, bending, sliding, tread, drag, gust];

/** Bands from the single solver, draw by draw. */
function slowBand(line: Line, load: number, samples: number, quantity: "hauling" | "easing" | "deadBand") {
  const { load: loads, ...factors } = sampleInputs(uncertainInputs, { samples });
  const values = Float64Array.from({ length: samples }, (_, i) => {
    const drawn = Object.fromEntries(Object.entries(factors).map(([name, column]) => [name, column[i]!]));
    return prepareLine(scaledLine(line, drawn)).handForces(load * loads![i]!)[quantity];
  }).sort();
  const at = (share: number) => values[Math.round(share * (samples - 1))]!;
  return { low: at(0.05), value: at(0.5), high: at(0.95) };
}

const close = (one: object, other: object) => {
  for (const [key, value] of Object.entries(one))
    expect(value, key).toBeCloseTo((other as Record<string, number>)[key]!, 6);
};

describe("bands over loads", () => {
  const sensing: Line = {
    rope: stiff,
    stations: [
      { ...ratchet, engageLoad: 120 },
      { ...ring, loadDependence: { exponent: 0.8, referenceTension: 300 } },
    ],
  };
  const cleated: Line = { rope: limp, stations: [ring, cleat] };

  it.each([
    ["a line that is straight over load", sheet],
    ["a line that bends", sensing],
    ["a closed cleat", cleated],
  ])("are those of the single solver, draw by draw: %s", (_, line) => {
    for (const load of [5, 60, 400]) {
      const band = bandAtLoad({ line, uncertainInputs }, load, { samples: 64 });
      for (const quantity of ["hauling", "easing", "deadBand"] as const)
        close(band[quantity], slowBand(line, load, 64, quantity));
    }
  });

  it("are the same for a load among others and alone", () => {
    const many = bandOverLoads({ line: sheet, uncertainInputs }, [800, 20, 100], { samples: 501 });
    const alone = bandAtLoad({ line: sheet, uncertainInputs }, 100, { samples: 501 });
    close({ low: many.hauling.low[2], value: many.hauling.median[2], high: many.hauling.high[2] }, alone.hauling);
    close(
      { low: many.deadBand.low[2], high: many.deadBand.high[2] },
      { low: alone.deadBand.low, high: alone.deadBand.high },
    );
  });

  it("come again with their seed, and by default", () => {
    const at = (options = {}) => bandAtLoad({ line: sheet, uncertainInputs }, 100, options);
    expect(at()).toEqual(at());
    expect(at({ samples: 1000, seed: 2 })).toEqual(at({ samples: 1000, seed: 2 }));
    expect(at({ samples: 1000, seed: 3 })).not.toEqual(at({ samples: 1000, seed: 2 }));
  });

  it("settle as samples grow", () => {
    const high = (samples: number) => bandAtLoad({ line: sheet, uncertainInputs }, 100, { samples }).hauling.high;
    const settled = high(200_000);
    expect(Math.abs(high(10_000) - settled) / settled).toBeLessThan(2e-3);
    expect(Math.abs(high(100) - settled)).toBeGreaterThan(Math.abs(high(10_000) - settled));
  });

  it("have no width without spread, and meet the single solver", () => {
    const exact = prepareLine(sheet).handForces(100);
    const sure = { ...bearing, record: { value: 0.12, low: 0.12, high: 0.12 } };
    for (const some of [[], [sure]]) {
      const { hauling, easing, deadBand } = bandAtLoad({ line: sheet, uncertainInputs: some }, 100);
      close({ low: hauling.low, high: hauling.high }, { low: exact.hauling, high: exact.hauling });
      close({ low: easing.low, high: easing.high }, { low: exact.easing, high: exact.easing });
      close({ value: deadBand.value }, { value: exact.deadBand });
    }
  });

  it("of a single measured turn are those of its record", () => {
    const line: Line = { rope: limp, stations: [wheel(1.2)] };
    const loss: UncertainInput = { name: "loss", turns: "bearing", record: { value: 0.2, low: 0.1, high: 0.3 } };
    const { hauling } = bandAtLoad({ line, uncertainInputs: [loss] }, 100);
    expect(hauling.low).toBeCloseTo(110, 1);
    expect(hauling.value).toBeCloseTo(120, 1);
    expect(hauling.high).toBeCloseTo(130, 1);
  });

  it("of one make of bearing are wider than of as many bearings each for itself", () => {
    const line = (names: readonly string[]): Line => ({
      rope: limp,
      stations: names.map((name) => ({ ...wheel(1.1), name })),
    });
    const loss: UncertainInput = { name: "loss", turns: "bearing", record: { value: 1, low: 0.5, high: 2 } };
    const one = bandAtLoad({ line: line(["a"]), uncertainInputs: [loss] }, 100).hauling;
    const same = bandAtLoad({ line: line(["a", "b", "c", "d"]), uncertainInputs: [loss] }, 100).hauling;
    // Fully together, logarithms add up: the fourth power of one turn.
    expect(same.high / 100).toBeCloseTo((one.high / 100) ** 4, 6);
  });

  it("hold ninety of a hundred draws of another seed", () => {
    const band = bandAtLoad({ line: sheet, uncertainInputs }, 100).easing;
    const { load, ...factors } = sampleInputs(uncertainInputs, { samples: 2000, seed: 99 });
    let inside = 0;
    for (let i = 0; i < 2000; i++) {
      const drawn = Object.fromEntries(Object.entries(factors).map(([name, column]) => [name, column[i]!]));
      const { easing } = prepareLine(scaledLine(sheet, drawn)).handForces(100 * load![i]!);
      if (easing >= band.low && easing <= band.high) inside++;
    }
    expect(Math.abs(inside / 2000 - 0.9)).toBeLessThan(0.02);
  });

  it("of the run-out load follow the drag", () => {
    const line: Line = { rope: limp, stations: [{ ...wheel(1), drag: 2 }] };
    const band = runOutBand({ line, uncertainInputs: [drag] });
    expect(band.low).toBeCloseTo(0.6, 1);
    expect(band.value).toBeCloseTo(2, 1);
    expect(band.high).toBeCloseTo(6, 0);
    expect(runOutBand({ line, uncertainInputs: [] })).toEqual({ low: 2, value: 2, high: 2 });
  });

  it("make a series for a figure", () => {
    const series = bandSeries({
      name: "sheet",
      line: sheet,
      uncertainInputs,
      loads: [0, 50, 100],
      options: { samples: 200 },
    });
    expect(series.hauling).toHaveLength(3);
    expect(series.bands.easing.low[2]!).toBeLessThan(series.easing[2]!);
    expect(series.bands.hauling.high[2]!).toBeGreaterThan(series.hauling[2]!);
  });

  it("refuse samples, loads and uncertain inputs that cannot be", () => {
    const ask =
      (load: number, some: readonly UncertainInput[], options = {}) =>
      () =>
        bandAtLoad({ line: sheet, uncertainInputs: some }, load, options);
    expect(ask(100, uncertainInputs, { samples: 0 })).toThrow(ValueError);
    expect(ask(100, uncertainInputs, { samples: Number.NaN })).toThrow(ValueError);
    expect(ask(Number.NaN, uncertainInputs)).toThrow(Refusal);
    expect(ask(-1, uncertainInputs)).toThrow(Refusal);
    expect(ask(100, [bearing, bearing])).toThrow(ValueError);
    expect(ask(100, [{ ...bearing, record: { value: 0, low: 0, high: 1 } }])).toThrow(ValueError);
    expect(ask(100, [{ ...bearing, record: { value: 1, low: -1, high: 2 } }])).toThrow(ValueError);
    expect(ask(100, [{ ...bearing, record: { value: Number.NaN, low: 0, high: 1 } }])).toThrow(ValueError);
    expect(ask(100, [{ ...bearing, turns: "weather" as "bearing" }])).toThrow(ValueError);
  });

  it("let the rope slide where a draw seizes a bearing, and no turn loses more than that", () => {
    const wild: UncertainInput = { ...bearing, record: { value: 0.12, low: 0.01, high: 20 } };
    const line: Line = { rope: limp, stations: [{ ...sheave, wrapAngle: Math.PI }] };
    const { hauling, easing } = bandAtLoad({ line, uncertainInputs: [wild] }, 100);
    const sliding = Math.exp(blockLosses.grooveFriction.value * Math.PI);
    expect(hauling.high).toBeCloseTo(100 * sliding, 9);
    expect(easing.low).toBeCloseTo(100 / sliding, 9);
    expect(runOutBand({ line, uncertainInputs: [wild] }).high).toBe(0);
  });
});

describe("which number moves the hand", () => {
  it("puts the tread first for easing over a ratchet, and gives it no say in hauling", () => {
    const line: Line = { rope: limp, stations: [ratchet] };
    const input = { line, uncertainInputs: [bearing, tread], load: 100 };
    const [first, second] = lineSensitivity({ ...input, quantity: "easing" });
    expect([first!.name, second!.name]).toEqual(["tread", "bearings"]);
    expect(first!.total.value).toBeCloseTo(1, 2);
    expect(second!.total.value).toBeCloseTo(0, 6);
    const hauling = lineSensitivity({ ...input, quantity: "hauling" });
    expect(hauling[0]!.name).toBe("bearings");
    expect(hauling[1]!.total.value).toBeCloseTo(0, 6);
  });

  it("shares out the whole variance, and not less than the first orders", () => {
    for (const quantity of ["hauling", "easing", "deadBand"] as const) {
      const found = lineSensitivity({ line: sheet, uncertainInputs, load: 100, quantity });
      const sum = (order: "first" | "total") => found.reduce((all, one) => all + one[order].value, 0);
      expect(sum("first")).toBeLessThan(1.02);
      expect(sum("total")).toBeGreaterThan(0.98);
      for (const { first, total } of found) {
        expect(first.value).toBeLessThanOrEqual(total.value + 4 * (first.error + total.error) + 1e-9);
        expect(total.error).toBeLessThan(0.02);
      }
    }
  });

  it("is zero for numbers without spread", () => {
    const sure = { ...bending, record: { value: 60, low: 60, high: 60 } };
    const found = lineSensitivity({ line: sheet, uncertainInputs: [sure, tread], load: 100, quantity: "easing" });
    expect(found.at(-1)).toMatchObject({ name: "bending", total: { value: 0 } });
  });
});

describe("printed bands", () => {
  it("give the middle with its range, or alone", () => {
    expect(printBand({ value: 84.6, low: 70.2, high: 104.9 }, 3)).toBe("84.6 (70.2 to 105)");
    expect(printBand({ value: 2, low: 2, high: 2 })).toBe("2");
  });
});
