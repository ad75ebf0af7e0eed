import type { CellOutput, CodeCell, ExecutedNotebook, ProseCell } from "./executed.js";
import type { SourceNotebook } from "./read.js";
import { digestOf, type RunCauses } from "./run-causes.js";

/** A complete run as it is kept: what decided it, and what each code cell put out. */
export interface RememberedRun {
  readonly causes: RunCauses;
  readonly outputs: readonly (readonly CellOutput[])[];
}

/** A run as text of a file that tells by itself whether it is whole. */
export function rememberedText(run: RememberedRun): string {
  const content = JSON.stringify(run);
  return `${digestOf(content)}\n${content}\n`;
}

/**
 * A run read back from its file.
 *
 * @param text  of the file
 * @returns the run, or nothing when the file is damaged or of another kind
 */
export function readRemembered(text: string): RememberedRun | undefined {
  const [digest, content] = text.split("\n", 2);
  if (content === undefined || digestOf(content) !== digest) return undefined;
  return JSON.parse(content) as RememberedRun;
}

/** What a run is remembered by. */
export function rememberedOf({ cells }: ExecutedNotebook, causes: RunCauses): RememberedRun {
  return { causes, outputs: cells.flatMap((cell) => (cell.type === "code" ? [cell.outputs] : [])) };
}

/**
 * A notebook with the outputs of an earlier run under its code cells; its prose is as it stands now.
 *
 * @param name  file name without its ending
 * @param source  the notebook as it stands
 * @param outputs  of its code cells, in order
 * @returns the notebook as if it had just run
 */
export function withOutputs(
  name: string,
  { cells, ...place }: SourceNotebook,
  outputs: RememberedRun["outputs"],
): ExecutedNotebook {
  let ran = 0;
  const executed = cells.flatMap(({ type, source, tags }, index): (ProseCell | CodeCell)[] => {
    const number = index + 1;
    const tagged = tags && { tags };
    if (type === "markdown") return [{ type, number, source, ...tagged }];
    if (type !== "code" || source.trim() === "") return [];
    const own = outputs[ran++] ?? [];
    return [{ type, number, source, ...tagged, outputs: own }];
  });
  return { name, ...place, cells: executed };
}
