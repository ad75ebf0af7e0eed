/** Addresses of the watch itself; no page can have them, since a name in a folder of pages holds no such sign. */
export const scriptAddress = "/~watch/page.js";
export const eventsAddress = "/~watch/events";

/** Key under which a page keeps its place while it reloads. */
const placeKey = "haulbook watch: ";

/**
 * Script of a page that is watched: reloads it when it was built anew, keeps the place and what is unfolded, and shows
 * what failed. Texts enter the page as texts only.
 */
export const watchScript = `"use strict";
(function () {
  const mark = document.currentScript.dataset.mark.split(".");
  const session = mark[0];
  const build = Number(mark[1]);
  const page = decodeURIComponent(location.pathname).slice(1) || "index.html";
  const key = ${JSON.stringify(placeKey)} + page;

  function folds() {
    return Array.from(document.querySelectorAll("details"));
  }

  /** The last named thing above the reader's eye, and how far it lies from there: lengths above it may change. */
  function place() {
    const named = Array.from(document.querySelectorAll("main [id]")).filter(function (one) {
      return one.getClientRects().length > 0 && one.getBoundingClientRect().top <= 1;
    });
    const last = named[named.length - 1];
    return {
      id: last ? last.id : "",
      from: last ? last.getBoundingClientRect().top : 0,
      x: scrollX,
      y: scrollY,
      open: folds().map(function (one) { return one.open; }),
    };
  }

  function reload() {
    try {
      sessionStorage.setItem(key, JSON.stringify(place()));
      history.scrollRestoration = "manual";
    } catch {
      // Without a store the page begins at its top.
    }
    location.reload();
  }

  function restore() {
    let kept;
    try {
      kept = JSON.parse(sessionStorage.getItem(key));
      sessionStorage.removeItem(key);
    } catch {
      return;
    }
    if (!kept) return;
    const all = folds();
    if (all.length === kept.open.length) all.forEach(function (one, index) { one.open = kept.open[index]; });
    const last = kept.id && document.getElementById(kept.id);
    const y = last ? scrollY + last.getBoundingClientRect().top - kept.from : kept.y;
    scrollTo({ left: kept.x, top: y, behavior: "instant" });
    history.scrollRestoration = "auto";
  }

  function element(name, style, text) {
    const made = document.createElement(name);
    made.style.cssText = style;
    if (text !== undefined) made.textContent = text;
    return made;
  }

  let shown;
  let hidden = "";
  function showFailures(failures) {
    const text = JSON.stringify(failures);
    if (shown) shown.remove();
    shown = undefined;
    if (failures.length === 0 || text === hidden) return;
    shown = element("div", "position:fixed;inset:auto 0 0 0;max-height:60vh;overflow:auto;z-index:2147483647;" +
      "box-sizing:border-box;padding:12px 16px;background:#2b1512;color:#fff;border-top:4px solid #d9543f;" +
      "font:14px/1.5 system-ui,sans-serif");
    shown.id = "watch-failures";
    shown.setAttribute("role", "alert");
    const hide = element("button", "float:right;font:inherit;padding:2px 12px", "Hide");
    hide.type = "button";
    hide.addEventListener("click", function () { hidden = text; showFailures(failures); });
    shown.append(hide);
    shown.append(element("strong", "", failures.length === 1 ? "One thing could not be built." : failures.length + " things could not be built."));
    failures.forEach(function (failure) {
      shown.append(element("p", "margin:12px 0 0", failure.place));
      shown.append(element("pre", "margin:4px 0 0;white-space:pre-wrap;overflow-wrap:anywhere;font:13px/1.45 ui-monospace,monospace", failure.text));
    });
    document.body.append(shown);
  }

  function take(state) {
    const changed = Object.entries(state.changed).some(function (entry) {
      return entry[1] > build && (entry[0] === page || entry[0].startsWith("assets/"));
    });
    if (changed || state.session !== session) {
      events.close();
      reload();
    } else showFailures(state.failures);
  }

  if (document.readyState === "complete") restore();
  else addEventListener("load", restore);
  const events = new EventSource(${JSON.stringify(eventsAddress)});
  events.addEventListener("message", function (event) { take(JSON.parse(event.data)); });
  addEventListener("pagehide", function () { events.close(); });
})();
`;
