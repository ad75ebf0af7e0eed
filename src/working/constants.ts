import { standardGravity } from "../quantity/constants.js";
import { coefficient } from "../sources/coefficient.js";
import { dryAirGasConstant } from "../wind/air.js";

/** Symbols whose number is the same everywhere. */
export const fixedSymbols = {
  gravity: {
    quantity: "gravity",
    record: coefficient({
      value: standardGravity,
      unit: "m/s^2",
      low: standardGravity,
      high: standardGravity,
      status: "common practice",
      place: "the reference: exact by definition",
    }),
  },
  second: {
    quantity: "duration",
    sign: "t_1",
    words: "the second in which rates are counted",
    record: coefficient({
      value: 1,
      unit: "s",
      low: 1,
      high: 1,
      status: "common practice",
      place: "the reference: exact by definition",
    }),
  },
  gasConstant: { quantity: "gasConstant", record: dryAirGasConstant },
} as const;
