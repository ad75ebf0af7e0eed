import { execFileSync, spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { bandOverLoads } from "../../dist/uncertainty/line-band.js";
import { line } from "./sample-line.mjs";

const winds = 100;
const samples = 10_000;
const rounds = 5;
const passesPerRound = 4;
/** The baseline draws at random: its medians scatter by a third of a percent. */
const closeness = 2e-2;

const uncertainInputs = [
  { name: "bearings", turns: "bearing", record: { value: 0.01, low: 0.004, high: 0.025 } },
  { name: "bending", turns: "bending", record: { value: 60, low: 30, high: 110 } },
  { name: "tread", turns: "tread", record: { value: 0.32, low: 0.2, high: 0.5 } },
];

const loads = Float64Array.from({ length: winds }, (_, i) => 50 + 8 * i);

/** Bands over winds beside the same sampling in numpy, by turns. */
export function bandsRow() {
  const python = pythonWithNumpy();
  let ours = Number.POSITIVE_INFINITY;
  let theirs = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    let bands;
    for (let pass = 0; pass < passesPerRound; pass++) {
      const start = performance.now();
      bands = bandOverLoads({ line, uncertainInputs }, loads, { samples });
      ours = Math.min(ours, (performance.now() - start) / 1000);
    }
    if (python === undefined) continue;
    const program = fileURLToPath(new URL("bands.py", import.meta.url));
    const [seconds, haul, ease] = JSON.parse(execFileSync(python, [program, String(samples)], { encoding: "utf8" }));
    theirs = Math.min(theirs, seconds);
    compareMedians("hauling", bands.hauling.median, haul);
    compareMedians("easing", bands.easing.median, ease);
  }
  return {
    name: "bands, 100 winds x 10,000 samples, hauling and easing of one line",
    ours,
    baseline: python === undefined ? null : theirs,
    ratio: python === undefined ? null : ours / theirs,
    unit: "s",
    note: python === undefined ? "no python3 with numpy here" : "numpy, one process, less is better",
  };
}

/** Debian's own Python first, then any that the path gives. */
function pythonWithNumpy() {
  return ["/usr/bin/python3", "python3"].find(
    (python) => spawnSync(python, ["-c", "import numpy"], { stdio: "ignore" }).status === 0,
  );
}

function compareMedians(name, ours, theirs) {
  for (const [index, value] of ours.entries()) {
    if (Math.abs(value - theirs[index]) <= closeness * Math.abs(theirs[index])) continue;
    throw new Error(`The medians of ${name} differ: ${value} here, ${theirs[index]} in the baseline.`);
  }
}
