import { formula } from "./formula.js";

const trials = {
  tailShare: "tailShare",
  count: { quantity: "count", sign: "n", words: "trials" },
} as const;

/** Formulas of ranges and counts. */
export const spreadFormulas = {
  sumInSquares: formula({
    id: "sum-in-squares",
    title: "Two shifts of a result that do not depend on each other",
    text: "exp(sqrt(log(one)^2 + log(other)^2))",
    symbols: {
      one: { quantity: "rangeFactor", sign: "f_1", words: "result over its middle, the first input at its end" },
      other: { quantity: "rangeFactor", sign: "f_2", words: "result over its middle, the second input at its end" },
    },
    result: { quantity: "rangeFactor", words: "upper end over the middle" },
    source: "statics",
    valid: "inputs that do not depend on each other, a result above zero",
    mirrors: "bandOf",
  }),
  allHold: formula({
    id: "all-hold",
    title: "Least share that may lie behind n of n",
    text: "tailShare^(1 / count)",
    symbols: trials,
    result: { quantity: "share", words: "lower end of the interval" },
    source: "clopper-pearson-1934",
    valid: "trials that do not depend on each other, all of which held",
    mirrors: "binomialInterval",
  }),
  noneHolds: formula({
    id: "none-holds",
    title: "Largest share that may lie behind 0 of n",
    text: "1 - tailShare^(1 / count)",
    symbols: trials,
    result: { quantity: "share", words: "upper end of the interval" },
    source: "clopper-pearson-1934",
    valid: "trials that do not depend on each other, none of which held",
    mirrors: "binomialInterval",
  }),
} as const;
