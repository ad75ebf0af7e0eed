import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Arrangement } from "../../../src/notebook/reeving/arrangement.js";
import { courseOf, wayOf } from "../../../src/notebook/reeving/course.js";
import { headingsOf } from "../../../src/notebook/reeving/headings.js";
import { reevingDrawing } from "../../../src/notebook/reeving/reeving-drawing.js";
import { overlapping, type Point, shapeBox, textBox, textSize } from "../../../src/notebook/reeving/shapes.js";
import { stripsOf } from "../../../src/notebook/reeving/strips.js";
import { tackleShape } from "../../../src/notebook/reeving/tackle-shape.js";
import { ropeWidth } from "../../../src/notebook/reeving/thickness.js";
import type { Line } from "../../../src/reeving/line.js";
import type { Station } from "../../../src/reeving/reeving.js";
import { doubleBurton, firstSystem, thirdSystem } from "../../../src/reeving/systems.js";
import { tackle } from "../../../src/reeving/tackle.js";
import { long } from "../../long.js";
import { evenly } from "../../numerics/evenly.js";
import {
  asStation,
  cleats,
  limp,
  lineOf,
  linesOf,
  measured,
  powerRings,
  readyOrNot,
  ropeSystems,
  seed,
  sensingRatchets,
  sheave,
  simpleTackles,
  straightTurns,
  tackleTurns,
  wheel,
  wildReevings,
} from "../../reeving/builders.js";
import { boatLines } from "./boat-lines.js";
import { allNumbers, everyArrangement, labelsOf, nameOf, ropesOf, textsOf } from "./reading.js";

const tackles = asStation(fc.oneof(simpleTackles(tackleTurns), ropeSystems(tackleTurns)));
const stations: fc.Arbitrary<Station> = fc.oneof(
  { arbitrary: straightTurns, weight: 5 },
  { arbitrary: fc.oneof(powerRings, sensingRatchets, cleats, measured), weight: 5 },
  { arbitrary: tackles, weight: 2 },
);
const lines = linesOf(stations, 7);

/** Tackles of any angle are drawn as they are unless the solver refuses them. */
const solved = ({ line, load }: { line: Line; load: number }) => {
  try {
    stripsOf(line, load);
    return true;
  } catch {
    return false;
  }
};
const cases = fc.record({ line: lines, load: evenly(0, 3000) }).filter(solved);

describe("drawings of random lines", () => {
  it("hold finite numbers only, and everything lies inside", () => {
    fc.assert(
      fc.property(cases, (input) => {
        const drawing = reevingDrawing(input);
        expect(allNumbers(drawing).every(Number.isFinite)).toBe(true);
        for (const { width, height, shapes } of drawing.arrangements) {
          const outside = shapes.map(shapeBox).filter((box) => {
            return box.left < 0 || box.top < 0 || box.right > width || box.bottom > height;
          });
          expect(outside).toEqual([]);
        }
      }),
      { ...seed, numRuns: long(50, 250) },
    );
  });

  it("name every station once a strip, and no label covers another", () => {
    fc.assert(
      fc.property(cases, (input) => {
        for (const arrangement of everyArrangement(input)) {
          const labels = labelsOf(arrangement);
          const names = labels.map(nameOf);
          for (const { name } of input.line.stations) expect(names.filter((one) => one === name)).toHaveLength(2);
          const boxes = labels.map(textBox);
          const covered = boxes.some((box, index) => boxes.slice(index + 1).some((other) => overlapping(box, other)));
          expect(covered).toBe(false);
        }
      }),
      { ...seed, numRuns: long(60, 300) },
    );
  });

  it("draw every turn with its own wrap", () => {
    fc.assert(
      fc.property(linesOf(straightTurns, 6), (line) => {
        const strips = stripsOf(line, 100);
        const { ropes } = courseOf(strips, wayOf(strips), { along: 100, aside: 100 });
        const wraps = line.stations.reduce((sum, one) => sum + ("wrapAngle" in one ? (one.wrapAngle ?? 0) : 0), 0);
        expect(turning(ropes.map(({ points }) => points))).toBeCloseTo(wraps, 6);
      }),
      { ...seed, numRuns: 200 },
    );
  });
});

