import type { Source } from "./source.js";

/** Sources of measuring one's own line and of fitting. */
export const calibrationBibliography = {
  "iso-28037": {
    title:
      "ISO/TS 28037:2010, Determination and use of straight-line calibration functions (examples as repeated in open documentation)",
    author: "ISO",
    year: 2010,
    address: "https://github.com/MSLNZ/GTC/blob/v1.3.1/docs/API/straight_line_functions.rst",
    seen: "read on a secondary page",
  },
  "nist-strd": {
    title:
      "Statistical Reference Datasets, linear regression: Norris, Pontius, NoInt1 (as repeated in a statistics program's certification and open test files)",
    author: "NIST",
    address: "https://www.itl.nist.gov/div898/strd/lls/data/LINKS/DATA/Norris.dat",
    seen: "read on a secondary page",
  },
} as const satisfies Record<string, Source>;
