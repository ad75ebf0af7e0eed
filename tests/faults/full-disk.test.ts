import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, test } from "vitest";
import { realDisk } from "../../src/cli/disk.js";
import type { ExecutedNotebook } from "../../src/notebook/executed.js";
import { sample } from "../report/sample.js";
import { clinicIn, pagesOf, smallBuild, textsBelow } from "./builds.js";

const scratch = realpathSync(mkdtempSync(join(tmpdir(), "haulbook-full-")));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** The sample with another answer. */
const answering = (text: string): ExecutedNotebook => ({
  ...sample,
  cells: sample.cells.map((cell) =>
    cell.type === "markdown"
      ? cell
      : { ...cell, outputs: cell.outputs.map((one) => (one.kind === "answer" ? { ...one, text } : one)) },
  ),
});

/** A disk that is full after so many files: half of the next one is written, then nothing more. */
function fullAfter(files: number) {
  const disk = realDisk("full");
  let left = files;
  return {
    ...disk,
    replace: async (path: string, text: string) => {
      left -= 1;
      if (left >= 0) return disk.replace(path, text);
      await writeFile(`${path}.full.part`, text.slice(0, text.length / 2));
      await rm(`${path}.full.part`);
      throw Object.assign(new Error(`ENOSPC: no space left on device, write '${path}'`), { code: "ENOSPC" });
    },
  };
}

test("a disk that is full after any number of files: each file is the earlier one or the new one, and the failure is told", async () => {
  const output = join(scratch, "out");
  const paths = { one: "one.ipynb", two: "two.ipynb" };
  const build = (text: string, files = realDisk("whole")) =>
    smallBuild(output, paths, { run: async () => answering(text), files });
  await build("New **90 N**.");
  const later = textsBelow(output);
  await build("Old **80 N**.");
  const earlier = textsBelow(output);
  expect(later.get("one.html")).not.toBe(earlier.get("one.html"));
  let room = 0;
  for (; room < 40; room += 1) {
    await build("Old **80 N**.");
    const told = await build("New **90 N**.", fullAfter(room)).then(
      ({ failures }) => failures.map(({ message }) => message).join("\n"),
      (error: Error) => error.message,
    );
    if (told === "") break;
    expect(told).toContain("ENOSPC");
    const now = textsBelow(output);
    expect([...now.keys()]).toEqual([...earlier.keys()]);
    for (const [path, text] of now) {
      const whole = text === earlier.get(path) || text === later.get(path);
      // Pages that lead to both may tell of one page of each kind; they are written last.
      expect([room, path, whole || /^(index|checks)\.|search-data/.test(path)]).toEqual([room, path, true]);
    }
  }
  expect(room).toBeGreaterThan(10);
  expect(textsBelow(output)).toEqual(later);
});

/** A file system of its own, as large as the reports and a little more; only the system's owner may make one. */
const place = join(scratch, "small");
mkdirSync(place);
const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=14m", "tmpfs", place]).status === 0;

describe.skipIf(!mounted)(`on a small disk${mounted ? "" : " (no right to make one)"}`, () => {
  const clinic = clinicIn(join(scratch, "clinic"), join(place, "reports"));
  let good: ReadonlyMap<string, string>;
  beforeAll(() => {
    clinic.write(80);
    expect(clinic.build().status).toBe(0);
    good = pagesOf(clinic.reports);
    clinic.write(90);
  });
  afterAll(() => {
    spawnSync("umount", [place]);
  });

  it("that is full the earlier pages stay, the reason is told, and room is all that it takes", () => {
    const filler = join(place, "filler");
    expect(() => {
      for (let size = 0; size < 20; size += 1) writeFileSync(filler, Buffer.alloc(2 ** 20), { flag: "a" });
    }).toThrow("ENOSPC");
    const { status, stderr } = clinic.build();
    expect([status, stderr]).toEqual([1, expect.stringContaining("ENOSPC")]);
    expect(pagesOf(clinic.reports)).toEqual(good);
    rmSync(filler);
    expect(clinic.build().status).toBe(0);
    expect(pagesOf(clinic.reports).get("one.html")).not.toBe(good.get("one.html"));
    good = pagesOf(clinic.reports);
  });

  it("that nobody may write to nothing changes, and the reason is told", () => {
    expect(spawnSync("mount", ["-o", "remount,ro", place]).status).toBe(0);
    clinic.write(70);
    const { status, stderr } = clinic.build();
    expect([status, stderr]).toEqual([1, expect.stringContaining("EROFS")]);
    expect(pagesOf(clinic.reports)).toEqual(good);
    expect(spawnSync("mount", ["-o", "remount,rw", place]).status).toBe(0);
  });

  it("two builds at once: one builds, the other says who builds", async () => {
    clinic.write(60);
    const ends = await Promise.all([clinic.end(), clinic.end()]);
    expect(ends.map(({ code }) => code).sort()).toEqual([0, 1]);
    expect(ends.find(({ code }) => code === 1)?.said).toMatch(/Another build \(process \d+\) is writing to/);
    const alone = pagesOf(clinic.reports);
    expect(clinic.build().status).toBe(0);
    expect(pagesOf(clinic.reports)).toEqual(alone);
  });
});
