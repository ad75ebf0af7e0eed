import { bandSources } from "./band-bibliography.js";
import { calibrationBibliography } from "./calibration-bibliography.js";
import { cleatBibliography } from "./cleat-bibliography.js";
import { crewBibliography } from "./crew-bibliography.js";
import { hardwareBibliography } from "./hardware-bibliography.js";
import { heatSources } from "./heat-bibliography.js";
import { measuredBibliography } from "./measured-bibliography.js";
import { motionBibliography } from "./motion-bibliography.js";
import { ropeBibliography } from "./rope-bibliography.js";
import type { Source } from "./source.js";

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
  "fibre-yarn-table": {
    title: "Table 1: synthetic fibre yarn properties",
    author: "Tension Technology International",
    seen: "read",
  },
  "iso-2533": { title: "ISO 2533 Standard Atmosphere", seen: "read on a secondary page" },
  "asce-7": {
    title: "ASCE 7, velocity pressure",
    seen: "read on a secondary page",
  },
  "iso-19901-1": {
    title: "ISO 19901-1:2005, wind profile and gust",
    year: 2005,
    seen: "read on a secondary page",
  },
  "iec-61400": {
    title: "IEC 61400-1 and 61400-3, wind shear exponents",
    seen: "read on a secondary page",
  },
  "wind-profile-table": {
    title: "Table of wind-shear exponents and roughness lengths",
    seen: "read on a secondary page",
  },
  "orc-coefficients-2013": {
    title: "Offshore Racing Congress, sail force coefficients of 2013 (open copy)",
    year: 2013,
    seen: "read on a secondary page",
  },
  "hazen-1980": {
    title: "Hazen 1980 as printed in Principles of Yacht Design (open copy)",
    author: "Larsson and Eliasson",
    seen: "read on a secondary page",
  },
  "orc-speed-guide": {
    title: "ORC Speed Guide Explanation, Appendix A",
    seen: "read",
  },
  "apparent-wind-tests": {
    title: "Worked cases of apparent wind, as another program has them",
    seen: "read",
  },
  "jutsum-knots": {
    title: "Knots, Bends, Splices: Purchases",
    author: "Jutsum",
    address:
      "https://bitlit.ru/chapter/en/captain-jutsum/knots-bends-splices-with-tables-of-strengths-of-ropes-etc-and-wire-rigging/purchases",
    seen: "read",
  },
  "griffiths-manual": {
    title: "The Artillerist's Manual: blocks and tackles",
    author: "F. A. Griffiths",
    address: "https://bitlit.ru/page/en/f-a-griffiths/the-artillerists-manual-and-british-soldiers-compendium/321",
    seen: "read",
  },
  "knight-sailing": { title: "Small-Boat Sailing: luff upon luff", author: "E. F. Knight", seen: "read" },
  "lineham-mechanics": {
    title: "A Text-Book of Mechanical Engineering, Appendix II",
    author: "W. J. Lineham",
    address: "http://archive.org/stream/ATextBookOfMechanicalEngineering/TXT/00000929.txt",
    seen: "read",
  },
  "rollen-formelbuch": {
    title: "German mechanical formula book, §III pulleys and tackles, p. 39 (library object 1877007412)",
    address: "https://goobi.tib.eu/viewer/fulltext/1877007412/50",
    seen: "read",
  },
  "khurmi-mechanics": {
    title: "Engineering Mechanics, chapter 11 (as recomputed in an open textbook companion)",
    author: "R. S. Khurmi",
    seen: "read on a secondary page",
  },
  "bhavikatti-solids": {
    title: "Mechanics of Solids, chapter 6 (as recomputed in an open textbook companion)",
    author: "S. S. Bhavikatti",
    seen: "read on a secondary page",
  },
  "schaum-mechanics": {
    title: "Outline of Engineering Mechanics, chapter 9 (as recomputed in an open textbook companion)",
    author: "W. G. McLean and E. W. Nelson",
    seen: "read on a secondary page",
  },
  "hibbeler-drums": {
    title: "Statics, belt friction over two fixed drums and a free pulley (class handout)",
    author: "R. C. Hibbeler",
    address: "https://scribd.com/document/674453117/belts",
    seen: "read on a secondary page",
  },
  "drum-example": {
    title: "Worked example: rope one and a half turns round a drum (tutoring page)",
    address: "http://www.transtutors.com/homework-help/civil-engineering/friction/examples-rope-friction.aspx",
    seen: "read",
  },
  "sling-legs": {
    title: "Mathematics and Statistics for the Environment, example 11.3: sling legs",
    author: "F. R. Spellman and N. E. Whiting",
    seen: "read",
  },
  "standard-atmosphere-1976": {
    title: "U.S. Standard Atmosphere, 1976: constants and sea-level values",
    author: "NOAA, NASA, US Air Force",
    year: 1976,
    address: "http://scipp.ucsc.edu/outreach/balloon/atmos/1976%20Standard%20Atmosphere.htm",
    seen: "read on a secondary page",
  },
  "kutz-handbook": {
    title: "Mechanical Engineers' Handbook, volume 4, Table 6: U.S. Standard Atmosphere",
    author: "M. Kutz (editor)",
    address:
      "https://digilib.universitaspertamina.ac.id/ebook/Mechanical%20Engineers'%20Handbook%20(Volume%204)/files/basic-html/page23.html",
    seen: "read",
  },
  "denker-altimetry": {
    title: "Altimetry: layers of the standard atmosphere (table)",
    author: "J. S. Denker",
    year: 2007,
    address: "https://www.av8n.com/physics/altimetry.htm",
    seen: "read",
  },
  "wind-load-table": {
    title: "Wind load against wind speed (table and example of an engineering reference page)",
    address: "https://www.engineeringtoolbox.com/wind-load-d_1775.html",
    seen: "read",
  },
  "aerodynamics-homework": {
    title: "Aerodynamics course AAE 334, homework 1, solutions",
    year: 2011,
    address: "https://www.coursehero.com/file/6798907/HW1solution/",
    seen: "read",
  },
  "en-1991-1-4": {
    title: "EN 1991-1-4:2005, wind actions: worked calculation sheet",
    year: 2005,
    address: "https://ru.scribd.com/document/241618914/Wind-Load-Calculation-as-Per-EN1991-1-4-2005-Rev-01-by-JR",
    seen: "read on a secondary page",
  },
  "fao-56": {
    title: "Crop Evapotranspiration, Irrigation and Drainage Paper 56, equation 47 and example 14",
    author: "Allen, Pereira, Raes and Smith",
    year: 1998,
    seen: "read on a secondary page",
  },
  "noon-forensic": {
    title: "Forensic Engineering Investigation, section 2.3: variation of wind speed with height",
    author: "R. Noon",
    address: "https://www.civilengineeringhandbook.tk/forensic-engineering/23-variation-of-wind-speed-with-height.html",
    seen: "read",
  },
  "wind-power-program-tests": {
    title: "Worked cases of the log profile of wind, as another program has them",
    seen: "read",
  },
  "turbulence-program-tests": {
    title: "Worked cases of wind profiles, as another program has them",
    seen: "read",
  },
  "dynamic-pressure-cases": {
    title: "Worked cases of dynamic pressure, as another program has them",
    seen: "read on a secondary page",
  },
  "irodov-problems": {
    title: "Problems in General Physics, problem 1.6: wind relative to a ship",
    author: "I. E. Irodov",
    address: "https://www.jeephysicslab.com/irodov/irodov-mech-6",
    seen: "read on a secondary page",
  },
  "flag-problem": {
    title: "Question on the flag of a ship under way, with the asker's numbers",
    address:
      "http://physics.stackexchange.com/questions/39657/what-direction-a-flag-on-an-object-moving-in-the-wind-shows",
    seen: "read",
  },
  "sag-of-lines": {
    title: "How to determine the sag of transmission lines (worked example)",
    address: "https://id.mosg-portal.com/determine-sag-transmission-lines-7917037-3731",
    seen: "read",
  },
  "fritsch-butland-1984": {
    title:
      "A method for constructing local monotone piecewise cubic interpolants, SIAM J. Sci. Stat. Comput. 5:300-304",
    author: "F. N. Fritsch and J. Butland",
    year: 1984,
    seen: "from memory",
  },
  "wmo-beaufort": {
    title: "Beaufort scale of the World Meteorological Organization, bands in m/s",
    address: "http://www.delta-s.org/weer/beaufort.html",
    seen: "read on a secondary page",
  },
  "weather-handbook": {
    title: "RYA Weather Handbook: gusts on an average day",
    seen: "read on a secondary page",
  },
  "orc-coefficients-undated": {
    title: "ORC sail force coefficients, undated edition (open copy)",
    seen: "read on a secondary page",
  },
  "ims-coefficients-older": {
    title: "IMS sail force coefficients, older edition (open copy)",
    seen: "read on a secondary page",
  },
  "wire-rope-training": {
    title: "Training pages that quote the Wire Rope Users Manual, fig. 38: strength over a pin",
    address: "https://wirerope.net/azwr/powerpoint-presentations/",
    seen: "read on a secondary page",
  },
  ...hardwareBibliography,
  ...ropeBibliography,
  ...motionBibliography,
  ...cleatBibliography,
  ...heatSources,
  ...crewBibliography,
  ...bandSources,
  ...calibrationBibliography,
  ...measuredBibliography,
} as const satisfies Record<string, Source>;

/** Id of a source in the bibliography. */
export type SourceId = keyof typeof bibliography;

/** The source behind an id. */
export function sourceOf(id: SourceId): Source {
  return bibliography[id];
}
