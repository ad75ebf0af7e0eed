import type { Source } from "./source.js";

/** Sources of measuring one's own line and of fitting. */
export const calibrationBibliography = {
  "iso-28037": {
    title: "ISO/TS 28037:2010, Determination and use of straight-line calibration functions",
    author: "ISO",
    year: 2010,
    seen: "read on a secondary page",
  },
  "nist-strd": {
    title: "Statistical Reference Datasets, linear regression: Norris, Pontius, NoInt1",
    author: "NIST",
    address: "https://www.itl.nist.gov/div898/strd/lls/data/LINKS/DATA/Norris.dat",
    seen: "read on a secondary page",
  },
} as const satisfies Record<string, Source>;
