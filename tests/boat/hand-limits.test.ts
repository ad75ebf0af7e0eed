import { describe, expect, it } from "vitest";
import type { Boat } from "../../src/boat/boat.js";
import { checkBoat } from "../../src/boat/check.js";
import type { Demand } from "../../src/boat/demand.js";
import { leastDiameterOf } from "../../src/boat/hand-diameter.js";
import { checkLine } from "../../src/boat/line-check.js";
import { boatOf } from "../../src/boat/read.js";
import { lineOf } from "../../src/boat/ready.js";
import { lineStanding } from "../../src/boat/standing.js";
import { heldLines } from "../../src/materials/held-lines.js";
import { safeLostForce } from "../../src/rope/hand-burn.js";
import { here, small, smallBoat } from "./small-boat.js";

const about = (boat: Boat, line: string, subject: string): Demand | undefined =>
  lineStanding(boat, line).demands.find((one) => one.subject === subject);

const ended = (text: string) => ["    use: season\n  halyard", `    use: season\n${text}  halyard`] as const;

describe("the least diameter in the hand", () => {
  it("is the custom of the kind of line, unless line or boat set one", () => {
    const boat = small();
    const { mainsheet, halyard } = boat.lines;
    expect(leastDiameterOf(boat, mainsheet!)).toBe(heldLines.heldSheet);
    expect(leastDiameterOf(boat, { ...mainsheet!, heldBy: "cleat" })).toBe(heldLines.cleatedSheet);
    expect(leastDiameterOf(boat, { ...mainsheet!, kind: "control" })).toBe(heldLines.heldLine);
    expect(leastDiameterOf(boat, halyard!)).toBe(heldLines.hauledLine);
    const whole = { limits: { ...boat.limits, leastDiameter: 0.009 } };
    expect(leastDiameterOf(whole, mainsheet!).value).toBe(0.009);
    expect(leastDiameterOf(whole, halyard!)).toBe(heldLines.hauledLine);
    expect(leastDiameterOf(whole, { ...mainsheet!, limits: { leastDiameter: 0.006 } }).high).toBe(0.006);
  });

  it("is judged at the hand end, by custom without doubt, or by a limit that is set", () => {
    expect(about(small(), "mainsheet", "diameter in the hand")).toMatchObject({ ground: "custom", outcome: "enough" });
    expect(
      about(small(ended("    limits: { leastDiameter: 7 mm }\n")), "mainsheet", "diameter in the hand"),
    ).toMatchObject({
      outcome: "enough",
      ground: "computed",
      margins: { middle: 1, worst: 1 },
    });
    expect(
      about(small(["safetyFactor: 5", "safetyFactor: 5\n  leastDiameter: 8 mm"]), "mainsheet", "diameter in the hand")!
        .outcome,
    ).toBe("not enough");
    // 4 mm where it runs, 7 mm in the hand.
    expect(about(small(), "halyard", "diameter in the hand")!.reason).toContain("7 mm where the hand works it");
  });
});

describe("the own limits of a line", () => {
  it("are judged: pull, hold, line to haul, mass and cost", () => {
    const limits = "    limits: { hauling: 60 N, holding: 20 N, mostLine: 2 m, mass: 500 g, cost: 1000 EUR }\n";
    const boat = small(ended(limits));
    const { feel, budget } = lineStanding(boat, "mainsheet");
    expect(about(boat, "mainsheet", "pull to haul")!.margins.middle).toBeCloseTo(60 / feel.hauling.value, 9);
    expect(about(boat, "mainsheet", "hand that holds")!.margins.middle).toBeCloseTo(20 / feel.easing.value, 9);
    expect(about(boat, "mainsheet", "line to haul")!.margins).toEqual({ middle: 2 / 3, worst: 2 / 3 });
    expect(about(boat, "mainsheet", "mass of the line")!.margins.middle).toBeCloseTo(0.5 / budget.dry.value, 9);
    expect(about(boat, "mainsheet", "cost of the line")!.margins.middle).toBeCloseTo(1000 / budget.cost, 9);
    expect(about(small(), "mainsheet", "mass of the line")).toBeUndefined();
  });

  it("never ask for more than the crew has", () => {
    const loose = small(ended("    limits: { hauling: 900 N, holding: 900 N }\n"));
    for (const subject of ["pull to haul", "hand that holds"])
      expect(about(loose, "mainsheet", subject)!.margins).toEqual(about(small(), "mainsheet", subject)!.margins);
  });

  it("in another currency than the catalogue are refused", () => {
    expect(() => small(ended("    limits: { cost: 9 shells }\n"))).toThrow(
      /limits › cost: found shells; allowed: one currency/u,
    );
  });
});

