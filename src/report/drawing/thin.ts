/** A place on a drawing [px]. */
export type Place = readonly [number, number];

/** A place that lies so near to the straight line between its neighbours is left out [px]. */
const unseen = 0.12;

/**
 * The fewest places of a curve that a reader can tell from all of them.
 *
 * @param places  places along a curve without gaps
 * @returns the first, the last, and those between at which the curve bends
 * Example: bends([[0, 0], [1, 1], [2, 2], [3, 0]]) → [[0, 0], [2, 2], [3, 0]]
 */
export function bends(places: readonly Place[]): Place[] {
  const kept: Place[] = [];
  let start = 0;
  places.forEach((place, index) => {
    if (index === 0) kept.push(place);
    else if (!straight(places, start, index + 1)) {
      kept.push(place);
      start = index;
    }
  });
  return kept;
}

/** Whether everything between two places lies on the straight line from the one to the other. */
function straight(places: readonly Place[], from: number, to: number): boolean {
  const [first, last] = [places[from], places[to]];
  if (first === undefined || last === undefined) return false;
  const [x, y] = first;
  const [along, up] = [last[0] - x, last[1] - y];
  const length = Math.hypot(along, up);
  for (let index = from + 1; index < to; index += 1) {
    const [atX, atY] = places[index] ?? first;
    const [right, rise] = [atX - x, atY - y];
    const onward = right * along + rise * up;
    if (length === 0 || onward < 0 || onward > length * length) return false;
    if (Math.abs(right * up - rise * along) / length > unseen) return false;
  }
  return true;
}
