import yargs from "yargs";
import type { CheckOptions } from "./check.js";
import type { ChecksOptions } from "./checks.js";
import type { CleanOptions } from "./clean.js";
import type { CompareOptions } from "./compare.js";
import type { FitOptions } from "./fit.js";
import type { HandoutOptions } from "./handout.js";
import type { KernelOptions } from "./kernel.js";
import type { NewOptions } from "./new.js";
import type { PlanOptions } from "./plan.js";
import type { ReportsOptions } from "./reports.js";
import type { WatchOptions } from "./watch.js";
import type { WorksheetOptions } from "./worksheet.js";

/** What a command line asks for. */
export type Command =
  | { readonly verb: "reports"; readonly options: ReportsOptions }
  | { readonly verb: "watch"; readonly options: WatchOptions }
  | { readonly verb: "clean"; readonly options: CleanOptions }
  | { readonly verb: "checks"; readonly options: ChecksOptions }
  | { readonly verb: "worksheet"; readonly options: WorksheetOptions }
  | { readonly verb: "handout"; readonly options: HandoutOptions }
  | { readonly verb: "fit"; readonly options: FitOptions }
  | { readonly verb: "check"; readonly options: CheckOptions }
  | { readonly verb: "compare"; readonly options: CompareOptions }
  | { readonly verb: "plan"; readonly options: PlanOptions }
  | { readonly verb: "new"; readonly options: NewOptions }
  | { readonly verb: "kernel install"; readonly options: KernelOptions }
  | { readonly verb: "tell"; readonly text: string }
  | { readonly verb: "refuse"; readonly text: string };

const outputOption = {
  type: "string",
  describe: "Folder for the pages (reports/ in the current folder when left out)",
  requiresArg: true,
} as const;

const jsonOption = { type: "boolean", default: false, describe: "Print the whole result as JSON" } as const;

const readingsOption = {
  type: "string",
  describe: "Readings of your own boat (.csv, .yaml): its lines replace those of the catalogue",
  requiresArg: true,
} as const;

const trustOption = {
  type: "boolean",
  default: false,
  describe: "Say that you trust the notebooks here: they are programs and run with your rights",
} as const;

const htmlOption = {
  type: "string",
  describe: "File for a page with everything inside, to keep or to send; its folder must be there",
  requiresArg: true,
} as const;

const boatPosition = (describe: string) => ({ type: "string", demandOption: true, describe }) as const;

const verbs = [
  "reports",
  "clean",
  "checks",
  "worksheet",
  "handout",
  "watch",
  "fit",
  "check",
  "compare",
  "plan",
  "new",
  "kernel",
] as const;
const nameAVerb = `Name a verb: ${verbs.slice(0, -1).join(", ")} or ${verbs.at(-1)}.`;

/**
 * Reads a command line.
 *
 * @param args  words after the program's name
 * @param version  of the package
 * @returns the verb with its options, or a text to show
 * Example: await readCommand(["reports", "--open"], "0.1.0")
 */
