import { join, resolve } from "node:path";
import { shownPath } from "./folders.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook new` was asked. */
export interface NewOptions {
  readonly folder: string;
}

/** A notebook file, as far as its metadata go. */
interface Notebook {
  readonly metadata: { readonly haulbook?: object };
}

const ourBoat = "boats/our-boat.yaml";
const planNotebook = "notebooks/a-line-plan.ipynb";

/** Files of the package by where they go in a new folder. */
const files: readonly (readonly [from: string, to: string])[] = [
  ["notebooks/clinic/how-to.txt", "how-to.txt"],
  ["notebooks/clinic/our-boat.ipynb", "notebooks/our-boat.ipynb"],
  ["notebooks/clinic/worksheet.ipynb", "notebooks/worksheet.ipynb"],
  [planNotebook, planNotebook],
  ["notebooks/boats/demo-skiff.yaml", `notebooks/${ourBoat}`],
  ["notebooks/boats/demo-shop.yaml", "notebooks/boats/demo-shop.yaml"],
  ["notebooks/boats/boat.schema.json", "notebooks/boats/boat.schema.json"],
];

/** The notebook that plans the demo boats, made to plan the boat of the folder. */
function forOurBoat(text: string): string {
  const notebook = JSON.parse(text.replaceAll("boats/demo-skiff.yaml", ourBoat)) as Notebook;
  const own = { ...notebook.metadata.haulbook, inputs: [ourBoat], place: 3 };
  return `${JSON.stringify({ ...notebook, metadata: { ...notebook.metadata, haulbook: own } }, undefined, 1)}\n`;
}

/** `haulbook new`: a folder for a clinic that builds as it is. Nothing that is there is overwritten. */
export async function newFolder(options: NewOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { currentFolder, packageFolder, disk, link, remove, rename, trust, out, err } = surroundings;
  const folder = resolve(currentFolder, options.folder);
  const shown = shownPath(folder, currentFolder);
  const inTheWay = (await disk.list(folder)) ?? [];
  if (inTheWay.length > 0) {
    err(`${shown} is not empty: it holds ${inTheWay.slice(0, 5).join(", ")}. Name a folder that is not there yet.\n`);
    return exitCodes.failed;
  }
  const texts = await Promise.all(files.map(([from]) => disk.read(join(packageFolder, from))));
  const missing = files.filter((_, index) => texts[index] === undefined);
  if (missing.length > 0) {
    err(`The package lacks ${missing.map(([from]) => from).join(", ")}. Install it again.\n`);
    return exitCodes.failed;
  }
  // Made beside and then renamed, so that a folder is there whole or not at all; what a run that was cut short left goes first.
  const beside = `${folder}.half-made`;
  await remove(beside);
  try {
    for (const [index, [from, to]] of files.entries()) {
      const text = texts[index]!;
      await disk.replace(join(beside, to), from === planNotebook ? forOurBoat(text) : text);
    }
    await link(packageFolder, join(beside, "node_modules", "haulbook"));
    await rename(beside, folder);
  } catch (error) {
    await remove(beside);
    err(`${shown} could not be made: ${error instanceof Error ? error.message : String(error)}\n`);
    return exitCodes.failed;
  }
  // Its notebooks are copies of the package's own.
  try {
    await trust.add(join(folder, "notebooks"));
  } catch (error) {
    err(`It could not be noted that they may run (${String(error)}): haulbook reports will ask for --trust.\n`);
  }
  out(
    `${shown} is ready: ${files.map(([, to]) => to).join(", ")}.\n` +
      `Next: cd ${shown}, then haulbook reports. Change notebooks/boats/our-boat.yaml to your boat; how-to.txt says how.\n`,
  );
  return exitCodes.done;
}
