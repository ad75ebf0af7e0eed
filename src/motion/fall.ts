import { standardGravity } from "../quantity/constants.js";
import { within } from "../quantity/guard.js";

/**
 * Work that lifts a load, friction left out.
 *
 *     E = m · g · H
 *
 * @param sailMass  m [kg], above 0
 * @param lift  H [m], above 0, up to 1000
 * @returns work [J]
 * @throws ValueError outside these ranges
 * Valid for a load that hangs on its halyard all the way; one that leaves a bag takes less.
 * Source: statics, work. Example: hoistWork({ sailMass: 2, lift: 7 }) → 137.29
 */
export function hoistWork({ sailMass, lift }: { readonly sailMass: number; readonly lift: number }): number {
  return within("sailMass", sailMass) * standardGravity * within("lift", lift);
}

/**
 * Speed at which a falling load no longer gains, because the air carries its weight.
 *
 *     v = √(m · g / b)
 *
 * @param sailMass  m [kg], above 0
 * @param fallDrag  b, drag over the square of the speed [N s²/m²], above 0
 * @returns speed [m/s]
 * @throws ValueError outside these ranges
 * Valid for a load that falls free but for the air.
 * Source: quadratic-drag-exam, terminal speed. Example: terminalSpeed({ sailMass: 80, fallDrag: 0.2 }) → 62.63
 */
export function terminalSpeed({
  sailMass,
  fallDrag,
}: {
  readonly sailMass: number;
  readonly fallDrag: number;
}): number {
  return Math.sqrt((within("sailMass", sailMass) * standardGravity) / within("fallDrag", fallDrag, 1e-9));
}
