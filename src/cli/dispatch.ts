import { join } from "node:path";
import { check } from "./check.js";
import { checks } from "./checks.js";
import { readCommand } from "./command.js";
import { compare } from "./compare.js";
import { fitReadings } from "./fit.js";
import { kernelInstall } from "./kernel.js";
import { newFolder } from "./new.js";
import { plan } from "./plan.js";
import { reports } from "./reports.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";
import { writeWorksheet } from "./worksheet.js";

/**
 * Does what a command line asks.
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
        return await reports(command.options, surroundings);
      case "checks":
        return await checks(command.options, surroundings);
      case "worksheet":
        return await writeWorksheet(command.options, surroundings);
      case "fit":
        return await fitReadings(command.options, surroundings);
      case "check":
        return await check(command.options, surroundings);
      case "compare":
        return await compare(command.options, surroundings);
      case "plan":
        return await plan(command.options, surroundings);
      case "new":
        return await newFolder(command.options, surroundings);
      case "kernel install":
        return await kernelInstall(surroundings);
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
