import { ReevingError, ValueError } from "../quantity/errors.js";
import { type Line, prepareLine } from "../reeving/line.js";
import { withFactors } from "./line-factors.js";

/** What a line that takes a ratio k to haul leaves while it is eased: T_ease = a · T − b · c. */
export interface EaseTerms {
  /** a [-] */
  readonly ratio: number;
  /** b [-] */
  readonly drag: number;
  /** Slopes of both over ln k [-]. */
  readonly ratioSlope: number;
  readonly dragSlope: number;
}

/** From the logarithm of the hauling ratio to what is left while easing. */
export type EaseLaw = (logRatio: number) => EaseTerms;

/** The law of a line whose tension passes one turn after the other: what is lost one way is lost the other. */
export const inverseEase: EaseLaw = (logRatio) => {
  const back = Math.exp(-logRatio);
  return { ratio: back, drag: back, ratioSlope: -back, dragSlope: -back };
};

/** A line brought to a hauling ratio. */
export interface RoveTerms extends EaseTerms {
  /** Factor on all losses of the line [-]. */
  readonly factor: number;
  /** Ratio that no factor reaches [-]: 1 where the factor reached it all. */
  readonly rest: number;
}

/** Share of the line's own drags at which its law is taken: small enough that nothing hangs slack. */
const dragShare = 1e-3;

/** Step over which slopes are taken, and nearness of ln k. */
const step = 1e-6;
const nearness = 1e-13;
const mostSteps = 60;
const mostFactor = 30;

/** The law of a line at one factor on its losses. */
interface At {
  readonly factor: number;
  readonly logRatio: number;
  readonly ratio: number;
  readonly drag: number;
}

/**
 * Both laws of a line, hauling and easing, from the balance that predicts them, for a hauling ratio of the whole line.
 *
 *     one factor f on all losses with k(f) = k;   T_ease = a(f) · T − b(f) · c
 *
 * What no factor reaches passes the hand's end as one turn more. Below the least ratio of the line the inverse law goes on.
 *
 * @param line  rope and stations [m, rad, N], its losses in the right proportion to each other
 * @param load  about which friction is weighed where it depends on load [N], above 0
 * @returns function from ln k [-] to the terms [-] and the factor [-]
 * @throws ReevingError for a line that is put together wrong
 * Source: statics. Example: roveLaw({ rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, 100)(Math.log(1.2)).factor → 2
 */
export function roveLaw(line: Line, load: number): (logRatio: number) => RoveTerms {
  const least = lawAt(line, load, 0);
  let last = lawAt(line, load, 1);
  let known: { readonly logRatio: number; readonly terms: RoveTerms } | undefined;
  const termsAt = (logRatio: number): RoveTerms => {
    const found = reaching(line, load, { least, from: last, logRatio });
    last = found;
    const rest = Math.exp(logRatio - found.logRatio);
    const shared = { factor: found.factor, rest };
    const [ratio, drag] = [found.ratio / rest, found.drag / rest];
    if (Math.abs(rest - 1) > 1e-9) return { ...shared, ratio, drag, ratioSlope: -ratio, dragSlope: -drag };
    const beside = lawAt(line, load, found.factor + step);
    const over = beside.logRatio - found.logRatio;
    return {
      ...shared,
      ratio,
      drag,
      ratioSlope: (beside.ratio - found.ratio) / over,
      dragSlope: (beside.drag - found.drag) / over,
    };
  };
  return (logRatio) => {
    if (known?.logRatio !== logRatio) known = { logRatio, terms: termsAt(logRatio) };
    return known.terms;
  };
}

/** Newton's rule on the factor, never below none and never beyond what coefficients can be. */
function reaching(
  line: Line,
  load: number,
  { least, from, logRatio }: { readonly least: At; readonly from: At; readonly logRatio: number },
): At {
  if (logRatio <= least.logRatio) return least;
  let at = from;
  for (let turn = 0; turn < mostSteps; turn++) {
    const gap = logRatio - at.logRatio;
    if (Math.abs(gap) < nearness) return at;
    const slope = (lawAt(line, load, at.factor + step).logRatio - at.logRatio) / step;
    if (!(slope > 0)) return at;
    const next = nearer(line, load, at, Math.min(mostFactor, Math.max(0, at.factor + gap / slope)));
    if (Math.abs(next.factor - at.factor) < 1e-15) return next;
    at = next;
  }
  return at;
}

/** The law at the wanted factor, or on half the way to it as often as a model refuses its coefficients. */
function nearer(line: Line, load: number, { factor }: At, wanted: number): At {
  for (let share = 1; share > 1e-3; share /= 2) {
    try {
      return lawAt(line, load, factor + share * (wanted - factor));
    } catch (error) {
      if (!(error instanceof ValueError || error instanceof ReevingError)) throw error;
    }
  }
  return lawAt(line, load, factor);
}

function lawAt(line: Line, load: number, factor: number): At {
  const prepared = prepareLine(withFactors(line, factor, dragShare));
  const tension = load / prepared.velocityRatio;
  const straight = (way: "hauling" | "easing") => {
    const [once, twice] = [prepared.handForce(load, way), prepared.handForce(2 * load, way)];
    return { ratio: (twice - once) / tension, drag: Math.abs(2 * once - twice) };
  };
  const [haul, ease] = [straight("hauling"), straight("easing")];
  return {
    factor,
    logRatio: Math.log(haul.ratio),
    ratio: ease.ratio,
    // Where nothing drags, what is measured is taken to drag at the hand.
    drag: haul.drag > 1e-12 * tension ? ease.drag / haul.drag : 1,
  };
}