describe("currencies", () => {
  it("are any one word, or none", () => {
    const shells = boatOf(smallBoat.replaceAll(" EUR", " shells"), here);
    expect(checkBoat(shells).currency).toBe("shells");
    const none = boatOf(smallBoat.replaceAll(" EUR", ""), here);
    expect(checkBoat(none)).toMatchObject({ currency: "", cost: checkBoat(small()).cost });
    expect(boatOf(smallBoat.replaceAll(" EUR", " €"), here).catalogue.ropes["braid 4"]!.price).toEqual({
      amount: 2.6,
      currency: "€",
    });
  });
});

describe("a fast ease through the hand", () => {
  const eased = (text: string, ...others: readonly (readonly [string, string])[]) =>
    about(small(ended(`    ease: ${text}\n`), ...others), "mainsheet", "hand on a fast ease")!;

  it("has the margin of the burn model at the diameter of the rope", () => {
    const found = eased("{ speed: 2 m/s, duration: 1 s }");
    const ease = { fibre: "polyester", ropeDiameter: 0.007, gloved: false, speed: 2, duration: 1 } as const;
    const { feel } = lineOfMain();
    expect(found.margins.middle).toBeCloseTo(safeLostForce(ease, "burn").value / feel.easing.value, 2);
    expect(found.margins.worst).toBeLessThan(found.margins.middle);
  });

  it("is worse faster, longer and with bare hands, and not asked of a line in a cleat", () => {
    const middle = (...all: Parameters<typeof eased>) => eased(...all).margins.middle;
    const usual = middle("{ speed: 2 m/s, duration: 1 s }");
    expect(middle("{ speed: 4 m/s, duration: 1 s }")).toBeLessThan(usual);
    expect(middle("{ speed: 2 m/s, duration: 2 s }")).toBeLessThan(usual);
    expect(middle("{ speed: 2 m/s, duration: 1 s }", ["pull: 250 N", "pull: 250 N, gloves: true"])).toBeGreaterThan(
      usual,
    );
    expect(about(small(), "halyard", "hand on a fast ease")).toBeUndefined();
  });

  it("by custom is no safer at the bad end than the fastest and longest of it in the middle", () => {
    const custom = about(small(), "mainsheet", "hand on a fast ease")!.margins;
    expect(custom.worst).toBeLessThan(custom.middle);
    expect(custom.middle).toBeCloseTo(eased("{ speed: 1 m/s, duration: 1 s }").margins.middle, 9);
  });

  it("that burns is a danger, and gloves are named where they help", () => {
    const found = eased("{ speed: 15 m/s, duration: 3 s }");
    expect(found).toMatchObject({ outcome: "not enough", consequence: "injury" });
    const slower = checkLine(small(ended("    ease: { speed: 9 m/s, duration: 1.5 s }\n")), "mainsheet");
    expect(slower.demands[0]).toMatchObject({ subject: "hand on a fast ease", proposal: { words: "gloves for helm" } });
    expect(checkBoat(small(ended("    ease: { speed: 15 m/s, duration: 3 s }\n"))).safe).toBe(false);
  });
});

function lineOfMain() {
  expect(lineOf(small(), "mainsheet").line.heldBy).toBe("hand");
  return lineStanding(small(), "mainsheet");
}
