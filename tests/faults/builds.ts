import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, readdirSync, readFileSync, readlinkSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { realDisk } from "../../src/cli/disk.js";
import { runNotebook } from "../../src/notebook/run.js";
import { type BuildRequest, buildReports } from "../../src/report/build.js";
import { smallRequest } from "../report/build-request.js";

/** The command line as built. */
const program = fileURLToPath(new URL("../../dist/cli/main.js", import.meta.url));
const display = fileURLToPath(new URL("../../dist/notebook/display.js", import.meta.url));

/** Writes a small notebook with a question, an answer and a figure; its numbers follow from `pull`. */
export function writeNotebook(folder: string, name: string, pull: number, { more = "", prose = "" } = {}): string {
  mkdirSync(folder, { recursive: true });
  const code = `import { show, figure, answer } from ${JSON.stringify(display)};
const pull = ${pull};
show(answer("About " + pull + " N."));
show(figure({ name: "pull", title: "Pull", caption: "Pull.", altText: "A pull.", x: { title: "x" }, y: { title: "y" },
  panels: [{ title: "", series: [{ name: "s", x: [1, 2], hauling: [pull, 2 * pull], easing: [0.5 * pull, pull] }] }] }));
${more}`;
  const cells = [
    { cell_type: "markdown", id: "question", metadata: {}, source: `# How hard does ${name} pull?\n\n${prose}` },
    { cell_type: "code", id: "pull", metadata: {}, source: code, outputs: [], execution_count: null },
  ];
  const kernelspec = { name: "haulbook", display_name: "haulbook (TypeScript)", language: "typescript" };
  const path = join(folder, `${name}.ipynb`);
  writeFileSync(path, JSON.stringify({ nbformat: 4, nbformat_minor: 5, metadata: { kernelspec }, cells }));
  return path;
}

/** A build of notebooks into a folder on the real disk, with small stand-ins for the libraries that pages load. */
export function smallBuild(
  outputFolder: string,
  paths: Readonly<Record<string, string>>,
  changed: Partial<BuildRequest> = {},
) {
  const own = {
    notebooks: Object.entries(paths).map(([name, path]) => ({ name, path })),
    outputFolder,
    run: ({ path }: { readonly path: string }) => runNotebook({ path, cellSeconds: 120, notebookSeconds: 240 }),
    files: realDisk(String(process.pid)),
  };
  return buildReports(smallRequest(own, changed));
}

/** A folder with two notebooks, and a home and a place for temporary files of its own. */
export function clinicIn(folder: string, output = join(folder, "reports")) {
  const temporary = join(folder, "temporary");
  mkdirSync(temporary, { recursive: true });
  const write = (pull: number, one = "", two = "") => {
    writeNotebook(join(folder, "notebooks"), "one", pull, { prose: one });
    writeNotebook(join(folder, "notebooks"), "two", pull, { prose: two });
  };
  const env = { ...process.env, HOME: folder, XDG_CONFIG_HOME: folder, TMPDIR: temporary };
  const words = [program, "reports", "--trust", "--output", output];
  const build = () => spawnSync(process.execPath, words, { cwd: folder, env, encoding: "utf8" });
  const start = (...more: string[]) =>
    spawn(process.execPath, [...words, ...more], { cwd: folder, env, stdio: "ignore" });
  /** A build beside others: how it ended, and what it said. */
  const end = async () => {
    const child = spawn(process.execPath, words, { cwd: folder, env, stdio: ["ignore", "ignore", "pipe"] });
    let said = "";
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      said += text;
    });
    const [code] = (await once(child, "close")) as [number | null];
    return { code, said };
  };
  return { folder, temporary, write, build, start, end, reports: output };
}

/** What a reader opens: not what the build remembers for itself, nor files that are not finished. */
export function pagesOf(reports: string): ReadonlyMap<string, string> {
  return new Map([...textsBelow(reports)].filter(([path]) => !path.startsWith(".runs") && !path.endsWith(".part")));
}

/** Texts of all files below a folder, by their path from it. */
export function textsBelow(folder: string): ReadonlyMap<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map((entry) => join(entry.parentPath, entry.name)).sort();
  return new Map(paths.map((path) => [relative(folder, path), readFileSync(path, "utf8")]));
}

/** Processes still alive whose working folder is this one or below. */
export function processesIn(folder: string): number[] {
  const pids = readdirSync("/proc").filter((name) => /^\d+$/.test(name));
  return pids.map(Number).filter((pid) => {
    try {
      return `${readlinkSync(`/proc/${pid}/cwd`)}/`.startsWith(`${folder}/`);
    } catch {
      return false;
    }
  });
}

/** Processor time that the processes in a folder have taken, with those that they started and that ended [ticks of the system's clock]. */
function workIn(folder: string): number {
  const taken = processesIn(folder).map((pid) => {
    try {
      const [user, system, below, belowSystem] = readFileSync(`/proc/${pid}/stat`, "utf8")
        .replace(/^.*\) /su, "")
        .split(" ")
        .slice(11, 15)
        .map(Number);
      return user! + system! + below! + belowSystem!;
    } catch {
      return 0;
    }
  });
  return taken.reduce((sum, one) => sum + one, 0);
}

/** Follows the work of the processes in a folder until `over` is, or until they have done `most` of it; answers with what they did [ticks]. */
export async function workUntil(
  folder: string,
  over: Promise<unknown>,
  most = Number.POSITIVE_INFINITY,
): Promise<number> {
  let ended = false;
  void over.finally(() => {
    ended = true;
  });
  let done = 0;
  while (!ended && done < most) {
    await pause(2);
    done = Math.max(done, workIn(folder));
  }
  return done;
}
