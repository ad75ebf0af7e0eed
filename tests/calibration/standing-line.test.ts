import { describe, expect, it } from "vitest";
import { calibrate } from "../../src/calibration/calibrate.js";
import { lineBands, lineLaw } from "../../src/calibration/line-law.js";
import { expectedHandForce } from "../../src/calibration/measured-law.js";
import { pageLines, readLines } from "../../src/calibration/page-lines.js";
import type { Reading } from "../../src/calibration/reading.js";
import { type LineRequest, standingLine } from "../../src/calibration/standing-line.js";
import { ReevingError } from "../../src/quantity/errors.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import type { Sheave } from "../../src/reeving/station.js";
import { tackle } from "../../src/reeving/tackle.js";
import { type Band, bandOf } from "../../src/sources/band.js";
import { bandAtLoad } from "../../src/uncertainty/line-band.js";
import { uncertainInputsOf } from "../../src/uncertainty/line-inputs.js";

const rope = { diameter: 0.008, stiffness: { tensionTerm: 25, constantTerm: 30, diameterTerm: 1e6 } };
const wheel = (name: string): Sheave => ({
  kind: "sheave",
  name,
  wrapAngle: Math.PI,
  diameter: 0.04,
  pinRadius: 0.01,
  bearingFriction: 0.05,
  drag: 0.2,
});
const lead: Line = { rope, stations: [wheel("lead"), wheel("turning block")] };
const records = {
  bearing: {
    friction: { value: 0.05, low: 0.02, high: 0.1 },
    radiusShare: { value: 0.5, low: 0.4, high: 0.6 },
  },
  rope: { tensionTerm: { value: 25, low: 12, high: 50 } },
  drag: { value: 0.2, low: 0.05, high: 1 },
};
const uncertainInputs = uncertainInputsOf(records as unknown as Parameters<typeof uncertainInputsOf>[0]);
const asked: LineRequest = { name: "jib sheet", line: lead, uncertainInputs, load: 100 };
const wide: LineRequest = { ...asked, line: (parts) => purchase(parts), name: "mainsheet" };

function purchase(parts: number): Line {
  const reeving = tackle({ parts, hauledFrom: "fixed", turn: wheel("sheave") });
  return { rope, stations: [{ kind: "tackle", name: `${parts}:1`, reeving }] };
}

/** Readings of a line that obeys a law, in newtons, without an error but the step of the scale. */
function pulls(line: string, { ratio = 1.3, drag = 2, purchase: VR = 1, wet = false } = {}): Reading[] {
  return [50, 100, 150, 200, 300].map((load, index) => ({
    row: index + 2,
    line,
    load: load * VR,
    haul: ratio * load + drag,
    ease: (load - drag) / ratio,
    resolution: 0.5,
    wet,
    purchase: VR,
  }));
}

describe("a line that nobody measured", () => {
  it("is that of the catalogue, and says so", () => {
    const standing = standingLine(asked, pulls("mainsheet"));
    expect(standing.measured).toBe(false);
    expect(standing.words).toBe("Jib sheet: not measured; catalogue values.");
    expect(standing.line(lead)).toBe(lead);
    expect(standing.uncertainInputs(uncertainInputs)).toBe(uncertainInputs);
    expect(standing.settled(records.drag)).toBe(records.drag);
    expect(standing.factors.loss).toEqual({ value: 1, low: 1, high: 1 });
  });

  it.each([
    ["wet readings for a dry line", asked, pulls("jib sheet", { wet: true }), "read wet only, and here it is dry"],
    ["dry readings for a wet line", { ...asked, wet: true }, pulls("jib sheet"), "read dry only, and here it is wet"],
    ["another purchase", asked, pulls("jib sheet", { purchase: 2 }), "read with a purchase of 2:1"],
    ["a purchase that cannot be rigged", wide, pulls("mainsheet", { purchase: 2.5 }), "read with a purchase of 2.5:1"],
    [
      "readings that cannot be",
      asked,
      [{ row: 7, line: "jib sheet", load: 100, haul: 50, ease: 90, resolution: 1, wet: false }],
      "none of its readings can be used (row 7: easing took 90 N",
    ],
  ])("stays that of the catalogue in spite of %s", (_, request, readings, words) => {
    const standing = standingLine(request, readings);
    expect(standing.measured).toBe(false);
    expect(standing.unfit).toBe(true);
    expect(standing.words).toContain(words);
    expect(standing.words).toContain("catalogue values");
  });

  it("passes on what is wrong with the line itself", () => {
    const twice: Line = { rope, stations: [wheel("lead"), wheel("lead")] };
    expect(() => standingLine({ ...asked, line: twice }, pulls("jib sheet"))).toThrow(ReevingError);
  });
});

