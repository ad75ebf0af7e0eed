import type { Site } from "./answer.js";

/** A server that runs. */
export interface Served {
  /** Address of its first page. */
  readonly address: string;
  /** Tells every open page what the watch knows now. */
  readonly tell: (state: string) => void;
  readonly close: () => Promise<void>;
}

/** What a server needs. */
export interface Serve {
  /** Port to listen on; 0 for any that is free. */
  readonly port: number;
  /** What it may show, but for the names under which it answers. */
  readonly site: Omit<Site, "hosts">;
  /** What a page is told that has just opened. */
  readonly state: () => string;
}

/** Folders that are looked after. */
export interface WatchedFolders {
  /** Replaces the folders; what is not there yet is waited for. */
  readonly set: (folders: readonly string[]) => void;
  readonly close: () => void;
}

/** What a watch touches outside itself, beside what a build does. */
export interface LiveEffects {
  readonly serve: (request: Serve) => Promise<Served>;
  /** Begins to look after folders; tells the whole path of whatever changes in them. */
  readonly folders: (onChange: (path: string) => void) => WatchedFolders;
  /** Waits until a burst of changes is over. */
  readonly settle: () => Promise<void>;
  /** Tells the pages of this watch from those of another. */
  readonly session: string;
  /** Where a folder really stands, and what a path in it leads to. */
  readonly find: Site["find"];
}
