import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { hostname, tmpdir } from "node:os";
import path from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { sweepParts } from "../../src/cli/disk.js";
import { takeLock } from "../../src/cli/lock.js";

const folder = mkdtempSync(path.join(tmpdir(), "haulbook-lock-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const lock = path.join(folder, ".runs", "lock");

/** A process number that nobody has: Linux counts no further than 4 194 304. */
const gone = 4_194_305;

const hold = (owner: unknown) => {
  mkdirSync(path.dirname(lock), { recursive: true });
  writeFileSync(lock, typeof owner === "string" ? owner : JSON.stringify(owner));
};

describe("the lock of a folder", () => {
  it("is taken by one, named to the other, and given free", async () => {
    const free = await takeLock(folder);
    await expect(takeLock(folder)).rejects.toThrow(`process ${process.pid}) is writing to ${folder}`);
    await free();
    expect(existsSync(lock)).toBe(false);
    await (await takeLock(folder))();
  });

  it("is cleared away when its owner is gone, or when it names none", async () => {
    for (const owner of [{ process: gone, machine: hostname() }, "", "{"]) {
      hold(owner);
      const free = await takeLock(folder);
      expect(JSON.parse(readFileSync(lock, "utf8"))).toEqual({ process: process.pid, machine: hostname() });
      await free();
    }
  });

  it("stays when its owner lives on another machine, which cannot be asked", async () => {
    hold({ process: gone, machine: "elsewhere" });
    await expect(takeLock(folder)).rejects.toThrow(`A build on elsewhere is writing to ${folder}`);
    rmSync(lock);
  });

  it("goes to exactly one of many that find it left behind", async () => {
    hold({ process: gone, machine: hostname() });
    const outcomes = await Promise.allSettled(Array.from({ length: 20 }, () => takeLock(folder)));
    expect(outcomes.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
    rmSync(lock);
  });
});

describe("leftovers", () => {
  it("of a killed build are swept, and nothing else", async () => {
    mkdirSync(path.join(folder, "data"), { recursive: true });
    const names = ["index.html", "index.html.17.part", "data/a.json", "data/a.json.17.part", ".runs/a.run.17.part"];
    for (const name of names) writeFileSync(path.join(folder, name), "");
    await sweepParts(folder);
    expect(names.filter((name) => existsSync(path.join(folder, name)))).toEqual(["index.html", "data/a.json"]);
  });
});
