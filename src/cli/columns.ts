/** Columns side by side, numbers to the right. */
export function aligned(rows: readonly (readonly string[])[], numeric: readonly boolean[]): string {
  const widths = rows.reduce<number[]>(
    (widest, row) => row.map((cell, column) => Math.max(widest[column] ?? 0, cell.length)),
    [],
  );
  return rows
    .map((row) =>
      row
        .map((cell, column) =>
          numeric[column] ? cell.padStart(widths[column] ?? 0) : cell.padEnd(widths[column] ?? 0),
        )
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}

/** Words in rows of at most so many letters. */
export function broken(text: string, most: number): string[] {
  const rows: string[] = [];
  for (const word of text.split(" ")) {
    const last = rows.at(-1);
    if (last === undefined || last.length + 1 + word.length > most) rows.push(word);
    else rows[rows.length - 1] = `${last} ${word}`;
  }
  return rows;
}

/** Widest that running words stand in a terminal, behind what leads them. */
const widest = 96;

/** A point of a list over as many rows as it takes, behind what leads it, such as `- `. */
export function wrapped(text: string, lead: string): string {
  const rows = broken(text, widest);
  return rows.map((row, index) => `${index === 0 ? lead : " ".repeat(lead.length)}${row}`).join("\n");
}
