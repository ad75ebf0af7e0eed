import { readingsVariable } from "../notebook/input.js";
import { firstUnits, printed, printedRange } from "../notebook/measure.js";
import type { LivePanel, LiveResult, PanelFacts } from "../notebook/output.js";
import { checkShown } from "../notebook/shape.js";
import { ValueError } from "../quantity/errors.js";
import { suggestion } from "../quantity/suggestion.js";
import type { Band } from "../sources/band.js";
import { modelFor } from "./model.js";
import { liveModels } from "./models.js";
import { initialSettings } from "./settings.js";

/** What a page gives its panel, and what it has printed itself. */
export interface PanelOptions {
  /** What the model computes with beside its controls, such as a line of the page's boat; its own demo when absent. */
  readonly facts?: PanelFacts;
  /** Numbers, or numbers with their ranges, by the label of the result that must say the same, in the first unit of its measure. */
  readonly agree?: Readonly<Record<string, number | Band>>;
}

/** What a panel says on a page whose lines were measured. */
const catalogueOnly = "The panel computes with catalogue values: your readings do not enter here.";

/**
 * A live panel: the model at the page's own case, with its controls.
 *
 * @param name  name of a model
 * @param facts  what the model computes with beside its controls [SI]
 * @param agree  the page's own numbers, by the label of a result [first unit of its measure]
 * @returns the panel
 * @throws ValueError for an unknown model or label, and facts of another kind, and where a printed number of the panel is not the page's own
 * Example: livePanel("what-the-hand-feels").settings.wind → 12
 */
export function livePanel(name: string, { facts, agree = {} }: PanelOptions = {}): LivePanel {
  const known = liveModels.find((one) => one.name === name);
  if (known === undefined)
    throw unknown(
      "model of a live panel",
      name,
      liveModels.map((one) => one.name),
    );
  const model = modelFor(known, facts);
  const settings = initialSettings(model.controls);
  const view = model.compute(settings);
  const measured = (process.env[readingsVariable] ?? "") !== "";
  for (const [label, own] of Object.entries(measured ? {} : agree)) {
    const result = view.results.find((one) => one.label === label);
    if (result === undefined)
      throw unknown(
        "result of the panel",
        label,
        view.results.map((one) => one.label),
      );
    refuseOther(result, own);
  }
  const panel: LivePanel = {
    kind: "panel",
    model: name,
    ...(facts !== undefined && { facts }),
    controls: model.controls,
    settings,
    ...view,
    ...(measured && { sentence: `${view.sentence} ${catalogueOnly}` }),
  };
  checkShown(panel);
  return panel;
}

/** Refuses a result that prints other digits than the page. */
function refuseOther({ label, measure, text, range }: LiveResult, own: number | Band): void {
  const band = typeof own === "number" ? undefined : own;
  const value = typeof own === "number" ? own : own.value;
  const expected = [printed(measure, value, firstUnits), band && printedRange({ measure, ...band }, firstUnits)];
  if (text === expected[0] && (band === undefined || range === expected[1])) return;
  throw new ValueError({
    quantity: `${label}, as the panel has it`,
    value: [text, range].filter(Boolean).join(", "),
    allowed: `what the page says: ${expected.filter(Boolean).join(", ")}`,
    advice: "Let both compute the same case with the same numbers.",
  });
}

function unknown(quantity: string, value: string, known: readonly string[]): ValueError {
  const near = suggestion(value, known);
  return new ValueError({
    quantity,
    value: `"${value}"`,
    allowed: known.join(", "),
    advice: near === undefined ? "Choose one of these." : `Did you mean "${near}"?`,
  });
}
