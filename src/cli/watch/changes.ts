import { dirname, sep } from "node:path";

/** Paths that changed, gathered until somebody asks. */
export class Changes {
  readonly #paths = new Set<string>();
  #wake: () => void = () => {};

  add(path: string): void {
    this.#paths.add(path);
    this.#wake();
  }

  /** Waits for a change, or for the end. */
  async some(signal: AbortSignal): Promise<void> {
    if (this.#paths.size > 0 || signal.aborted) return;
    await new Promise<void>((resolve) => {
      this.#wake = () => {
        signal.removeEventListener("abort", this.#wake);
        this.#wake = () => {};
        resolve();
      };
      signal.addEventListener("abort", this.#wake);
    });
  }

  /** All that changed since it was last asked. */
  take(): readonly string[] {
    const paths = [...this.#paths];
    this.#paths.clear();
    return paths;
  }
}

/** Whether a change concerns something that was read: the file itself, a folder above it, or a name in a folder that was listed. */
function concerns(changed: string, read: string): boolean {
  return changed === read || dirname(changed) === read || read.startsWith(`${changed}${sep}`);
}

/**
 * Names of those that read what changed.
 *
 * @param changed  whole paths
 * @param readBy  whole paths of what each name depends on
 * @returns names, in the order of the map
 * Example: touchedBy(["/a/b.csv"], new Map([["page", new Set(["/a/b.csv"])]])) → ["page"]
 */
export function touchedBy(
  changed: readonly string[],
  readBy: ReadonlyMap<string, ReadonlySet<string>>,
): readonly string[] {
  return [...readBy]
    .filter(([, read]) => changed.some((path) => [...read].some((one) => concerns(path, one))))
    .map(([name]) => name);
}
