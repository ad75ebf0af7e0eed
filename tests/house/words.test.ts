import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { small, smallBoatWith } from "../boat/small-boat.js";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Words that stand nowhere in this project, by the first half of their hashes: a mark of the trade, names of programs, words that were given up. */
const unwanted: ReadonlySet<string> = new Set([
  "09f20eb14937cacb",
  "e7634ff11a1f3a4e",
  "8137aba9fd91c1a3",
  "e8e912e18eb26f45",
  "741094f66e2c146a",
  "1ad945b5cd389656",
  "ce7611e7481e75f0",
  "9009747a30fdd673",
  "a7b944781daad7e2",
  "814c35f9b7f5da5b",
  "ed877a1149fbf462",
  "19bbb789b7b8b456",
  "c5ea1118663058d8",
  "9985eeec4a95c4e7",
  "04ad2bfad8cbdb3a",
  "e8a91896230b592b",
  "b2eb80e26fe4b28a",
  "9e98f21dfd789caf",
  "f7833b845611c03c",
  "5a1a982cc7b5aaad",
  "d9244262247681cb",
]);

const hashOf = (word: string) => createHash("sha256").update(word).digest("hex").slice(0, 16);

/** Every word of a text, those inside of names as well: `camCleat` is also `cam` and `cleat`. */
function wordsOf(text: string): Set<string> {
  const whole = text.match(/\p{L}+/gu) ?? [];
  const parts = whole.flatMap((word) => word.match(/\p{Lu}?\p{Ll}+|\p{Lu}+(?!\p{Ll})/gu) ?? []);
  return new Set([...whole, ...parts].map((word) => word.toLowerCase()));
}

describe("words", () => {
  it("that are not ours stand in no file and in no file's name", () => {
    const files = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], {
      cwd: root,
      encoding: "utf8",
    })
      .split("\n")
      .filter((file) => file !== "" && file !== "package-lock.json");
    const places = new Map<string, string>();
    for (const file of files) {
      const text = readText(`${root}/${file}`);
      for (const word of wordsOf(`${file}\n${text}`)) if (!places.has(word)) places.set(word, file);
    }
    expect(places.size).toBeGreaterThan(3000);
    expect([...places].filter(([word]) => unwanted.has(hashOf(word))).map(([, file]) => file)).toEqual([]);
  });

  it("are found inside of names, too", () => {
    expect(wordsOf("openCamCleat VEE-cleat")).toEqual(new Set(["opencamcleat", "open", "cam", "cleat", "vee"]));
  });
});

/** Nothing for a file that was deleted and not yet committed. */
function readText(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}

describe("a boat file with the earlier word for a V cleat", () => {
  it("is told the new one", () => {
    const earlier = [..."malc"].reverse().join("");
    expect(() => small(["cam: { type: cam", `cam: { type: ${earlier}`])).toThrow(
      /This is called "vee" now: write that\./u,
    );
    expect(smallBoatWith(["cam: { type: cam", "cam: { type: vee"])).toContain("type: vee");
    expect(() => small(["cam: { type: cam", "cam: { type: vee"])).not.toThrow();
  });
});
