import type { Source } from "./source.js";

/** Sources about people: grip, palm, endurance, fatigue. */
export const crewBibliography = {
  "legg-1999": {
    title:
      "Temporal activity patterns and physiology of dinghy sailors, J Sports Med Phys Fitness 39:315-320 (abstract)",
    author: "S. J. Legg, H. W. Mackie and D. A. Smith",
    year: 1999,
    address: "https://pubmed.ncbi.nlm.nih.gov/10726432/?dopt=Abstract",
    seen: "read",
  },
  "mauthner-grip": {
    title:
      "Study of gripping ability on rope in motion, quoted in: Simulation of climbing and rescue belays, rescue symposium 2006, slide 2",
    author: "K. Mauthner, quoted by T. Moyer",
    year: 2006,
    address:
      "https://pdfslide.us/documents/simulation-of-climbing-and-rescue-belays-v3-tmoyertesting-a-from-current.html",
    seen: "read on a secondary page",
  },
  "mathiowetz-1985": {
    title: "Grip and pinch strength: normative data for adults, Arch Phys Med Rehabil 66:69-74",
    author: "V. Mathiowetz and others",
    year: 1985,
    seen: "read on a secondary page",
  },
  "steiber-2016": {
    title:
      "Strong or weak handgrip? Normative reference values for the German population, PLoS ONE 11:e0163917, table S3",
    author: "N. Steiber",
    year: 2016,
    address: "https://journals.plos.org/plosone/article?id=10.1371/journal.pone.0163917",
    seen: "read on a secondary page",
  },
  "tomkinson-2025": {
    title: "Norms of handgrip strength for 2.4 million adults of 69 countries, J Sport Health Sci 14:101014, table 2",
    author: "G. R. Tomkinson and others",
    year: 2025,
    seen: "read",
  },
  "irwin-2013": {
    title: "A multi-axis hand dynamometer: grip on cylinders of 38 to 76 mm, Ergonomics",
    year: 2013,
    address: "https://pmc.ncbi.nlm.nih.gov/articles/PMC3855544",
    seen: "read",
  },
  "young-2012": {
    title:
      "Hand holding strength on handholds of several orientations, sizes and with gloves, Human Factors 54:316-333 (abstract)",
    author: "J. G. Young and others",
    year: 2012,
    seen: "read on a secondary page",
  },
  "young-2009": {
    title: "Hand breakaway strength on bars, cylinders and rails, Human Factors 51:705-717 (abstract)",
    author: "J. G. Young and others",
    year: 2009,
    seen: "read on a secondary page",
  },
  "fothergill-1991": {
    title: "One- and two-handed static strength in the fore-and-aft plane, Ergonomics 34:563-573 (abstract)",
    author: "D. M. Fothergill, D. W. Grieve and S. T. Pheasant",
    year: 1991,
    address: "https://www.pubmed.gov/1884710/",
    seen: "read on a secondary page",
  },
  "buchholz-1988": {
    title:
      "An investigation of human palmar skin friction and the effects of materials, pinch force and moisture, Ergonomics 31:317-325",
    author: "B. Buchholz, L. J. Frederick and T. J. Armstrong",
    year: 1988,
    address: "https://websites.umich.edu/~tja/frictionDataMethods.html",
    seen: "read on a secondary page",
  },
  "glove-breakaway": {
    title: "Hand breakaway strength model: friction of bare and gloved hands on aluminium",
    address: "https://pmc.ncbi.nlm.nih.gov/articles/PMC8887815",
    seen: "read",
  },
  "frey-law-avin-2010": {
    title:
      "Endurance time is joint-specific: a modelling and meta-analysis investigation, Ergonomics 53:109-129, table 2",
    author: "L. A. Frey-Law and K. G. Avin",
    year: 2010,
    seen: "read on a secondary page",
  },
  "xia-frey-law-2008": {
    title: "A theoretical approach for modeling peripheral muscle fatigue and recovery, J Biomech 41",
    author: "T. Xia and L. A. Frey-Law",
    year: 2008,
    seen: "read on a secondary page",
  },
  "frey-law-2012": {
    title:
      "A three-compartment muscle fatigue model accurately predicts joint-specific endurance times, J Biomech 45:1803-1808, table 1",
    author: "L. A. Frey-Law, J. M. Looft and J. Heitsman",
    year: 2012,
    seen: "read on a secondary page",
  },
  "looft-2018": {
    title:
      "Modification of a three-compartment muscle fatigue model to predict peak torque decline during intermittent tasks, J Biomech 77:16-25 (abstract)",
    author: "J. M. Looft, N. Herkert and L. A. Frey-Law",
    year: 2018,
    seen: "read on a secondary page",
  },
  "fatigue-validation-page": {
    title: "Fatigue model validation: endurance times by law and by model",
    seen: "read on a secondary page",
  },
  "ma-2009": {
    title: "A new simple dynamic muscle fatigue model and its validation, Int J Ind Ergon 39",
    author: "L. Ma, D. Chablat, F. Bennis and W. Zhang",
    year: 2009,
    address: "https://ar5iv.org/html/1104.1190",
    seen: "read",
  },
  "fatigue-rate-2018": {
    title:
      "Maximum endurance time of single subjects: fatigue rates of elbow flexion, Ergonomics 61:806-817 (abstract)",
    year: 2018,
    seen: "read on a secondary page",
  },
} as const satisfies Record<string, Source>;
