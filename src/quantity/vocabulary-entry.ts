/** One recurring quantity: one name, one meaning, one symbol, one SI unit, and the values that can exist at all. */
export interface VocabularyEntry {
  /** Words for axis titles and tables, lower case. */
  readonly label: string;
  readonly symbol: string;
  /** SI unit of the number inside the library; "1" for a pure number. */
  readonly unit: string;
  /** Unit a reader sees first. */
  readonly shownUnit: string;
  /** Smallest and largest value that is physically possible. */
  readonly minimum: number;
  readonly maximum: number;
  /** A value as a person would type it. */
  readonly example: string;
  readonly meaning: string;
}

/** A dimensionless entry: pure numbers share unit and shown unit. */
export function pure(
  label: string,
  symbol: string,
  minimum: number,
  maximum: number,
  example: string,
  meaning: string,
): VocabularyEntry {
  return { label, symbol, unit: "1", shownUnit: "1", minimum, maximum, example, meaning };
}

/** A force in newtons, 0 to 1 MN: no rope of a small boat carries more. */
export function force(label: string, symbol: string, example: string, meaning: string): VocabularyEntry {
  return { label, symbol, unit: "N", shownUnit: "N", minimum: 0, maximum: 1e6, example, meaning };
}

/** A length in metres that must be above zero, shown in the given unit. */
export function length(
  label: string,
  symbol: string,
  maximum: number,
  shownUnit: string,
  example: string,
  meaning: string,
): VocabularyEntry {
  return { label, symbol, unit: "m", shownUnit, minimum: 1e-6, maximum, example, meaning };
}

/** A speed in metres a second. */
export function speed(
  label: string,
  symbol: string,
  minimum: number,
  maximum: number,
  example: string,
  meaning: string,
): VocabularyEntry {
  return { label, symbol, unit: "m/s", shownUnit: "kn", minimum, maximum, example, meaning };
}

/** An angle in radians, shown in degrees. */
export function angle(
  label: string,
  symbol: string,
  maximum: number,
  example: string,
  meaning: string,
): VocabularyEntry {
  return { label, symbol, unit: "rad", shownUnit: "deg", minimum: 0, maximum, example, meaning };
}
