import fc from "fast-check";
import type { Figure, Series } from "../../src/notebook/output.js";

const loads = [0, 100, 200, 300, 400];

/** An invented figure with pairs, a plain line, points, limits and a top scale in two panels. */
export const demoFigure: Figure = {
  kind: "figure",
  name: "hand-force",
  title: "A ratchet halves the hand's work",
  caption: "Invented numbers for the demo skiff.",
  altText: "At 400 N the hand holds 180 N without and 90 N with a ratchet.",
  x: { title: "Sheet load [N]" },
  y: { title: "Hand force [N]" },
  top: {
    title: "Wind [kn]",
    marks: [
      { at: 100, label: "8" },
      { at: 225, label: "12" },
      { at: 400, label: "16" },
    ],
  },
  panels: [
    {
      title: "Dry rope",
      series: [
        {
          name: "with ratchet",
          x: loads,
          hauling: [0, 65, 130, 195, 260],
          easing: [0, 22, null, 67, 90],
          highlight: true,
        },
        { name: "plain block", x: loads, hauling: [0, 60, 120, 180, 240], easing: [0, 45, 90, 135, 180] },
        { name: "no friction", x: loads, line: [0, 50, 100, 150, 200] },
        { name: "measured", x: [150, 350], points: [82, 190] },
      ],
      limits: [{ name: "steady hold, one hand", value: 150, low: 110, high: 190 }],
    },
    {
      title: "Wet rope",
      series: [
        {
          name: "with ratchet",
          x: loads,
          hauling: [0, 68, 136, 204, 272],
          easing: [0, 18, 36, 54, 72],
          highlight: true,
        },
        { name: "plain block", x: loads, hauling: [0, 62, 124, 186, 248], easing: [0, 43, 86, 129, 172] },
      ],
    },
  ],
};

const value = fc.option(fc.double({ min: 0, max: 1e4, noNaN: true }), { nil: null, freq: 4 });

const anySeries = (name: string): fc.Arbitrary<Series> =>
  fc.integer({ min: 1, max: 12 }).chain((count) => {
    const values = fc.array(value, { minLength: count, maxLength: count });
    const x = fc.array(fc.double({ min: 0, max: 1e3, noNaN: true }), { minLength: count, maxLength: count });
    const sorted = x.map((list) => [...list].sort((one, other) => one - other));
    return fc.oneof(
      fc.record({ name: fc.constant(name), x: sorted, hauling: values, easing: values }),
      fc.record({ name: fc.constant(name), x: sorted, line: values }),
      fc.record({ name: fc.constant(name), x: sorted, points: values }),
    );
  });

/** Any valid figure. */
export const anyFigure: fc.Arbitrary<Figure> = fc
  .array(
    fc
      .integer({ min: 1, max: 5 })
      .chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => anySeries(`series ${index}`)))),
    { minLength: 1, maxLength: 4 },
  )
  .map((panels) => ({
    ...demoFigure,
    panels: panels.map((series, index) => ({ title: `panel ${index}`, series })),
  }));
