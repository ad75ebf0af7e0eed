import { describe, expect, it } from "vitest";
import { reportPage } from "../../src/report/reportpage.js";
import { runHarness } from "../notebook/harness.js";

const harness = runHarness();

const preparation = `import {
  answer, formula, formulas, figures, prepareLine, printForce, question, result, show, surfaces, table, tackle, tackleBalance, worked, workings,
} from "haulbook";
import type { Line, Measured, Rope, Working } from "haulbook";

const rope: Rope = { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };
const sheave: Measured = { kind: "measured", name: "sheave", tensionRatio: 1.09 };
const ring = worked(formulas.capstan, { frictionCoefficient: surfaces.anodised.friction, wrapAngle: Math.PI / 2 });
const load = 300;
const hold: Working = worked(formulas.easingTurn, { tensionRatio: ring, loadTension: load, constantDrag: 0 });
`;

const page = `const reeving = tackle({ parts: 3, hauledFrom: "fixed", turn: sheave });
const line: Line = { rope, stations: [{ kind: "tackle", name: "purchase", reeving }] };
const haul = tackleBalance({ reeving, rope, load, direction: "hauling" });
const spare = formula({
  id: "spare", title: "What is left of a grip", text: "maximumGrip - handTension",
  symbols: { maximumGrip: "maximumGrip", handTension: "handTension" }, result: "gripForce", source: "statics", valid: "this page",
});
show(workings({ hold, haul, spare: worked(spare, { maximumGrip: { value: 400, low: 350, high: 450 }, handTension: hold }) }));
show(answer(\`You hold [[hold: \${printForce(hold.value)}]].\`));
show(table({ caption: "Forces", columns: ["What", "N"], rows: [["haul", \`[[haul: \${figures(prepareLine(line).handForces(load).hauling)}]]\`]] }));
show(result({ label: "Hold", text: printForce(hold.value), working: hold }));
show(question({ question: "What is left?", answer: \`[[spare: \${figures(400 - hold.value)} N]]\` }));
`;

describe("a notebook whose numbers unfold", () => {
  it("compiles in the kernel, runs, and becomes a page", async () => {
    const file = harness.scratch.notebook("numbers", [
      { type: "markdown", source: "# What unfolds?" },
      preparation,
      page,
    ]);
    const executed = await harness.run(file);
    const made = reportPage(executed, {});
    // Four numbers of the page, and two in panels that lead to earlier steps.
    expect(made.match(/<button(?: class="worked")? popovertarget="[^"]+">/gu)).toHaveLength(6);
    expect(made.match(/ popover role="group"/gu)).toHaveLength(4);
    expect(made).toMatch(/worked out: <button [^>]*>A line that slides round something<\/button>/u);
    expect(made).toContain("given, 350 to 450 N");
  });

  it("fails at the cell whose formula has a number too few", async () => {
    const file = harness.scratch.notebook("short", [
      { type: "markdown", source: "# What unfolds?" },
      `import { formulas, worked } from "haulbook";\nworked(formulas.capstan, { wrapAngle: 1 });\n`,
    ]);
    const error = await harness.failure(file);
    expect(error.message).toMatch(/frictionCoefficient/u);
  });
});
