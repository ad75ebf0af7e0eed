import { expect, it } from "vitest";
import { markedNumbers } from "../../src/notebook/marked.js";
import type { Shown } from "../../src/notebook/output.js";
import { formulas } from "../../src/working/catalogue.js";
import { worked } from "../../src/working/worked.js";

const working = worked(formulas.pitchDiameter, { ropeDiameter: 0.01, sheaveDiameter: 0.04 });

it("marks what has a working, and shows each working once", () => {
  const shown: Shown[] = [];
  const { mark, showMarked } = markedNumbers((one) => void shown.push(one));
  expect(mark("pitch", "50 mm", working)).toBe("[[pitch: 50 mm]]");
  expect(mark("bare", "7 N", undefined)).toBe("7 N");
  showMarked();
  showMarked();
  expect(shown).toHaveLength(1);
  expect(JSON.stringify(shown[0])).toContain('"pitch"');
  expect(JSON.stringify(shown[0])).not.toContain('"bare"');
});
