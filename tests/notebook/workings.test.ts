import { describe, expect, it } from "vitest";
import { answer, question, result, show, table, workings } from "../../src/notebook/display.js";
import { liveHtml } from "../../src/notebook/html.js";
import { markedPieces, plainMarked } from "../../src/notebook/marker.js";
import { shownMediaType } from "../../src/notebook/output.js";
import { checkShown } from "../../src/notebook/shape.js";
import { formulas } from "../../src/working/catalogue.js";
import { worked } from "../../src/working/worked.js";

const band = worked(formulas.deadBand, { haulingForce: 90, easingForce: 4 });
const live = liveHtml(() => "");

describe("workings as data", () => {
  it("travel under their names and come back the same", () => {
    const shown = workings({ "dead-band": band, other: band });
    const taken: unknown[] = [];
    show(shown, { dataMode: true, sink: (type, content) => taken.push(type, content) });
    expect(taken[0]).toBe(shownMediaType);
    expect(checkShown(JSON.parse(JSON.stringify(taken[1])))).toEqual(shown);
  });

  it("are refused with a name that no text can write, or other data", () => {
    for (const name of ["Dead band", "dead_band", "", "-a", "a--b"])
      expect(() => workings({ [name]: band }), name).toThrow();
    expect(() => workings({})).toThrow(/at least one/u);
    expect(() => workings({ band: { steps: [], value: 1 } })).toThrow(/working "band", working/u);
    expect(() => workings({ band: { ...band, value: 85 } })).toThrow(/the value 85/u);
  });

  it("belong to a result whose number they give", () => {
    expect(result({ label: "Dead band", text: "86 N", working: band }).working).toBe(band);
    expect(() => result({ label: "Dead band", text: "87 N", working: band })).toThrow(
      /the number of its working: 86 N/u,
    );
    expect(() => result({ label: "Dead band", text: "86 N", working: {} as typeof band })).toThrow(/working/u);
  });
});

describe("marked numbers in a live notebook", () => {
  it("stand as plain numbers, and their workings fold open", () => {
    expect(live(answer("You hold [[band: 86 N]]."))).toBe("<p><strong>You hold 86 N.</strong></p>");
    expect(live(question({ question: "Why?", answer: "[[band: 86 N]]" }))).toContain("<p>86 N</p>");
    expect(live(table({ caption: "T", columns: ["a"], rows: [["[[band: 86 N]]"]] }))).toContain("<td>86 N</td>");
    const made = live(workings({ band }));
    expect(made).toMatch(/<details><summary[^>]*>Working: band<\/summary>/u);
    expect(made).toContain("<code>= 90 N − 4 N</code>");
    expect(live(result({ label: "Dead band", text: "86 N", working: band }))).toContain("Working: Dead band");
  });

  it("are cut from a text with its other parts kept", () => {
    expect(markedPieces("a [[b: 1 N]][[c: 2]] [d]")).toEqual([
      "a ",
      { name: "b", text: "1 N" },
      { name: "c", text: "2" },
      " [d]",
    ]);
    expect(plainMarked("no marks [here] ]] [[")).toBe("no marks [here] ]] [[");
    expect(() => plainMarked("[[no name]]")).toThrow(/marked number: got "\[\[no name\]\]"/u);
  });
});
