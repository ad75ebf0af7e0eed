import { execFileSync } from "node:child_process";
import { mkdirSync, readdirSync, utimesSync, writeFileSync } from "node:fs";
import path from "node:path";
import { afterAll, expect, test } from "vitest";
import { startKernel } from "../../src/notebook/kernel.js";
import { kernelImage, makeKernelImage } from "../../src/notebook/kernel-image.js";
import { dataModeVariable } from "../../src/notebook/output.js";
import { isLong, long } from "../long.js";
import { scratchFolder } from "./scratch.js";

const scratch = scratchFolder();
afterAll(() => scratch.remove());

/** What cells write in a kernel, and which declarations it read for them. */
async function converse(
  image: string | undefined,
  cells: readonly string[],
  more: { readonly imageSeconds?: number } = {},
) {
  const environment = { ...process.env, [dataModeVariable]: "data" };
  const patience = { startSeconds: 240, imageSeconds: 120 };
  const kernel = await startKernel({ folder: scratch.folder, environment, image, ...patience, ...more });
  const written: string[] = [];
  for (const cell of cells) {
    const { reply, idle } = kernel.execute(cell, ({ content }) => {
      if (typeof content.text === "string") written.push(content.text);
    });
    await reply;
    await idle;
  }
  const read = (await kernel.filesRead()).filter((file) => file.endsWith(".d.ts"));
  await kernel.close();
  return { written, read };
}

const cells = [
  'import { capstanRatio } from "haulbook";\nimport { basename } from "node:path";',
  "const ratio = capstanRatio({ frictionCoefficient: 0.1, wrapAngle: Math.PI });\nconsole.log(ratio, basename(process.cwd()));",
  "const wrong: string = ratio;",
  'throw new Error("as it should");',
];

test("a kernel of an image does what any kernel does, and has read the library already", async () => {
  const image = await kernelImage();
  expect(image).toBeDefined();
  const [plain, ahead] = await Promise.all([converse(undefined, cells), converse(image, cells)]);
  expect(plain.read.length).toBeGreaterThan(100);
  expect(ahead.read).toEqual([]);
  expect(ahead.written.join("")).toContain("Type 'number' is not assignable to type 'string'");
  const lines = (texts: readonly string[]) =>
    texts
      .join("")
      .split("\n")
      .filter((line) => !/^\s+at /u.test(line));
  expect(lines(ahead.written)).toEqual(lines(plain.written));
});

test("a kernel starts without an image that is damaged", async () => {
  const damaged = path.join(scratch.folder, "damaged.image");
  for (const content of [Buffer.alloc(100_000, 7), ...long([], ["", "no image"])]) {
    writeFileSync(damaged, content);
    const { written } = await converse(damaged, ["console.log(6 * 7)"]);
    expect(written).toContain("42\n");
  }
});

test("a kernel starts without an image from which none comes up", async () => {
  const [entry, silent] = ["silent.cjs", "silent.image"].map((name) => path.join(scratch.folder, name)) as [
    string,
    string,
  ];
  writeFileSync(
    entry,
    'require("node:v8").startupSnapshot.setDeserializeMainFunction(() => setInterval(() => {}, 1000));',
  );
  execFileSync(process.execPath, ["--snapshot-blob", silent, "--build-snapshot", entry], { stdio: "ignore" });
  const { written } = await converse(silent, ["console.log(6 * 7)"], { imageSeconds: 1 });
  expect(written).toContain("42\n");
});

test.runIf(isLong)("an image takes the place of earlier ones and of what was left unfinished", async () => {
  const folder = path.join(scratch.folder, "images");
  mkdirSync(folder);
  for (const name of ["earlier.image", "left.part", "now.part"]) writeFileSync(path.join(folder, name), "");
  utimesSync(path.join(folder, "left.part"), 0, 0);
  expect(await makeKernelImage(folder)).toBe(true);
  const current = path.basename((await kernelImage())!);
  expect(readdirSync(folder).sort()).toEqual([current, "now.part"].sort());
  expect(await makeKernelImage(folder)).toBe(true);
});

test("kernels start without an image where none can be kept", async () => {
  const file = path.join(scratch.folder, "file");
  writeFileSync(file, "");
  expect(await makeKernelImage(path.join(file, "below"))).toBe(false);
});
