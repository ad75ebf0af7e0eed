/**
 * Script of the search on the page that leads to all reports. Plain ES2020 without modules, since pages are opened
 * straight from a folder; it runs after the search library and its data.
 */
export const searchScript = `"use strict";
(function () {
  const packed = window.haulbookSearch;
  const form = document.querySelector("form.search");
  if (!form || !packed || !window.MiniSearch || !window.DecompressionStream) return;
  const box = form.querySelector("input");
  const count = form.querySelector(".found");
  const list = form.querySelector(".finds");
  const most = 12;
  const before = 70;
  const after = 130;
  let data;
  let index;

  function unpacked() {
    const bytes = Uint8Array.from(atob(packed), function (one) { return one.charCodeAt(0); });
    return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"))).json();
  }

  function begin(known) {
    data = known;
    index = window.MiniSearch.loadJS(data.index, {
      fields: data.fields,
      processTerm: function (term) {
        const low = term.toLowerCase();
        return data.skipped.includes(low) ? null : low;
      },
      searchOptions: { combineWith: "AND", prefix: true, boost: { question: 3, title: 2 } },
    });
    form.hidden = false;
    box.addEventListener("input", look);
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      look();
      const first = list.querySelector("a");
      if (first) first.focus();
    });
    if (box.value !== "") look();
  }

  function escaped(word) {
    return word.replace(/[$()*+.?[\\\\\\]^{|}]/g, "\\\\$&");
  }

  /** A stretch of the text round the first word that was found, with all such words marked. */
  function snippet(text, words) {
    const any = new RegExp("(?<![\\\\p{L}\\\\p{N}])(?:" + words.map(escaped).join("|") + ")(?![\\\\p{L}\\\\p{N}])", "giu");
    const first = words.length > 0 ? text.search(any) : 0;
    let start = Math.max(0, first - before);
    let end = Math.min(text.length, Math.max(first, 0) + after);
    if (start > 0) start = text.indexOf(" ", start) + 1;
    if (end < text.length) end = text.lastIndexOf(" ", end);
    const piece = text.slice(start, end);
    const line = document.createElement("p");
    let done = 0;
    if (start > 0) line.append("… ");
    for (const found of words.length > 0 ? piece.matchAll(any) : []) {
      const mark = document.createElement("mark");
      mark.textContent = found[0];
      line.append(piece.slice(done, found.index), mark);
      done = found.index + found[0].length;
    }
    line.append(piece.slice(done), end < text.length ? " …" : "");
    return line;
  }

  function entry(found) {
    const place = data.places[found.id];
    const item = document.createElement("li");
    const link = document.createElement("a");
    link.href = place.address;
    link.textContent = place.title === "" ? place.question : place.question + " · " + place.title;
    item.append(link, snippet(place.text, found.terms));
    return item;
  }

  /** Words as they are typed; only where these lead nowhere, words that are spelled nearly so. */
  function search(asked) {
    const found = index.search(asked);
    return found.length > 0 ? found : index.search(asked, { fuzzy: 0.2 });
  }

  function look() {
    const asked = box.value.trim();
    const found = asked === "" ? [] : search(asked);
    list.replaceChildren.apply(list, found.slice(0, most).map(entry));
    if (asked === "") count.textContent = "";
    else if (found.length === 0) count.textContent = "Nothing found. Try fewer words, or another word for it.";
    else if (found.length === 1) count.textContent = "1 place";
    else count.textContent = found.length + " places" + (found.length > most ? ", the best " + most + " shown" : "");
  }

  unpacked().then(begin);
})();
`;
