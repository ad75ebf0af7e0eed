import { describe, expect, it } from "vitest";
import { stiffnessLaws } from "../../src/materials/stiffness.js";
import { surfaces } from "../../src/materials/surfaces.js";
import { coefficients, verdicts } from "../../src/notebook/display.js";
import { compare } from "../../src/published/compare.js";
import { practiceRow } from "../../src/published/published-row.js";
import { checkTables } from "../../src/report/checktable.js";
import { coefficientFold, coefficientSources, verdictList } from "../../src/report/notes.js";
import { sourceList } from "../../src/report/sourcelist.js";

describe("verdicts on a page", () => {
  const page = verdictList(
    verdicts("The halyard", [
      { subject: "2 mm <core>", outcome: "not enough", reason: "breaks at 2 kN & less", change: "take 2.5 mm" },
      { subject: "3 mm", outcome: "can't tell", reason: "the weak end of its range breaks" },
      { subject: "4 mm", outcome: "enough", reason: "twice the load" },
    ]),
  ).text;

  it("say outcome, reason and the nearest change in words, not only in colour", () => {
    expect([...page.matchAll(/<b class="outcome">(.*?)<\/b>/gu)].map(([, word]) => word)).toEqual([
      "not enough",
      "can&#39;t tell",
      "enough",
    ]);
    expect(page).toContain("2 mm &lt;core&gt;");
    expect(page).toContain("Nearest change that passes: take 2.5\u00a0mm");
    expect(page.match(/Nearest change/gu)).toHaveLength(1);
  });
});

describe("coefficients on a page", () => {
  const shown = coefficients("Ropes & rings", {
    "sliding on steel": surfaces.polishedSteel.friction,
    "bending of hemp": stiffnessLaws.whiteHemp.tensionTerm,
  });
  const page = coefficientFold(shown).text;

  it("stand one click away with value, spread, unit and origin", () => {
    expect(page).toMatch(/^<details class="trace"><summary>Where the numbers come from: Ropes &amp; rings<\/summary>/u);
    expect(page).toContain("0.08 to 0.18");
    expect(page).toContain("from memory: polyester rope on smooth steel");
  });

  it("lead to their source at the end of the page", () => {
    expect(page).toContain('href="#source-britannica-1911"');
    expect(coefficientSources(shown)).toEqual(["britannica-1911"]);
    expect(sourceList(coefficientSources(shown)).text).toContain('id="source-britannica-1911"');
  });
});

describe("a rule of the trade", () => {
  const check = compare(practiceRow("groove", "groove ratio", "1.10", "1", "the rope touches below it", () => 1.1));

  it("stands apart, names no source, and counts as no evidence", () => {
    const page = checkTables([check]).text;
    expect(page).toContain("Apart: common practice");
    expect(page).not.toContain("href=");
    expect(check).toMatchObject({ evidence: "none", status: "common practice", holds: true });
    expect(check).not.toHaveProperty("source");
  });
});
