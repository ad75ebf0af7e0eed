import { type Coverage, coverageOf } from "../uncertainty/coverage.js";
import { measuredSets } from "./band-sets.js";
import type { MeasuredSet } from "./measured-set.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Share of measured points that a 90 % band should hold [%]. */
const nominal = "90";

const percent = (share: number) => 100 * share;
const interval = ({ low, high }: Coverage) => `${percent(low).toFixed(0)} to ${percent(high).toFixed(0)} %`;

/** A set holds its band when 90 % lies in the exact interval of its share. */
function setRow({ id, name, source, place, points }: MeasuredSet): CheckRow {
  const coverage = coverageOf(points);
  const { inside, of, share, low, high } = coverage;
  return {
    id: `coverage-${id}`,
    quantity: `${name}: ${inside} of ${of} measured points inside the 90 % band (exact interval ${interval(coverage)})`,
    printed: nominal,
    unit: "%",
    compute: () => percent(share),
    readingError: percent(share < Number(nominal) / 100 ? high - share : share - low),
    evidence: "independent",
    status: "published",
    source,
    place: `${place}; allowed: the exact 95 % interval of so few points`,
  };
}

const kinds = { lines: "all sets of ropes, wheels, bars and knots", people: "all sets of hands" } as const;

/** All sets of one kind together, as one set is judged. */
function kindRow(sets: readonly MeasuredSet[], about: MeasuredSet["about"]): CheckRow {
  const ofKind = sets.filter((set) => set.about === about);
  const points = ofKind.flatMap((set) => set.points);
  return setRow({
    id: about,
    name: kinds[about],
    about,
    source: "statics",
    place: `${ofKind.length} measured sets`,
    points,
  });
}

function pooledRow(sets: readonly MeasuredSet[]): CheckRow {
  const coverage = coverageOf(sets.flatMap(({ points }) => points));
  const { inside, of, share } = coverage;
  return {
    id: "coverage-pooled",
    quantity: `all sets together: ${inside} of ${of} measured points inside the 90 % band (exact interval ${interval(coverage)})`,
    printed: "91",
    unit: "%",
    compute: () => percent(share),
    readingError: 6,
    evidence: "independent",
    status: "published",
    source: "statics",
    place: `${sets.length} measured sets; asked for: 85 to 97 %`,
  };
}

/** How many measured points the 90 % bands hold, set by set and together. */
export const bandCoverage: CheckSet = {
  topic: "bands",
  get rows() {
    const sets = measuredSets();
    return [...sets.map(setRow), kindRow(sets, "lines"), kindRow(sets, "people"), pooledRow(sets)];
  },
};
