import { spawn } from "node:child_process";
import { mkdtemp, readFile, rename, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** A page to print. */
export interface Print {
  /** Path of a page on this machine. */
  readonly page: string;
  /** Path of the PDF; it is replaced whole. */
  readonly pdf: string;
  readonly signal: AbortSignal;
}

/** What a print needs of the machine. */
interface Machine {
  readonly env: NodeJS.ProcessEnv;
  readonly platform: NodeJS.Platform;
  /** Tells the temporary files of this process from those of another. */
  readonly mark: string;
  /** Whether the browser runs with all rights of the machine: then it refuses its own sandbox. */
  readonly allRights: boolean;
}

const seconds = 120;

/** Commands by which Chromium is known, where `CHROMIUM` names none. */
function commands({ env, platform }: Machine): readonly string[] {
  if (env.CHROMIUM) return [env.CHROMIUM];
  const usual = ["chromium", "chromium-browser", "chromium-headless-shell"];
  return platform === "darwin" ? [...usual, "/Applications/Chromium.app/Contents/MacOS/Chromium"] : usual;
}

/** Runs a command; answers with its exit code and what it said, or nothing where there is no such command. */
function run(
  command: string,
  args: readonly string[],
  { env, signal }: { readonly env: NodeJS.ProcessEnv; readonly signal: AbortSignal },
): Promise<{ readonly code: number | null; readonly said: string } | undefined> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { stdio: ["ignore", "ignore", "pipe"], env, signal });
    let said = "";
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      said = `${said}${text}`.slice(-2000);
    });
    child.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "ENOENT") resolve(undefined);
      else reject(error);
    });
    child.on("close", (code) => resolve({ code, said }));
  });
}

/** Number of pages of a PDF as the browser writes it. */
function pagesOf(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b/gu)?.length ?? 0;
}

/**
 * Prints a page to PDF with the Chromium of this machine, in a profile of its own that is thrown away.
 *
 * @param machine  where Chromium is looked for
 * @param print  page and PDF
 * @returns number of printed pages
 * @throws Error when there is no Chromium, or it does not print
 * Example: await printPage(machine, { page: "/clinic/handout.html", pdf: "/clinic/handout.pdf", signal }) → 3
 */
export async function printPage(machine: Machine, { page, pdf, signal }: Print): Promise<number> {
  const profile = await mkdtemp(join(tmpdir(), "haulbook-print-"));
  const beside = `${pdf}.${machine.mark}.part`;
  const within = AbortSignal.any([signal, AbortSignal.timeout(seconds * 1000)]);
  const args = [
    "--headless",
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
    ...(machine.allRights ? ["--no-sandbox"] : []),
    `--user-data-dir=${profile}`,
    "--no-pdf-header-footer",
    `--print-to-pdf=${beside}`,
    pathToFileURL(page).href,
  ];
  try {
    for (const command of commands(machine)) {
      const done = await run(command, args, { env: machine.env, signal: within });
      if (done === undefined) continue;
      const printed = done.code === 0 ? await readFile(beside).catch(() => undefined) : undefined;
      if (printed === undefined)
        throw new Error(`${command} did not print it (exit code ${done.code}). It said:\n${done.said.trim()}`);
      await rename(beside, pdf);
      return pagesOf(printed);
    }
    throw new Error(
      machine.env.CHROMIUM
        ? `There is no ${machine.env.CHROMIUM}, which the environment variable CHROMIUM names.`
        : "Chromium was not found. Install it, or name it in the environment variable CHROMIUM.",
    );
  } finally {
    await rm(beside, { force: true });
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}