/** Sum of all changes of direction along a rope [rad], whichever side they turn to. */
function turning(stretches: readonly (readonly Point[])[]): number {
  const points = stretches.flat().filter((at, index, all) => {
    const before = all[index - 1];
    return before === undefined || Math.hypot(at[0] - before[0], at[1] - before[1]) > 1e-9;
  });
  const headings = points.slice(1).map(([x, y], index) => Math.atan2(y - points[index]![1], x - points[index]![0]));
  return headings.slice(1).reduce((sum, heading, index) => {
    const change = heading - headings[index]!;
    return sum + Math.abs(Math.atan2(Math.sin(change), Math.cos(change)));
  }, 0);
}

describe("the way from load to hand", () => {
  it("never runs back while no turn is above half a turn and they come one by one", () => {
    fc.assert(
      fc.property(fc.array(evenly(0, Math.PI), { maxLength: 2 }), (turns) => {
        const { headings } = headingsOf(turns, 1);
        for (const heading of headings) expect(Math.abs(heading)).toBeLessThanOrEqual(Math.PI / 2 + 1e-6);
      }),
      { ...seed, numRuns: 300 },
    );
  });

  it("turns at every station by the angle of the station", () => {
    fc.assert(
      fc.property(fc.array(evenly(0, Math.PI), { maxLength: 12 }), (turns) => {
        const { headings, sides } = headingsOf(turns, 1);
        turns.forEach((turn, index) => {
          expect(headings[index + 1]! - headings[index]!).toBeCloseTo(sides[index]! * turn, 9);
        });
      }),
      { ...seed, numRuns: 100 },
    );
  });
});

describe("the thickness of the rope", () => {
  it("grows with the tension, five to one at most", () => {
    fc.assert(
      fc.property(evenly(0, 1000), evenly(0, 1000), (one, other) => {
        const [less, more] = [Math.min(one, other), Math.max(one, other)];
        expect(ropeWidth(less, 1000)).toBeLessThanOrEqual(ropeWidth(more, 1000));
      }),
      seed,
    );
    expect(ropeWidth(1000, 1000) / ropeWidth(0, 1000)).toBeCloseTo(5, 12);
    expect(ropeWidth(0, 0)).toBe(ropeWidth(0, 1));
  });

  it("grows along the line while hauling over turns that lose, and is stated in a scale", () => {
    const line: Line = { rope: limp, stations: ["a", "b", "c"].map((name) => ({ ...sheave, name, wrapAngle: 1 })) };
    for (const arrangement of everyArrangement({ line, load: 200 })) {
      const ropes = ropesOf(arrangement);
      const hauling = ropes.filter(({ dashedFrom }) => dashedFrom === undefined).slice(0, -3);
      const easing = ropes.filter(({ dashedFrom }) => dashedFrom !== undefined);
      expect(hauling.length).toBe(easing.length);
      hauling.slice(1).forEach(({ width }, index) => {
        expect(width).toBeGreaterThanOrEqual(hauling[index]!.width);
      });
      easing.slice(1).forEach(({ width }, index) => {
        expect(width).toBeLessThanOrEqual(easing[index]!.width);
      });
      const [thin, , thick] = ropes.slice(-3);
      expect(thick!.width / thin!.width).toBeCloseTo(5, 9);
      expect(Math.max(...hauling.map(({ width }) => width))).toBeCloseTo(thick!.width, 9);
    }
  });
});

describe("tackles", () => {
  const purchases = [1, 2, 3, 4, 5, 6, 7, 8].flatMap((parts) =>
    (["fixed", "moving"] as const).map((hauledFrom) => ({ parts, hauledFrom })),
  );

  it.each(purchases)("of $parts parts, hauled from the $hauledFrom block, has its parts side by side", (input) => {
    const reeving = tackle({ ...input, turn: wheel(1.1) });
    const { ropes } = tackleShape(reeving);
    const parts = ropes.filter(({ share }) => share === undefined);
    // The hauling part is drawn with the line.
    expect(parts).toHaveLength(input.parts - (input.hauledFrom === "moving" ? 1 : 0));
    const across = parts.map(({ points }) => points.map(([, y]) => y));
    for (const ys of across) expect(Math.max(...ys) - Math.min(...ys)).toBeLessThan(1e-9);
    const gaps = across.slice(1).map(([y], index) => y! - across[index]![0]!);
    for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0]!, 9);
    expect(everyArrangement({ line: lineOf(reeving), load: 500 })).toHaveLength(3);
  });

  it("of several ropes draw every part once", () => {
    const turn = wheel(1.1);
    const reevings = [
      firstSystem({ ropes: 8, turn }),
      thirdSystem({ ropes: 8, turn }),
      doubleBurton({ form: "three singles", turn }),
      doubleBurton({ form: "double and singles", turn }),
      tackle({ parts: 12, hauledFrom: "fixed", turn, leadBlocks: 8 }),
    ];
    for (const reeving of reevings) {
      const count = reeving.ropes.reduce((sum, { turns }) => sum + turns.length + 1, 0);
      const drawn = tackleShape(reeving).ropes.filter(({ share }) => share === undefined);
      expect(drawn.map(({ part }) => part)).toEqual(
        Array.from({ length: count }, (_, part) => part).filter((part) => drawn.some((one) => one.part === part)),
      );
      expect(drawn).toHaveLength(count - 1);
    }
  });

  it("of any reeving that the solver accepts can be drawn", () => {
    let accepted = 0;
    fc.assert(
      fc.property(wildReevings(tackleTurns), (reeving) => {
        if (readyOrNot(reeving) === undefined) return;
        accepted += 1;
        expect(allNumbers(reevingDrawing({ line: lineOf(reeving), load: 100 })).every(Number.isFinite)).toBe(true);
      }),
      { ...seed, numRuns: 3000 },
    );
    expect(accepted).toBeGreaterThan(100);
  });
});

