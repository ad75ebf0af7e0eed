import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { bearings } from "../../src/materials/bearings.js";
import { blockLosses } from "../../src/materials/block-losses.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { stiffnessOf } from "../../src/reeving/bending.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import { tackle } from "../../src/reeving/tackle.js";
import { type Band, bandOf } from "../../src/sources/band.js";
import { bandAtLoad, runOutBand } from "../../src/uncertainty/line-band.js";
import { uncertainInputsOf } from "../../src/uncertainty/line-inputs.js";
import { lineSensitivity } from "../../src/uncertainty/line-sensitivity.js";
import { long } from "../long.js";

type Sizes = Readonly<Record<string, { readonly diameter: string }>>;
const shop = parse(readFileSync("notebooks/boats/demo-shop.yaml", "utf8")) as { ropes: Sizes; blocks: Sizes };
const metres = (sizes: Sizes) => [
  ...new Set(Object.values(sizes).map(({ diameter }) => Number.parseFloat(diameter) / 1000)),
];
const sheaves = metres(shop.blocks);
const ropes = metres(shop.ropes);

const { plain } = bearings;
const rope = stiffnessLaws.braidedCover;

/** The record of a bearing with its middle moved to one end of its range. */
const movedTo = (end: "low" | "value" | "high", { value, low, high }: Band): Band => {
  const middle = { low, value, high }[end];
  return { value: middle, low: (low * middle) / value, high: Math.min(1, (high * middle) / value) };
};

interface Drawn {
  readonly friction: number;
  readonly share: number;
}

function lineOf(sheave: number, diameter: number, { friction, share }: Drawn): Line {
  const turn = {
    kind: "sheave",
    name: "sheave",
    diameter: sheave,
    wrapAngle: Math.PI,
    pinRadius: (share * sheave) / 2,
    bearingFriction: friction,
    drag: blockLosses.plainDrag.value,
  } as const;
  return {
    rope: { diameter, stiffness: stiffnessOf(rope) },
    stations: [{ kind: "tackle", name: "8:1", reeving: tackle({ parts: 8, hauledFrom: "fixed", turn }) }],
  };
}

describe("plain bearings at the ends of their ranges, over every sheave and rope of the demo shop", () => {
  it("are read from a shop that has some", () => {
    expect(sheaves.length).toBeGreaterThan(5);
    expect(ropes.length).toBeGreaterThan(4);
  });

  it.each(["low", "value", "high"] as const)("give finite bands and shares of variance up to one: %s end", (end) => {
    const friction = movedTo(end, plain.friction);
    const share = movedTo(end, plain.radiusShare);
    const bearing = { ...plain, friction, radiusShare: share } as typeof plain;
    for (const sheave of sheaves) {
      for (const diameter of long([ropes[0]!, ropes.at(-1)!], ropes)) {
        const line = lineOf(sheave, diameter, { friction: friction.value, share: share.value });
        const uncertainInputs = uncertainInputsOf({ bearing, rope, drag: blockLosses.plainDrag });
        const { hauling, easing } = bandAtLoad({ line, uncertainInputs }, 1000, { samples: long(2048, 10_000) });
        const runOut = runOutBand({ line, uncertainInputs }, { samples: long(64, 1000) });
        const ends = bandOf({ friction, share }, (drawn) =>
          prepareLine(lineOf(sheave, diameter, drawn)).handForce(1000, "hauling"),
        );
        for (const { low, value, high } of [hauling, easing, runOut, ends]) {
          expect(low).toBeGreaterThanOrEqual(0);
          expect(value).toBeGreaterThanOrEqual(low);
          expect(high).toBeGreaterThanOrEqual(value);
          expect(high).toBeLessThan(1000 * 3 ** 8);
        }
      }
      const line = lineOf(sheave, ropes[0]!, { friction: friction.value, share: share.value });
      for (const quantity of ["hauling", "easing"] as const) {
        const uncertainInputs = uncertainInputsOf({ bearing, rope, drag: blockLosses.plainDrag });
        const options = { samples: long(256, 1024), repeats: 4 };
        for (const { total } of lineSensitivity({ line, uncertainInputs, load: 1000, quantity, options }))
          expect(total.value).toBeLessThanOrEqual(1 + 3 * total.error);
      }
    }
  });

  it("lose no more at a turn than a rope that slides over its groove", () => {
    const sliding = Math.exp(blockLosses.grooveFriction.value * Math.PI);
    const limp = { diameter: 0.004, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };
    const one = {
      kind: "sheave",
      name: "sheave",
      diameter: 0.02,
      wrapAngle: Math.PI,
      pinRadius: 0.011,
      bearingFriction: 1,
    } as const;
    expect(prepareLine({ rope: limp, stations: [one] }).handForce(100, "hauling")).toBeCloseTo(100 * sliding, 9);
  });
});
