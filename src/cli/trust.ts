import type { Surroundings } from "./surroundings.js";

/** Whose notebooks are to run, and what the person said about them. */
export interface Asked {
  readonly verb: "reports" | "watch";
  /** Folder of the notebooks. */
  readonly notebooks: string;
  /** Whether the person says that they may run. */
  readonly trust: boolean;
}

/** Whether notebooks may run: those of the package, of trusted folders, and of those that the person trusts now. */
export async function mayRun({ verb, notebooks, trust }: Asked, surroundings: Surroundings): Promise<boolean> {
  if (await surroundings.trust.holds(notebooks)) return true;
  const { err } = surroundings;
  err(
    `The notebooks in ${notebooks} are programs: they run with your rights and can read, change, delete and send whatever you can.\n`,
  );
  if (!trust) {
    err(
      `Nothing was run, because you have not said yet that you trust that folder. Read its notebooks; then say so, once: haulbook ${verb} --trust\n`,
    );
    return false;
  }
  err(`You trust them; that is noted in ${await surroundings.trust.add(notebooks)}.\n`);
  return true;
}
