import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { bibliography } from "../../src/sources/bibliography.js";

const bundle = readFileSync(fileURLToPath(new URL("../../dist/page/panel.js", import.meta.url)), "utf8");
const most = 60_000;

describe("the bundle for the browser", () => {
  it("is small", () => {
    expect(gzipSync(bundle, { level: 9 }).length).toBeLessThanOrEqual(most);
    expect(bundle.length).toBeGreaterThan(most);
  });

  it("is a plain script: no modules, no loader", () => {
    expect(bundle).not.toMatch(/\b(?:import|export)\s*[{*]|\bimport\(|\brequire\(/u);
    expect(() => new Function(bundle)).not.toThrow();
  });

  it("leaves the unit parser, the planner, the checker of files and the bibliography at home", () => {
    expect(bundle).not.toMatch(/mathjs|createUnit|highs|zod|ZodError/u);
    const titles = Object.values(bibliography).map(({ title }) => title);
    expect(titles.filter((title) => bundle.includes(title))).toEqual([]);
  });

  it("knows no way to the network", () => {
    expect(bundle).not.toMatch(
      /\bfetch\(|XMLHttpRequest|WebSocket|EventSource|sendBeacon|importScripts|https?:\/\/(?!www\.w3\.org)/u,
    );
  });
});
