import type { Source } from "./source.js";

/** Sources about motion: hauling, falling, bodies on ropes. */
export const motionBibliography = {
  "dormand-prince-1980": {
    title: "A family of embedded Runge-Kutta formulae, Journal of Computational and Applied Mathematics 6:19-26",
    author: "J. R. Dormand and P. J. Prince",
    year: 1980,
    seen: "from memory",
  },
  "mcmahon-1984": {
    title: "Muscles, Reflexes and Locomotion, p. 24 (as a lecture page gives it)",
    author: "T. A. McMahon",
    year: 1984,
    seen: "read on a secondary page",
  },
  "human-power-page": {
    title: "Human force and power: crank example",
    address: "https://engineeringtoolbox.com/human-force-power-d_2086.html",
    seen: "read",
  },
  "muscle-in-orbit-exercise": {
    title: "Exercise on Hill's equation: best speed of a muscle before and after a year in orbit",
    address: "https://essaysresearch.org/",
    seen: "read",
  },
  "engineering-mechanics-companion": {
    title: "Engineering Mechanics, chapters 15, 16 and 20",
    seen: "read on a secondary page",
  },
  "two-hanging-bodies": {
    title: "Question on two bodies of 2.00 kg and 4.00 kg over a pulley, with printed answers",
    address: "https://www.jiskha.com/display.cgi?id=1328980597",
    seen: "read",
  },
  "motion-practice-questions": {
    title: "Newton's laws of motion, practice questions: 5 kg and 2 kg over a pulley",
    address:
      "https://newtonslawofmotionpracticequestions.examzify.com/question/an-atwood-machine-with-m1-2818fb5420ccb2ae",
    seen: "read",
  },
  "quadratic-drag-exam": {
    title: "Exam problem: terminal speed with quadratic drag",
    address:
      "https://physics.it.com/en/classical-mechanics/friction-and-drag/problems/friction-and-drag-exam-terminal-velocity-quadratic-drag",
    seen: "read",
  },
  "falling-object-lesson": {
    title: "Differential equations: an object that falls in air (worked answer)",
    address: "http://www.intmath.com/Differential-equations/Ans_2.php?a=7",
    seen: "read",
  },
  "irodov-chain": {
    title: "Problems in General Physics, problem 1.124: chain that slides off a table (printed answer)",
    author: "I. E. Irodov",
    address: "https://solveirodov.com/problems/1-124",
    seen: "read",
  },
} as const satisfies Record<string, Source>;