/** The heading of the strip for a way, on the arrangement for a wide page. */
const headingOf = (arrangement: Arrangement, way: "Hauling" | "Easing") =>
  textsOf(arrangement).find(({ lines }) => lines[0]?.text.startsWith(`${way}: `))!;

describe("both ways of a line on a wide page", () => {
  it("stand beside each other for a line that needs little room, and are the same drawing moved, above three samples of rope", () => {
    const [wide] = everyArrangement({ line: { rope: limp, stations: [sheave] }, load: 100 });
    const [left, right] = [headingOf(wide!, "Hauling"), headingOf(wide!, "Easing")];
    expect(right.at).toEqual([left.at[0] + wide!.width / 2, left.at[1]]);
    const ropes = ropesOf(wide!).slice(0, -3);
    const [hauling, easing] = [ropes.slice(0, ropes.length / 2), ropes.slice(ropes.length / 2)];
    expect(hauling.length).toBeGreaterThan(0);
    expect(easing.map(({ points }) => points)).toEqual(
      hauling.map(({ points }) => points.map(([x, y]) => [x + wide!.width / 2, y])),
    );
  });

  it("stand under each other for a long line", () => {
    const stations = Array.from({ length: 9 }, (_, index) => ({ ...sheave, name: `turn ${index}`, wrapAngle: 1 }));
    const [wide] = everyArrangement({ line: { rope: limp, stations }, load: 100 });
    const [above, below] = [headingOf(wide!, "Hauling"), headingOf(wide!, "Easing")];
    expect(below.at[0]).toBe(above.at[0]);
    expect(below.at[1]).toBeGreaterThan(above.at[1]);
  });
});

describe("the lines of the demo boats", () => {
  it("are many", () => {
    expect(boatLines.length).toBeGreaterThan(20);
  });

  it("stand both ways beside each other on most wide pages", () => {
    const beside = boatLines.filter(({ line, load }) => {
      const [wide] = everyArrangement({ line, load });
      return headingOf(wide!, "Easing").at[0] > headingOf(wide!, "Hauling").at[0];
    });
    expect(beside.length).toBeGreaterThan(boatLines.length / 2);
  });

  it.each(boatLines)("$name is drawn, no label covers another or the rope", ({ line, load }) => {
    for (const arrangement of everyArrangement({ line, load })) {
      const boxes = textsOf(arrangement).map(textBox);
      boxes.forEach((box, index) => {
        expect(boxes.slice(index + 1).filter((other) => overlapping(box, other))).toEqual([]);
        expect(box.right).toBeLessThanOrEqual(arrangement.width);
      });
      const ropes = ropesOf(arrangement).flatMap(({ points }) =>
        points.slice(1).map((at, index) => [points[index]!, at]),
      );
      const crossed = labelsOf(arrangement).filter((label) =>
        ropes.some(([from, to]) =>
          Array.from({ length: 21 }, (_, step) => step / 20).some((share) => {
            const [x, y] = [from![0] + share * (to![0] - from![0]), from![1] + share * (to![1] - from![1])];
            const box = textBox(label);
            return x > box.left && x < box.right && y > box.top && y < box.bottom;
          }),
        ),
      );
      expect(crossed.map(nameOf)).toEqual([]);
    }
  });

  it("are written large enough to be read on a phone", () => {
    expect(textSize).toBeGreaterThanOrEqual(12);
  });
});
