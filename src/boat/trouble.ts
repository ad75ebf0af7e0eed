import { Refusal } from "../quantity/errors.js";

/** One thing that is wrong in a file, and where. */
export interface Trouble {
  readonly file: string;
  /** From 1; 0 when it belongs to no line. */
  readonly line: number;
  readonly column: number;
  /** Key by key, such as `lines › mainsheet › path › 2 › block`; empty for the whole file. */
  readonly at: string;
  readonly found: string;
  readonly allowed: string;
  readonly advice: string;
}

/** A boat file that cannot be taken, with everything that is wrong in it. */
export class BoatFileError extends Refusal {
  readonly troubles: readonly Trouble[];

  constructor(troubles: readonly [Trouble, ...Trouble[]]) {
    const [{ file, at, found, allowed, advice }] = troubles;
    super({ quantity: at === "" ? file : at, value: found, allowed, advice });
    this.troubles = troubles;
    this.message = troubles.map(troubleText).join("\n");
  }
}

/** One line for a terminal: place first, as compilers write it. */
function troubleText({ file, line, column, at, found, allowed, advice }: Trouble): string {
  const place = line === 0 ? file : `${file}:${line}:${column}`;
  const words = `${at === "" ? "" : `${at}: `}found ${found}; allowed: ${allowed}.`;
  return `${place}: ${words}${advice === "" ? "" : ` ${advice}`}`;
}
