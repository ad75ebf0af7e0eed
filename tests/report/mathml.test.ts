import { describe, expect, it } from "vitest";
import { formulaHtml } from "../../src/report/formula.js";
import { lightMathml } from "../../src/report/mathml.js";

describe("light MathML", () => {
  it.each([
    ["drops rows that hold nothing together", "<mrow><mrow></mrow><mi>a</mi></mrow>", "<mi>a</mi>"],
    [
      "keeps the row of a numerator",
      "<mfrac><mrow><mi>a</mi><mi>b</mi></mrow><mn>2</mn></mfrac>",
      "<mfrac><mrow><mi>a</mi><mi>b</mi></mrow><mn>2</mn></mfrac>",
    ],
    [
      "keeps an empty base and the row of brackets",
      '<mi>a</mi><msup><mrow></mrow><mrow><mo fence="true">(</mo><mi>b</mi><mo fence="true">)</mo></mrow></msup>',
      "<mi>a</mi><msup><mrow></mrow><mrow><mo>(</mo><mi>b</mi><mo>)</mo></mrow></msup>",
    ],
    [
      "keeps a minus before a row from becoming a difference",
      "<mi>a</mi><mo>=</mo><mrow><mo>−</mo><mi>b</mi></mrow>",
      "<mi>a</mi><mo>=</mo><mrow><mo>−</mo><mi>b</mi></mrow>",
    ],
    ["leaves out the TeX", '<semantics><mi>a</mi><annotation encoding="t">a</annotation></semantics>', "<mi>a</mi>"],
    ["spells signs of HTML out", "<mo>&lt;</mo>", "<mo>&lt;</mo>"],
    ["makes a number with its unit a number", "<mo>=</mo><mtext>3 N</mtext>", "<mo>=</mo><mn>3 N</mn>"],
  ])("%s", (_, given, light) => expect(lightMathml(`<math>${given}</math>`)).toBe(`<math>${light}</math>`));

  it("says what the formula said", () => {
    const formula = "\\frac{-a + \\left(b - 2\\right)^{2}}{\\sqrt{c \\cdot d}} = e^{\\mu \\theta}";
    const { text } = formulaHtml({ formula, place: "a.ipynb, cell 1", display: true });
    expect(text.replaceAll(/<[^>]*>/gu, "")).toBe("−a+(b−2)2c⋅d=eμθ");
    expect(text).toContain('<math display="block"><mfrac>');
  });
});
