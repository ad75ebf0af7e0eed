import type { Source } from "./source.js";

/** Sources about ropes: yarns, strength, ends, mass. */
export const ropeBibliography = {
  "mooring-guidelines": {
    title: "Mooring Equipment Guidelines, 2nd edition, table 6.5",
    author: "OCIMF",
    address: "https://issuhub.com/view/index/10036?pageIndex=127",
    seen: "read",
  },
  "knot-test-magazine": {
    title: "Knot efficiency, figures of the Cordage Institute quoted in a magazine test",
    address: "https://www.practical-sailor.com/issues/27_17/features/4578-1.html",
    seen: "read on a secondary page",
  },
  "hmpe-knot-tests": {
    title: "Tests of knots and splices in HMPE rope by a state forestry college, quoted on a forum",
    address: "http://powerkiteforum.com/viewthread.php?action=printable&tid=34594",
    seen: "read on a secondary page",
  },
  "hartter-thesis": {
    title: "Strength of knots in 9/16 in HMPE single braid, master's thesis, quoted on a personal test page of 2022",
    author: "Hartter",
    seen: "read on a secondary page",
  },
  "knots-in-use": {
    title: "Knots in Use, 4th edition, p. 9: tests of a rope works for the book",
    year: 2013,
    address: "https://online.flipbuilder.com/fhpx/vwoh/files/basic-html/page10.html",
    seen: "read",
  },
  "knot-test-2025": {
    title: "Tear test of knots in 10 mm yacht ropes of polyester and HMPE, sailing magazine",
    author: "Schmidt",
    year: 2025,
    seen: "read",
  },
  "hmpe-splice-page": {
    title: "Tests of buried splices in 6 mm HMPE of 12 strands, with and without a taper (rope test page)",
    seen: "read on a secondary page",
  },
  "soft-shackle-tests": {
    title: "High-strength soft shackles: break tests of loops over the strength of their rope",
    author: "Edwards",
    year: 2014,
    address: "https://l-36.com/high_strength_soft_shackle.php",
    seen: "read on a secondary page",
  },
  "polyester-rope-table": {
    title: "Engineering tables: polyester rope of three and eight strands, least break load",
    seen: "read",
  },
  "line-selection": {
    title: "Line selection: stretch of ropes at a fifth of their break load, after a chandlery's guide",
    author: "Frye",
    year: 2016,
    address: "https://sail-delmarva.blogspot.com/2016/09/line-selection-is-low-stretch-more-myth.html",
    seen: "read on a secondary page",
  },
  "cordage-institute-1401": {
    title: "CI 1401, safer use of fibre rope",
    author: "Cordage Institute",
    seen: "read on a secondary page",
  },
  "en-564": {
    title: "EN 564, accessory cord: least strength",
    year: 2006,
    address: "https://standards.iteh.ai/catalog/standards/cen/b5eb0891-75d4-4e8d-a8b7-7f8ea591e7e3/en-564-2006",
    seen: "read on a secondary page",
  },
  "navy-cordage": {
    title: "Builder 3 & 2, fibre line: strength and size",
    author: "US Navy",
    address: "http://tpub.com/builder2n3/40.htm",
    seen: "read",
  },
  "uscg-cordage": {
    title: "Breaking strength of lines, rule of the deck examination",
    author: "US Coast Guard",
    address: "http://nauticalinformation.blogspot.com/2008/04/breaking-strength-of-lines.html",
    seen: "read on a secondary page",
  },
  "deck-training-notes": {
    title: "Calculation of approximate breaking strength, deck training notes",
    address: "http://www.mranil.in/2010/05/calculation-of-approximate-breaking.html",
    seen: "read",
  },
  "nautical-knowledge-3": {
    title: "Nautical Knowledge 3: breaking strain and safe working load, college notes",
    year: 2002,
    address: "https://it.scribd.com/document/300121592/Nautical-Knoweldge-3-Breaking-Strain-SWL",
    seen: "read",
  },
  "safe-load-notes": {
    title: "Safe working load calculation, training notes",
    address: "https://it.scribd.com/doc/316212817/SWL-Calculation",
    seen: "read",
  },
  "watch-officer-reviewer": {
    title: "Examination reviewer for officers in charge of a watch",
    address: "https://oic-nwreviewer.blogspot.com/2014/01/how-to-calculate-for-safe-working-load.html",
    seen: "read",
  },
  "rope-strength-table": {
    title: "Engineering tables: polyester and polyolefin rope",
    address: "https://www.engineeringtoolbox.com/polyester-polyolefin-rope-strength-d_1515.html",
    seen: "read",
  },
  "imo-css-annex-13": {
    title: "CSS Code, annex 13: securing of cargo, example 1",
    author: "IMO",
    address: "http://imorules.com/GUID-C99C6AF4-132B-4376-A696-0B5E10377595.html",
    seen: "read",
  },
  "navy-steelworker": {
    title: "Steelworker, volume 2: rigging",
    author: "US Navy",
    address: "https://constructionmanuals.tpub.com/14251/css/Beam-Clamps-164.htm",
    seen: "read",
  },
  "rigging-exam": {
    title: "How the safe working load of a shackle is calculated, examination page",
    address: "https://ru-facts.com/how-is-swl-of-d-shackle-calculated/",
    seen: "read on a secondary page",
  },
  "specific-strength-table": {
    title: "Specific strength, encyclopedia article, table of examples",
    address: "http://w.owiki.org/wiki/Specific_strength",
    seen: "read on a secondary page",
  },
  "statue-rope": {
    title:
      "Tensile strength scaling and rope diameters for the transport of statues, manuscript kept with its programs",
    seen: "read on a secondary page",
  },
  "textile-formulas": {
    title: "Textile fibre formulas",
    author: "Textile School",
    address: "https://www.textileschool.com/127/textile-fiber-formulas/",
    seen: "read",
  },
  "gate-textile": {
    title: "Graduate aptitude test in engineering, textile: solved questions",
    address: "https://www.textiletriangle.com/gate-textile/question-paper/2003-2/44-2/",
    seen: "read on a secondary page",
  },
  "textile-regain-notes": {
    title: "Moisture regain and content, university course notes",
    address: "https://dpi.df.daffodil.family/r/7wx",
    seen: "read",
  },
  "conditioned-yarn": {
    title: "Calculation of conditioned cotton and yarn",
    address: "https://www.textilecalculations.com/calculation-of-conditioned-cotton-and-yarn/",
    seen: "read",
  },
  "invoice-weight": {
    title: "Calculation of correct invoice weight",
    author: "M. Islam",
    year: 2015,
    address: "https://textilecalculation.blogspot.com/2015/04/calculation-of-correct-invoice-weight.html",
    seen: "read",
  },
} as const satisfies Record<string, Source>;
