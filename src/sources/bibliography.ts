/** A book, paper, standard or page from which numbers were taken. */
export interface Source {
  readonly title: string;
  readonly author?: string;
  readonly year?: number;
  /** Open address, where there is a neutral one. */
  readonly address?: string;
  /** Whether the number was read there, read on a page that repeats it, or comes from memory. */
  readonly seen: "read" | "read on a secondary page" | "from memory";
}

/** Every source that a coefficient or a check may name. */
export const bibliography = {
  "euler-1769": {
    title: "Remarks on the effect of friction in equilibrium (capstan equation)",
    author: "L. Euler",
    year: 1769,
    seen: "from memory",
  },
  statics: { title: "Balance of forces and moments (textbook statics)", seen: "from memory" },
  "wire-rope-users-manual": {
    title: "Wire Rope Users Manual, 4th edition (reprinted in a machine handbook)",
    author: "Wire Rope Technical Board",
    seen: "read",
  },
  "api-rp-9b": {
    title: "Recommended Practice 9B, table of lines and efficiencies",
    author: "American Petroleum Institute",
    seen: "from memory",
  },
  "nicholls-seamanship": {
    title: "Seamanship and Nautical Knowledge",
    author: "Nicholls",
    address: "http://www.archive.org/download/NichollssSeamanshipAndNauticalKnowledge",
    seen: "read",
  },
  "navy-builder": {
    title: "Builder 3 & 2",
    author: "US Navy",
    address: "http://www.tpub.com/builder2n3/48.htm",
    seen: "read",
  },
  "uscg-exam": {
    title: "Deck examination question bank",
    author: "US Coast Guard",
    address: "https://www.coastguardexams.com/questions/deck-general/2093",
    seen: "read on a secondary page",
  },
  "workshop-receipts": {
    title: "Workshop Receipts, 5th series: measured work of tackles",
    author: "Spon",
    address: "https://chestofbooks.com/crafts/mechanics/Workshop-Receipts-5/Taps-Part-6.html",
    seen: "read",
  },
  "ball-mechanics": {
    title: "Experimental Mechanics",
    author: "R. S. Ball",
    seen: "read",
  },
  "prattley-2016": {
    title: "Pulley versus carabiner efficiency (trainer's note)",
    author: "Prattley",
    year: 2016,
    seen: "read",
  },
  "stockman-tests": { title: "Rope over small sheaves and rods (test page)", author: "H. W. Stockman", seen: "read" },
  "poysti-2020": {
    title: "Pulleys: where is the friction?",
    author: "T. Pöysti",
    year: 2020,
    address: "https://kiipeilytuomas.fi/articles-in-english/pulleys-where-is-the-friction",
    seen: "read",
  },
  "delaney-2022": {
    title: "Physics for Roping Technicians",
    author: "R. Delaney",
    year: 2022,
    address: "https://fliphtml5.com/cwzic/vqsb/physics_for_roping_technicians_2022/92",
    seen: "read",
  },
  "donzelli-1999": {
    title: "Comparison of the frictional properties of arborist blocks, J. Arboriculture 25(2):61",
    author: "Donzelli",
    year: 1999,
    seen: "read",
  },
  "britannica-1911": {
    title: "Encyclopaedia Britannica, 11th edition: Mechanics, Applied, §104 (Morin's stiffness of ropes)",
    author: "W. J. M. Rankine",
    year: 1911,
    seen: "read",
  },
  "exercise-27": {
    title: "Engineering Mechanics 1, exercise 27: rope friction",
    address: "https://pickedshares.com/en/engineering-mechanics-1-exercise-27-rope-friction",
    seen: "read",
  },
  "capstan-article": {
    title: "Encyclopedia article on the capstan equation, table of ratios",
    seen: "read",
  },
  "knot-guild-test": {
    title: "Home test of thin cord on a pine roller (knot-guild forum)",
    address: "https://igkt.net/sm/index.php?topic=6933.msg45788",
    seen: "read",
  },
  "brown-thesis": {
    title: "Abrasion and Friction in Parallel-lay Rope Terminations (thesis, Cambridge), §3.2.2",
    author: "I. F. Brown",
    address: "http://www.calcul.com/ian/thesis/node20.html",
    seen: "read",
  },
  "howell-1954": {
    title: "Friction of fibres round cylinders (power-law capstan)",
    author: "H. G. Howell",
    year: 1954,
    seen: "from memory",
  },
  "albro-liu-1985": {
    title: "Friction of synthetic rope, J. Energy Resour. Technol. 107:103-106",
    author: "Albro and Liu",
    year: 1985,
    seen: "read",
  },
  "dock-work-code": {
    title: "Safety and health in dock work, §12.1.2",
    author: "International Labour Office",
    seen: "read",
  },
  "fibre-yarn-table": {
    title: "Table 1: synthetic fibre yarn properties",
    author: "Tension Technology International",
    seen: "read",
  },
  "iso-2533": { title: "ISO 2533 Standard Atmosphere", seen: "read on a secondary page" },
  "asce-7": {
    title: "ASCE 7, velocity pressure",
    address: "https://calcady.com/trade/construction/asce-wind-velocity-pressure",
    seen: "read on a secondary page",
  },
  "iso-19901-1": {
    title: "ISO 19901-1:2005, wind profile and gust",
    year: 2005,
    address: "http://ckunte.net/2016/wind",
    seen: "read on a secondary page",
  },
  "iec-61400": {
    title: "IEC 61400-1 and 61400-3, wind shear exponents",
    address: "https://pyiecwind.readthedocs.io/en/stable/theory.html",
    seen: "read on a secondary page",
  },
  "wind-profile-table": {
    title: "Table of wind-shear exponents and roughness lengths, as transcribed in an open aerodynamics repository",
    seen: "read on a secondary page",
  },
  "orc-vpp-2013": {
    title: "ORC VPP Documentation 2013, sail force coefficients (open transcription)",
    year: 2013,
    seen: "read on a secondary page",
  },
  "hazen-1980": {
    title: "Hazen 1980 as printed in Principles of Yacht Design (open transcription)",
    author: "Larsson and Eliasson",
    seen: "read on a secondary page",
  },
  "orc-speed-guide": {
    title: "ORC Speed Guide Explanation, Appendix A",
    seen: "read",
  },
  "apparent-wind-tests": {
    title: "Test file for apparent wind in an open aerodynamics repository",
    seen: "read",
  },
} as const satisfies Record<string, Source>;

/** Id of a source in the bibliography. */
export type SourceId = keyof typeof bibliography;

/** The source behind an id. */
export function sourceOf(id: SourceId): Source {
  return bibliography[id];
}
