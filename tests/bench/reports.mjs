import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
const program = join(root, "dist", "cli", "main.js");
const names = ["what-the-hand-feels", "purchases-and-lost-force", "around-a-ring"];
const rounds = 2;

/** The report build beside Jupyter's own converter on the same notebooks, by turns; the better of two runs each. */
export function reportsRow() {
  const folder = mkdtempSync(join(tmpdir(), "haulbook-bench-"));
  const { HAULBOOK_OUTPUT: _, ...inherited } = process.env;
  const options = { cwd: root, env: { ...inherited, JUPYTER_DATA_DIR: join(folder, "jupyter") }, stdio: "pipe" };
  const ourPages = join(folder, "ours");
  const theirPages = join(folder, "theirs");
  const hasJupyter = spawnSync("jupyter-nbconvert", ["--version"]).status === 0;
  const build = () =>
    execFileSync(process.execPath, [program, "reports", ...names, "--no-cache", "--output", ourPages], options);
  const files = names.map((name) => join("notebooks", `${name}.ipynb`));
  const parameters = ["--execute", "--to", "html", "--output-dir", theirPages, ...files];
  const convert = () => execFileSync("jupyter-nbconvert", parameters, options);
  try {
    if (hasJupyter) execFileSync(process.execPath, [program, "kernel", "install"], options);
    let ours = Number.POSITIVE_INFINITY;
    let theirs = Number.POSITIVE_INFINITY;
    for (let round = 0; round < rounds; round++) {
      ours = Math.min(ours, secondsOf(build));
      if (hasJupyter) theirs = Math.min(theirs, secondsOf(convert));
    }
    expectPages(ourPages);
    if (hasJupyter) expectPages(theirPages);
    return {
      name: "build of the three reports against nbconvert",
      ours,
      baseline: hasJupyter ? theirs : null,
      ratio: hasJupyter ? ours / theirs : null,
      unit: "s",
      note: hasJupyter ? "jupyter-nbconvert --execute --to html, less is better" : "no jupyter-nbconvert here",
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function secondsOf(work) {
  const start = performance.now();
  work();
  return (performance.now() - start) / 1000;
}

function expectPages(folder) {
  const missing = names.filter((name) => !readdirSync(folder).includes(`${name}.html`));
  if (missing.length > 0) throw new Error(`No page in ${folder} for: ${missing.join(", ")}.`);
}
