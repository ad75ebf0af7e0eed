import type { CellOutput, ExecutedNotebook } from "../notebook/executed.js";
import { markedPieces } from "../notebook/marker.js";
import { printQuantity } from "../quantity/quantity-text.js";
import type { SourceId } from "../sources/bibliography.js";
import { checkAgreement } from "../working/agreement.js";
import type { Working, WorkingStep } from "../working/working.js";
import { ReportError } from "./errors.js";
import { type Content, html, type Markup } from "./html.js";
import type { PageIds } from "./markdown.js";
import { unparted, unpartedCell } from "./unparted.js";
import { stepBlock, workingSources } from "./working-panel.js";
import { rangeBlock } from "./working-spread.js";

/** The panel of one step; steps that several numbers share have one. */
interface StepPanel {
  readonly id: string;
  /** The number as the page prints it; a step in between has only its own result. */
  readonly label: string | undefined;
  readonly step: WorkingStep;
  /** How its range comes about; nothing where none of its numbers has one. */
  readonly range: Markup | undefined;
  /** Panels of the steps before it, by their places in the working. */
  readonly earlier: ReadonlyMap<number, StepPanel>;
}

/** The numbers of a page whose workings are known: marks them, and hands out the workings that belong below a block. */
export class WorkedNumbers {
  readonly #known: ReadonlyMap<string, Working>;
  readonly #ids: PageIds;
  readonly #place: string;
  /** Workings that texts have marked, by name. */
  readonly #marked = new Set<string>();
  readonly #panels = new Map<string, StepPanel>();
  #waiting: StepPanel[] = [];

  constructor(known: ReadonlyMap<string, Working>, ids: PageIds, place: string) {
    this.#known = known;
    this.#ids = ids;
    this.#place = place;
  }

  /**
   * A number that opens the working that is known under a name.
   *
   * @throws ReportError for a name that is not known, or a number that is not the one of the working
   */
  mark(name: string, text: string, place = this.#place): Markup {
    const working = this.#known.get(name);
    if (working === undefined) {
      const names = [...this.#known.keys()].join(", ") || "none";
      throw new ReportError(
        place,
        `the number "${text}" asks for the working "${name}", which no cell shows; there are: ${names}.`,
      );
    }
    refusing(place, () => checkAgreement(`working "${name}"`, text, working));
    this.#marked.add(name);
    return this.#button(name, text, working);
  }

  /** A number that opens a working of its own. */
  own(label: string, text: string, working: Working): Markup {
    return this.#button(`of ${label}`, text, working);
  }

  /** Text of a cell of a table with its marked numbers. */
  cell(source: string): Content {
    return refusing(this.#place, () =>
      markedPieces(source).map((piece) =>
        typeof piece === "string" ? unpartedCell(piece) : this.mark(piece.name, piece.text),
      ),
    );
  }

  #button(key: string, text: string, working: Working): Markup {
    const panel = this.#panelOf(working, working.steps.length - 1, `working ${key}`, text);
    return html`<button class="worked" popovertarget="${panel.id}">${unparted(text)}</button>`;
  }

  /** The panel of a step: the one that stands already where the same step led to another number. */
  #panelOf(working: Working, index: number, key: string, label?: string): StepPanel {
    const step = working.steps[index]!;
    const sources = step.symbols.flatMap((symbol) => symbol.step ?? []);
    const earlier = new Map(sources.map((source) => [source, this.#panelOf(working, source, "step")]));
    const { symbols, ...rest } = step;
    const known = symbols.map((symbol) => ({
      ...symbol,
      step: symbol.step === undefined ? undefined : earlier.get(symbol.step)?.id,
    }));
    const same = JSON.stringify([rest, known]);
    const standing = this.#panels.get(same);
    if (standing !== undefined) return standing;
    const range = label === undefined ? undefined : rangeBlock(working, index);
    const panel = { id: this.#ids.take(key), label, step, range, earlier };
    this.#panels.set(same, panel);
    this.#waiting.push(panel);
    return panel;
  }

  /** The steps behind all numbers marked since the last call, each once on the page. */
  panels(): Markup {
    const waiting = this.#waiting;
    this.#waiting = [];
    return html`${waiting.map(({ id, label, step, range, earlier }) => {
      const link = (source: number) => {
        const panel = earlier.get(source);
        return panel && html`<button popovertarget="${panel.id}">${panel.step.title}</button>`;
      };
      const { words, quantity, value } = step.result;
      const own = printQuantity(quantity, value);
      const comes = label !== undefined && html`<p class="comes">${words}: <b>${own}</b>\n`;
      return html`<div class="how" id="${id}" popover role="group" aria-label="${label ?? own}">
<button class="shut" popovertarget="${id}">Close</button><b>${label === undefined ? `${words}: ${own}` : `How ${label} was worked out`}</b>
${stepBlock({ step, link, place: this.#place, comes })}${range}</div>
`;
    })}`;
  }

  /** Refuses a working that no text of the page marks. */
  refuseIdle(): void {
    const idle = [...this.#known.keys()].find((name) => !this.#marked.has(name));
    if (idle === undefined) return;
    throw new ReportError(
      this.#place,
      `no text marks the working "${idle}"; write its number as [[${idle}: …]], or do not show the working.`,
    );
  }
}

function refusing<Result>(place: string, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    if (error instanceof ReportError) throw error;
    throw new ReportError(place, error instanceof Error ? error.message : String(error));
  }
}

/**
 * The workings that the cells of a notebook show, by name.
 *
 * @param notebook  after a complete run
 * @returns workings by the names that texts use
 * @throws ReportError for one name with two different workings
 */
export function knownWorkings(notebook: ExecutedNotebook): Map<string, Working> {
  const known = new Map<string, Working>();
  for (const cell of notebook.cells) {
    for (const output of cell.type === "code" ? cell.outputs : []) {
      if (output.kind !== "workings") continue;
      for (const { name, working } of output.entries) {
        const other = known.get(name);
        if (other !== undefined && JSON.stringify(other) !== JSON.stringify(working)) {
          throw new ReportError(
            `${notebook.name}.ipynb, cell ${cell.number}`,
            `a second working "${name}" with other numbers; give it another name.`,
          );
        }
        known.set(name, other ?? working);
      }
    }
  }
  return known;
}

/** Workings that belong to one result or one curve, and to no mark. */
function ownWorkings(output: CellOutput): Working[] {
  if (output.kind === "result") return output.working === undefined ? [] : [output.working];
  if (output.kind !== "figure") return [];
  return output.panels.flatMap(({ series }) =>
    series.flatMap(({ worked = {} }) => Object.values(worked).map(({ working }) => working)),
  );
}

/** Sources that the workings of a notebook name. */
export function sourcesOfWorkings(notebook: ExecutedNotebook): SourceId[] {
  const own = notebook.cells.flatMap((cell) => (cell.type === "code" ? cell.outputs.flatMap(ownWorkings) : []));
  return [...knownWorkings(notebook).values(), ...own].flatMap(workingSources);
}
