import { mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { realDisk } from "../../src/cli/disk.js";
import { long } from "../long.js";
import { sample } from "../report/sample.js";
import { pagesOf, smallBuild } from "./builds.js";
import { damaged, seeded } from "./random.js";

const damages = long(24, 120);
const scratch = realpathSync(mkdtempSync(join(tmpdir(), "haulbook-damaged-")));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

test(`what a build remembers, damaged in ${damages} ways: the pages are the same, and nothing fails`, async () => {
  const output = join(scratch, "out");
  const kept = join(output, ".runs");
  const disk = realDisk("memory");
  const path = join(scratch, "page.ipynb");
  const cells = sample.cells.map(({ type, source }) => ({ cell_type: type, metadata: {}, source, outputs: [] }));
  writeFileSync(path, JSON.stringify({ nbformat: 4, nbformat_minor: 5, metadata: {}, cells }));
  let runs = 0;
  const build = () =>
    smallBuild(
      output,
      { page: path },
      {
        run: async () => {
          runs += 1;
          return sample;
        },
        memory: {
          store: {
            read: (name) => disk.read(join(kept, `${name}.run`)),
            replace: (name, text) => disk.replace(join(kept, `${name}.run`), text),
          },
          library: { core: "core", versions: "versions", whole: "whole" },
          libraryFolder: join(scratch, "dist"),
          choices: [],
        },
      },
    );
  expect((await build()).failures).toEqual([]);
  await build();
  expect(runs).toBe(1);
  const good = pagesOf(output);
  const random = seeded(7);
  let rerun = 0;
  for (let number = 0; number < damages; number += 1) {
    const names = readdirSync(kept).filter((name) => name !== "lock");
    const file = join(kept, names[Math.floor(random() * names.length)] as string);
    const text = readFileSync(file, "utf8");
    writeFileSync(file, number % 10 === 0 ? "" : damaged(text, random));
    const before = runs;
    expect((await build()).failures).toEqual([]);
    rerun += runs - before;
    expect(pagesOf(output)).toEqual(good);
  }
  expect(rerun).toBeGreaterThan(damages / 6);
});
