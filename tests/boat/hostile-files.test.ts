import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { loadBoat } from "../../src/boat/load.js";
import { boatOf, catalogueFile, rewriteBoat } from "../../src/boat/read.js";
import { BoatFileError } from "../../src/boat/trouble.js";
import { here, small, smallBoat, smallBoatWith } from "./small-boat.js";

// The parser and the units are loaded before any work is measured.
const known = small();

const bomb = ["a0: &a0 [x, x, x, x, x, x, x, x, x]"]
  .concat(Array.from({ length: 12 }, (_, n) => `a${n + 1}: &a${n + 1} [${Array(9).fill(`*a${n}`).join(", ")}]`))
  .join("\n");

const hostile: readonly (readonly [name: string, text: string, says: string])[] = [
  ["of 5 MB", `${smallBoat}${"# x\n".repeat(1_250_000)}`, "characters"],
  ["of 5 MB in one value", `name: ${"x".repeat(5_000_000)}`, "characters"],
  ["with brackets without end", `name: ${"[".repeat(200_000)}`, "levels"],
  ["with braces without end", `name: ${"{a: ".repeat(50_000)}`, "levels"],
  ["with dashes without end", `name:\n  ${"- ".repeat(100_000)}x`, "levels"],
  ["with question marks without end", `${"? ".repeat(100_000)}x`, "levels"],
  ["that steps in without end", Array.from({ length: 600 }, (_, n) => `${" ".repeat(n)}a:`).join("\n"), "spaces"],
  ["that steps in by lists", Array.from({ length: 60 }, (_, n) => `${" ".repeat(n)}- a:`).join("\n"), ""],
  ["of very many keys", Array.from({ length: 15_000 }, (_, n) => `a${n}: 1`).join("\n"), "words"],
  ["with references that multiply", bomb, "reference"],
  ["with one reference", smallBoatWith(["pull: 250 N", "pull: &p 250 N"]), "reference"],
  ["with a merged mapping", smallBoatWith(["use: new", "use: new\n    <<: *x"]), ""],
  ["with the key __proto__", smallBoatWith(["use: new", "use: new\n    __proto__: { polluted: true }"]), '"__proto__"'],
  [
    "with the key constructor",
    smallBoatWith(["  helm:", "  constructor: { hold: 90 N, pull: 250 N }\n  helm:"]),
    '"constructor"',
  ],
  [
    "with the key prototype",
    smallBoatWith(["  helm:", "  prototype: { hold: 90 N, pull: 250 N }\n  helm:"]),
    '"prototype"',
  ],
  ["with a line called __proto__", smallBoatWith(["  outhaul:", '  "__proto__":']), '"__proto__"'],
  ["with a tag", "name: !!binary R0lGODlhDAAMAIQAAP", ""],
];

/** What a trial threw, and the processor time that it took [s], which other programs on the machine do not lengthen. */
function effort(trial: () => unknown): { error: unknown; seconds: number } {
  const start = process.cpuUsage();
  const seconds = () => process.cpuUsage(start).user / 1e6;
  try {
    trial();
    return { error: undefined, seconds: seconds() };
  } catch (error) {
    return { error, seconds: seconds() };
  }
}

describe("a hostile file", () => {
  it.each(hostile)("%s is refused after less than a second of work", (_, text, says) => {
    const { error, seconds } = effort(() => boatOf(text, here));
    expect(error).toBeInstanceOf(BoatFileError);
    expect((error as BoatFileError).message).toContain(says);
    expect((error as BoatFileError).message.length).toBeLessThan(20_000);
    expect(seconds).toBeLessThan(1);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it.each([
    "../shop.yaml",
    "..\\\\shop.yaml",
    "/etc/passwd",
    "/etc/shop.yaml",
    "C:\\\\shop.yaml",
    "shops/shop.yaml",
    "..yaml",
    ".shop.yaml",
    "http://shop.yaml",
    "shop.yaml/../../x.yaml",
    "shop\\u0000.yaml",
    "shop.json",
  ])("whose catalogue is at %s is refused before anything is read", (path) => {
    const asked: string[] = [];
    const text = `${smallBoat.slice(0, smallBoat.indexOf("catalogue:"))}catalogue: "${path}"\n${smallBoat.slice(smallBoat.indexOf("limits:"))}`;
    const beside = (name: string) => {
      asked.push(name);
      return undefined;
    };
    const { error, seconds } = effort(() => boatOf(text, { file: "small.yaml", beside }));
    expect(error).toBeInstanceOf(BoatFileError);
    expect((error as BoatFileError).troubles[0]).toMatchObject({ at: "catalogue", file: "small.yaml" });
    expect((error as BoatFileError).message).toContain("same folder");
    expect(asked).toEqual([]);
    expect(catalogueFile(text, "small.yaml")).toBeUndefined();
    expect(seconds).toBeLessThan(1);
  });
});

describe("a file from another editor", () => {
  it.each([
    ["with the line ends of Windows", smallBoat.replaceAll("\n", "\r\n")],
    ["with a mark of its byte order", `\uFEFF${smallBoat}`],
    ["with both", `\uFEFF${smallBoat.replaceAll("\n", "\r\n")}`],
    ["without a last line end", smallBoat.trimEnd()],
    ["with spaces at the ends of lines", smallBoat.replaceAll("\n", "  \n")],
  ])("%s is the same boat", (_, text) => {
    expect(boatOf(text, here)).toEqual(known);
    expect(boatOf(rewriteBoat(text, [], here), here)).toEqual(known);
  });

  it("gives the right place of a fault after Windows line ends", () => {
    const text = smallBoatWith(["area: 8 m^2", "area: 8"]).replaceAll("\n", "\r\n");
    expect(() => boatOf(text, here)).toThrow("small.yaml:18:11:");
  });
});

describe("a boat file on disk", () => {
  const folder = mkdtempSync(join(tmpdir(), "boats-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  const write = (name: string, text: string) => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };

  it("is read with the catalogue that lies beside it", () => {
    const at = smallBoat.indexOf("catalogue:");
    const end = smallBoat.indexOf("limits:");
    const shop = smallBoat
      .slice(at, end)
      .split("\n")
      .slice(1)
      .map((line) => line.replace(/^ {2}/u, ""))
      .join("\n");
    write("shop.yaml", shop);
    const path = write("boat.yaml", `${smallBoat.slice(0, at)}catalogue: shop.yaml\n${smallBoat.slice(end)}`);
    expect(loadBoat(path)).toEqual(known);
    write("shop.yaml", shop.replace("20 kN", "20"));
    expect(() => loadBoat(path)).toThrow(
      /shop\.yaml:\d+:\d+: catalogue › rings › ring 20 › workingLoad: found the plain number 20/u,
    );
    rmSync(join(folder, "shop.yaml"));
    expect(() => loadBoat(path)).toThrow('found "shop.yaml", which is not there');
  });

  it("of 5 MB is refused unread, and so is one that is not there or is a folder", () => {
    const path = write("large.yaml", "#".repeat(5_000_000));
    const { error, seconds } = effort(() => loadBoat(path));
    expect((error as Error).message).toContain("5000000 bytes");
    expect(seconds).toBeLessThan(1);
    expect(() => loadBoat(join(folder, "none.yaml"))).toThrow("no such file");
    expect(() => loadBoat(folder)).toThrow("no such file");
  });
});
