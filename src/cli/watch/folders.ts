import { type FSWatcher, statSync, watch } from "node:fs";
import { dirname, join } from "node:path";
import type { WatchedFolders } from "./live.js";

/** A folder under watch, and which one it was: another may stand at its path later. */
interface Watched {
  readonly watcher: FSWatcher;
  readonly inode: number;
}

function inodeOf(folder: string): number | undefined {
  const found = statSync(folder, { throwIfNoEntry: false });
  return found?.isDirectory() === true ? found.ino : undefined;
}

/** The folder itself, or what stands nearest above it. */
function nearest(folder: string): string {
  let at = folder;
  while (inodeOf(at) === undefined && dirname(at) !== at) at = dirname(at);
  return at;
}

/**
 * Looks after folders, not after what lies in folders below them. Folders rather than files: most editors put a new file
 * in the place of the old one.
 *
 * @param onChange  told the whole path of what changed
 * @returns a way to say which folders, and one to end
 * Example: const watched = watchFolders((path) => changed.add(path));
 */
export function watchFolders(onChange: (path: string) => void): WatchedFolders {
  const all = new Map<string, Watched>();
  let wanted: readonly string[] = [];
  const drop = (folder: string) => {
    all.get(folder)?.watcher.close();
    all.delete(folder);
  };
  const begin = (folder: string, inode: number) => {
    const watcher = watch(folder, (_event, name) => {
      refresh();
      onChange(name === null ? folder : join(folder, name));
    });
    watcher.on("error", () => {
      drop(folder);
      refresh();
      onChange(folder);
    });
    all.set(folder, { watcher, inode });
  };
  function refresh(): void {
    const present = new Set(wanted.map(nearest));
    for (const folder of [...all.keys()]) {
      if (!present.has(folder) || all.get(folder)?.inode !== inodeOf(folder)) drop(folder);
    }
    for (const folder of present) {
      const inode = inodeOf(folder);
      if (inode !== undefined && !all.has(folder)) begin(folder, inode);
    }
  }
  return {
    set: (folders) => {
      wanted = [...folders];
      refresh();
    },
    close: () => {
      wanted = [];
      for (const folder of [...all.keys()]) drop(folder);
    },
  };
}
