import { describe, expect, it } from "vitest";
import { ValueError } from "../../src/quantity/errors.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { bandSeries } from "../../src/uncertainty/band-series.js";
import { bandAtLoad, runOutBand } from "../../src/uncertainty/line-band.js";
import { uncertainInputsOf } from "../../src/uncertainty/line-inputs.js";
import { sampledBand } from "../../src/uncertainty/sampled-band.js";
import { sampleInputs, type UncertainInput } from "../../src/uncertainty/uncertain-input.js";
import { limp } from "../reeving/builders.js";

const lead: Line = { rope: limp, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.2, drag: 2 }] };
const spread = { value: 1, low: 0.5, high: 2 };
const together: UncertainInput = {
  name: "loss",
  turns: "bearing",
  record: spread,
  along: [{ turns: "drag", record: spread }],
};
const against: UncertainInput = { ...together, along: [{ turns: "drag", record: spread, falls: true }] };
const apart: UncertainInput[] = [
  { name: "loss", turns: "bearing", record: spread },
  { name: "drag", turns: "drag", record: spread },
];
const widthOf = (uncertainInputs: readonly UncertainInput[]) => {
  const { low, high } = bandAtLoad({ line: lead, uncertainInputs }, 10).hauling;
  return high - low;
};

describe("what is drawn together", () => {
  it("rises together, and falls against each other", () => {
    const { bearing, drag } = sampleInputs([together], { samples: 64 });
    for (let i = 0; i < 64; i++) expect(drag![i]).toBe(bearing![i]);
    const other = sampleInputs([against], { samples: 64 });
    for (let i = 0; i < 64; i++) expect(other.drag![i]! * other.bearing![i]!).toBeCloseTo(1, 12);
  });

  it("gives a wider band together than apart, and a narrower one against each other", () => {
    expect(widthOf([together])).toBeGreaterThan(1.2 * widthOf(apart));
    expect(widthOf([against])).toBeLessThan(0.8 * widthOf(apart));
  });

  it("multiplies with uncertain inputs that turn the same", () => {
    const [alone, both] = [[together], [together, { ...apart[1]!, name: "seals" }]].map(widthOf);
    expect(both).toBeGreaterThan(alone!);
  });

  it.each([
    [{ turns: "wind", record: spread }, "turns"],
    [{ turns: "drag", record: { value: 0, low: 0, high: 0 } }, "middle value"],
    [{ turns: "drag", record: { value: 1, low: -1, high: 2 } }, "low end"],
  ])("is refused where it cannot be: %j", (along, word) => {
    const wrong = { ...together, along: [along] } as unknown as UncertainInput;
    expect(() => sampleInputs([wrong], { samples: 8 })).toThrow(ValueError);
    expect(() => sampleInputs([wrong], { samples: 8 })).toThrow(word);
  });
});

describe("the middle of a band", () => {
  const skewed: UncertainInput[] = [
    { name: "loss", turns: "bearing", record: { value: 1, low: 0.9, high: 4 } },
    { name: "drag", turns: "drag", record: { value: 1, low: 0.9, high: 6 } },
  ];
  const uncertain = { line: lead, uncertainInputs: skewed };

  it("is the median of the sample, or the line at its own middle where that is asked for", () => {
    const [median, own] = [false, true].map((ownMiddle) => bandAtLoad(uncertain, 50, { samples: 500, ownMiddle }));
    const middle = prepareLine(lead).handForces(50);
    for (const quantity of ["hauling", "easing", "deadBand"] as const) {
      expect(own![quantity].value).toBeCloseTo(middle[quantity], 12);
      expect(Math.abs(median![quantity].value - middle[quantity])).toBeGreaterThan(1e-3);
      expect([own![quantity].low, own![quantity].high]).toEqual([median![quantity].low, median![quantity].high]);
    }
    const series = bandSeries({ name: "lead", ...uncertain, loads: [50], options: { samples: 500, ownMiddle: true } });
    expect(series.hauling[0]).toBe(own!.hauling.value);
    expect(runOutBand(uncertain, { samples: 100, ownMiddle: true }).value).toBe(prepareLine(lead).runOutLoad());
  });

  it("is the model at the middle of its inputs where that is asked for", () => {
    const inputs = { a: { value: 2, low: 1, high: 8 }, b: { value: 3, low: 2, high: 12 } };
    const model = ({ a, b }: { a: number; b: number }) => a * b;
    const own = sampledBand(inputs, model, { ownMiddle: true });
    const median = sampledBand(inputs, model);
    expect(own).toEqual({ ...median, value: 6 });
    expect(median.value).toBeGreaterThan(6.3);
  });
});

describe("the stiffness of a rope", () => {
  it("is never drawn beyond what can be", () => {
    const stiffest = { value: 1200, low: 800, high: 1920 };
    const rope = { tensionTerm: stiffest } as unknown as NonNullable<Parameters<typeof uncertainInputsOf>[0]["rope"]>;
    const { bending } = sampleInputs(uncertainInputsOf({ rope }), { samples: 4000 });
    expect(Math.max(...bending!)).toBeCloseTo(2000 / 1200, 12);
  });
});
