import type { CamCleat, VeeCleat } from "../materials/cleats.js";
import type { Cover } from "../materials/covers.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { type CamInput, camRanges, lockingAngle } from "./cam-cleat.js";
import { wedgeDrive, wedgeRelease } from "./wedge.js";

/** The hand pulls a loaded line out of its cleat. */
export interface LiftOutInput {
  /** Load on the line [N]. */
  readonly load: number;
  /** Angle of the pull above the line behind the cleat [rad]. */
  readonly pullAngle: number;
}

/**
 * Pull that frees a line from a cam cleat under load.
 *
 *     (F sin χ)² + u² = (2 μ S / sin ψ' + μ u / tan ψ')²,   u = T − F cos χ
 *
 * The part of the pull along the line takes load off the jaws; the part across slides the rope up between them.
 *
 * @param load  T [N], 0 or more
 * @param pullAngle  χ above the line behind the cleat [rad], 0.02 to a quarter turn
 * @param camAngle  ψ [rad], above 0
 * @param pivotShare  r_p [-], 0 to 1
 * @param pivotFriction  μ_p [-], 0 to 1
 * @param frictionCoefficient  μ of rope on jaws, the same along and across [-], 0 to 4
 * @param spring  S of one jaw, at the rope [N]
 * @returns least pull [N]; 0 when the cleat does not hold the load anyway
 * @throws ValueError outside these ranges
 * Valid for jaws that pinch as hard as the load asks; the lip of a fairlead is left out.
 * Source: statics, friction in two directions. Example: camLiftOut({ load: 0, pullAngle: Math.PI / 2, camAngle: 0.157, pivotShare: 0, pivotFriction: 0, frictionCoefficient: 0.4, spring: 7 }) → 35.816
 */
export function camLiftOut({
  load,
  pullAngle,
  spring,
  frictionCoefficient,
  ...shape
}: LiftOutInput & CamInput): number {
  const angle = lockingAngle(shape);
  const [along, across] = directions(pullAngle);
  const m = within("frictionCoefficient", frictionCoefficient) / Math.tan(angle);
  const k = (2 * frictionCoefficient * within("gripPreload", spring)) / Math.sin(angle);
  const T = within("loadTension", load);
  // A F² + B F + C = 0: reserve of friction, zero when the rope begins to slide.
  const a = (m * m - 1) * along * along - across * across;
  const b = -2 * along * ((m * m - 1) * T + k * m);
  const c = (m * m - 1) * T * T + 2 * k * m * T + k * k;
  if (c <= 0) return 0;
  return leastPositiveRoot(a, b, c);
}

/** A V cleat with numbers for what lets its rope out again. */
export interface VeeRelease {
  readonly grooveAngle: number;
  readonly ridgeAngle: number;
  readonly wallFriction: number;
  readonly releaseFriction: number;
  readonly press: number;
}

/**
 * Pull that frees a line from a V cleat under load.
 *
 *     F sin χ = g u + (F_0 + g u) · s,   u = T − F cos χ,   1 / g = tan(ω − φ_r), 0 when friction beats the ridges
 *     s = tan(φ − β/2) / tan(φ + β/2), 0 when the walls open by themselves
 *
 * The ridges hold the rope down as long as load is on them, and their friction now helps them; what the walls squeeze sticks when friction beats the half angle.
 *
 * @param load  T [N], 0 or more
 * @param pullAngle  χ above the line behind the cleat [rad], 0.02 to a quarter turn
 * @param grooveAngle  β [rad]
 * @param ridgeAngle  ω [rad]
 * @param wallFriction  μ_w, φ = atan μ_w [-]
 * @param releaseFriction  μ_r of a loaded rope along the ridges, φ_r = atan μ_r [-]
 * @param press  F_0 with which the rope was snapped in [N]
 * @returns least pull [N]; straight up it can be more than any hand has
 * @throws ValueError outside these ranges
 * Source: statics, wedge. Example: veeLiftOut({ load: 100, pullAngle: Math.PI / 2, grooveAngle: 1.2, ridgeAngle: Math.PI / 4, wallFriction: 0.2, releaseFriction: 0.2, press: 60 }) → 150
 */
