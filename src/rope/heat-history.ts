import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";

/** Steps of equal length; every list has one entry for each step. */
export interface HistoryInput {
  /** Warming of the surface after 1, 2, 3 … steps of a unit of steady flux into the body [m² K/W]. */
  readonly response: readonly number[];
  /** Heat made at the contact during each step [W/m²]. */
  readonly flux: readonly number[];
  /** How well the rope carries heat away during each step [W/(m² K)]; 0 while they are apart or at rest. */
  readonly heatTransfer: readonly number[];
  /** Temperature of the rope that runs on, less that of the body before [K]. */
  readonly ropeExcess: number;
}

/** What happens to the body that stays. */
export interface HeatHistory {
  /** Heat into the body during each step [W/m²]; negative where it gives heat back to the rope. */
  readonly intoBody: readonly number[];
  /** Warming of its surface at the end of each step [K]. */
  readonly surface: readonly number[];
}

/**
 * Shares out the heat of a rubbing contact between the body that stays and the rope that runs past.
 *
 *     q_made = q_body + h · (ΔT_surface − ΔT_rope),   ΔT_surface(t_n) = Σ q_j · [f(t_n − t_j−1) − f(t_n − t_j)]
 *
 * The body takes heat for as long as the rope runs, so its share falls while it warms up; each bit of rope comes cold.
 *
 * @param input  response of the body [m² K/W], heat made [W/m²], heat transfer [W/(m² K)], rope's excess [K]
 * @returns heat into the body [W/m²] and warming of its surface [K], for each step
 * @throws ValueError when the lists differ in length or hold impossible numbers
 * Valid for properties that do not change with temperature: results add up.
 * Source: carslaw-jaeger, superposition. Example: heatHistory({ response: [1e-3], flux: [1000], heatTransfer: [1000], ropeExcess: 0 }).surface[0] → 0.5
 */
export function heatHistory({ response, flux, heatTransfer, ropeExcess }: HistoryInput): HeatHistory {
  const steps = response.length;
  if (steps === 0 || flux.length !== steps || heatTransfer.length !== steps) {
    throw new ValueError({
      quantity: "steps of a heat history",
      value: `${steps} responses, ${flux.length} fluxes, ${heatTransfer.length} heat transfers`,
      allowed: "lists of one length, at least one step",
      advice: "Give one entry for each step.",
    });
  }
  const excess = within("temperatureDifference", ropeExcess);
  const intoBody: number[] = [];
  const surface: number[] = [];
  for (let n = 0; n < steps; n += 1) {
    const h = within("heatTransfer", heatTransfer[n]!);
    const before = warming(intoBody, response, n);
    const into = (within("heatFlux", flux[n]!) - h * (before - excess)) / (1 + h * response[0]!);
    intoBody.push(into);
    surface.push(before + into * response[0]!);
  }
  return { intoBody, surface };
}

/**
 * Warming of another place of the body, or at later times, from the heat that went into it.
 *
 *     ΔT(n) = Σ q_j · [f(n − j + 1) − f(n − j)]
 *
 * @param intoBody  heat into the body during each step, nothing after the last [W/m²]
 * @param response  warming of that place after so many whole steps, 1 or more, of a unit of steady flux [m² K/W]; asked for few of them
 * @param instants  counts of steps at whose end it is wanted [-], 1 or more; each step when absent
 * @returns warming at these instants [K]
 * @throws ValueError for an instant that is no whole count of steps
 * Source: carslaw-jaeger, superposition. Example: warmingElsewhere([1000, 0], (steps) => [0.001, 0.003][steps - 1])[1] → 2
 */
export function warmingElsewhere(
  intoBody: readonly number[],
  response: (steps: number) => number,
  instants: readonly number[] = intoBody.map((_, index) => index + 1),
): number[] {
  return instants.map((instant) => {
    if (!(Number.isSafeInteger(instant) && instant >= 1)) {
      throw new ValueError({
        quantity: "instant of a heat history",
        value: String(instant),
        allowed: "a whole count of steps, 1 or more",
        advice: "Count the steps to its end.",
      });
    }
    let sum = 0;
    let later = response(instant);
    for (let j = 0; j < Math.min(instant, intoBody.length); j += 1) {
      const earlier = instant - j - 1 === 0 ? 0 : response(instant - j - 1);
      sum += intoBody[j]! * (later - earlier);
      later = earlier;
    }
    return sum;
  });
}

/** Warming at the end of step n from the steps before it. */
function warming(intoBody: readonly number[], response: readonly number[], n: number): number {
  let sum = 0;
  for (let j = 0; j < n; j += 1) sum += intoBody[j]! * (response[n - j]! - response[n - j - 1]!);
  return sum;
}
