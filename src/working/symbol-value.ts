import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import type { Band } from "../sources/band.js";
import type { Coefficient } from "../sources/coefficient.js";
import { type FormulaSymbol, symbolWords } from "./formula.js";
import { lastStep, type NumberOrigin, type WorkedSymbol, type Working, type WorkingStep } from "./working.js";

/** A number for a symbol: plain, with a range, a record of coefficients, or the working of a step before. */
export type WorkedInput = number | Band | Coefficient | Working;

function isWorking(input: WorkedInput): input is Working {
  return typeof input === "object" && "steps" in input;
}

function originOf(input: Band | Coefficient): NumberOrigin {
  const { low, high } = input;
  if (!("status" in input)) return { low, high };
  const { status, source, place } = input;
  return { low, high, status, ...(source !== undefined && { source }), place };
}

/** Unit of what was given, as far as it says. */
function unitOf(input: Band | Coefficient | Working): string | undefined {
  if (isWorking(input)) return lastStep(input).result.unit;
  return "unit" in input ? input.unit : undefined;
}

/** Gathers the numbers of a step, and the steps before it, each once. */
export class StepInputs {
  readonly steps: WorkingStep[] = [];
  readonly #quantity: string;

  constructor(quantity: string) {
    this.#quantity = quantity;
  }

  /** The symbol with its number, checked against its quantity. */
  take(name: string, symbol: FormulaSymbol, given: WorkedInput | undefined): WorkedSymbol {
    const words = symbolWords(symbol);
    const input = given ?? (typeof symbol === "object" ? symbol.record : undefined);
    if (input === undefined) {
      throw this.#refusal(`no number for "${name}" (${words.words})`, "a number for each symbol", `Give ${name}.`);
    }
    const unit = typeof input === "object" ? unitOf(input) : undefined;
    if (unit !== undefined && unit !== words.unit) {
      throw this.#refusal(`${name} in ${unit}`, `a number in ${words.unit}`, "Give the number that belongs there.");
    }
    const value = within(words.quantity, typeof input === "number" ? input : input.value);
    const base: WorkedSymbol = { name, ...words, value };
    if (typeof input === "number") return base;
    if (isWorking(input)) return { ...base, step: this.#join(input) };
    return { ...base, origin: originOf(input) };
  }

  /** Puts the steps of a working before this one; returns the place of its last. */
  #join(working: Working): number {
    const places = new Map<number, number>();
    working.steps.forEach((step, place) => {
      const moved = {
        ...step,
        symbols: step.symbols.map((one) => (one.step === undefined ? one : { ...one, step: places.get(one.step)! })),
      };
      const text = JSON.stringify(moved);
      const known = this.steps.findIndex((other) => JSON.stringify(other) === text);
      places.set(place, known >= 0 ? known : this.steps.push(moved) - 1);
    });
    return places.get(working.steps.length - 1)!;
  }

  #refusal(value: string, allowed: string, advice: string): ValueError {
    return new ValueError({ quantity: this.#quantity, value, allowed, advice });
  }
}
