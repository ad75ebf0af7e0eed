/** Sources on cleats, stretch and creep. */
export const cleatBibliography = {
  "albro-liu-1985": {
    title:
      "Effect of groove shape on the frictional hold of a sheave on polyester rope, J. Energy Resour. Technol. 107:103-106",
    author: "C. S. Albro and F. Liu",
    year: 1985,
    address: "http://energyresources.asmedigitalcollection.asme.org/article.aspx?articleid=1412466",
    seen: "read",
  },
  "mooring-rope-properties": {
    title: "Default properties of large mooring ropes: strength, stiffness and mass over the square of the diameter",
    author: "National Renewable Energy Laboratory",
    seen: "read on a secondary page",
  },
  "ericksen-aramid": {
    title: "Creep of aromatic polyamide fibres (abstract), Polymer",
    author: "R. H. Ericksen",
    address: "http://it.alljournals.cn/view_abstract.aspx?aid=733E2313F2E8F3A65FB0846FCDB08C9F",
    seen: "read",
  },
  "omae-hmpe-creep": {
    title: "An investigation on creep and creep rupture of HMPE (abstract), J. Offshore Mech. Arct. Eng. 140(2):021401",
    address: "https://asmedigitalcollection.asme.org/offshoremechanics/article-abstract/140/2/021401/395234/",
    seen: "read",
  },
  "beer-johnston-brake": {
    title: "Vector Mechanics for Engineers, 8th edition, solution 8.19, a lever brake that helps itself",
    author: "F. P. Beer and E. R. Johnston",
    address: "http://www.coursehero.com/file/193146/Soln08019/",
    seen: "read on a secondary page",
  },
  "two-bollards": {
    title: "Worked answer in a students' forum: a rope round two bollards",
    address: "https://www.thestudentroom.co.uk/showthread.php?t=155631",
    seen: "read on a secondary page",
  },
  "statics-strength-companion": {
    title: "Statics and Strength of Materials, chapter 6, as recomputed in a textbook companion",
    seen: "read on a secondary page",
  },
  "bhandari-elements": {
    title: "Design of Machine Elements, chapter 12, as recomputed in a textbook companion (run logs)",
    author: "V. B. Bhandari",
    seen: "read on a secondary page",
  },
  "kannan-transmission": {
    title: "Design of Transmission Systems, lecture 11.3, a block brake that helps itself",
    author: "Kannan",
    address: "https://pdfcoffee.com/download/dts-113-114-problems-in-brake-design-pdf-free.html",
    seen: "read",
  },
  "sarkar-machines": {
    title: "Theory of Machines, chapter 10, a long shoe on a drum, as recomputed in a textbook companion",
    author: "B. K. Sarkar",
    seen: "read on a secondary page",
  },
  "hibbeler-wedge": {
    title: "Engineering Mechanics: Statics, chapter 8, exercise 65, a wedge that must be drawn out",
    author: "R. C. Hibbeler",
    address:
      "https://questionai.com/amp/textbooksolution-120545/3555-book-Engineering-Mechanics-Statics-Chapter-8-Friction",
    seen: "read on a secondary page",
  },
  "hibbeler-ramp": {
    title: "Engineering Mechanics, chapter 8, exercise 1, a crate held on a ramp",
    author: "R. C. Hibbeler",
    address: "https://questionai.com/amp/textbooksolution-120767/876440-book-Engineering-Mechanics-book-Problems",
    seen: "read on a secondary page",
  },
  "climber-rope": {
    title: "University physics, chapter 11: a mountaineer's nylon rope (worked page)",
    author: "F. W. Sears and M. W. Zemansky",
    address:
      "https://studyquestionhub.com/question-textbook/problem-6-bullet-stress-on-a-mountaineers-rope-a-nylon-rope--1117115.html",
    seen: "read on a secondary page",
  },
  "tow-cable": {
    title: "A car pulled out of a ditch by a steel cable of 9.3 m (physics help page)",
    address: "https://www.jiskha.com/display.cgi?id=1354310177",
    seen: "read",
  },
  "truck-cable": {
    title: "A truck pulls a car out of a ditch by a steel cable of 9.1 m (learning page)",
    address: "https://esaral.com/q/a-truck-is-pulling-a-car-out-of-a-ditch-31151",
    seen: "read",
  },
  "hanging-cable": {
    title: "A cable of 500 m under its own weight (worked page)",
    address: "https://mathix.co/problems/physics/cable-stretch-f3f9ac",
    seen: "read",
  },
  "openstax-cable": {
    title: "College Physics, example 5.3, the cable of a cable car, as noted in a textbook companion",
    author: "OpenStax",
    seen: "read on a secondary page",
  },
  "owners-vee-list": {
    title: "Safe loads of V-shaped cleats, a letter to a small-boat owners' list, September 1999",
    year: 1999,
    address: "http://potter-yachters.org/archive/199903/0191.html",
    seen: "read on a secondary page",
  },
  "frye-cam-angles": {
    title: "The wrong angle: why your cam cleats won't hold or release, Practical Sailor",
    author: "D. Frye",
    address:
      "https://www.practical-sailor.com/sails-rigging-deckgear/the-wrong-angle-why-your-cam-cleats-wont-hold-or-release",
    seen: "read",
  },
  "winch-ratios": {
    title: "Winches: ratios and reality, Practical Sailor",
    address: "https://www.practical-sailor.com/sails-rigging-deckgear/winches-ratios-and-reality",
    seen: "read",
  },
  "winches-101": {
    title: "Winches 101, a series on boat handling",
    address: "http://onthewaterwithcaptainfrank.com/series/winches-101/",
    seen: "read",
  },
} as const;
