import type { Source } from "./source.js";

/** Sources about blocks, sheaves, treads and rubbing. */
export const hardwareBibliography = {
  "dock-work-code": {
    title: "Safety and health in dock work (code of practice): pulley blocks for fibre ropes, §12.1.2",
    author: "International Labour Office",
    address: "https://international.vlex.com/vid/pulley-blocks-for-fibre-ropes-437011334",
    seen: "read on a secondary page",
  },
  "army-blocks": {
    title: "Rigging (Seamanship), chapter 20: blocks and tackles",
    author: "US Army",
    address: "https://ja.scribd.com/document/236419967/Blocks-and-Tackles",
    seen: "read",
  },
  "field-blocks": {
    title: "Field manual reprint, ¶30: blocks and tackles",
    author: "US Army",
    address: "https://www.bevfitchett.us/field-expedient/info-yqm.html",
    seen: "read",
  },
  "steelworker-blocks": {
    title: "Steelworker, NAVEDTRA 14251: block to line ratio",
    author: "US Navy",
    address: "https://constructionmanuals.tpub.com/14251/css/Block-to-Line-Ratio-151.htm",
    seen: "read",
  },
  "cordage-institute": {
    title: "CI 1201 and CI 1401: sheaves for fibre rope",
    author: "Cordage Institute",
    seen: "from memory",
  },
  "feyrer-wire-ropes": {
    title: "Wire Ropes: Tension, Endurance, Reliability, §3.5.1",
    author: "K. Feyrer",
    address: "http://what-when-how.com/Tutorial/topic-1297r4j9i2h/Wire-Ropes-Tension-Endurance-Reliability-322.html",
    seen: "read",
  },
  "beer-johnston-friction": {
    title: "Vector Mechanics for Engineers, ch. 8, as recomputed in an open textbook companion",
    author: "F. P. Beer and E. R. Johnston",
    seen: "read on a secondary page",
  },
  "tayal-mechanics": {
    title: "Engineering Mechanics, ch. 7, as recomputed in an open textbook companion",
    author: "A. K. Tayal",
    seen: "read on a secondary page",
  },
  "bevan-machines": {
    title: "The Theory of Machines, ch. 6, as recomputed in an open textbook companion",
    author: "T. Bevan",
    seen: "read on a secondary page",
  },
  "jindal-design": {
    title: "Machine Design, ch. 24, as recomputed in an open textbook companion",
    author: "U. C. Jindal",
    seen: "read on a secondary page",
  },
  "stockman-tests": {
    title: "Pulleys and rings for thin cord (personal test page)",
    author: "H. W. Stockman",
    address: "https://hwstock.org/rope/binerpulley",
    seen: "read",
  },
  "fibre-friction-lecture": {
    title: "Lecture 3.1, Frictional Properties: friction of fibre on fibre (after Morton and Hearle)",
    address: "https://www.scribd.com/document/764285656",
    seen: "read on a secondary page",
  },
  "brown-burgoyne-1999": {
    title:
      "The friction and wear of an aramid yarn sliding against aluminium at low velocity under high contact pressures, Wear 236:315-327 (abstract)",
    author: "I. F. Brown and C. J. Burgoyne",
    year: 1999,
    seen: "read on a secondary page",
  },
  "post-example": {
    title: "Statics and Strength of Materials, example 6.5, p. 120: rope round a fixed post (textbook companion)",
    seen: "read on a secondary page",
  },
  "beer-johnston-hawser": {
    title: "Vector Mechanics for Engineers, 11th edition, problem 8.104: hawser round a bollard (worked solution)",
    author: "F. P. Beer and E. R. Johnston",
    address: "https://www.edu.com/homework-helper/math/question/1323249/",
    seen: "read on a secondary page",
  },
} as const satisfies Record<string, Source>;
