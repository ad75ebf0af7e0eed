import { join, resolve } from "node:path";
import type { Boat } from "../boat/boat.js";
import { worstOf } from "../boat/demand.js";
import { lineStanding } from "../boat/standing.js";
import { boatAsPlanned, choiceNow, plannedBoatOf } from "../plan/boat-plan.js";
import { lineConflictWords, smallestConflict } from "../plan/conflict.js";
import { listCsv } from "../plan/csv.js";
import { type Front, front } from "../plan/front.js";
import { limitPrices } from "../plan/limit-price.js";
import { type Optimum, optimum } from "../plan/optimum.js";
import { planJson } from "../plan/plan-json.js";
import type { Chosen } from "../plan/plan-option.js";
import type { PlannedBoat } from "../plan/planned-boat.js";
import { priorities } from "../plan/priorities.js";
import { loadSolver } from "../plan/solver.js";
import { readBoat } from "./boats.js";
import { exportInTheWay, exportReport } from "./export.js";
import { shownPath } from "./folders.js";
import { listNames, planLists } from "./plan-lists.js";
import { planReport } from "./plan-report.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook plan` was asked. */
export interface PlanOptions {
  readonly boat: string;
  readonly json: boolean;
  /** Limits must hold at the bad end of the range. */
  readonly robust: boolean;
  /** Points of the front that are wanted [-]. */
  readonly points: number;
  /** Folder for the lists as CSV; none are written when left out. */
  readonly lists: string | undefined;
  /** Page to write as one file; none is written when left out. */
  readonly html?: string | undefined;
}

/** `haulbook plan`: which ropes and blocks a boat should carry; 1 where its limits cannot be met together. */
export async function plan(options: PlanOptions, surroundings: Surroundings): Promise<ExitCode> {
  if (!(Number.isInteger(options.points) && options.points >= 1 && options.points <= 200)) {
    surroundings.err("--points takes a whole number from 1 to 200.\n");
    return exitCodes.wrongUse;
  }
  const boat = await readBoat(options.boat, surroundings);
  const inTheWay = await listsInTheWay(options, surroundings);
  if (inTheWay !== undefined) {
    surroundings.err(`${inTheWay} is there already and stays as it is. Name another folder with --lists.\n`);
    return exitCodes.failed;
  }
  const noRoom = await exportInTheWay(options.html, surroundings);
  if (noRoom !== undefined) {
    surroundings.err(noRoom);
    return exitCodes.failed;
  }
  const code = await printed(boat, options, surroundings);
  await exportReport({ notebook: "a-line-plan", inputs: [options.boat], file: options.html }, surroundings);
  return code;
}

async function printed(boat: Boat, options: PlanOptions, surroundings: Surroundings): Promise<ExitCode> {
  const hears = progressTo(surroundings, boat.name);
  const planned = plannedBoatOf(boat, { robust: options.robust, progress: hears.line });
  const solver = await loadSolver();
  const wanted = optimum(solver, planned);
  const totals = wanted === undefined ? smallestConflict(solver, planned) : undefined;
  const kept: PlannedBoat =
    wanted === undefined ? { ...planned, limits: planned.limits.filter(({ kind }) => kind !== "total") } : planned;
  const best = (wanted ?? optimum(solver, kept))!;
  const before = choiceNow(kept);
  const conflicts = [...(kept.conflicts ?? []).map(lineConflictWords), ...(totals === undefined ? [] : [totals.words])];
  const found = {
    boat: kept,
    before,
    best,
    conflicts,
    front: trade(front(solver, kept, { atLeast: options.points, progress: hears.points }), options.points),
    prices: limitPrices(solver, kept),
    priorities: priorities(kept, best.choice),
    standings: best.choice.map((chosen) => ({
      line: chosen.line.name,
      outcome: worstOf(lineStanding(boatAsPlanned(boat, [chosen]), chosen.line.name).demands),
    })),
    robust: options.robust,
  };
  surroundings.out(
    options.json
      ? planJson({ name: boat.name, ...found, lists: planLists(before, best.choice) })
      : planReport({ name: boat.name, wanted: options.points, ...found }),
  );
  await writeLists(options, surroundings, { before, best });
  return conflicts.length === 0 ? exitCodes.done : exitCodes.failed;
}

/** Words to the error stream on work that has gone on for a second: which boat and line, how many of how many. */
function progressTo({ err, now }: Pick<Surroundings, "err" | "now">, boat: string) {
  const start = now();
  let told = start;
  const say = (words: string) => {
    if (now() - start < patience || now() - told < patience) return;
    told = now();
    err(`${boat}: ${words}\n`);
  };
  return {
    line: (name: string, done: number, all: number) => say(`line ${done + 1} of ${all}, ${name}`),
    points: (found: number, wanted: number) => say(`plan ${found} of ${wanted} found`),
  };
}

/** Work that takes longer than this is told of, and again so often [ms]. */
const patience = 1000;

/** As many points as were asked for, spread over those that were found, both ends among them. */
function trade(found: Front, wanted: number): Front {
  const { points } = found;
  if (points.length <= wanted) return found;
  const step = wanted > 1 ? (points.length - 1) / (wanted - 1) : 0;
  const taken = Array.from({ length: wanted }, (_, index) => points[Math.round(index * step)]!);
  return { ...found, points: taken, complete: false };
}

const fileNames = listNames.map((name) => `${name}.csv`);

async function listsInTheWay(
  { lists }: PlanOptions,
  { currentFolder, disk }: Surroundings,
): Promise<string | undefined> {
  if (lists === undefined) return undefined;
  const folder = resolve(currentFolder, lists);
  const there = (await disk.list(folder)) ?? [];
  const name = fileNames.find((one) => there.includes(one));
  return name && shownPath(join(folder, name), currentFolder);
}

async function writeLists(
  { lists }: PlanOptions,
  { currentFolder, disk, err }: Surroundings,
  { before, best }: { readonly before: readonly Chosen[]; readonly best: Optimum },
): Promise<void> {
  if (lists === undefined) return;
  const folder = resolve(currentFolder, lists);
  for (const [name, list] of Object.entries(planLists(before, best.choice)))
    await disk.replace(join(folder, `${name}.csv`), listCsv(list));
  err(`Lists written to ${shownPath(folder, currentFolder)}: ${fileNames.join(", ")}.\n`);
}
