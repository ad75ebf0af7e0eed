import { once } from "node:events";
import { existsSync, mkdtempSync, readdirSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { long } from "../long.js";
import { clinicIn, pagesOf, processesIn, workUntil } from "./builds.js";
import { seeded } from "./random.js";

const kills = long(6, 50);
const scratch = realpathSync(mkdtempSync(join(tmpdir(), "haulbook-build-killed-")));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

test(`a build killed at ${kills} random moments: every page is whole, nothing stays behind`, async () => {
  const place = clinicIn(join(scratch, "clinic"));
  // Pages of two versions, in all four ways: leading pages tell of both. Prose alone tells them apart, so that runs are remembered.
  const versions: { one: string; two: string; work: number; pages: ReadonlyMap<string, string> }[] = [];
  for (const [one, two] of [
    ["Old.", "New."],
    ["New.", "Old."],
    ["Old.", "Old."],
    ["New.", "New."],
  ] as const) {
    place.write(80, one, two);
    const ended = place.end();
    const work = await workUntil(place.folder, ended);
    const { code, said } = await ended;
    expect([code, said.includes("failed")]).toEqual([0, false]);
    versions.push({ one, two, work, pages: pagesOf(place.reports) });
  }
  const last = versions[3]!;
  expect(new Set(versions.map(({ pages }) => pages.get("one.html"))).size).toBe(2);

  const random = seeded(7);
  const seen = { killed: 0, ended: 0 };
  for (let kill = 0; kill < kills; kill += 1) {
    const version = versions[2 + (kill % 2)]!;
    place.write(80, version.one, version.two);
    // Every fifth build runs its notebooks again: its kernels must end with it.
    const runs = kill % 5 === 0;
    const build = runs ? place.start("--no-cache") : place.start();
    const over = once(build, "exit");
    await workUntil(place.folder, over, random() * (runs ? versions[0]! : last).work);
    build.kill("SIGKILL");
    const [code] = await over;
    seen[code === 0 ? "ended" : "killed"] += 1;
    await expect.poll(() => processesIn(place.folder)).toEqual([]);
    const pages = pagesOf(place.reports);
    expect([...pages.keys()]).toEqual([...last.pages.keys()]);
    for (const [path, text] of pages)
      expect([path, versions.some(({ pages: whole }) => whole.get(path) === text)]).toEqual([path, true]);
  }
  expect(seen.killed).toBeGreaterThan(kills / 2);

  // The next build that runs notebooks clears away what was left, and its pages are those of a build that nobody killed.
  place.write(80, last.one, last.two);
  expect((await once(place.start("--no-cache"), "exit"))[0]).toBe(0);
  expect(pagesOf(place.reports)).toEqual(last.pages);
  expect(readdirSync(place.reports, { recursive: true }).filter((name) => String(name).endsWith(".part"))).toEqual([]);
  expect(existsSync(join(place.reports, ".runs", "lock"))).toBe(false);
  expect(readdirSync(place.temporary)).toEqual([]);
});
