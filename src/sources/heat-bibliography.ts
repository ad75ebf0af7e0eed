/** Sources on heat, burns and sunlight; part of the bibliography, which checks their form. */
export const heatSources = {
  "carslaw-jaeger": {
    title: "Conduction of Heat in Solids",
    author: "H. S. Carslaw and J. C. Jaeger",
    seen: "from memory",
  },
  "jaeger-1942": {
    title: "Moving sources of heat and the temperature at sliding contacts, J. Proc. R. Soc. N. S. W. 76:203",
    author: "J. C. Jaeger",
    year: 1942,
    seen: "from memory",
  },
  "tian-kennedy-1994": {
    title: "Maximum and average flash temperatures in sliding contacts, J. Tribology 116:167",
    author: "X. Tian and F. E. Kennedy",
    year: 1994,
    seen: "from memory",
  },
  "accelerating-slide": {
    title: "Analysis of surface temperatures within heat flux regions, J. Tribology 139(3):031102 (abstract)",
    year: 2017,
    address: "https://asmedigitalcollection.asme.org/tribology/article-abstract/139/3/031102/451807/",
    seen: "read",
  },
  "nellis-klein": {
    title: "Heat Transfer, Table 3-2, as worked in the help pages of a heat transfer library",
    author: "G. F. Nellis and S. A. Klein",
    seen: "read on a secondary page",
  },
  "semi-infinite-tests": {
    title: "Tests of an open library for chemical engineering, after Geankoplis, example 5.3-1",
    seen: "read",
  },
  "cengel-foot": {
    title: "Solution manual of a thermal-fluid textbook, problem 18-82: bare foot on aluminium and wood",
    address: "https://www.coursepaper.com/solution-manual/978-0078027680-chapter-18-part-4/",
    seen: "read",
  },
  "openstax-brakes": {
    title: "College Physics, example 14.2: brakes of a truck going downhill",
    author: "OpenStax",
    address: "https://www.quizover.com/physics/test/calculating-the-final-temperature-when-heat-is-transferred-between",
    seen: "read on a secondary page",
  },
  "hot-wheels-problem": {
    title: "Hot wheels: brakes of a car of 750 kg, worked problem",
    address: "https://solve.club/problems/hot-wheels/hot-wheels.html",
    seen: "read",
  },
  "iron-brakes-answer": {
    title: "A car moving at 23 m/s brakes to a stop: worked answer",
    address:
      "https://socratic.org/questions/a-750kg-car-moving-at-23m-s-brakes-to-a-stop-the-brakes-contain-about-15-0kg-of-",
    seen: "read",
  },
  "steel-brakes-example": {
    title: "Thermal energy, example 4: brakes of a car of 1200 kg",
    address: "https://senseofstudy.com/physics/concept/thermal-energy/examples/Q-thermal-energy-P02",
    seen: "read",
  },
  "vehicle-brake-exercise": {
    title: "Brake exercise: vehicle of 1500 kg stopped from 60 km/h",
    address: "https://gauthmath.com/solution/Z2cVTCEqQWF/",
    seen: "read on a secondary page",
  },
  "lead-bullet-answer": {
    title: "A lead bullet hits a wooden block: worked homework answer",
    address: "https://assignmentexpert.com/homework-answers/physics/molecular-physics-thermodynamics/question-31347",
    seen: "read",
  },
  "light-and-matter": {
    title: "Gravitational energy converted directly into heat: firefighter on a pole, physics text, example 2.3.2",
    address: "http://www.vias.org/physics/example_2_3_2.html",
    seen: "read",
  },
  "bhandari-log": {
    title: "Run log of a companion to Design of Machine Elements, example 12.14",
    author: "V. B. Bhandari (textbook)",
    seen: "read",
  },
  "morrow-knots": {
    title: "The Morrow Guide to Knots, table of fibres",
    author: "M. Bigon and G. Regazzoni",
    address: "http://online.flipbuilder.com/plld/lnzo/files/basic-html/page13.html",
    seen: "read",
  },
  "morton-hearle": {
    title: "Physical Properties of Textile Fibres, Table 6.1",
    author: "W. E. Morton and J. W. S. Hearle",
    seen: "read on a secondary page",
  },
  "choy-1993": {
    title: "Thermal conductivity of gel-spun polyethylene fibres, J. Polym. Sci. B",
    author: "C. L. Choy, Y. Fei and T. G. Xi",
    year: 1993,
    seen: "read",
  },
  "polymer-fire-table": {
    title: "Table of melting and decomposition temperatures of polymers, after Hilado, Stevens and Kroschwitz",
    address: "http://pslc.ws/fire/howwhy/thermalp.htm",
    seen: "read on a secondary page",
  },
  "cfr-1926-251": {
    title: "29 CFR 1926.251(e): synthetic webbing slings",
    author: "US Department of Labor",
    address: "https://up.codes/s/synthetic-webbing-nylon-polyester-and-polypropylene",
    seen: "read on a secondary page",
  },
  "uv-thesis-2005": {
    title: "Improving UV resistance of high strength fibers (thesis, NC State University)",
    year: 2005,
    address: "https://repository.lib.ncsu.edu/handle/1840.16/1092?show=full",
    seen: "read",
  },
  "henriques-1947": {
    title: "Studies of thermal injury, V: predictability and significance of skin burns, Arch. Pathol. 43:489",
    author: "F. C. Henriques",
    year: 1947,
    seen: "from memory",
  },
  "moritz-henriques": {
    title: "Studies of thermal injury, II: times and temperatures of burns, Am. J. Pathol. 23:695",
    author: "A. R. Moritz and F. C. Henriques",
    year: 1947,
    seen: "read on a secondary page",
  },
  "iso-13732": {
    title: "ISO 13732-1:2006, contact with hot surfaces, 4.2.1.2 (quoted)",
    year: 2006,
    address: "https://ocena-ryzyka.pl/tag/iso-13732-1/",
    seen: "read on a secondary page",
  },
  "infrared-pain": {
    title: "Pain threshold of skin under infrared heating, 2 to 60 s (abstract)",
    address: "https://scilit.net/publications/7ec390b5395e5dd2b468d687686c69c2",
    seen: "read",
  },
  "recknagel-contact": {
    title: "Contact temperature of two surfaces, example of hand and iron plate, after Recknagel and Schramek",
    address: "https://www.schweizer-fn.de/waerme/sonstiges/sonstiges.php",
    seen: "read on a secondary page",
  },
  "work-rate-answer": {
    title: "Work rate of friction on a sliding body: worked homework answer",
    address: "https://assignmentexpert.com/homework-answers/physics/other/question-128963",
    seen: "read",
  },
} as const;
