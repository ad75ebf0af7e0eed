import { once } from "node:events";
import { existsSync, mkdtempSync, readdirSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { afterAll, expect, test } from "vitest";
import { clinicIn, pagesOf, processesIn } from "./builds.js";
import { seeded } from "./random.js";

const kills = 50;
const scratch = realpathSync(mkdtempSync(join(tmpdir(), "haulbook-build-killed-")));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** Waits until nothing of a killed build is alive. */
async function allGone(folder: string): Promise<boolean> {
  for (let tries = 0; tries < 200; tries += 1) {
    if (processesIn(folder).length === 0) return true;
    await pause(50);
  }
  return false;
}

test(`a build killed at ${kills} random moments: every page is whole, nothing stays behind`, async () => {
  const place = clinicIn(join(scratch, "clinic"));
  // Pages of two versions, in all four ways: leading pages tell of both. Prose alone tells them apart, so that runs are remembered.
  const versions = [
    ["Old.", "New."],
    ["New.", "Old."],
    ["Old.", "Old."],
    ["New.", "New."],
  ].map(([one, two]) => {
    place.write(80, one, two);
    const began = performance.now();
    const { status, stderr } = place.build();
    expect([status, stderr.includes("failed")]).toEqual([0, false]);
    return { one, two, took: performance.now() - began, pages: pagesOf(place.reports) };
  });
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
    await pause(random() * (runs ? versions[0]! : last).took);
    build.kill("SIGKILL");
    const [code] = await over;
    seen[code === 0 ? "ended" : "killed"] += 1;
    expect(await allGone(place.folder)).toBe(true);
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
