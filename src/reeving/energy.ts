import type { LineState } from "./line.js";

/** Work for each metre at the hand end [N, that is J/m]. */
export interface EnergyBalance {
  readonly workIn: number;
  readonly workOut: number;
  readonly lost: number;
  /** Work in less work out less losses: zero but for rounding. */
  readonly imbalance: number;
}

/**
 * Work in, work out and losses of a moving line, for each metre at the hand end.
 *
 *     hauling T_hand = W / VR + Σ losses,   easing W / VR = T_hand + Σ losses
 *
 * @param state  a line under load that moves [N]
 * @param velocityRatio  VR of the line [-], above 0
 * @returns work in, work out, lost, and what does not add up [J/m]
 * Source: statics, virtual work.
 */
export function energyBalance({
  state,
  velocityRatio,
}: {
  readonly state: LineState;
  readonly velocityRatio: number;
}): EnergyBalance {
  const atLoad = state.moves ? state.load / velocityRatio : 0;
  const atHand = state.moves ? state.handForce : 0;
  const lost = state.stations.reduce((sum, station) => sum + station.loss, 0);
  const [workIn, workOut] = state.direction === "hauling" ? [atHand, atLoad] : [atLoad, atHand];
  return { workIn, workOut, lost, imbalance: workIn - workOut - lost };
}
