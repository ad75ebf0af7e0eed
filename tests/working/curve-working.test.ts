import { describe, expect, it } from "vitest";
import { figure } from "../../src/notebook/display.js";
import { formulas } from "../../src/working/catalogue.js";
import { curveWorking } from "../../src/working/curve-working.js";
import { worked } from "../../src/working/worked.js";

const degrees = [0, 45, 90, 135, 180];
const ratio = (angle: number) =>
  worked(formulas.capstan, { frictionCoefficient: 0.2, wrapAngle: (angle * Math.PI) / 180 });
const values = degrees.map((angle) => Math.exp(0.2 * ((angle * Math.PI) / 180)));
const curve = { x: degrees, y: values, make: ratio };

describe("the working of a curve", () => {
  it("is that of its middle point, and names what alone changes", () => {
    const { row, working, changes } = curveWorking(curve);
    expect(row).toBe(2);
    expect(working.value).toBeCloseTo(Math.exp(0.2 * (Math.PI / 2)), 12);
    expect(changes).toMatch(/wrap/u);
  });

  it("lets one number stand in several places", () => {
    const parts = [2, 3, 4];
    const pull = (count: number) =>
      worked(formulas.tenthRule, { loadTension: 1000, sheaveCount: count, share: 0.1, ropeParts: count });
    const { changes } = curveWorking({ x: parts, y: parts.map((count) => pull(count).value), make: pull });
    expect(changes).toContain(" and ");
  });

  it("knows gaps, and units of the figure", () => {
    const gaps = curveWorking({ ...curve, y: [1, values[1]!, null, values[3]!, values[4]!] });
    expect(gaps.row).toBe(4);
    const percent = curveWorking({ ...curve, y: values.map((one) => 100 * one), unit: "%" });
    expect(percent.working.value).toBeCloseTo(values[2]!, 12);
    const later = curveWorking({ ...curve, y: [7, ...values.slice(1)], from: 45 });
    expect([later.row, later.from]).toEqual([2, 45]);
    expect(curveWorking({ ...curve, from: 0 })).not.toHaveProperty("from");
  });

  it.each([
    [
      "a point that is not what was worked out",
      { y: values.map((one, row) => (row === 3 ? 1.001 * one : one)) },
      "1.6",
    ],
    ["values in another unit", { y: values.map((one) => 100 * one) }, "as it was worked out"],
    ["no point", { y: degrees.map(() => null) }, "no point"],
    ["nothing that changes", { y: degrees.map(() => values[2]!), make: () => ratio(90) }, "nothing that changes"],
    [
      "two numbers that change",
      {
        make: (angle: number) =>
          worked(formulas.capstan, {
            frictionCoefficient: angle === 45 ? 0.4 : 0.2,
            wrapAngle: ((angle === 45 ? 22.5 : angle) * Math.PI) / 180,
          }),
      },
      "that change along it",
    ],
    [
      "other steps at one point",
      {
        make: (angle: number) =>
          angle === 0
            ? worked(formulas.efficiency, { loadTension: 1, velocityRatio: 1, haulingForce: 1 })
            : ratio(angle),
      },
      "points with other steps",
    ],
  ])("is refused for %s", (_, changed, said) => {
    expect(() => curveWorking({ ...curve, ...changed })).toThrow(said);
  });

  it("stays with its figure, at a point of its own curve", () => {
    const made = curveWorking(curve);
    const fields = (worked: object) => ({
      name: "ratio",
      title: "More with the angle",
      caption: "Invented.",
      altText: "A curve.",
      x: { title: "Wrap angle [°]" },
      y: { title: "Tension ratio" },
      panels: [{ title: "", series: [{ name: "ring", x: degrees, line: values, worked }] }],
    });
    expect(figure(fields({ line: made })).panels[0]?.series[0]?.worked?.line?.row).toBe(2);
    expect(() => figure(fields({ points: made }))).toThrow("its curve");
    expect(() => figure(fields({ line: { ...made, row: 9 } }))).toThrow("a point of the curve");
    expect(() => figure(fields({ line: { ...made, working: { steps: [], value: 1 } } }))).toThrow("working");
  });
});
