import { within } from "../quantity/guard.js";

/** Two tensions that meet at a turn. */
export interface BlockLoadInput {
  readonly loadTension: number;
  readonly handTension: number;
  readonly wrapAngle: number;
}

/**
 * Load on the block at a turn: the vector sum of the two tensions.
 *
 *     F = sqrt(T_1² + T_2² − 2 T_1 T_2 cos θ)
 *
 * @param loadTension  T_1 [N], 0 or more
 * @param handTension  T_2 [N], 0 or more
 * @param wrapAngle  θ [rad], 0 to 63: 0 the line goes straight on, π it comes back
 * @returns block load [N]
 * Source: statics, law of cosines. Example: blockLoad({ loadTension: 100, handTension: 100, wrapAngle: Math.PI / 2 }) → 141.42
 */
export function blockLoad({ loadTension, handTension, wrapAngle }: BlockLoadInput): number {
  const a = within("tension", loadTension);
  const b = within("tension", handTension);
  const half = Math.sin(within("wrapAngle", wrapAngle) / 2);
  return Math.hypot(a - b, 2 * Math.sqrt(a * b) * half);
}
