import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { lstatSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { realDisk } from "../../src/cli/disk.js";
import { smallBoat } from "../boat/small-boat.js";

const folder = mkdtempSync(path.join(tmpdir(), "haulbook-read-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => path.join(folder, name);
const disk = realDisk("test");

describe("reading a file", () => {
  it("takes a plain one, and knows one that is not there", async () => {
    writeFileSync(at("plain.txt"), "größer\n");
    expect(await disk.read(at("plain.txt"))).toBe("größer\n");
    expect(await disk.read(at("none.txt"))).toBeUndefined();
  });

  it("refuses a folder, and texts that are not UTF-8, in one sentence", async () => {
    await expect(disk.read(folder)).rejects.toThrow(/is a folder\. Name a file in it\.$/u);
    writeFileSync(at("utf16.txt"), Buffer.from("\ufeffname: x\n", "utf16le"));
    await expect(disk.read(at("utf16.txt"))).rejects.toThrow(/written in UTF-16\. Save it as UTF-8\.$/u);
    writeFileSync(at("utf32.txt"), Buffer.from([0xff, 0xfe, 0, 0, 0x6e, 0, 0, 0]));
    await expect(disk.read(at("utf32.txt"))).rejects.toThrow(/written in UTF-32/u);
  });

  it.skipIf(process.platform === "win32")("gives up on a device without an end", { timeout: 120_000 }, async () => {
    await expect(disk.read("/dev/zero")).rejects.toThrow(/has no end: it is not read/u);
  });
});

describe("writing a file", () => {
  it.skipIf(process.platform === "win32")(
    "replaces plain files only: no link, whole or broken, no folder, no pipe",
    async () => {
      writeFileSync(at("target.txt"), "kept");
      symlinkSync(at("target.txt"), at("link.txt"));
      symlinkSync(at("nowhere.txt"), at("broken.txt"));
      mkdirSync(at("sub"));
      execFileSync("mkfifo", [at("pipe")]);
      for (const [name, what] of [
        ["link.txt", "a link"],
        ["broken.txt", "a link"],
        ["sub", "a folder"],
        ["pipe", "a device or a pipe"],
      ] as const) {
        await expect(disk.replace(at(name), "new"), name).rejects.toThrow(`is ${what}, and stays as it is`);
      }
      expect(readFileSync(at("target.txt"), "utf8")).toBe("kept");
      expect(lstatSync(at("broken.txt")).isSymbolicLink()).toBe(true);
      await disk.replace(at("target.txt"), "new");
      expect(readFileSync(at("target.txt"), "utf8")).toBe("new");
    },
  );
});

describe.skipIf(process.platform === "win32")("a command that is stopped", () => {
  const main = new URL("../../dist/cli/main.js", import.meta.url).pathname;

  it.each([
    ["SIGINT", 130],
    ["SIGTERM", 143],
  ] as const)(
    "by %s ends, as a shell counts it, with %d: while it waits for a pipe, and while it computes",
    async (signal, code) => {
      const boat = at(`boat-${code}`);
      execFileSync("mkfifo", [boat]);
      const waiting = spawn(process.execPath, [main, "check", boat], { stdio: ["ignore", "pipe", "pipe"] });
      // A pipe opens for writing when the command has opened it for reading: then it is stopped.
      const pipe = spawn("sh", ["-c", `exec 3>"${boat}"; echo open; read wait`], { stdio: ["pipe", "pipe", "ignore"] });
      await once(pipe.stdout, "data");
      const gone = once(waiting, "exit");
      waiting.kill(signal);
      expect(endOf(await gone)).toBe(code);
      pipe.kill();
      writeFileSync(at("small.yaml"), smallBoat);
      const planning = spawn(process.execPath, [main, "plan", at("small.yaml"), "--points", "200"], {
        stdio: ["ignore", "pipe", "pipe"],
      });
      const ended = once(planning, "exit");
      // It tells of its work when that takes a second; a machine that plans this boat in less is too fast to be stopped.
      const told = await Promise.race([once(planning.stderr, "data").then(() => true), ended.then(() => false)]);
      if (!told) return;
      planning.kill(signal);
      expect(endOf(await ended)).toBe(code);
    },
  );
});

/** What a shell would tell of an end. */
function endOf([code, signal]: readonly unknown[]): number {
  if (signal === "SIGINT") return 130;
  return signal === "SIGTERM" ? 143 : Number(code);
}
