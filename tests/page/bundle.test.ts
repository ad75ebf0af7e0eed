import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { liveModels } from "../../src/live/models.js";
import { bibliography } from "../../src/sources/bibliography.js";

const folder = fileURLToPath(new URL("../../dist/page/bundles", import.meta.url));
const names = liveModels.map(({ name }) => name);
const most = 60_000;

it("stands in the build for every model, and for no other", () => {
  expect(readdirSync(folder).sort()).toEqual(names.map((name) => `${name}.js`).sort());
});

describe.each(names)("the bundle for the browser of %s", (name) => {
  const bundle = readFileSync(`${folder}/${name}.js`, "utf8");

  it("is small, with the drawing of figures in it", () => {
    expect(gzipSync(bundle, { level: 9 }).length).toBeLessThanOrEqual(most);
    expect(bundle).toContain("axis-title");
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
    const ways = /\bfetch\(|XMLHttpRequest|WebSocket|EventSource|sendBeacon|importScripts|https?:\/\/(?!www\.w3\.org)/u;
    expect(bundle).not.toMatch(ways);
  });
});
