import { describe, expect, it } from "vitest";
import { shownText } from "../../src/cli/foreign-text.js";
import { smallBoat, smallBoatWith } from "../boat/small-boat.js";
import { quietWorld } from "./quiet-world.js";

describe("text that somebody else wrote", () => {
  it.each([
    ["a colour", "a\u001b[31mb", "a\\u001b[31mb"],
    ["a clear screen and a title", "\u001b[2J\u001b]0;x\u0007", "\\u001b[2J\\u001b]0;x\\u0007"],
    ["a backspace and a return", "a\bb\rc", "a\\u0008b\\u000dc"],
    ["direction marks", "a\u202eb\u2066c\u200f", "a\\u202eb\\u2066c\\u200f"],
    ["line ends that are none", "a\u2028b\u0085c", "a\\u2028b\\u0085c"],
  ])("with %s reaches no terminal as it is", (_, text, shown) => {
    expect(shownText(text)).toBe(shown);
  });

  it("keeps lines, tabs, letters of all scripts and what holds a range together", () => {
    const text = "größer\tμ 3\u2060–\u20604 °C\n漢字 → é\n";
    expect(shownText(text)).toBe(text);
  });
});

describe("a boat file with signs for a terminal", () => {
  const told = async (text: string) => {
    const { disk, said, tell } = quietWorld();
    disk.texts.set("/boat/bad.yaml", text);
    expect(await tell("check", "bad.yaml")).toBe(1);
    return said.err;
  };

  it("cannot forge a line through a key, a name or a value, and long ones are cut", async () => {
    for (const word of ["evil\\n0 troubles, all is well", "\\e[2J", "x".repeat(5000)]) {
      const key = await told(smallBoatWith(["    use: season\n", `    use: season\n    "${word}": 1\n`]));
      const value = await told(smallBoatWith(["hand: helm", `hand: "${word}"`]));
      const name = await told(
        smallBoatWith(["  mainsheet:\n", `  "${word}":\n`], ["touches: [mainsheet]", "touches: [halyard]"]),
      );
      for (const text of [key, value, name]) {
        expect(text).not.toMatch(/^0 troubles/mu);
        expect(text).not.toContain("\u001b");
        expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThan(600);
      }
    }
  });

  it("is refused where a name shows nothing", async () => {
    for (const name of ["\u3164", "\u115f\u1160", "\u17b4"])
      expect(await told(smallBoat.replaceAll("mainsheet", name))).toContain("a letter or digit first");
  });
});
