import type { AnySettings, Control, Controls } from "../notebook/control.js";
import { firstUnits, type Measure, printed, printedRange, type Units } from "../notebook/measure.js";
import type { Figure, LiveResult, LiveView, PanelFacts } from "../notebook/output.js";
import { ValueError } from "../quantity/errors.js";
import type { SettingsOf } from "./control.js";
import { figureIn, type MeasuredFigure } from "./measured-figure.js";
import { wholeSettings } from "./settings.js";

/** A number that a model found, in the first unit of its measure. */
export interface Found {
  readonly label: string;
  readonly measure: Measure;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

/** Words for numbers, in the units that the reader has chosen. */
export interface Words {
  /** A number, such as `86.3 N`. */
  readonly say: (measure: Measure, value: number, digits?: number) => string;
  /** A number with its range, such as `86.3 N, likely 70 to 105 N`. */
  readonly sayFound: (found: Found) => string;
}

/** What a model found for one setting. */
export interface Outcome {
  readonly results: readonly Found[];
  readonly figure: MeasuredFigure;
  readonly sentence: string;
}

/** A model that a page computes with. */
export interface LiveModel {
  readonly name: string;
  readonly controls: Controls;
  /** Computes one setting; what is left out stays as on the page. Refuses what the controls do not take. */
  readonly compute: (settings: AnySettings, units?: Units) => LiveView;
  /** How it takes what a page gives it; absent where it needs nothing but its controls. */
  readonly takes?: TakenFacts;
}

/** Facts that a model takes, and the model for them. */
interface TakenFacts {
  readonly about: string;
  readonly model: (facts: PanelFacts) => LiveModel;
}

/** A model before it is made safe to call. */
interface ModelFields<Named extends Readonly<Record<string, Control>>> {
  readonly name: string;
  readonly controls: Named;
  readonly compute: (settings: SettingsOf<Named>, words: Words) => Outcome;
}

function wordsIn(units: Units): Words {
  return {
    say: (measure, value, digits) => printed(measure, value, units, digits),
    sayFound: (found) => {
      const { text, range } = shownResult(found, units);
      return range === undefined ? text : `${text}, likely ${range}`;
    },
  };
}

function shownResult(found: Found, units: Units): LiveResult {
  const { measure, value, low, high } = found;
  const range =
    low === undefined || high === undefined ? undefined : printedRange({ measure, value, low, high }, units);
  return { ...found, text: printed(measure, value, units), ...(range !== undefined && { range }) };
}

/**
 * Makes a model from controls and a function of their values.
 *
 * @param fields  name, controls by name, and the function
 * @returns the model: it checks settings, and prints in the reader's units
 */
export function liveModel<const Named extends Readonly<Record<string, Control>>>({
  name,
  controls,
  compute,
}: ModelFields<Named>): LiveModel {
  return {
    name,
    controls,
    compute: (given, units = firstUnits) => {
      // The check has seen every value.
      const settings = wholeSettings(controls, given) as SettingsOf<Named>;
      const { results, figure, sentence } = compute(settings, wordsIn(units));
      return {
        results: results.map((found) => shownResult(found, units)),
        figure: figureIn(figure, units) satisfies Figure,
        sentence,
      };
    },
  };
}

/**
 * Makes a model of what a page gives it, such as a line of a boat.
 *
 * @param demo  what it computes with where a page gives nothing
 * @param model  the model for such facts
 * @returns the model for the demo's facts, which `modelFor` turns into that for others
 */
export function modelOfFacts<Facts extends PanelFacts>(demo: Facts, model: (facts: Facts) => LiveModel): LiveModel {
  // Facts of the same kind have the same form.
  return { ...model(demo), takes: { about: demo.about, model: (facts) => model(facts as Facts) } };
}

/**
 * The model for what a page gives it.
 *
 * @param model  a model
 * @param facts  what the page gives; nothing leaves the model as it is
 * @returns the model for these facts
 * @throws ValueError for facts of a kind that the model does not take
 */
export function modelFor(model: LiveModel, facts: PanelFacts | undefined): LiveModel {
  if (facts === undefined) return model;
  if (model.takes?.about === facts.about) return model.takes.model(facts);
  throw new ValueError({
    quantity: `facts for the panel "${model.name}"`,
    value: `facts about "${facts.about}"`,
    allowed: model.takes === undefined ? "none: its controls say all" : `facts about "${model.takes.about}"`,
    advice: "Give the panel what its model computes with.",
  });
}
