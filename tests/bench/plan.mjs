import { front } from "../../dist/plan/front.js";
import { loadSolver } from "../../dist/plan/solver.js";
import { inventedBoat } from "./plan-boat.mjs";

const size = { lines: 14, options: 40 };
const seeds = [1, 2, 3];

/** The front of a boat, each point proven, beside the same search without the solver's presolve. */
export async function planRow() {
  const [solver, plain] = [await loadSolver(), await loadSolver({ presolve: false })];
  const boats = seeds.map((seed) => inventedBoat({ seed, ...size }));
  for (const one of [solver, plain]) front(one, inventedBoat({ seed: 9, lines: 6, options: 12 }), { atLeast: 8 });
  const ours = boats.map((boat) => timed(solver, boat));
  const theirs = boats.map((boat) => timed(plain, boat));
  for (const { points } of [...ours, ...theirs])
    if (points.length < 25 || points.some(({ proofs }) => proofs.some(({ gap }) => gap !== 0))) process.exitCode = 1;
  const [slowest, without] = [ours, theirs].map((runs) => Math.max(...runs.map(({ seconds }) => seconds)));
  return {
    name: "front of 25 proven plans, 14 lines with 40 options each, slowest of three boats",
    ours: slowest,
    baseline: without,
    ratio: slowest / without,
    unit: "s",
    note: "the same search without presolve",
  };
}

function timed(solver, boat) {
  const start = performance.now();
  const { points } = front(solver, boat);
  return { points, seconds: (performance.now() - start) / 1000 };
}
