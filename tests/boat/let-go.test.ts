import { describe, expect, it } from "vitest";
import { cleatIn, isHitched, slipLoadIn } from "../../src/boat/cleat-hold.js";
import { judgeCleat } from "../../src/boat/judge-cleat.js";
import { letGoOf } from "../../src/boat/let-go.js";
import { lineOf } from "../../src/boat/ready.js";
import { BoatFileError } from "../../src/boat/trouble.js";
import { small } from "./small-boat.js";

const horn = "{ kind: cleat, name: cleat, cleat: horn, turns: 3, eights: 1 }";
const cam = "cam: { type: cam, thinnest: 3 mm, thickest: 10 mm,";
const slips = (boat: ReturnType<typeof small>, name: string) => {
  const ready = lineOf(boat, name);
  return slipLoadIn(boat, ready, cleatIn(ready)!);
};
const holds = (boat: ReturnType<typeof small>, name: string) =>
  judgeCleat(boat, lineOf(boat, name)).find(({ subject }) => subject === "cleat in a gust")!.outcome;

describe("a horn cleat of a boat", () => {
  it("is hitched where a line stays set and a crossing is there, and as its file says", () => {
    const kinds = ["sheet", "vang", "halyard", "control"] as const;
    expect(kinds.map((kind) => isHitched({ kind }, { eights: 2 }))).toEqual([false, false, true, true]);
    expect(isHitched({ kind: "halyard" }, {})).toBe(false);
    expect(isHitched({ kind: "halyard" }, { eights: 0.5 })).toBe(false);
    expect(isHitched({ kind: "sheet" }, { eights: 1, hitch: true })).toBe(true);
    expect(isHitched({ kind: "halyard" }, { eights: 3, hitch: false })).toBe(false);
  });

  it("holds the outhaul with its hitch, and may not without", () => {
    const free = small([horn, horn.replace(" }", ", hitch: false }")]);
    expect(slips(small(), "outhaul").locks).toBe("enough");
    expect(holds(small(), "outhaul")).toBe("enough");
    expect(slips(free, "outhaul").locks).toBe("not enough");
    expect(holds(free, "outhaul")).not.toBe("enough");
  });

  it("is refused with a hitch that has no crossing to lie on, and any other cleat with a hitch", () => {
    const refusal = (from: string, to: string) => {
      try {
        small([from, to]);
      } catch (error) {
        if (error instanceof BoatFileError) return error.message;
        throw error;
      }
      return "";
    };
    expect(refusal(horn, horn.replace("eights: 1", "eights: 0, hitch: true"))).toContain("without a crossing");
    expect(refusal("cleat: cam, distance", "cleat: cam, hitch: true, distance")).toContain("no horns");
  });
});

describe("a cleat of the catalogue", () => {
  it("holds by its rated load where it has one, and by its size where it has none", () => {
    const rated = (load: string) => slips(small([cam, `${cam} ratedLoad: ${load},`]), "halyard");
    expect(rated("400 N").value / rated("200 N").value).toBeCloseTo(2, 9);
    expect(rated("400 N").limitedBy).toBe("cleat");
    const smaller = small([cam, "cam: { type: cam, thinnest: 3 mm, thickest: 8 mm,"]);
    expect(slips(smaller, "halyard").value).toBeLessThan(slips(small(), "halyard").value);
  });
});

describe("what it takes to let a line of a boat go", () => {
  it("is the pull out of its cam at the load of the gust there, out of reach of that hand when the gust is strong", () => {
    const ready = lineOf(small(), "halyard");
    const { effort, share, runs } = letGoOf(small(), ready);
    expect(effort.value).toBeGreaterThan(
      0.7 * ready.middle.state(ready.loads.gust.value, "easing").stations[2]!.loadTension,
    );
    expect(effort.low).toBeLessThan(effort.high);
    expect(share.value).toBeCloseTo(effort.value / 250, 9);
    expect(runs).toBe("through the hand");
    const strong = small(["design: 200 N", "design: 900 N"]);
    expect(letGoOf(strong, lineOf(strong, "halyard")).share.low).toBeGreaterThan(1);
  });

  it("is turn by turn off a horn, and nothing for a hand", () => {
    expect(letGoOf(small(), lineOf(small(), "outhaul")).turnByTurn!.map(({ turns }) => turns)).toEqual([4, 3, 2, 1]);
    expect(letGoOf(small(), lineOf(small(), "mainsheet")).effort).toEqual({ value: 0, low: 0, high: 0 });
  });
});

describe("a winch of the catalogue", () => {
  const rings = "  cleats:\n";
  const winch =
    "    winch: { drumRadius: 36 mm, handleLength: 200 mm, gearRatios: [1, 3], selfTailing: true, ratedLoad: 5 kN, mass: 2 kg, price: 400 EUR }\n";

  it("is read in SI, and refused without a gear", () => {
    const read = small([rings, `  winches:\n${winch}${rings}`]).catalogue.winches?.winch;
    expect(read).toMatchObject({ gearRatios: [1, 3], selfTailing: true, ratedLoad: 5000 });
    expect(read?.drumRadius).toBeCloseTo(0.036, 12);
    expect(() => small([rings, `  winches:\n${winch.replace("[1, 3]", "[]")}${rings}`])).toThrow(BoatFileError);
  });
});