describe("a line that was measured", () => {
  const readings = pulls("jib sheet");
  const standing = standingLine(asked, readings);
  const shareOf = ({ value, low, high }: Band) => ({ value: 1, low: low / value, high: high / value });
  const { friction, radiusShare } = records.bearing;
  const both = { one: shareOf(friction), other: shareOf(radiusShare) };
  const prior = lineBands(lead, 100, {
    bearing: bandOf(both, ({ one, other }) => one * other),
    bending: shareOf(records.rope.tensionTerm),
    drag: shareOf(records.drag),
  });
  const [calibration] = calibrate(readings, { prior: () => prior });

  it("has the law of its readings", () => {
    const law = lineLaw(standing.line(lead), 160);
    expect(law.ratio).toBeCloseTo(calibration!.posterior.ratio.value, 6);
    expect(law.drag).toBeCloseTo(calibration!.posterior.drag.value, 6);
    for (const [truth, { low, high }] of [
      [1.3, calibration!.posterior.ratio],
      [2, calibration!.posterior.drag],
    ] as const) {
      expect(truth).toBeGreaterThan(low);
      expect(truth).toBeLessThan(high);
    }
    expect(standing.words).toMatch(/^Jib sheet: measured, 5 readings\. Ratio 1\.31? \(95 %: /u);
    expect(standing.words).toMatch(/times the friction of the catalogue and .* times its drag\./u);
    expect(standing.factors.loss.low).toBeLessThan(standing.factors.loss.value);
    expect(standing.settled(records.drag)).toEqual({ value: 0.2, low: 0.2, high: 0.2 });
  });

  it("has the range of its readings at the hand, both ways, whatever the load", () => {
    const known = standing.uncertainInputs(uncertainInputs);
    expect(known.map(({ name }) => name)).toEqual(["ratio as measured", "drag as measured"]);
    for (const load of [40, 160, 320]) {
      const bands = bandAtLoad({ line: standing.line(lead), uncertainInputs: known }, load);
      for (const way of ["hauling", "easing"] as const) {
        const expected = expectedHandForce(calibration!.posterior, { load, way });
        const [found, width] = [bands[way], expected.high - expected.low];
        expect(Math.abs(found.value - expected.value)).toBeLessThan(0.4 * width);
        expect((found.high - found.low) / width).toBeGreaterThan(0.93);
        expect((found.high - found.low) / width).toBeLessThan(1.07);
      }
    }
  });

  it("is much surer than the catalogue", () => {
    const before = bandAtLoad({ line: lead, uncertainInputs }, 160).hauling;
    const after = bandAtLoad(
      { line: standing.line(lead), uncertainInputs: standing.uncertainInputs(uncertainInputs) },
      160,
    ).hauling;
    expect((after.high - after.low) / (before.high - before.low)).toBeLessThan(0.5);
  });

  it("keeps the uncertain inputs of what was not read: load and tread", () => {
    const load = { name: "load", turns: "load", record: { value: 1, low: 0.8, high: 1.2 } } as const;
    const tread = { name: "tread", turns: "tread", record: { value: 0.3, low: 0.2, high: 0.4 } } as const;
    expect(standing.uncertainInputs([load, tread, ...uncertainInputs]).slice(0, 2)).toEqual([load, tread]);
  });

  it("takes other lines of the same make along, and drawn factors in place of its own", () => {
    const { loss, drag } = standing.factors;
    const short: Line = { rope, stations: [wheel("lead")] };
    const own = lineLaw(standing.line(short), 160).ratio;
    expect(own).toBeGreaterThan(lineLaw(short, 160).ratio);
    expect(lineLaw(standing.line(short, { loss: loss.value, drag: drag.value }), 160).ratio).toBeCloseTo(own, 9);
    expect(lineLaw(standing.line(short, { loss: loss.high, drag: drag.value }), 160).ratio).toBeGreaterThan(own);
  });

  it("is read with its ratchet off, and keeps the grip of the tread", () => {
    const gripping: Line = {
      rope,
      stations: [wheel("lead"), { ...wheel("drum"), kind: "ratchet", treadFriction: 0.3 }],
    };
    const found = standingLine({ ...asked, line: gripping }, readings);
    expect(found.words).toContain("The grip of the ratchet's tread was not read");
    const brought = found.line(gripping);
    const [, drum] = brought.stations;
    expect(drum).toMatchObject({ kind: "ratchet", treadFriction: 0.3 });
    const hauling = prepareLine(brought).handForces(160).hauling;
    expect(hauling).toBeCloseTo(prepareLine(standing.line(lead)).handForces(160).hauling, 0);
  });

  it("is sought at the purchase of its readings", () => {
    const three = standingLine(wide, pulls("mainsheet", { ratio: 1.4, purchase: 3 }));
    expect(three.measured).toBe(true);
    expect(lineLaw(three.line(purchase(3)), 480).ratio).toBeCloseTo(1.4, 1);
    expect(lineLaw(three.line(purchase(5)), 480).ratio).toBeGreaterThan(lineLaw(purchase(5), 480).ratio);
  });

  it("names what was left out and what is odd about it", () => {
    const swapped = { row: 9, line: "jib sheet", load: 100, haul: 70, ease: 130, resolution: 1, wet: false };
    expect(standingLine(asked, [...readings, { ...swapped, purchase: 1 }]).words).toContain(
      "Row 9, the whole reading, was left out.",
    );
  });

  it("needs no uncertainInputs: a line of which nobody knows the spread is any line", () => {
    const found = standingLine({ ...asked, uncertainInputs: [] }, readings);
    expect(lineLaw(found.line(lead), 160).ratio).toBeCloseTo(1.3, 2);
    for (const { record } of found.uncertainInputs([])) expect(Number.isFinite(record.high)).toBe(true);
  });

  it("reaches a line that loses far more than bearings can", () => {
    const stuck = standingLine(asked, pulls("jib sheet", { ratio: 9 }));
    expect(lineLaw(stuck.line(lead), 160).ratio).toBeGreaterThan(6);
  });
});

describe("lines that pages ask for", () => {
  it("are told from those that none asks for, with what was meant", () => {
    const readings = [...pulls("mainsheet"), ...pulls("gennaker shet"), ...pulls("kite string"), ...pulls("halyard")];
    expect(readLines(readings)).toEqual({
      known: ["mainsheet", "halyard"],
      unknown: [{ name: "gennaker shet", meant: "gennaker sheet" }, { name: "kite string" }],
    });
    expect(pageLines).toContain("outhaul");
  });
});
