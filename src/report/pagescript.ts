/** Where a page finds plotly, which draws the charts that a reader wants to explore. */
export const plotlyAddress = "assets/plotly.min.js";

/** The element of a page in one file that carries the source of plotly as text. */
export const plotlySourceId = "plotly-source";

/**
 * Script of a report page: folds the contents list on phones, and puts a chart to explore in place of a picture when a
 * reader asks for it. Plain ES2020 without modules, since pages are opened straight from a folder.
 */
export const pageScript = `"use strict";
(function () {
  const narrow = window.matchMedia("(max-width: 719.98px)");
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  let library;

  /** Loads plotly once; in a page that carries it, its source stands as text which the policy of the page allows. */
  function loadLibrary() {
    library = library || new Promise(function (resolve, reject) {
      const script = document.createElement("script");
      const carried = document.getElementById("${plotlySourceId}");
      const finish = function () {
        if (window.Plotly) resolve();
        else { library = undefined; reject(new Error("no drawing library")); }
      };
      script.addEventListener("load", finish);
      script.addEventListener("error", finish);
      if (carried) script.textContent = carried.textContent;
      else script.src = "${plotlyAddress}";
      document.head.append(script);
      if (carried) finish();
    });
    return library;
  }

  /** Puts the colours of the style sheet in place of their roles. */
  function colouring() {
    const style = getComputedStyle(document.documentElement);
    return function (_key, value) {
      const role = typeof value === "string" && /^<([a-z]+[0-9]?)>$/.exec(value);
      return (role && style.getPropertyValue("--" + role[1]).trim()) || value;
    };
  }

  let loading;

  /** Data of a chart: in the page itself, or in the file beside it that holds those of all charts of the page. */
  function loadData(source) {
    if (!source.dataset.file) return source.textContent;
    loading = loading || new Promise(function (resolve, reject) {
      const script = document.createElement("script");
      script.src = source.dataset.file;
      script.onload = resolve;
      script.onerror = function () { loading = undefined; reject(); };
      document.head.append(script);
    });
    return loading.then(function () {
      if (window.haulbookCharts.of !== source.dataset.of) throw new Error("charts of another build");
      return window.haulbookCharts[source.dataset.place];
    });
  }

  function Chart(box) {
    const figure = box.parentElement;
    this.box = box;
    this.button = figure.querySelector("button.explore");
    this.numbers = figure.querySelector("details.numbers");
    this.source = figure.querySelector("script.chart-data");
    this.words = this.button.textContent;
    this.live = undefined;
    this.button.hidden = false;
    this.button.addEventListener("click", this.turn.bind(this));
  }

  Chart.prototype.turn = function () {
    const chart = this;
    if (chart.live) { chart.close(); return; }
    chart.button.disabled = true;
    loadLibrary().then(function () { return loadData(chart.source); }).then(function (text) {
      chart.text = text;
      return chart.open();
    }).catch(function () { chart.fail(); }).then(function () {
      chart.button.disabled = false;
      chart.button.focus({ preventScroll: true });
    });
  };

  Chart.prototype.open = function () {
    this.live = document.createElement("div");
    this.live.className = "live";
    this.live.setAttribute("role", "group");
    this.live.setAttribute("aria-label", this.box.querySelector("desc").textContent);
    this.box.append(this.live);
    this.box.classList.add("exploring");
    this.button.textContent = "Back to the still picture";
    return this.draw();
  };

  Chart.prototype.close = function () {
    window.Plotly.purge(this.live);
    this.live.remove();
    this.live = undefined;
    this.box.classList.remove("exploring");
    this.button.textContent = this.words;
  };

  Chart.prototype.draw = function () {
    const live = this.live;
    const chart = JSON.parse(this.text, colouring());
    const layout = narrow.matches ? chart.layouts.narrow : chart.layouts.wide;
    const numbers = function (position) {
      const list = chart.lists[position];
      return Array.isArray(list) ? list : numbers(list.there).concat(numbers(list.back).slice().reverse());
    };
    const traces = chart.data.map(function (trace) {
      return Object.assign({}, chart.looks[trace.look], trace, { x: numbers(trace.x), y: numbers(trace.y) });
    });
    return window.Plotly.newPlot(live, traces, layout, chart.config).then(function () {
      live.on("plotly_relayout", function (change) { freeTicks(live, change); });
    });
  };

  /** Ticks stand where the picture has them until a reader zooms. */
  function freeTicks(live, change) {
    const free = {};
    Object.keys(change).forEach(function (key) {
      const letter = (/^([xy])axis[0-9]*[.](?:auto)?range/.exec(key) || [])[1];
      if (letter) Object.keys(live.layout).forEach(function (name) {
        const axis = live.layout[name];
        if (name.startsWith(letter + "axis") && axis.side !== "top" && axis.tickmode !== "auto") {
          free[name + ".tickmode"] = "auto";
        }
      });
    });
    if (Object.keys(free).length > 0) window.Plotly.relayout(live, free);
  }

  /** The picture stays, and the numbers are shown. */
  Chart.prototype.fail = function () {
    this.button.textContent = "The chart to explore could not be loaded; its numbers stand below";
    this.numbers.open = true;
  };

  // The controls of a live panel stand there at once; what computes is read when the panel comes into view.
  const panel = document.currentScript && document.currentScript.dataset.panel;
  const form = document.querySelector(".trial form");
  if (panel && form) {
    // A browser that comes back to a page fills its forms in; results and figure stand as the page was built.
    form.reset();
    const trial = form.closest(".trial");
    const show = function (shown) {
      form.hidden = !shown;
      trial.classList.toggle("open", shown);
    };
    show(true);
    const seen = new IntersectionObserver(function (entries) {
      if (entries.some(function (entry) { return entry.isIntersecting; })) read();
    });
    const asked = function () { if (window.location.hash.startsWith("#try:")) read(); };
    const read = function () {
      seen.disconnect();
      window.removeEventListener("hashchange", asked);
      const script = document.createElement("script");
      script.src = panel;
      script.addEventListener("error", function () { show(false); });
      document.head.append(script);
    };
    window.addEventListener("hashchange", asked);
    seen.observe(trial);
    if (window.location.hash.startsWith("#try:")) read();
  }

  // Not every browser unfolds what a link leads into.
  const words = document.querySelector("details.words");
  document.addEventListener("click", function (event) {
    if (words && event.target instanceof Element && event.target.closest("a.word")) words.open = true;
  });

  const contents = document.querySelector("details.contents");
  if (contents && narrow.matches) contents.open = false;
  const charts = Array.from(document.querySelectorAll("figure > .chart"), function (box) { return new Chart(box); });
  [narrow, dark].forEach(function (query) {
    query.addEventListener("change", function () {
      charts.forEach(function (chart) { if (chart.live) chart.draw(); });
    });
  });
})();
`;
