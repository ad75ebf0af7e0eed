import type fc from "fast-check";
import { evenly } from "../numerics/evenly.js";

/** What a formula is compared with: ranges of its inputs, and the code that computes the same from them. */
export interface Case {
  readonly inputs: Readonly<Record<string, readonly [number, number] | readonly number[]>>;
  readonly code: (values: Readonly<Record<string, number>>) => number;
}

/** A case whose values are known by the names of its inputs. */
export function mirror<Name extends string>(
  inputs: Readonly<Record<Name, readonly [number, number]>>,
  code: (values: Readonly<Record<Name, number>>) => number,
): Case {
  return { inputs, code: code as Case["code"] };
}

/** Numbers of a range, spread evenly. */
export function within([low, high]: readonly number[]): fc.Arbitrary<number> {
  return evenly(low!, high!);
}