export function veeLiftOut({
  load,
  pullAngle,
  grooveAngle,
  ridgeAngle,
  wallFriction,
  releaseFriction,
  press,
}: LiftOutInput & VeeRelease): number {
  const [along, across] = directions(pullAngle);
  const slopeAngle = within("grooveAngle", grooveAngle) / 2;
  const wall = { squeeze: 1, slopeAngle, frictionCoefficient: wallFriction };
  const sticks = Math.max(0, wedgeRelease(wall)) / wedgeDrive(wall);
  const ridge = {
    squeeze: 1,
    slopeAngle: within("ridgeAngle", ridgeAngle, 0.02),
    frictionCoefficient: releaseFriction,
  };
  // 1 / g, what the ridges yield: nothing when their friction beats their slope. At the least a line of rope has some give.
  const yields = Math.max(1e-6, -wedgeRelease(ridge));
  const T = within("loadTension", load);
  return ((1 + sticks) * T + yields * within("gripPreload", press) * sticks) / (yields * across + (1 + sticks) * along);
}

/** A line under load in a cleat. */
export interface LiftOutRope<Kind> {
  readonly cleat: Kind;
  readonly cover: Cover;
  /** Load on the line, with its range where it has one [N]. */
  readonly load: number | Band;
  readonly pullAngle: number;
}

/**
 * Pull that frees a line from a cleat, with its range.
 *
 *     F over the ranges of cleat, cover and load
 *
 * @param cleat  cam or V cleat, records [rad, N, -]
 * @param cover  strands, fibre and state of the cover
 * @param load  T [N], 0 or more, with its range where it has one
 * @param pullAngle  χ above the line behind the cleat [rad], 0.02 to a quarter turn
 * @returns least pull with its range [N]
 * @throws ValueError outside these ranges
 * Source: statics; sizes are records of their own. Example: liftOutForce({ cleat: cleats.cam, cover: { strands: 16, fibre: "polyester", wet: false }, load: 300, pullAngle: Math.PI / 2 }).low > 300 → true
 */
export function liftOutForce({ cleat, cover, load, pullAngle }: LiftOutRope<CamCleat | VeeCleat>): Band {
  const range = { load: typeof load === "number" ? { value: load, low: load, high: load } : load };
  const band =
    cleat.kind === "cam"
      ? bandOf({ ...camRanges(cleat, cover), ...range }, (values) => camLiftOut({ ...values, pullAngle }))
      : bandOf({ ...releaseRanges(cleat), ...range }, (values) => veeLiftOut({ ...values, pullAngle }));
  return { ...band, low: Math.max(0, band.low) };
}

/** Ranges of a V cleat that is to let its rope go, by the names of the model. */
function releaseRanges({ grooveAngle, ridgeAngle, wallFriction, releaseFriction, press }: VeeCleat) {
  return { grooveAngle, ridgeAngle, wallFriction, releaseFriction, press };
}

/**
 * Direction in which a line comes out of its cleat with the least pull.
 *
 *     smallest F over χ, in steps of one degree
 *
 * @param cleat  cam or V cleat, records [rad, N, -]
 * @param cover  strands, fibre and state of the cover
 * @param load  T [N], 0 or more
 * @returns pull angle above the line behind the cleat [rad]
 * Source: statics. Example: bestPullAngle({ cleat: cleats.cam, cover: { strands: 16, fibre: "polyester", wet: false }, load: 300 }) < Math.PI / 4 → true
 */
export function bestPullAngle(rope: Omit<LiftOutRope<CamCleat | VeeCleat>, "pullAngle">): number {
  const angles = Array.from({ length: 89 }, (_, index) => ((index + 2) * Math.PI) / 180);
  const pulls = angles.map((pullAngle) => liftOutForce({ ...rope, pullAngle }).value);
  return angles[pulls.indexOf(Math.min(...pulls))]!;
}

function directions(pullAngle: number): readonly [along: number, across: number] {
  const angle = within("pullAngle", pullAngle, 0.02);
  return [Math.cos(angle), Math.sin(angle)];
}

/** Least positive root of a x² + b x + c with c above zero, where one exists. */
function leastPositiveRoot(a: number, b: number, c: number): number {
  if (Math.abs(a) < 1e-12) return -c / b;
  const root = Math.sqrt(Math.max(0, b * b - 4 * a * c));
  // Without cancellation: q carries the sign of b.
  const q = -0.5 * (b + (b < 0 ? -root : root));
  return Math.min(...[q / a, c / q].filter((x) => x > 0));
}
