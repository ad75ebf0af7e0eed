import { deflateRawSync } from "node:zlib";
import MiniSearch from "minisearch";
import { pageAddress, type ReportRecord } from "./record.js";

/** Words that stand everywhere and tell nothing. */
const skipped =
  "a an and are as at be but by for from has have how i if in is it its no not of on one or so than that the their then there they this to was what when where which with you your".split(
    " ",
  );

/** Parts of a place that are looked through. */
const fields = ["question", "title", "text"];

/**
 * The script that carries what a search of all pages needs: the places, and the index of their words, made here so that
 * a browser need not. It is JSON, deflated and written in base64, which takes a third of the room.
 *
 * @param records  records of the reports, in the order in which they are shown
 * @returns JavaScript that sets one name
 * Example: searchDataScript(records).startsWith("window.haulbookSearch = ") → true
 */
export function searchDataScript(records: readonly ReportRecord[]): string {
  const places = records.flatMap(({ name, question, sections }) =>
    sections.map(({ id, title, text }) => ({
      address: `${pageAddress(name)}${id === "" ? "" : `#${encodeURIComponent(id)}`}`,
      question,
      title,
      text,
    })),
  );
  const index = new MiniSearch({
    fields,
    processTerm: (term) => (skipped.includes(term.toLowerCase()) ? null : term.toLowerCase()),
  });
  index.addAll(places.map((place, id) => ({ ...place, id })));
  const data = JSON.stringify({ fields, skipped, places, index });
  return `window.haulbookSearch = "${deflateRawSync(data, { level: 9 }).toString("base64")}";\n`;
}
