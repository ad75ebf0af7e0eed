import { inflateRawSync } from "node:zlib";
import MiniSearch from "minisearch";
import { describe, expect, it } from "vitest";
import type { ExecutedNotebook } from "../../src/notebook/executed.js";
import { roleList } from "../../src/notebook/roles.js";
import { indexPage } from "../../src/report/indexpage.js";
import { pageSections } from "../../src/report/pagesections.js";
import { readRecord, recordOf, recordText } from "../../src/report/record.js";
import { reportPage } from "../../src/report/reportpage.js";
import { searchDataScript } from "../../src/report/searchdata.js";
import { sample } from "./sample.js";

const page = reportPage(sample, {});
const record = recordOf(sample, page);

function recordFor(name: string, roles?: ExecutedNotebook["roles"]) {
  return recordOf({ ...sample, name, ...(roles && { roles }) }, page);
}

describe("sections of a page", () => {
  const sections = pageSections(page);

  it("have the ids and headings of the page, with its prose as it reads", () => {
    expect(sections[0]).toMatchObject({ id: "", title: "" });
    expect(sections[0]?.text).toContain("you hold about 86 N (8.8 kgf), likely 70 to 105 N");
    const ashore = sections.find(({ id }) => id === "ashore");
    expect(ashore?.title).toBe("Ashore");
    expect(ashore?.text).toMatch(/^You need a hand scale, the boat on its trolley, and a helper\. Hang 10 kg/u);
    for (const { id } of sections.slice(1)) expect(page).toContain(`<h2 id="${id}">`);
  });

  it("leave out code, formulas, tables and what stands on every page", () => {
    const all = sections.map(({ text }) => text).join("\n");
    for (const absent of ["import {", "θ", "871.93", "whips back", "grooved wheel"]) expect(all).not.toContain(absent);
    expect(sections.map(({ id }) => id)).not.toContain("working");
  });

  it("come back from the file of the record", () => {
    expect(readRecord(recordText(record), "a.json")).toEqual(record);
    expect(() => readRecord(recordText({ ...record, sections: [{ id: "a" }] as never }), "a.json")).toThrow(/version/u);
    expect(() => readRecord(recordText({ ...record, roles: ["guest"] as never }), "a.json")).toThrow(/version/u);
  });
});

describe("readers", () => {
  it("are those that the notebook names, each once", () => {
    expect(roleList({ haulbook: { roles: ["coach", "sailor"] } })).toEqual(["coach", "sailor"]);
    for (const none of [undefined, null, {}, { haulbook: null }, { haulbook: {} }])
      expect(roleList(none)).toBeUndefined();
    for (const roles of [[], ["guest"], ["coach", "coach"], "coach", null]) {
      expect(() => roleList({ haulbook: { roles } })).toThrow(/sailor/u);
    }
  });

  it("find their reports on the index; a report without any is for all", () => {
    const records = [recordFor("first", ["coach"]), recordFor("second", ["engineer"]), recordFor("third")];
    const index = indexPage({ records, checks: [], inline: false });
    const listOf = (name: string) =>
      [...(index.split(`<h3>${name}</h3>`)[1]?.split("</ul>")[0] ?? "").matchAll(/href="([^"]*)"/gu)].map(
        ([, to]) => to,
      );
    expect(listOf("Sailor")).toEqual(["third.html"]);
    expect(listOf("Coach")).toEqual(["first.html", "third.html"]);
    expect(listOf("Engineer")).toEqual(["second.html", "third.html"]);
    const without = indexPage({ records: records.slice(0, 2), checks: [], inline: false });
    expect(without).not.toContain("<h3>Sailor</h3>");
    expect(indexPage({ records: records.slice(2), checks: [], inline: false })).not.toContain('id="readers"');
  });
});

describe("search data", () => {
  const script = searchDataScript([record, recordFor("other place")]);
  const packed = /^window\.haulbookSearch = "([\w+/=]*)";\n$/u.exec(script)?.[1] ?? "";
  const data = JSON.parse(inflateRawSync(Buffer.from(packed, "base64")).toString("utf8"));

  it("holds an index that finds a section by any of its words but those that stand everywhere", () => {
    const index = MiniSearch.loadJS(data.index, { fields: data.fields, searchOptions: { combineWith: "AND" } });
    const found = index.search("trolley helper").map(({ id }) => data.places[id].address);
    expect(found.sort()).toEqual([`${sample.name}.html#ashore`, "other%20place.html#ashore"]);
    expect(index.search("the")).toEqual([]);
    expect(index.search("unheard-of")).toEqual([]);
  });

  it("is asked for by a page with files beside it, not by one that carries all", () => {
    const at = (inline: boolean) => indexPage({ records: [record], checks: [], inline });
    expect(at(false)).toContain('<script src="assets/search-data.js" defer></script>');
    expect(at(true)).not.toMatch(/<script|<form/u);
  });
});
