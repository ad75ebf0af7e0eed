/** Numbers from 0 to 1 that are the same for the same seed: a linear congruence of 32 bits. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A text after one to three accidents: parts cut off, left out, doubled, swapped for signs that mean something, or of other lines. */
export function damaged(text: string, random: () => number): string {
  const signs = [
    "{",
    "}",
    "[",
    "]",
    '"',
    ":",
    ",",
    "\\",
    "\u0000",
    "\n",
    "é",
    "-",
    "1e999",
    "null",
    "&a",
    "*a",
    "!",
    "%",
    "\t",
  ];
  const place = (length: number) => Math.floor(random() * (length + 1));
  let now = text;
  for (let left = 1 + Math.floor(random() * 3); left > 0; left -= 1) {
    const from = place(now.length);
    const near = Math.min(now.length, from + 1 + place(11));
    const accidents = [
      () => now.slice(0, random() < 0.2 ? from : now.length - Math.floor(random() * 40)),
      () => now.slice(0, from) + now.slice(near),
      () => now.slice(0, near) + now.slice(from),
      () => now.slice(0, from) + signs[place(signs.length - 1)] + now.slice(near),
      () => now.slice(0, from) + signs[place(signs.length - 1)] + now.slice(from),
      () => now.slice(0, from) + now.slice(near, near + 9) + now.slice(from, near) + now.slice(near + 9),
    ];
    now = (accidents[place(accidents.length - 1)] as () => string)();
  }
  return now;
}
