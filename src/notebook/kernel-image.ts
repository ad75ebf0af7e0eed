import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { passOverComments } from "./comments-passed-over.js";
import { dataModeVariable } from "./output.js";
import { inBlocks, mendings } from "./preload.js";
import { digestOf } from "./run-causes.js";
import { stackLimit, tslabRequire } from "./tslab.js";

/** The compiled library: its declarations are what cells import, and images lie beside it. */
const dist = fileURLToPath(new URL("../../dist", import.meta.url));
const imageFolder = path.join(dist, ".kernel");
const compiler = tslabRequire.resolve("@tslab/typescript-for-tslab");

/** Folders of types that a compiler finds by itself: the nearest one that has those of node. */
function typeRoots(): string[] {
  for (let above = path.dirname(dist); ; above = path.dirname(above)) {
    const types = path.join(above, "node_modules", "@types");
    if (existsSync(path.join(types, "node", "package.json"))) return [types];
    if (above === path.dirname(above))
      return [path.join(tslabRequire.resolve("tslab/package.json"), "../node_modules/@types")];
  }
}

/** Compiles an import of the whole library, and keeps every file that was read for it, with what the compiler learnt of it. */
function readAhead(): string {
  const first = path.join(dist, "first-cell.ts");
  const text = 'export * from "./index";\nimport * as fs from "node:fs";\nexport const used = fs;\n';
  return `
    const first = ${JSON.stringify(first)};
    const options = {
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Node10,
      esModuleInterop: true,
      target: ts.ScriptTarget.ES2022,
      lib: ["lib.es2022.d.ts"],
      declaration: true,
      experimentalDecorators: true,
      resolveJsonModule: true,
      allowJs: true,
      checkJs: true,
      skipLibCheck: true,
      typeRoots: ${JSON.stringify(typeRoots())},
    };
    const host = ts.createCompilerHost(options);
    const { getSourceFile, fileExists } = host;
    host.getCurrentDirectory = () => ${JSON.stringify(dist)};
    host.fileExists = (name) => name === first || fileExists(name);
    host.getSourceFile = (name, ...rest) => {
      if (name === first) return ts.createSourceFile(name, ${JSON.stringify(text)}, ...rest);
      const file = getSourceFile(name, ...rest);
      if (file === undefined) return undefined;
      const { size, mtimeMs } = fs.statSync(name);
      kept.set(name, { file, size, mtimeMs });
      return file;
    };
    const program = ts.createProgram([first], options, host);
    program.getSemanticDiagnostics(program.getSourceFile(first));
    for (const { file, size, mtimeMs } of kept.values()) file.version = size + " " + mtimeMs;`;
}

/** Script of which the image is made: the compiler, what it has read, and what goes on when the image is started. */
async function script(): Promise<string> {
  return `
  const compiler = { exports: {} };
  (function (module, exports, __filename, __dirname) {${await readFile(compiler, "utf8")}
  })(compiler, compiler.exports, ${JSON.stringify(compiler)}, ${JSON.stringify(path.dirname(compiler))});
  const ts = { ...compiler.exports };
  const fs = require("node:fs");
  const Module = require("node:module");
  const kept = new Map();
  {
    const require = () => ts;
    ${passOverComments}
  }
  {${readAhead()}
  }
  const unchanged = (name) => {
    const known = kept.get(name);
    if (known === undefined) return undefined;
    const now = fs.statSync(name, { throwIfNoEntry: false });
    return now?.size === known.size && now.mtimeMs === known.mtimeMs ? known.file : undefined;
  };
  const { createWatchCompilerHost } = ts;
  ts.createWatchCompilerHost = (...given) => {
    const host = createWatchCompilerHost(...given);
    const { createProgram } = host;
    const met = new WeakSet();
    host.createProgram = (roots, options, files, ...rest) => {
      if (!met.has(files)) {
        met.add(files);
        for (const name of ["getSourceFile", "getSourceFileByPath"]) {
          const own = files[name];
          files[name] = (file, ...more) => unchanged(file) ?? own(file, ...more);
        }
      }
      return createProgram(roots, options, files, ...rest);
    };
    return host;
  };
  const mend = (require) => {${inBlocks(mendings)}
  };
  require("node:v8").startupSnapshot.setDeserializeMainFunction(() => {
    Error.stackTraceLimit = ${stackLimit};
    ts.sys.getCurrentDirectory = () => process.cwd();
    const program = process.argv[1];
    const own = Module.createRequire(program);
    const name = own.resolve("@tslab/typescript-for-tslab");
    own.cache[name] = Object.assign(new Module(name), { filename: name, exports: ts, loaded: true });
    mend(own);
    own(program);
  });`;
}

/** Name of the image for the library, the engine and the compiler as they are now. */
async function imageName(): Promise<string> {
  const names = (await readdir(dist, { recursive: true })).filter((name) => name.endsWith(".d.ts")).sort();
  const stats = await Promise.all(names.map(async (name) => [name, await stat(path.join(dist, name))] as const));
  const declarations = stats.map(([name, { size, mtimeMs }]) => `${name} ${size} ${mtimeMs}`);
  const causes = [process.version, process.arch, compiler, passOverComments, ...mendings, ...declarations];
  return `${digestOf(causes.join("\n"))}.image`;
}

let image: string | undefined;

/**
 * The image of a kernel that was started ahead: a file of some 60 MB from which a kernel comes up in about half the processor time,
 * as its compiler has read the library and the types of node already. What has changed since is read anew.
 *
 * @returns path of the image; nothing where none was made for the library as it is
 */
export async function kernelImage(): Promise<string | undefined> {
  if (image === undefined || !existsSync(image)) {
    const at = path.join(imageFolder, await imageName());
    image = existsSync(at) ? at : undefined;
  }
  return image;
}

/** Runs the engine; true when all went well. */
function engine(args: readonly string[]): Promise<boolean> {
  return new Promise((resolve) => {
    const env = { ...process.env, [dataModeVariable]: "data" };
    const child = spawn(process.execPath, args, { stdio: "ignore", env });
    child.on("error", () => resolve(false));
    child.on("exit", (code) => resolve(code === 0));
  });
}

/** Time after which a file that is not finished belongs to nobody any more [ms]. */
const abandoned = 600_000;

/** Clears away images of earlier libraries, and what builds that were killed have left. */
async function clearAway(folder: string, kept: string): Promise<void> {
  for (const name of await readdir(folder)) {
    const file = path.join(folder, name);
    if (name === kept || (!name.endsWith(".image") && Date.now() - (await stat(file)).mtimeMs < abandoned)) continue;
    await rm(file, { force: true });
  }
}

/**
 * Makes the image where there is none, in some seconds. Where nobody may write, or the engine makes none, kernels start without.
 *
 * @param folder  where images are kept
 * @returns whether there is one now
 */
export async function makeKernelImage(folder = imageFolder): Promise<boolean> {
  const name = await imageName();
  const at = path.join(folder, name);
  if (existsSync(at)) return true;
  const part = `${at}.${process.pid}.part`;
  const entry = `${at}.${process.pid}.cjs`;
  try {
    await mkdir(folder, { recursive: true });
    await writeFile(entry, await script());
    if (!(await engine(["--snapshot-blob", part, "--build-snapshot", entry]))) return false;
    await rename(part, at);
    await clearAway(folder, name);
    return true;
  } catch {
    return false;
  } finally {
    await Promise.all([part, entry].map((file) => rm(file, { force: true }).catch(() => {})));
  }
}
