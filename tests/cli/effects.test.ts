import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openingCommand } from "../../src/cli/desktop.js";
import { realDisk } from "../../src/cli/disk.js";
import { suggestion } from "../../src/quantity/suggestion.js";

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "haulbook-cli-"));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe("disk", () => {
  const disk = realDisk("test");

  it("replaces a file whole and leaves nothing beside it", async () => {
    const path = join(folder, "deep", "page.html");
    await disk.replace(path, "one");
    await disk.replace(path, "two");
    expect(await disk.read(path)).toBe("two");
    expect(await readdir(join(folder, "deep"))).toEqual(["page.html"]);
  });

  it("keeps the earlier file when the new one cannot take its place", async () => {
    const path = join(folder, "page.html");
    await mkdir(path);
    await writeFile(join(path, "earlier"), "kept");
    await expect(disk.replace(path, "new")).rejects.toThrow(/is a folder|ENOTEMPTY|EEXIST|EPERM/u);
    expect(await readFile(join(path, "earlier"), "utf8")).toBe("kept");
    expect(await readdir(folder)).toEqual(["page.html"]);
  });

  it("answers with nothing for what is not there, and refuses what cannot be read", async () => {
    expect(await disk.read(join(folder, "none"))).toBeUndefined();
    expect(await disk.list(join(folder, "none"))).toBeUndefined();
    await expect(disk.read(folder)).rejects.toThrow(/is a folder/u);
    await disk.replace(join(folder, "b"), "");
    await disk.replace(join(folder, "a"), "");
    expect(await disk.list(folder)).toEqual(["a", "b"]);
  });
});

describe("desktop", () => {
  it("opens as the platform does", () => {
    expect(openingCommand("linux", "/a b")).toEqual(["xdg-open", ["/a b"]]);
    expect(openingCommand("darwin", "/a")).toEqual(["open", ["/a"]]);
    expect(openingCommand("win32", "C:\\a")).toEqual(["cmd", ["/c", "start", "", "C:\\a"]]);
  });
});

describe("suggestion", () => {
  const known = ["how-hard-to-hold", "light-air", "cleats"];
  it.each([
    ["cleat", "cleats"],
    ["LIGHT-AIR", "light-air"],
    ["how-hard", "how-hard-to-hold"],
    ["clates", "cleats"],
    ["gybe", undefined],
    ["", undefined],
  ])("for %s is %s", (word, expected) => {
    expect(suggestion(word, known)).toBe(expected);
  });
});

const program = fileURLToPath(new URL("../../dist/cli/main.js", import.meta.url));

describe.skipIf(!existsSync(program))("the program itself", () => {
  const run = (args: string[]) =>
    new Promise<{ code: unknown; out: string; err: string }>((done) => {
      execFile(process.execPath, [program, ...args], { cwd: folder }, (error, out, err) =>
        done({ code: error?.code ?? 0, out, err }),
      );
    });

  it("ends with the exit code of what it did", async () => {
    const help = await run(["--help"]);
    expect(help.code).toBe(0);
    expect(help.out).toContain("haulbook reports");
    const wrong = await run(["reprots"]);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain("Did you mean reports?");
    await mkdir(join(folder, "notebooks"));
    const none = await run(["reports"]);
    expect(none.code).toBe(1);
    expect(none.err).toContain("No notebooks in notebooks");
  });
});
