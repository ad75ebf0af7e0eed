import { describe, expect, it } from "vitest";
import { prepareLine } from "../../src/reeving/line.js";
import { leadLineFactor } from "../../src/reeving/rules.js";
import { type TackleInput, tackle } from "../../src/reeving/tackle.js";
import { alone, lineOf, wheel } from "./builders.js";

const every: [number, "moving" | "fixed", number][] = [];
for (let parts = 1; parts <= 12; parts++)
  for (const hauledFrom of ["moving", "fixed"] as const)
    for (const leadBlocks of [0, 1, 2, 8]) every.push([parts, hauledFrom, leadBlocks]);

const pull = (input: TackleInput, load = 1) => prepareLine(lineOf(tackle(input))).handForces(load);

describe("a simple purchase of parallel parts", () => {
  it.each(every)(
    "%i parts hauled from the %s block, %i leads: load over parts without friction",
    (parts, from, leads) => {
      const { hauling, easing, velocityRatio, efficiency } = pull(
        { parts, hauledFrom: from, leadBlocks: leads, turn: wheel(1) },
        1200,
      );
      expect(hauling).toBeCloseTo(1200 / parts, 9);
      expect(easing).toBeCloseTo(1200 / parts, 9);
      expect(velocityRatio).toBeCloseTo(parts, 11);
      expect(efficiency).toBeCloseTo(1, 12);
    },
  );

  it.each(every)(
    "%i parts hauled from the %s block, %i leads: the lead-line factor with friction",
    (parts, from, leads) => {
      const sheaves = parts - (from === "moving" ? 1 : 0) + leads;
      for (const tensionRatio of [1.01, 1.09, 1.4]) {
        const factor = leadLineFactor({ tensionRatio, parts, sheaves });
        const { hauling, easing } = pull({ parts, hauledFrom: from, leadBlocks: leads, turn: wheel(tensionRatio) });
        expect(hauling / factor).toBeCloseTo(1, 12);
        // Easing is hauling with every ratio turned over.
        let sum = 0;
        for (let part = 0; part < parts; part++) sum += tensionRatio ** -part;
        expect(easing / (tensionRatio ** -sheaves / sum)).toBeCloseTo(1, 12);
      }
    },
  );

  it("of one part hauled straight from the load is a rope and nothing else", () => {
    const { hauling, easing } = pull({ parts: 1, hauledFrom: "moving", turn: wheel(1.3) }, 70);
    expect([hauling, easing]).toEqual([70, 70]);
  });

  it("of one part over one fixed block is that block", () => {
    const { hauling, easing } = pull({ parts: 1, hauledFrom: "fixed", turn: wheel(1.3, 2) }, 70);
    const bare = alone(wheel(1.3, 2), 70);
    expect(hauling).toBeCloseTo(bare.hauling, 12);
    expect(easing).toBeCloseTo(bare.easing, 12);
    expect(hauling).toBeCloseTo(93, 12);
  });

  it("meets each sheave of a list in rove order, and the lead sheave last", () => {
    const turns = [wheel(1.1), wheel(1.2), wheel(1.3)];
    const input = { parts: 3, hauledFrom: "fixed", turn: turns, leadBlocks: 1, leadTurn: wheel(1.5) } as const;
    const { hauling } = pull(input);
    expect(hauling).toBeCloseTo((1.1 * 1.2 * 1.3 * 1.5) / (1 + 1.1 + 1.1 * 1.2), 12);
  });
});
