import { surfaces } from "../../src/materials/surfaces.js";
import type { ExecutedNotebook } from "../../src/notebook/executed.js";
import { figures, printForce } from "../../src/quantity/print.js";
import { tackle } from "../../src/reeving/tackle.js";
import { formulas } from "../../src/working/catalogue.js";
import { tackleBalance } from "../../src/working/tackle-balance.js";
import { worked } from "../../src/working/worked.js";
import { sample } from "./sample.js";

const air = worked(formulas.airDensity, { pressure: 101_325, temperature: 288.15 });
const apparent = worked(formulas.apparentSpeed, { windSpeed: 6.2, trueWindAngle: 1.2, boatSpeed: 3 });
const sail = worked(formulas.ruleLoad, {
  loadCoefficient: { value: 1.2, low: 0.9, high: 1.5 },
  airDensity: air,
  apparentWindSpeed: apparent,
  sailArea: 7,
});
const quarter = worked(formulas.capstan, {
  frictionCoefficient: surfaces.anodised.friction,
  wrapAngle: Math.PI / 2,
});

/** Wind, load, ring and hand: one number with its whole chain. */
export const hold = worked(formulas.easingTurn, { tensionRatio: quarter, loadTension: sail, constantDrag: 2 });

/** A purchase whose forces a solver found. */
export const purchase = tackleBalance({
  reeving: tackle({
    parts: 3,
    hauledFrom: "fixed",
    turn: { kind: "measured", name: "sheave", tensionRatio: 1.09, drag: 0.5 },
  }),
  rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } },
  load: sail,
  direction: "hauling",
});

const newtons = (value: number) => printForce(value);

/** A page with numbers that unfold in its answer, prose, table, results and questions. Its values are invented. */
export const workedSample: ExecutedNotebook = {
  name: "worked",
  cells: [
    {
      type: "markdown",
      number: 1,
      source: `# How hard do I have to hold?\n\nThe ring alone turns the load into [[hold: ${figures(hold.value)} N]]. A mark in code stays: \`[[hold: x]]\`, and so does \\[[1, 2]].`,
    },
    {
      type: "code",
      number: 2,
      source: "show(workings({ hold, purchase }));",
      outputs: [
        {
          kind: "workings",
          entries: [
            { name: "hold", working: hold },
            { name: "purchase", working: purchase },
          ],
        },
        { kind: "answer", text: `You hold [[hold: ${newtons(hold.value)}]], and haul more.` },
        ...sample.cells
          .flatMap((cell) => (cell.type === "code" ? cell.outputs.filter(({ kind }) => kind === "figure") : []))
          .slice(0, 1),
      ],
    },
    { type: "markdown", number: 3, source: "## What the purchase does\n\nThree parts share the load:" },
    {
      type: "code",
      number: 4,
      source: "table(); result();",
      outputs: [
        {
          kind: "table",
          caption: "Hand force",
          columns: ["What", "Force [N]"],
          rows: [
            ["ring, easing", `[[hold: ${figures(hold.value)}]]`],
            ["purchase, hauling", `[[purchase: ${figures(purchase.value)}]]`],
          ],
        },
        {
          kind: "result",
          label: "Pull on the purchase",
          text: newtons(purchase.value),
          range: "one middle value",
          working: purchase,
        },
        {
          kind: "question",
          question: "And without the ring?",
          answer: `More than [[hold: ${figures(hold.value)} N]].`,
        },
      ],
    },
  ],
};
