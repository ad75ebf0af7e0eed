/** Turn of the line at a station [rad], 0 to π; to which side is open. */
export type OpenTurn = number;

/** Which way a line runs before each station and after the last, and to which side each station turns it. */
export interface Headings {
  /** One more than stations [rad]; 0 is from the load to the hand. */
  readonly headings: readonly number[];
  /** 1 or −1 for each station. */
  readonly sides: readonly number[];
}

interface Trial extends Headings {
  readonly cost: number;
  /** How far the line has run to one side, in legs. */
  readonly aside: number;
}

const quarter = Math.PI / 2;
const step = Math.PI / 36;
const kept = 200;

/** Aside costs little, back towards the load costs much. */
function legCost(heading: number, aside: number): number {
  const share = Math.abs(heading) / quarter;
  return share ** 2 + 0.25 * aside ** 2 + (share > 1 + 1e-9 ? 4 + 30 * (share - 1) : 0);
}

/**
 * Finds how a line runs from the load to the hand while every station turns it by its own angle.
 *
 * @param turns  angle at each station [rad], 0 to π
 * @param first  side to which the first leg rather runs, 1 or −1, where both are as good
 * @returns headings and sides with which the line never runs back, as far as the angles allow it
 */
export function headingsOf(turns: readonly OpenTurn[], first: number): Headings {
  const starts = Array.from({ length: 37 }, (_, index) => index * step - quarter);
  let trials = starts.map((heading) => begun(heading, first));
  turns.forEach((turn, index) => {
    const weight = index === turns.length - 1 ? 2.5 : 1;
    trials = trials
      .flatMap((trial) => (turn === 0 ? [1] : [1, -1]).map((side) => further(trial, turn, side, weight)))
      .sort((one, other) => one.cost - other.cost)
      .slice(0, kept);
  });
  const [best] = trials.sort((one, other) => one.cost - other.cost);
  return { headings: straightened(best!.headings), sides: best!.sides };
}

/** All headings turned together, so that none runs back where that can be had. */
function straightened(headings: readonly number[]): number[] {
  const [least, most] = [Math.min(...headings), Math.max(...headings)];
  const shift =
    most - least > 2 * quarter ? -(most + least) / 2 : Math.max(0, -quarter - least) - Math.max(0, most - quarter);
  return headings.map((heading) => heading + shift);
}

function begun(heading: number, first: number): Trial {
  const aside = Math.sin(heading);
  return {
    headings: [heading],
    sides: [],
    aside,
    cost: legCost(heading, 0) - 1e-3 * first * aside,
  };
}

function further({ headings, sides, aside, cost }: Trial, turn: number, side: number, weight: number): Trial {
  const heading = headings.at(-1)! + side * turn;
  const after = aside + Math.sin(heading);
  return {
    headings: [...headings, heading],
    sides: [...sides, side],
    aside: after,
    cost: cost + weight * legCost(heading, after),
  };
}
