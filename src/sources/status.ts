/**
 * How well a number is known.
 *
 * - `published`: read in the source that is named
 * - `common practice`: known in the trade, without a source
 * - `from memory`: nobody has looked it up; the page that shows it says so
 * - `invented for the demo`: made up, to have something to show
 */
export type Status = "published" | "common practice" | "from memory" | "invented for the demo";

/**
 * What an expected value is worth.
 *
 * - `published`: a printed table, figure or worked example
 * - `independent`: another method or another program
 * - `exact`: a limit or an identity
 * - `recorded`: our own earlier output: an alarm for changes, never evidence
 * - `none`: a rule that the trade knows and nobody printed; the model is only set beside it
 */
export type Evidence = "published" | "independent" | "exact" | "recorded" | "none";
