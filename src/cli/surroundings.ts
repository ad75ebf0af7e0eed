import type { ExecutedNotebook } from "../notebook/executed.js";
import type { PackageDigest } from "../notebook/package-digest.js";
import type { Files } from "../report/files.js";
import type { Trust } from "./trusted-folders.js";
import type { LiveEffects } from "./watch/live.js";

/** A disk on which folders can be listed as well. */
export interface Disk extends Files {
  /** Names in a folder in alphabetical order, or nothing when there is no such folder. */
  list(folder: string): Promise<readonly string[] | undefined>;
}

/** All that the verbs may touch outside themselves. */
export interface Surroundings {
  readonly currentFolder: string;
  /** Folder that holds the package's own `package.json` and `notebooks/`. */
  readonly packageFolder: string;
  readonly disk: Disk;
  /** Writes to standard output. */
  readonly out: (text: string) => void;
  /** Writes to standard error. */
  readonly err: (text: string) => void;
  /** Milliseconds from any start. */
  readonly now: () => number;
  /** Runs a notebook in a fresh kernel, with the files that it is about, and with variables besides its environment. */
  readonly run: (
    path: string,
    inputs?: readonly string[],
    onFilesRead?: (paths: readonly string[]) => void,
    variables?: Readonly<Record<string, string>>,
  ) => Promise<ExecutedNotebook>;
  /** Digests of the compiled library; nothing where they cannot be told: then no run is remembered. */
  readonly library: () => Promise<PackageDigest | undefined>;
  /** Takes a folder for this process alone; answers with what gives it free. */
  readonly lock: (folder: string) => Promise<() => Promise<void>>;
  /** Takes away what a build that was killed left half written in a folder. */
  readonly sweep: (folder: string) => Promise<void>;
  /** Takes a folder away with all that is in it. */
  readonly remove: (folder: string) => Promise<void>;
  /** Gives a folder another name; an empty one of that name gives way. */
  readonly rename: (from: string, to: string) => Promise<void>;
  /** Source of the search library. */
  readonly minisearch: () => Promise<string>;
  /** Source of the drawing library. */
  readonly plotly: () => Promise<string>;
  /** Source of what computes a model in the browser. */
  readonly panel: (model: string) => Promise<string>;
  /** Prints a page to PDF, which is replaced whole; answers with the number of printed pages. */
  readonly print: (page: string, pdf: string) => Promise<number>;
  /** Opens a file as the user's desktop does. */
  readonly open: (path: string) => Promise<void>;
  /** Makes the kernel known to Jupyter, to the user's own or to that of a prefix; answers with the folder it stands in. */
  readonly installKernel: (prefix: string | undefined) => Promise<string>;
  /** Makes a folder known under a second path, with the folders above that path. */
  readonly link: (folder: string, path: string) => Promise<void>;
  /** Folders whose notebooks may run. */
  readonly trust: Trust;
  readonly live: LiveEffects;
  readonly signal: AbortSignal;
}

/** What the shell is told. */
export const exitCodes = { done: 0, failed: 1, wrongUse: 2 } as const;

/** One of the exit codes. */
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];
