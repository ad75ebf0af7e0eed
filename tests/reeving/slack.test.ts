import { describe, expect, test } from "vitest";
import { type PreparedLine, prepareLine } from "../../src/reeving/line.js";
import { tackle } from "../../src/reeving/tackle.js";

/** A 4:1 whose sheaves drag by 1 N each: the part at the becket carries W/(1 + k + k² + k³) less the drags. */
const dragging: PreparedLine = prepareLine({
  rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } },
  stations: [
    {
      kind: "tackle",
      name: "4:1",
      reeving: tackle({
        parts: 4,
        hauledFrom: "fixed",
        turn: { kind: "measured", name: "sheave", tensionRatio: 1.1, drag: 1 },
      }),
    },
  ],
});

/** Drags gathered in the parts when the first one carries nothing: c·(g1 + g2 + g3), g = 1, 1 + k, 1 + k + k². */
const tautFrom = 1 + 2.1 + 3.31;

describe("slack parts while hauling", () => {
  test("a load that the drags alone would lift is flagged", () => {
    expect(dragging.handForces(tautFrom - 0.01).flags.join()).toMatch(/slack below 6\.41 N/u);
    expect(dragging.state(tautFrom - 0.01, "hauling").stations[0]?.flags.join()).toMatch(/upper bound/u);
  });
  test("a load that keeps every part taut is not", () => {
    expect(dragging.handForces(tautFrom + 0.01).flags).toEqual([]);
    expect(dragging.state(tautFrom - 0.01, "easing").stations[0]?.flags).toEqual([]);
  });
});