export async function readCommand(args: readonly string[], version: string): Promise<Command> {
  let command: Command | undefined;
  const parser = yargs()
    .scriptName("haulbook")
    .locale("en")
    .usage("$0 <verb>\n\nTurns notebooks about sheets, blocks and hands into pages that open anywhere.")
    .command(
      "reports [names..]",
      "Run notebooks and write their reports",
      (verb) =>
        verb
          .usage(
            "$0 reports [names..]\n\nRuns notebooks, each in a fresh kernel, and writes their reports and the index.",
          )
          .positional("names", {
            type: "string",
            array: true,
            default: [] as string[],
            describe: "Reports to build (all when left out)",
          })
          .option("single-file", {
            type: "boolean",
            default: false,
            describe: "Carry everything inside each page, to send it on its own",
          })
          .option("open", { type: "boolean", default: false, describe: "Open the index afterwards" })
          .option("output", outputOption)
          .option("readings", readingsOption)
          .option("cache", {
            type: "boolean",
            default: true,
            describe: "Leave out what nothing has changed (--no-cache runs everything)",
          })
          .option("trust", trustOption)
          .example("$0 reports", "Build all reports")
          .example("$0 reports --readings readings.csv", "Build them for the boat that you measured")
          .example("$0 reports around-a-ring --open", "Build one report and look at the index")
          .example("$0 reports --single-file --output handout", "Pages to send, in a folder of their own"),
      ({ names, singleFile, open, output, readings, cache, trust }) => {
        const options = { names: names.map(String), singleFile, open, output, readings, cache, trust };
        command = { verb: "reports", options };
      },
    )
    .command(
      "watch [names..]",
      "Show the reports in a browser and build again what changes",
      (verb) =>
        verb
          .usage(
            "$0 watch [names..]\n\nServes the pages to this machine alone; builds anew whatever a changed notebook or file touches.",
          )
          .positional("names", {
            type: "string",
            array: true,
            default: [] as string[],
            describe: "Reports to look after (all when left out)",
          })
          .option("port", {
            type: "number",
            describe: "Port to serve on (any that is free when left out)",
            requiresArg: true,
          })
          .option("open", { type: "boolean", default: false, describe: "Open the pages once they are built" })
          .option("output", outputOption)
          .option("readings", readingsOption)
          .option("trust", trustOption)
          .check(({ port }) => {
            if (port === undefined || (Number.isInteger(port) && port >= 0 && port <= 65_535)) return true;
            throw new Error("--port is a whole number from 0 to 65535.");
          })
          .example("$0 watch our-boat --open", "Change the boat and see the page follow"),
      ({ names, port, open, output, readings, trust }) => {
        command = { verb: "watch", options: { names: names.map(String), port, open, output, readings, trust } };
      },
    )
    .command(
      "clean",
      "Forget the runs that are remembered",
      (verb) =>
        verb
          .usage("$0 clean\n\nForgets the runs that are remembered, so that all notebooks run again. Pages stay.")
          .option("output", outputOption),
      ({ output }) => {
        command = { verb: "clean", options: { output } };
      },
    )
    .command(
      "checks",
      "Print every comparison with expected values",
      (verb) =>
        verb
          .usage("$0 checks\n\nPrints the comparisons of the reports that were built.")
          .option("output", outputOption),
      ({ output }) => {
        command = { verb: "checks", options: { output } };
      },
    )
    .command(
      "worksheet",
      "Write a sheet to print, for measuring a boat",
      (verb) =>
        verb
          .usage("$0 worksheet\n\nWrites a page to print: what to hang, where to pull, a table to fill in.")
          .option("lines", {
            type: "string",
            array: true,
            default: ["mainsheet"],
            describe: "Names of the lines to measure",
            requiresArg: true,
          })
          .option("output", {
            alias: "o",
            type: "string",
            default: "worksheet.html",
            describe: "File to write",
            requiresArg: true,
          })
          .option("force", { type: "boolean", default: false, describe: "Write over a file that is there" })
          .example("$0 worksheet --lines mainsheet halyard", "A sheet for two lines"),
      ({ lines, output, force }) => {
        command = { verb: "worksheet", options: { lines: lines.map(String), output, force } };
      },
    )
    .command(
      "handout [names..]",
      "Write a side of A4 for each topic, to print for a clinic",
      (verb) =>
        verb
          .usage(
            "$0 handout [names..]\n\nWrites one side of A4 for each report that is built: its picture, rules, a table to fill in, cautions.",
          )
          .positional("names", {
            type: "string",
            array: true,
            default: [] as string[],
            describe: "Reports to take (all that are built when left out)",
          })
          .option("address", {
            type: "string",
            describe: "Where the reports stand on the web; a code on each side leads a phone there",
            requiresArg: true,
          })
          .option("output", {
            alias: "o",
            type: "string",
            default: "handout",
            describe: "Folder for handout.html and handout.pdf",
            requiresArg: true,
          })
          .option("reports", {
            type: "string",
            describe: "Folder of the built reports (reports/ in the current folder when left out)",
            requiresArg: true,
          })
          .option("pdf", { type: "boolean", default: false, describe: "Print it to PDF with Chromium as well" })
          .example("$0 handout around-a-ring --address https://club.example/clinic --pdf", "One side with its code"),
      ({ names, address, output, reports, pdf }) => {
        command = { verb: "handout", options: { names: names.map(String), address, output, reports, pdf } };
      },
    )
    .command(
      "fit <file>",
      "Work out friction from readings of a hand scale",
      (verb) =>
        verb
          .usage("$0 fit <file>\n\nReads a CSV or YAML file of pulls and prints ratio and drag of each line.")
          .positional("file", { type: "string", demandOption: true, describe: "Readings: .csv, .yaml or .yml" })
          .option("scatter", {
            type: "number",
            describe: "Scatter of a pull that you read again, in percent (2 when left out)",
            requiresArg: true,
          })
          .example("$0 fit readings.csv", "Ratio, drag, what was left out, what to read next"),
      ({ file, scatter }) => {
        command = { verb: "fit", options: { file, scatter } };
      },
    )
    .command(
      "check <boat>",
      "Check every line of a boat file",
      (verb) =>
        verb
          .usage(
            "$0 check <boat>\n\nNames at most three things to do, and says of every line what is enough, cannot be told, or is not enough.",
          )
          .positional("boat", boatPosition("Boat file (YAML)"))
          .option("json", jsonOption)
          .option("notes", { type: "boolean", default: false, describe: "Show customs and comfort as well" })
          .epilogue(
            "Exit code: 0 done, 1 something that can hurt somebody is not enough, or the file is wrong, 2 wrong use.",
          ),
      ({ boat, json, notes }) => {
        command = { verb: "check", options: { boat, json, notes } };
      },
    )
    .command(
      "compare <before> <after>",
      "Compare two boat files line by line",
      (verb) =>
        verb
          .usage("$0 compare <before> <after>\n\nPuts two boats, or two versions of one, side by side.")
          .positional("before", boatPosition("One boat file (YAML)"))
          .positional("after", boatPosition("The other"))
          .option("html", htmlOption)
          .option("json", jsonOption),
      ({ before, after, json, html }) => {
        command = { verb: "compare", options: { before, after, json, html } };
      },
    )
    .command(
      "plan <boat>",
      "Find the ropes and blocks that a boat should carry",
      (verb) =>
        verb
          .usage(
            "$0 plan <boat>\n\nFinds the lightest ropes and hardware of the catalogue that keep all limits of a boat file.",
          )
          .positional("boat", boatPosition("Boat file (YAML)"))
          .option("robust", {
            type: "boolean",
            default: false,
            describe: "Keep the limits at the bad end of the range as well",
          })
          .option("points", {
            type: "number",
            default: 25,
            describe: "Plans to show that trade mass, hand force and cost",
            requiresArg: true,
          })
          .option("lists", {
            type: "string",
            describe: "Folder for shopping list, cut list and more as CSV; nothing is written over",
            requiresArg: true,
          })
          .option("html", htmlOption)
          .option("json", jsonOption)
          .epilogue("Exit code: 0 planned, 1 limits conflict or the file is wrong, 2 wrong use."),
      ({ boat, json, robust, points, lists, html }) => {
        command = { verb: "plan", options: { boat, json, robust, points, lists, html } };
      },
    )
    .command(
      "new <folder>",
      "Make a folder for a clinic",
      (verb) =>
        verb
          .usage("$0 new <folder>\n\nMakes a folder with a boat file, notebooks and a text that says how to go on.")
          .positional("folder", boatPosition("Folder that is not there yet")),
      ({ folder }) => {
        command = { verb: "new", options: { folder } };
      },
    )
    .command("kernel", "Look after the kernel that runs the notebooks", (verb) =>
      verb
        .usage("$0 kernel install")
        .command(
          "install",
          "Make the kernel known to Jupyter",
          (install) =>
            install.option("prefix", {
              type: "string",
              describe: "For all users of a system or environment: its folder, such as /usr/local",
              requiresArg: true,
            }),
          ({ prefix }) => {
            command = { verb: "kernel install", options: { prefix } };
          },
        )
        .demandCommand(1, "Say what to do with the kernel: install."),
    )
    .example("$0 reports", "Build all reports")
    .example("$0 checks", "See what the model was checked against")
    .example("$0 fit readings.csv", "Work out what your own readings say")
    .example("$0 check boat.yaml", "See what to do first on a boat")
    .example("$0 plan boat.yaml", "See which ropes and blocks to buy")
    .example("$0 new clinic", "Begin a clinic in a folder of its own")
    .example("$0 kernel install", "Use the notebooks in Jupyter")
    .epilogue("Exit code: 0 done, 1 a notebook, a check or a line failed, 2 wrong use.")
    .demandCommand(1, nameAVerb)
    .recommendCommands()
    .strict()
    .version(version)
    .help()
    .wrap(96)
    .exitProcess(false)
    .fail(false);
  try {
    const told = await new Promise<string>((resolve, reject) => {
      parser.parse([...args], {}, (error, _options, output) => (error ? reject(error) : resolve(output)));
    });
    if (told !== "") return { verb: "tell", text: `${told}\n` };
    return command ?? { verb: "refuse", text: refusal(nameAVerb, args) };
  } catch (error) {
    return { verb: "refuse", text: refusal(error instanceof Error ? error.message : String(error), args) };
  }
}

function refusal(message: string, args: readonly string[]): string {
  const verb = args.find((word) => verbs.some((one) => one === word));
  return `${message}\nSee: haulbook ${verb === undefined ? "" : `${verb} `}--help\n`;
}
