import { compileBatch } from "./batch.js";
import type { Line } from "./line.js";

/** Hand forces of one line over many loads. */
export interface Sweep {
  /** [N] */
  readonly hauling: number[];
  /** [N] */
  readonly easing: number[];
}

/**
 * Hand forces of a line at many loads, ready for a chart.
 *
 * @param line  rope and stations [m, rad, N]
 * @param loads  [N], each 0 or more
 * @returns hauling and easing force at each load [N]
 * @throws ReevingError or ValueError for a line or a load that cannot exist
 * Source: statics. Example: sweepLoads({ rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }, [100]).hauling[0] → 110
 */
export function sweepLoads(line: Line, loads: readonly number[]): Sweep {
  const hauling = new Float64Array(loads.length);
  const easing = new Float64Array(loads.length);
  compileBatch(line).solve({ load: Float64Array.from(loads) }, { hauling, easing });
  return { hauling: [...hauling], easing: [...easing] };
}
