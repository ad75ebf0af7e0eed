import { execFileSync, spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { crewDays } from "../../dist/crew/crew-days.js";
import { enduranceLaws, fatigueSets, seamShare } from "../../dist/materials/people-fatigue.js";
import { bandAt, spreadPoints } from "../../dist/numerics/spread-points.js";

const count = 1000;
const hours = 8;
const step = 0.1;
/** The baseline works out this much of the day: the whole of it would take minutes. */
const baselineSeconds = 300;
const rounds = 3;
/** How far the capacities of the two may differ: the baseline's steps run over the edges of the load. */
const closeness = 2e-4;
const steadyForce = 40;
const steadyTime = 120;

/** A load that changes every tenth of a second: swell, gusts, a free hand in each tack, breaks. */
function handForce(index) {
  const time = index * step;
  if (time % 9600 > 5400 || time % 300 < 4) return 0;
  return 40 + 15 * Math.sin(time / 3) + 10 * Math.sin(1.7 * time);
}

function sample() {
  const bands = {
    holdingTension: { value: 220, low: 110, high: 400 },
    fatigueRate: { value: 0.0098, low: 0.0049, high: 0.0147 },
    recoveryRate: { value: 0.00064, low: 0.00032, high: 0.00128 },
    restFactor: { value: 30, low: 15, high: 30 },
  };
  const names = Object.keys(bands);
  const points = spreadPoints({ count, dimensions: names.length, seed: 1 });
  return Object.fromEntries(names.map((name, i) => [name, points[i].map((share) => bandAt(bands[name], share))]));
}

/** Days of a thousand crews at a tenth of a second, beside the same model in scipy's solver, all crews in one vector. */
export function crewsRow() {
  const crews = sample();
  const stretches = (seconds) => Math.round(seconds / step);
  const day = (seconds) => ({
    lengths: new Float64Array(stretches(seconds)).fill(step),
    handForces: Float64Array.from({ length: stretches(seconds) }, (_, i) => handForce(i)),
  });
  const whole = day(3600 * hours);
  let ours = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    crewDays({ day: whole, crews });
    ours = Math.min(ours, (performance.now() - start) / 1000);
  }
  const steady = {
    lengths: new Float64Array(stretches(steadyTime)).fill(step),
    handForces: new Float64Array(stretches(steadyTime)).fill(steadyForce),
  };
  const exact = crews.holdingTension.map((holding, i) => {
    const level = (crews.fatigueRate[i] * steadyForce) / holding / crews.recoveryRate[i];
    return 1 - level * -Math.expm1(-crews.recoveryRate[i] * steadyTime);
  });
  const held = exact.map((capacity, i) => capacity > steadyForce / crews.holdingTension[i]);
  const worst = (found) => Math.max(...found.map((value, i) => (held[i] ? Math.abs(value - exact[i]) : 0)));
  const ourError = worst(Array.from(crewDays({ day: steady, crews }).left));
  const part = day(baselineSeconds);
  const baseline = solved({ crews, handForces: part.handForces });
  const name = `day of ${hours} h at ${step} s for ${count} crews: ${ours.toFixed(1)} s on one core`;
  const rate = (3600 * hours * count) / ours;
  if (baseline === undefined)
    return { name, ours: rate, baseline: null, ratio: null, unit: "s of crew/s", note: "no python3 with scipy here" };
  compareCapacities(crewDays({ day: part, crews }).left, baseline.capacity);
  const theirs = (baselineSeconds * count) / baseline.seconds;
  const error = `largest error against the closed form ${ourError.toExponential(0)}, baseline ${worst(baseline.steady).toExponential(0)}`;
  const note = `scipy solve_ivp, RK23, all crews in one vector, ${baselineSeconds} s of the day; ${error}`;
  return { name, ours: rate, baseline: theirs, ratio: rate / theirs, unit: "s of crew/s", note };
}

/** The baseline, or nothing where scipy is not installed. */
function solved({ crews, handForces }) {
  if (spawnSync("python3", ["-c", "import scipy.integrate"]).status !== 0) return undefined;
  const columns = Object.fromEntries(Object.entries(crews).map(([name, values]) => [name, Array.from(values)]));
  const law = {
    seam: seamShare.value,
    factor: enduranceLaws.hand.factor.value,
    exponent: -enduranceLaws.hand.exponent.value,
    fatigueRate: fatigueSets.hand.fatigueRate.value,
    recoveryRate: fatigueSets.hand.recoveryRate.value,
  };
  const input = JSON.stringify({ ...columns, law, handForces: Array.from(handForces), step, steadyForce, steadyTime });
  const program = fileURLToPath(new URL("crews.py", import.meta.url));
  return JSON.parse(execFileSync("python3", [program], { input, encoding: "utf8", maxBuffer: 2 ** 28 }));
}

function compareCapacities(values, expected) {
  const apart = Math.max(...expected.map((value, i) => Math.abs(value - values[i])));
  if (apart <= closeness) return;
  throw new Error(`Capacities differ by up to ${apart} between our steps and the baseline.`);
}
