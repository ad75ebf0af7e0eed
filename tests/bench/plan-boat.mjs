/** Random numbers from a seed: the same boat on every machine. */
export function randomFrom(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A boat of `lines` lines with `options` ways to make each: lighter, easier and cheaper pull against each other. */
export function inventedBoat({ seed, lines, options, limits = [] }) {
  const random = randomFrom(seed);
  const between = (low, high) => low + (high - low) * random();
  return {
    limits,
    lines: Array.from({ length: lines }, (_, i) => {
      const size = between(0.3, 3);
      return { name: `line ${i + 1}`, options: Array.from({ length: options }, (_, j) => invented(size, j, between)) };
    }),
  };
}

function invented(size, index, between) {
  const effort = between(0.2, 1);
  const thrift = between(0.3, 1);
  const dry = (size * 0.1 * between(0.8, 1.3)) / (effort * thrift) ** 0.6;
  const splices = Math.floor(between(0, 3));
  const reach = between(0, 10);
  return {
    id: `option ${index + 1}`,
    words: `option ${index + 1}`,
    mass: { dry, wet: dry * between(1, 1.4), aloft: dry * between(0, 1) },
    cost: Math.round((3000 * size * between(0.8, 1.2)) / thrift),
    handForce: 80 * size * effort * between(0.9, 1.1),
    measures: { reach },
    measuresRobust: { reach: reach * 1.2 },
    splices,
    minutes: 15 * splices,
    pieces: [{ rope: `rope ${index % 4}`, length: 5 * size }],
    parts: [{ part: `block ${index % 5}`, count: 2 }],
  };
}
