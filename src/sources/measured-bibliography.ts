import type { Source } from "./source.js";

/** Sources whose measured points stand against the bands and against nothing else. */
export const measuredBibliography = {
  "leyk-2007": {
    title:
      "Hand-grip strength of young men, women and highly trained female athletes, Eur J Appl Physiol 99:415-421 (abstract)",
    author: "D. Leyk and others",
    year: 2007,
    address: "https://www.researchgate.net/publication/6614766",
    seen: "read",
  },
  "gonzales-2007": {
    title:
      "Absence of gender differences in the fatigability of the forearm muscles during intermittent isometric handgrip exercise, J Sports Sci Med 6:98-105 (abstract)",
    author: "J. U. Gonzales and B. W. Scheuermann",
    year: 2007,
    address: "https://jssm.org/jssm-06-98.xml%3EFulltext",
    seen: "read",
  },
  "dodds-2014": {
    title:
      "Grip strength across the life course: normative data from twelve British studies, PLoS ONE 9:e113637 (abstract)",
    author: "R. M. Dodds and others",
    year: 2014,
    address: "https://journals.plos.org/plosone/article?id=10.1371/journal.pone.0113637",
    seen: "read",
  },
  "handgrip-work-2014": {
    title: "Maximal work rate during handgrip exercise, J Physiol 592:4775-4788, table 4",
    year: 2014,
    address: "https://pmc.ncbi.nlm.nih.gov/articles/PMC4253476/table/tbl4",
    seen: "read",
  },
  "peoples-2018": {
    title:
      "Forearm isometric fatigue-resistance in climbers, resistance trained athletes and aerobically trained controls (abstract of a congress)",
    author: "G. E. Peoples, J. Nolan and P. L. McLennan",
    year: 2018,
    address: "https://scholars.uow.edu.au/display/publication130440",
    seen: "read",
  },
  "kwak-2023": {
    title:
      "Sustainability and perceptual responses during handgrip holds to failure at two fatigue thresholds, Eur J Appl Physiol (abstract)",
    author: "M. Kwak, P. J. Succi, B. Benitez and H. C. Bergstrom",
    year: 2023,
    address:
      "https://www.springermedicine.com/fatigue/climate-change/sustainability-and-perceptual-responses-during-handgrip-holds-to/25508640",
    seen: "read",
  },
  "yamaji-grip": {
    title: "Sex differences and properties of the decreasing force during sustained static grip (abstract)",
    author: "S. Yamaji, S. Demura and M. Nakada",
    address:
      "https://philo.alljournals.cn/view_abstract.aspx?aid=04336F6C0AB85097A44BE936BA9B0323&pcid=C94E3F05CFD5644C9DAA97BEB9148D4784B6B22E64D84F4E",
    seen: "read on a secondary page",
  },
  "knot-test-2017": {
    title: "Loops in four ropes of 10 mm, broken on a calibrated machine; sailing magazine, November 2017, p. 70",
    year: 2017,
    address: "https://issuhub.com/view/index/7295?pageIndex=70",
    seen: "read",
  },
  "knot-test-forum": {
    title:
      "Ten samples of a thin braid, a bowline at one end and a figure of eight at the other (first post of a thread)",
    address: "https://forums.sailinganarchy.com/threads/rope-knot-splice-load-testing.154025/",
    seen: "read",
  },
  "jacobson-knots": {
    title: "Knots for the Outdoors, chapter 2: efficiency of knots, tests of a rope-maker of 1946",
    author: "C. Jacobson",
    address: "https://online.flipbuilder.com/rsyvs/kcqd/files/basic-html/page24.html",
    seen: "read on a secondary page",
  },
} as const satisfies Record<string, Source>;
