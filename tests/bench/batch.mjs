import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { compileBatch } from "../../dist/reeving/batch.js";
import { line } from "./sample-line.mjs";

const cases = 2_000_000;
const rounds = 6;
const passesPerRound = 3;
const closeness = 1e-9;

const column = (value) => Float64Array.from({ length: cases }, (_, i) => value(i));

/** The batch solver beside the same arithmetic in C, by turns, so that both share the noise of the machine. */
export function batchRow() {
  const solver = compileBatch(line);
  const load = column((i) => 50 + (i % 1000));
  const factors = {
    bearing: column((i) => 0.5 + (i % 97) / 97),
    bending: column((i) => 0.5 + (i % 89) / 89),
    tread: column((i) => 0.5 + (i % 83) / 83),
  };
  const result = { hauling: new Float64Array(cases), easing: new Float64Array(cases) };
  const folder = mkdtempSync(join(tmpdir(), "haulbook-bench-"));
  try {
    const program = compiled(folder);
    let ours = Number.POSITIVE_INFINITY;
    let theirs = Number.POSITIVE_INFINITY;
    for (let round = 0; round < rounds; round++) {
      for (let pass = 0; pass < passesPerRound; pass++) {
        const start = performance.now();
        solver.solve({ load, factors }, result);
        ours = Math.min(ours, (performance.now() - start) / 1000);
      }
      if (program === undefined) continue;
      const [seconds, haulingSum, easingSum] = execFileSync(program, [String(cases), String(passesPerRound)], {
        encoding: "utf8",
      })
        .trim()
        .split(" ")
        .map(Number);
      theirs = Math.min(theirs, seconds);
      compareSums("hauling", result.hauling, haulingSum);
      compareSums("easing", result.easing, easingSum);
    }
    return {
      name: "batch solver, 6-part tackle, lead block, ratchet, 2e6 cases",
      ours: cases / ours,
      baseline: program === undefined ? null : cases / theirs,
      ratio: program === undefined ? null : theirs / ours,
      unit: "cases/s",
      note: program === undefined ? "no gcc here to compile the baseline" : "C, gcc -O3 -march=native, one core",
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The baseline as a program, or nothing where no gcc is installed. */
function compiled(folder) {
  if (spawnSync("gcc", ["--version"]).status !== 0) return undefined;
  const program = join(folder, "batch");
  const source = fileURLToPath(new URL("batch.c", import.meta.url));
  execFileSync("gcc", ["-O3", "-march=native", source, "-o", program, "-lm"]);
  return program;
}

function compareSums(name, values, expected) {
  let sum = 0;
  for (const value of values) sum += value;
  if (Math.abs(sum - expected) <= closeness * Math.abs(expected)) return;
  throw new Error(`The sums of ${name} differ: ${sum} from the batch solver, ${expected} from the baseline.`);
}
