import { describe, expect, it } from "vitest";
import { bearings } from "../../src/materials/bearings.js";
import { blockLosses } from "../../src/materials/block-losses.js";
import { type Cover, coverFriction } from "../../src/materials/covers.js";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { surfaces, treads } from "../../src/materials/surfaces.js";
import { OutsideModelError } from "../../src/quantity/errors.js";
import { stiffnessOf } from "../../src/reeving/bending.js";
import { joinedForces } from "../../src/reeving/joined-lines.js";
import { type Line, prepareLine } from "../../src/reeving/line.js";
import type { Ratchet, Ring, Sheave } from "../../src/reeving/station.js";
import { tackle } from "../../src/reeving/tackle.js";
import { coverWorking, lineWorking, lineWorkings, runOutWorking, turnParts } from "../../src/working/line-working.js";
import { checkWorking } from "../../src/working/working-check.js";
import { known } from "./mechanics-cases.js";

const cover: Cover = { strands: 8, fibre: "aramidBlend", wet: true };
const sheave: Sheave = {
  kind: "sheave",
  name: "block",
  diameter: 0.04,
  wrapAngle: 2.6,
  pinRadius: 0.006,
  bearingFriction: bearings.ball.friction.value,
  drag: blockLosses.ballDrag.value,
};
const ratchet: Ratchet = {
  ...sheave,
  kind: "ratchet",
  name: "ratchet",
  treadFriction: coverFriction(cover, treads.faceted).value,
};
const ring: Ring = {
  kind: "ring",
  name: "ring",
  diameter: 0.014,
  wrapAngle: 0.2,
  frictionCoefficient: surfaces.anodised.friction.value,
};
const rope = { diameter: 0.007, stiffness: stiffnessOf(stiffnessLaws.braidedCover) };
const purchase = {
  kind: "tackle",
  name: "3:1",
  reeving: tackle({ parts: 3, hauledFrom: "fixed", turn: sheave }),
} as const;
const line: Line = { rope, stations: [purchase, ring, known(1.05, 0.3), sheave, ratchet] };
const single: Line = { rope, stations: [ring, sheave, known(1.05, 0.3), ratchet] };
const origins = {
  ropes: [stiffnessLaws.bareCore, stiffnessLaws.braidedCover],
  bearings: [bearings.ball.friction],
  sliding: [surfaces.anodised.friction, coverWorking(cover, treads.faceted)],
  drags: [blockLosses.ballDrag],
};

describe("the working of a line", () => {
  it.each(["hauling", "easing"] as const)("ends at the hand force of the solver, %s", (direction) => {
    const working = lineWorking({ line, load: 500, direction, origins });
    expect(working.value).toBeCloseTo(prepareLine(line).handForces(500)[direction], 7);
    expect(checkWorking("hand", structuredClone(working))).toEqual(working);
  });

  it("has the pull behind every station", () => {
    const pulls = lineWorkings({ line, load: 500, direction: "easing" });
    const solved = prepareLine(line)
      .state(500, "easing")
      .stations.map(({ handTension }) => handTension);
    expect(pulls).toHaveLength(solved.length);
    for (const [index, { value }] of pulls.entries()) expect(value).toBeCloseTo(solved[index]!, 7);
  });

  it("goes through ropes that are joined", () => {
    const joined = [
      { rope: { ...rope, diameter: 0.004 }, stations: [ring, sheave] },
      { rope, stations: [ratchet] },
    ];
    const { hauling, runOutLoad } = joinedForces(joined, 300);
    expect(lineWorking({ line: joined, load: 300, direction: "hauling" }).value).toBeCloseTo(hauling, 7);
    expect(runOutWorking(joined).value).toBeCloseTo(runOutLoad, 9);
  });

  it("starts from the working of its load", () => {
    const load = coverWorking(cover, treads.faceted);
    const two = lineWorking({ line: single, load: 200, direction: "hauling" });
    const twice = lineWorking({ line: single, load: two, direction: "hauling" });
    expect(twice.steps.length).toBeGreaterThan(two.steps.length);
    expect(load.value).toBeCloseTo(coverFriction(cover, treads.faceted).value, 12);
  });

  it("names the records behind its numbers, and only those", () => {
    const told = (known: typeof origins | undefined) =>
      JSON.stringify(lineWorking({ line: single, load: 200, direction: "easing", ...(known && { origins: known }) }));
    const { place } = surfaces.anodised.friction;
    expect(told(origins)).toContain(place);
    expect(told(undefined)).not.toContain(place);
    expect(told({ ...origins, sliding: [surfaces.polishedSteel.friction] as never })).not.toContain(place);
  });

  it("tells a short contact from a long one", () => {
    const steps = (wrapAngle: number) => turnParts({ ...ring, wrapAngle }, rope, "hauling").bendRatio.steps[0]!.id;
    expect(steps(0.2)).toBe("short-bend");
    expect(steps(3)).toBe("bending");
  });

  it("refuses what no formula of it knows", () => {
    const at = (station: Line["stations"][number]) => () =>
      lineWorking({ line: { rope, stations: [station] }, load: 100, direction: "hauling" });
    expect(at({ kind: "cleat", name: "cleat", closed: false, holdLoad: 10 })).toThrow(OutsideModelError);
    expect(at({ ...sheave, grooveWidth: 0.0072 })).toThrow(/Cheeks/u);
    expect(() => lineWorking({ line: { rope, stations: [] }, load: 100, direction: "hauling" })).toThrow("no stations");
    expect(() => runOutWorking(line)).toThrow("a tackle");
  });
});

describe("the working of a run-out load", () => {
  it("is that of the solver", () => {
    expect(runOutWorking(single, origins).value).toBeCloseTo(prepareLine(single).runOutLoad(), 9);
  });
});
