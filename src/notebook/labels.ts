/** A label that wants to stand at a height and takes room there, both in the units of the axis. */
export interface WantedLabel {
  readonly at: number;
  readonly room: number;
}

/**
 * Heights at which labels stand near where they want to stand, without covering each other.
 *
 * @param labels  wanted heights and room [units of the axis]
 * @param low  lower end of the axis
 * @param high  upper end of the axis
 * @returns heights in the order of the labels; when the room is short all are squeezed alike
 * Example: spreadLabels([{ at: 5, room: 2 }, { at: 5, room: 2 }], 0, 10) → [4, 6]
 */
export function spreadLabels(labels: readonly WantedLabel[], low: number, high: number): number[] {
  const needed = labels.reduce((sum, { room }) => sum + room, 0);
  const squeeze = needed > high - low ? (high - low) / needed : 1;
  const sorted = labels
    .map((label, index) => ({ index, at: label.at, half: (label.room * squeeze) / 2 }))
    .sort((one, other) => one.at - other.at || one.index - other.index);
  // Labels that touch form a stack, which stands where its labels want to stand on average.
  const stacks: { members: typeof sorted; height: number; centre: number }[] = [];
  for (const label of sorted) {
    let stack = { members: [label], height: 2 * label.half, centre: clamp(label.at, label.half, low, high) };
    for (let below = stacks.at(-1); below !== undefined && overlap(below, stack); below = stacks.at(-1)) {
      stacks.pop();
      const members = [...below.members, ...stack.members];
      const height = below.height + stack.height;
      const mean = members.reduce((sum, { at }) => sum + at, 0) / members.length;
      stack = { members, height, centre: clamp(mean, height / 2, low, high) };
    }
    stacks.push(stack);
  }
  const heights = new Array<number>(labels.length).fill(low);
  for (const { members, height, centre } of stacks) {
    let edge = centre - height / 2;
    for (const { index, half } of members) {
      heights[index] = edge + half;
      edge += 2 * half;
    }
  }
  return heights;
}

function overlap(below: { height: number; centre: number }, above: { height: number; centre: number }): boolean {
  return below.centre + below.height / 2 > above.centre - above.height / 2;
}

function clamp(centre: number, half: number, low: number, high: number): number {
  return Math.max(low + half, Math.min(high - half, centre));
}

/** Breaks a label into lines of about so many characters, at spaces and after hyphens. */
export function wrapLabel(label: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of label.trim().split(/\s+/)) {
    let between = " ";
    for (const part of word.split(/(?<=\w-)(?=\w)/)) {
      const last = lines.at(-1);
      const longer = `${last ?? ""}${between}${part}`;
      if (last !== undefined && longer.length <= width) lines[lines.length - 1] = longer;
      else lines.push(part);
      between = "";
    }
  }
  return lines;
}
