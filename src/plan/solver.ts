import loadHighs from "highs";
import { PlanError } from "./plan-error.js";

/** A row of a program: lower ≤ Σ value · column ≤ upper. */
export interface Row {
  readonly columns: readonly number[];
  readonly values: readonly number[];
  readonly lower: number;
  readonly upper: number;
}

/** A program over columns that are whole numbers of 0 or 1, and perhaps one last column that is any number above 0. */
export interface Program {
  readonly costs: readonly number[];
  readonly rows: readonly Row[];
  /** Number of columns at the end that need not be whole. */
  readonly free: number;
}

/** What the solver found, with its own bound: no solution can cost less. */
export interface Solution {
  readonly values: readonly number[];
  readonly bound: number;
  /** Branches that the search looked at. */
  readonly nodes: number;
}

/** The mixed-integer solver, loaded. */
export interface Solver {
  readonly name: string;
  /** Least-cost solution, or `undefined` when there is provably none. All costs are whole numbers. */
  solve(program: Program): Solution | undefined;
}

/** The package's types describe its CommonJS form, in which the loader is a member; as an ES module it is the export itself. */
const start = loadHighs as unknown as typeof loadHighs.default;

let loaded: Promise<Solver> | undefined;

/**
 * Loads the mixed-integer solver (WebAssembly), once for the whole program.
 *
 * In a notebook: `const solver = await loadSolver();` in a cell of its own; everything after that runs without waiting.
 *
 * @param settings  `presolve: false` leaves the simplification of programs out, to measure what it is worth
 * @returns solver
 */
export function loadSolver({ presolve = true }: { readonly presolve?: boolean } = {}): Promise<Solver> {
  if (!presolve) return load(false);
  loaded ??= load(true);
  return loaded;
}

/** A bound less than this below a whole number proves the whole number. */
const halfCount = 0.4;

async function load(presolve: boolean): Promise<Solver> {
  const highs = await start();
  const { optimal, infeasible } = highs.constants.modelStatus;
  return {
    name: `HiGHS ${highs.version.string}`,
    solve: (program) =>
      highs.withModel(modelOf(program, highs.infinity), (model): Solution | undefined => {
        model.options.set({
          output_flag: false,
          presolve: presolve ? "choose" : "off",
          // Aids for large programs; in plans of boats they cost more time than they save.
          mip_allow_restart: false,
          mip_heuristic_run_feasibility_jump: false,
          mip_rel_gap: 0,
          mip_abs_gap: halfCount / scaleOf(program.costs),
        });
        const { modelStatus } = model.run();
        if (modelStatus === infeasible) return undefined;
        if (modelStatus !== optimal) refuseStatus(modelStatus);
        return {
          values: [...model.getSolution().colValue],
          bound: Number(model.info.get("mip_dual_bound")) * scaleOf(program.costs),
          nodes: Math.max(0, Number(model.info.get("mip_node_count"))),
        };
      }),
  };
}

/** A power of two that brings the largest number of a row near 1000, where the solver's tolerances are small. */
function scaleOf(values: readonly number[]): number {
  const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return 2 ** Math.max(0, Math.ceil(Math.log2(Math.max(1, largest))) - 10);
}

function modelOf({ costs, rows, free }: Program, infinity: number) {
  const scales = rows.map(({ values }) => scaleOf(values));
  const scale = scaleOf(costs);
  const whole = costs.length - free;
  const starts = [0];
  for (const { columns } of rows) starts.push(starts.at(-1)! + columns.length);
  const bounds = (end: "lower" | "upper") => rows.map((row, index) => row[end] / scales[index]!);
  return {
    numCols: costs.length,
    numRows: rows.length,
    colCost: costs.map((cost) => cost / scale),
    colLower: costs.map(() => 0),
    colUpper: costs.map((_, index) => (index < whole ? 1 : infinity)),
    rowLower: bounds("lower"),
    rowUpper: bounds("upper"),
    matrix: {
      format: "csr" as const,
      numRows: rows.length,
      numCols: costs.length,
      starts,
      indices: rows.flatMap(({ columns }) => [...columns]),
      values: rows.flatMap(({ values }, index) => values.map((value) => value / scales[index]!)),
    },
    integrality: costs.map((_, index): 0 | 1 => (index < whole ? 1 : 0)),
  };
}

function refuseStatus(status: number): never {
  throw new PlanError({
    quantity: "search for the best plan",
    value: `solver stopped with status ${status}`,
    allowed: "a proven optimum, or a proof that there is none",
    advice: "Plan fewer lines or options at once.",
  });
}
