import type { Disk } from "../../src/cli/surroundings.js";

/** A disk in memory; `refuse` makes writing to matching paths fail. */
export function memoryDisk(refuse?: RegExp): Disk & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>();
  return {
    texts,
    read: async (path) => texts.get(path),
    replace: async (path, text) => {
      if (refuse?.test(path)) throw new Error(`no space for ${path}`);
      texts.set(path, text);
    },
    list: async (folder) => {
      const names = [...texts.keys()]
        .filter((path) => path.startsWith(`${folder}/`))
        .map((path) => path.slice(folder.length + 1));
      return names.length === 0 ? undefined : names.filter((name) => !name.includes("/")).sort();
    },
  };
}
