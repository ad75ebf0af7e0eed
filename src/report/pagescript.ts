/**
 * Script of a report page: folds the contents list on phones and draws each chart when it comes near. Plain ES2020
 * without modules, since pages are opened straight from a folder. Works without `IntersectionObserver` as well.
 */
export const pageScript = `"use strict";
(function () {
  const narrow = window.matchMedia("(max-width: 719.98px)");
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  const paper = window.matchMedia("print");
  const printWidth = 660;
  const printHeight = 900;
  const printScale = 0.7;
  let printing = paper.matches;

  /** Puts the colours of the style sheet in place of their roles; on paper always those for paper. */
  function colouring() {
    const style = getComputedStyle(document.documentElement);
    const prefix = printing ? "--print-" : "--";
    return function (_key, value) {
      const role = typeof value === "string" && /^<([a-z]+[0-9]?)>$/.exec(value);
      return (role && style.getPropertyValue(prefix + role[1]).trim()) || value;
    };
  }

  function Chart(box) {
    this.box = box;
    this.text = box.parentElement.querySelector("script.chart-data").textContent;
    this.drawn = undefined;
  }

  /** How many panels the page has room for side by side; 0 on a phone. */
  Chart.prototype.room = function () {
    if (printing) return 2;
    return narrow.matches ? 0 : Math.max(2, Math.floor(this.box.clientWidth / 330));
  };

  Chart.prototype.draw = function () {
    const chart = JSON.parse(this.text, colouring());
    const room = this.room();
    const fitting = chart.arrangements.filter(function (one) { return one.room <= room; });
    let shape = fitting[fitting.length - 1];
    let scale = 1;
    if (printing) {
      // What is taller than a sheet stands in more columns, and smaller.
      if (shape.layout.height > printHeight) {
        shape = chart.arrangements[chart.arrangements.length - 1];
        scale = Math.min(printScale, printHeight / shape.layout.height);
      }
      shape.layout.width = printWidth / scale;
      shape.layout.autosize = false;
    }
    this.box.style.zoom = scale;
    this.drawn = room;
    window.Plotly.react(this.box, chart.data, shape.layout, chart.config);
  };

  /** Without the drawing library the numbers are shown instead. */
  Chart.prototype.fail = function () {
    this.box.textContent = "This chart could not be drawn. Its numbers stand below.";
    this.box.classList.add("missing");
    const numbers = this.box.parentElement.querySelector("details.numbers");
    if (numbers) numbers.open = true;
  };

  function start() {
    const contents = document.querySelector("details.contents");
    if (contents && narrow.matches) contents.open = false;

    const charts = Array.from(document.querySelectorAll(".chart"), function (box) {
      return new Chart(box);
    });
    if (charts.length === 0) return;
    if (!window.Plotly) {
      charts.forEach(function (chart) { chart.fail(); });
      return;
    }

    function redraw() {
      charts.forEach(function (chart) { if (chart.drawn !== undefined) chart.draw(); });
    }
    function toPaper(now) {
      if (printing === now) return;
      printing = now;
      if (now) charts.forEach(function (chart) { chart.draw(); });
      else redraw();
    }
    window.addEventListener("resize", function () {
      charts.forEach(function (chart) {
        if (!printing && chart.drawn !== undefined && chart.drawn !== chart.room()) chart.draw();
      });
    });
    dark.addEventListener("change", redraw);
    paper.addEventListener("change", function (event) { toPaper(event.matches); });
    window.addEventListener("beforeprint", function () { toPaper(true); });
    window.addEventListener("afterprint", function () { toPaper(false); });

    if (printing || !("IntersectionObserver" in window)) {
      charts.forEach(function (chart) { chart.draw(); });
      return;
    }
    const near = new IntersectionObserver(function (entries) {
      entries.forEach(function (entry) {
        if (!entry.isIntersecting) return;
        near.unobserve(entry.target);
        const chart = charts.find(function (one) { return one.box === entry.target; });
        if (chart.drawn === undefined) chart.draw();
      });
    }, { rootMargin: "800px 0px" });
    charts.forEach(function (chart) { near.observe(chart.box); });
  }

  // Only then has the drawing library run, which comes after this script.
  document.addEventListener("DOMContentLoaded", start);
})();
`;
