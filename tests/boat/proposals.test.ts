import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkBoat } from "../../src/boat/check.js";
import { type Demand, demand, isOpen, ratingOf } from "../../src/boat/demand.js";
import { checkLine, type LineCheck } from "../../src/boat/line-check.js";
import { isAllowed } from "../../src/boat/proposals.js";
import { boatOf } from "../../src/boat/read.js";
import { Refusal } from "../../src/quantity/errors.js";
import { worseBy } from "../../src/quantity/verdict.js";
import { long } from "../long.js";
import { randomLine } from "./random-boats.js";
import { demoNames, demoPlace, demoText } from "./small-boat.js";

const asked = (subject: string, consequence: Demand["consequence"], value: number, low = value): Demand =>
  demand({ subject, consequence, margin: { value, low, high: value }, reason: "" });

describe("a change that may be proposed", () => {
  const haul = asked("haul", "race", 0.8);
  const mended = asked("haul", "race", 1.2);
  const allowed = (now: Demand[], after: Demand[]) => isAllowed([haul, ...now], [mended, ...after], ["injury", "race"]);

  it.each([
    ["lowers an injury margin from 1.49", 1.49, 1.48, false],
    ["lowers an injury margin from 1.5, and it stays enough", 1.5, 1.1, true],
    ["lowers an injury margin below its demand", 4, 0.99, false],
    ["raises one that is not enough", 0.5, 0.6, true],
    ["lowers one that is not enough", 0.5, 0.49, false],
  ])("%s: from %d to %d", (_, before, after, is) => {
    expect(allowed([asked("rope", "injury", before)], [asked("rope", "injury", after)])).toBe(is);
  });

  it("looks at the bad end as well", () => {
    expect(allowed([asked("rope", "injury", 3, 1.4)], [asked("rope", "injury", 3, 1.3)])).toBe(false);
    expect(allowed([asked("rope", "injury", 3, 1.6)], [asked("rope", "injury", 3, 1.3)])).toBe(true);
    expect(allowed([asked("rope", "injury", 3, 1.6)], [asked("rope", "injury", 3, 0.9)])).toBe(false);
  });

  it("worsens nothing of the same consequence, and may cost comfort", () => {
    expect(allowed([asked("run", "race", 2)], [asked("run", "race", 1.2)])).toBe(true);
    expect(allowed([asked("run", "race", 2)], [asked("run", "race", 0.9)])).toBe(false);
    expect(allowed([asked("run", "race", 0.9)], [asked("run", "race", 0.8)])).toBe(false);
    expect(allowed([asked("feel", "comfort", 2)], [asked("feel", "comfort", 0.5)])).toBe(true);
  });

  it("may cost a race what it brings to safety, never the other way", () => {
    const rope = asked("rope", "injury", 0.8);
    const strong = asked("rope", "injury", 1.5);
    const now = [rope, asked("haul", "race", 1.2)];
    expect(isAllowed(now, [strong, asked("haul", "race", 0.8)], ["injury"])).toBe(true);
    expect(isAllowed(now, [strong, asked("haul", "race", 0.8)], ["injury", "race"])).toBe(false);
    expect(allowed([asked("rope", "injury", 1.2)], [asked("rope", "injury", 1.1)])).toBe(false);
  });

  it("brings no new demand that is not met", () => {
    expect(allowed([], [asked("cleat", "injury", 2)])).toBe(true);
    expect(allowed([], [asked("cleat", "injury", 2, 0.9)])).toBe(false);
  });
});

/** What must hold of every check of a line, told without the code that proposes. */
function expectSoundAdvice(check: LineCheck): void {
  for (const one of check.demands) {
    if (one.margins.middle < 1 - 1e-6) expect(one.outcome, one.subject).toBe("not enough");
    if (one.proposal === undefined) continue;
    const { demands } = one.proposal.standing;
    expect(demands.find(({ subject }) => subject === one.subject)?.outcome ?? "enough").toBe("enough");
    for (const then of demands.filter(({ consequence }) => consequence === "injury")) {
      const now = check.demands.find(({ subject }) => subject === then.subject);
      if (now === undefined) expect(then.outcome, then.subject).toBe("enough");
      else {
        expect(worseBy(then.outcome, now.outcome), then.subject).toBeLessThanOrEqual(0);
        if (Math.min(now.margins.middle, ratingOf(now)) < 1.5)
          expect(ratingOf(then), then.subject).toBeGreaterThanOrEqual(ratingOf(now) * (1 - 1e-5));
      }
    }
  }
}

describe.each(demoNames)("the advice for %s", (name) => {
  const boat = boatOf(demoText(`${name}.yaml`), demoPlace(name));
  const check = checkBoat(boat);

  it("is sound, and says for everything open what mends it, settles it or has to give", () => {
    for (const line of check.lines) {
      expectSoundAdvice(line);
      for (const one of line.demands.filter(isOpen)) {
        expect(one.proposal !== undefined || (one.gives ?? "") !== "", `${line.name}, ${one.subject}`).toBe(true);
        if (one.outcome === "can't tell") expect(one.settle, `${line.name}, ${one.subject}`).toBeDefined();
      }
    }
  });

  it("names at most three things, none of which rests on what tells little", () => {
    expect(check.thingsToDo.length).toBeLessThanOrEqual(3);
    for (const { because, does, kind } of check.thingsToDo) {
      expect(because.wide).toBe(false);
      expect(isOpen(because)).toBe(true);
      expect(does !== undefined).toBe(kind === "change");
    }
  });

  it("fits nothing that a rigger would not: no cam on a halyard, nothing that jams on a sheet, ratchets for held sheets only", () => {
    for (const { demands, name: line } of check.lines)
      for (const { proposal } of demands) {
        if (proposal === undefined) continue;
        const { kind, path, heldBy } = proposal.boat.lines[line]!;
        for (const [at, station] of path.entries()) {
          if (JSON.stringify(station) === JSON.stringify(boat.lines[line]!.path[at])) continue;
          const type = station.kind === "cleat" ? boat.catalogue.cleats[station.cleat]!.type : undefined;
          if (type !== undefined && kind === "halyard") expect(["horn", "jammer"]).toContain(type);
          if (type !== undefined && (kind === "sheet" || kind === "vang")) expect(type).toBe("cam");
          if (station.kind === "block" && boat.catalogue.blocks[station.block]!.ratchet !== undefined)
            expect([kind, heldBy]).toEqual(["sheet", "hand"]);
        }
      }
  });
});

describe("boats changed at random", () => {
  it("get sound advice", () => {
    let proposed = 0;
    fc.assert(
      fc.property(randomLine, ({ boat, name }) => {
        const check = checkOf(boat, name);
        if (check === undefined) return;
        expectSoundAdvice(check);
        proposed += check.demands.filter(({ proposal }) => proposal !== undefined).length;
      }),
      { seed: 17, numRuns: long(10, 40) },
    );
    expect(proposed).toBeGreaterThan(long(2, 10));
  });
});

/** Nothing where the models refuse what chance made. */
function checkOf(boat: Parameters<typeof checkLine>[0], name: string): LineCheck | undefined {
  try {
    return checkLine(boat, name);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
