import { describe, expect, it } from "vitest";
import { read } from "./project.js";

const [, after = ""] = read("DEVELOPERS.md").split(/^## Changes$/mu);
const section = after.split(/^## /mu)[0]!;
const versions = [...section.matchAll(/^### (.+)$/gmu)].map((match) => match[1]!);
const packageVersion = (file: string) => (JSON.parse(read(file)) as { readonly version: string }).version;

/** Numbers of a version, for comparison. */
const numbers = (version: string) => version.split(".").map(Number);

describe("the changes", () => {
  it("are those of semantic versions, the newest first, each with something to say", () => {
    expect(versions.length).toBeGreaterThan(0);
    for (const version of versions) expect(version).toMatch(/^\d+\.\d+\.\d+$/u);
    const sorted = [...versions].sort((a, b) => {
      const [first, second] = [numbers(a), numbers(b)];
      const at = first.findIndex((number, index) => number !== second[index]);
      return at < 0 ? 0 : second[at]! - first[at]!;
    });
    expect(versions).toEqual(sorted);
    expect(new Set(versions).size).toBe(versions.length);
    for (const entry of section.split(/^### /mu).slice(1)) expect(entry).toMatch(/^- \S/mu);
  });

  it("begin with the version of the package", () => {
    expect(packageVersion("package.json")).toBe(versions[0]);
    expect(packageVersion("package-lock.json")).toBe(versions[0]);
  });
});
