import { join } from "node:path";
import { readCommand } from "./command.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/**
 * Does what a command line asks. What a verb needs is loaded with the verb.
 *
 * @param args  words after the program's name
 * @param surroundings  effects
 * @returns exit code: 0 done, 1 failed, 2 wrong use
 * Example: await dispatch(["checks"], surroundings)
 */
export async function dispatch(args: readonly string[], surroundings: Surroundings): Promise<ExitCode> {
  const about = await surroundings.disk.read(join(surroundings.packageFolder, "package.json"));
  const version = about === undefined ? "unknown" : String((JSON.parse(about) as { version?: unknown }).version);
  const command = await readCommand(args, version);
  try {
    switch (command.verb) {
      case "reports":
        return await (await import("./reports.js")).reports(command.options, surroundings);
      case "watch":
        return await (await import("./watch.js")).watch(command.options, surroundings);
      case "clean":
        return await (await import("./clean.js")).clean(command.options, surroundings);
      case "checks":
        return await (await import("./checks.js")).checks(command.options, surroundings);
      case "worksheet":
        return await (await import("./worksheet.js")).writeWorksheet(command.options, surroundings);
      case "handout":
        return await (await import("./handout.js")).handout(command.options, surroundings);
      case "fit":
        return await (await import("./fit.js")).fitReadings(command.options, surroundings);
      case "check":
        return await (await import("./check.js")).check(command.options, surroundings);
      case "compare":
        return await (await import("./compare.js")).compare(command.options, surroundings);
      case "plan":
        return await (await import("./plan.js")).plan(command.options, surroundings);
      case "new":
        return await (await import("./new.js")).newFolder(command.options, surroundings);
      case "kernel install":
        return await (await import("./kernel.js")).kernelInstall(command.options, surroundings);
      case "tell":
        surroundings.out(command.text);
        return exitCodes.done;
      case "refuse":
        surroundings.err(command.text);
        return exitCodes.wrongUse;
    }
  } catch (error) {
    surroundings.err(`${error instanceof Error ? error.message : String(error)}\n`);
    return exitCodes.failed;
  }
}
