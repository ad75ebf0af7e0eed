import { mkdirSync, mkdtempSync, readdirSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { KernelDeathError } from "../../src/notebook/errors.js";
import { long } from "../long.js";
import { processesIn, smallBuild, textsBelow, workUntil, writeNotebook } from "./builds.js";
import { seeded } from "./random.js";

const kills = long(6, 50);
const sideBySide = 3;
const scratch = realpathSync(mkdtempSync(join(tmpdir(), "haulbook-killed-")));
const before = process.env.TMPDIR;
mkdirSync(join(scratch, "temporary"));
process.env.TMPDIR = join(scratch, "temporary");
afterAll(() => {
  if (before === undefined) delete process.env.TMPDIR;
  else process.env.TMPDIR = before;
  rmSync(scratch, { recursive: true, force: true });
});

test(`a kernel killed at ${kills} random moments: the run fails and says so, the earlier pages stay whole`, async () => {
  const random = seeded(7);
  const outcomes = { failed: 0, built: 0 };
  const wrong: string[] = [];

  /** Builds good pages, then kills the kernel of one later build after another. */
  const worker = async (name: string, count: number) => {
    const folder = join(scratch, name);
    const output = join(scratch, `${name}-out`);
    const first = smallBuild(output, { page: writeNotebook(folder, "page", 80) });
    const whole = await workUntil(folder, first);
    expect((await first).failures).toEqual([]);
    const good = textsBelow(output);
    // The same page again: whether the kernel dies or not, no byte may change.
    for (let kill = 0; kill < count; kill += 1) {
      const building = smallBuild(output, { page: join(folder, "page.ipynb") });
      await workUntil(folder, building, random() * whole);
      for (const pid of processesIn(folder)) process.kill(pid, "SIGKILL");
      const { failures } = await building;
      outcomes[failures.length > 0 ? "failed" : "built"] += 1;
      for (const { cause, message } of failures)
        if (!(cause instanceof KernelDeathError) || !message.includes("SIGKILL")) wrong.push(message);
      if (processesIn(folder).length > 0) wrong.push(`${name}: a process is left after kill ${kill}`);
      expect(textsBelow(output)).toEqual(good);
    }
  };
  const share = Array.from({ length: sideBySide }, (_, index) => Math.ceil((kills - index) / sideBySide));
  await Promise.all(share.map((count, index) => worker(`kernel-${index}`, count)));

  expect(wrong).toEqual([]);
  expect(outcomes.failed + outcomes.built).toBe(kills);
  expect(outcomes.failed).toBeGreaterThan(kills / 2);
  expect(readdirSync(join(scratch, "temporary"))).toEqual([]);
});
