import type { Working } from "../working/working.js";
import { show, workings } from "./display.js";

/** Numbers of a page that are marked as they are written, and whose workings are shown afterwards. */
export interface MarkedNumbers {
  /** The text, marked with the name of its working; as it is where there is none. */
  readonly mark: (name: string, text: string, working: Working | undefined) => string;
  /** Shows the workings of all that was marked since the last time. */
  readonly showMarked: () => void;
}

/**
 * A way to mark numbers while a page is written: each with its working, which a cell shows when it is done.
 *
 * @param put  what shows the workings; the running cell when absent
 * @returns a function that marks, and one that shows
 */
export function markedNumbers(put: typeof show = show): MarkedNumbers {
  let waiting: Record<string, Working> = {};
  return {
    mark: (name, text, working) => {
      if (working === undefined) return text;
      waiting[name] = working;
      return `[[${name}: ${text}]]`;
    },
    showMarked: () => {
      if (Object.keys(waiting).length > 0) put(workings(waiting));
      waiting = {};
    },
  };
}
