import { join } from "node:path";
import type { Files } from "../report/files.js";

/** Folders of notebooks that may run on this machine. */
export interface Trust {
  /** Whether the notebooks of a folder may run. */
  readonly holds: (notebooks: string) => Promise<boolean>;
  /** Notes that they may; answers with the file in which it is noted. */
  readonly add: (notebooks: string) => Promise<string>;
}

/** Where a list of trusted folders stands, and how folders are told apart. */
export interface TrustList {
  /** File that holds the list. */
  readonly file: string;
  /** Folders that need no place in it. */
  readonly always: readonly string[];
  readonly disk: Files;
  /** The path of a folder with all links in it followed; fails where no such folder is. */
  readonly realPath: (folder: string) => Promise<string>;
}

/** What the place of a person's settings depends on. */
export interface UserPlace {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: NodeJS.Platform;
  readonly homeFolder: string;
}

/**
 * File in which a person's trusted folders are noted.
 *
 * @param user  environment, platform, home folder
 * @returns path
 * Example: trustFile({ env: {}, platform: "linux", homeFolder: "/home/a" }) → "/home/a/.config/haulbook/trusted.json"
 */
export function trustFile({ env, platform, homeFolder }: UserPlace): string {
  const named = platform === "win32" ? env.APPDATA : env.XDG_CONFIG_HOME;
  const usual = platform === "win32" ? join(homeFolder, "AppData", "Roaming") : join(homeFolder, ".config");
  // A path that is not whole would mean another folder wherever the program is started.
  const folder = named && (named.startsWith("/") || platform === "win32") ? named : usual;
  return join(folder, "haulbook", "trusted.json");
}

/** The folders of a list; a list that is not ours to read is never written over. */
function foldersOf(text: string | undefined, file: string): readonly string[] {
  if (text === undefined) return [];
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch {
    content = undefined;
  }
  const folders = (content as { readonly folders?: unknown } | null | undefined)?.folders;
  if (Array.isArray(folders) && folders.every((folder) => typeof folder === "string")) return folders;
  throw new Error(`${file} is no list of trusted folders. Mend it, or delete it and say again what you trust.`);
}

/**
 * Trust as it is noted in a file: by the true path of each folder of notebooks, so that a link cannot lend it.
 *
 * @param list  where it stands
 * @returns what is trusted; additions replace the file whole
 * Example: await trustedFolders(list).holds("/home/a/clinic/notebooks")
 */
export function trustedFolders({ file, always, disk, realPath }: TrustList): Trust {
  const noted = async () => foldersOf(await disk.read(file), file);
  return {
    holds: async (notebooks) => {
      const folder = await realPath(notebooks);
      const own = await Promise.all(always.map((one) => realPath(one).catch(() => undefined)));
      return own.includes(folder) || (await noted()).includes(folder);
    },
    add: async (notebooks) => {
      const folders = new Set([...(await noted()), await realPath(notebooks)]);
      await disk.replace(file, `${JSON.stringify({ folders: [...folders].sort() }, undefined, 2)}\n`);
      return file;
    },
  };
}
