import { ValueError } from "../quantity/errors.js";
import { checkAgreement } from "../working/agreement.js";
import { checkWorking } from "../working/working-check.js";
import { isMarkerName } from "./marker.js";
import { measures } from "./measure.js";
import type { DrawnReeving, Shown } from "./output.js";
import { reevingDrawing } from "./reeving/reeving-drawing.js";

type Fields = Readonly<Record<string, unknown>>;

function refuse(quantity: string, value: unknown, allowed: string, advice: string): ValueError {
  return new ValueError({ quantity, value: short(value), allowed, advice });
}

function short(value: unknown): string {
  const text = typeof value === "number" ? String(value) : (JSON.stringify(value) ?? String(value));
  return text.length > 80 ? `${text.slice(0, 80)}…` : text;
}

function fields(where: string, value: unknown): Fields {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return value as Fields;
  throw refuse(where, value, "an object", "Use the builder functions.");
}

function text(where: string, value: unknown): string {
  if (typeof value === "string" && value.trim() !== "") return value;
  throw refuse(where, value, "a text that is not empty", "Write it in plain words.");
}

function finite(where: string, value: unknown): number {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  throw refuse(where, value, "a finite number", "Leave out what could not be computed.");
}

function list(where: string, value: unknown): readonly unknown[] {
  if (Array.isArray(value) && value.length > 0) return value;
  throw refuse(
    where,
    value,
    "a list with at least one entry",
    "Leave the whole thing out when there is nothing to show.",
  );
}

function oneOf(where: string, value: unknown, allowed: readonly unknown[]): void {
  if (allowed.includes(value)) return;
  throw refuse(where, value, allowed.map((entry) => JSON.stringify(entry)).join(", "), "Choose one of these.");
}

function numbersOrGaps(where: string, value: unknown, length: number): void {
  const numbers = list(where, value);
  if (numbers.length !== length) {
    throw refuse(
      `${where}, number of values`,
      numbers.length,
      `${length}, as many as x has`,
      "Give one value per x; null leaves a gap.",
    );
  }
  for (const [index, number] of numbers.entries())
    if (number !== null) finite(`${where}[${index}], a number or null`, number);
}

const curves = ["hauling", "easing", "line", "points"] as const;

function checkSeries(where: string, value: unknown): void {
  const series = fields(where, value);
  const name = `${where} "${text(`${where}, name`, series.name)}"`;
  const x = list(`${name}, x`, series.x);
  for (const [index, number] of x.entries()) finite(`${name}, x[${index}]`, number);
  const given = curves.filter((curve) => series[curve] !== undefined);
  if (given.length === 0)
    throw refuse(name, "no values", `at least one of ${curves.join(", ")}`, "Give the curve its values.");
  for (const curve of given) numbersOrGaps(`${name}, ${curve}`, series[curve], x.length);
  if (series.bands !== undefined) checkBands(name, series, x.length);
  if (series.worked !== undefined) checkWorked(name, series);
}

/** A working belongs to a point of its curve. */
function checkWorked(name: string, series: Fields): void {
  for (const [curve, value] of Object.entries(fields(`${name}, worked`, series.worked))) {
    const where = `${name}, worked ${curve}`;
    oneOf(`${where}, its curve`, series[curve] === undefined ? "none" : curve, curves);
    const { row, working, changes, from } = fields(where, value);
    checkWorking(where, working);
    text(`${where}, what changes`, changes);
    if (from !== undefined) finite(`${where}, from`, from);
    const points: unknown = series[curve];
    if (!Array.isArray(points) || typeof points[Number(row)] !== "number")
      throw refuse(`${where}, row`, row, "a point of the curve", "Make it with curveWorking(…).");
  }
}

/** A band belongs to a curve of its series, and its low end is not above its high end. */
function checkBands(name: string, series: Fields, length: number): void {
  for (const [curve, value] of Object.entries(fields(`${name}, bands`, series.bands))) {
    const where = `${name}, band of ${curve}`;
    oneOf(`${where}, its curve`, series[curve] === undefined ? "none" : curve, ["hauling", "easing", "line"]);
    const { low, high } = fields(where, value);
    numbersOrGaps(`${where}, low`, low, length);
    numbersOrGaps(`${where}, high`, high, length);
    const highs = high as readonly (number | null)[];
    for (const [index, end] of (low as readonly (number | null)[]).entries()) {
      const top = highs[index] ?? null;
      if (end !== null && top !== null && end > top)
        throw refuse(`${where}[${index}]`, [end, top], "low ≤ high", "Swap the ends.");
    }
  }
}

function checkLimit(where: string, value: unknown): void {
  const limit = fields(where, value);
  text(`${where}, name`, limit.name);
  const at = finite(`${where}, value`, limit.value);
  const low = limit.low === undefined ? at : finite(`${where}, low`, limit.low);
  const high = limit.high === undefined ? at : finite(`${where}, high`, limit.high);
  if (low > at || high < at)
    throw refuse(where, [low, at, high], "low ≤ value ≤ high", "Put the value inside its band.");
}

function checkAxis(where: string, value: unknown): void {
  const axis = fields(where, value);
  text(`${where}, title`, axis.title);
  const low = axis.minimum === undefined ? Number.NEGATIVE_INFINITY : finite(`${where}, minimum`, axis.minimum);
  const high = axis.maximum === undefined ? Number.POSITIVE_INFINITY : finite(`${where}, maximum`, axis.maximum);
  if (low >= high) throw refuse(where, [low, high], "minimum below maximum", "Swap them or leave one out.");
}

const mostSeries = 5;

function checkPanel(where: string, value: unknown, several: boolean): void {
  const panel = fields(where, value);
  if (several) text(`${where}, title`, panel.title);
  else oneOf(`${where}, title (a text)`, typeof panel.title, ["string"]);
  const series = list(`${where}, series`, panel.series);
  if (series.length > mostSeries) {
    throw refuse(
      `${where}, number of series`,
      series.length,
      `at most ${mostSeries}`,
      "Split the figure into several panels.",
    );
  }
  series.forEach((entry, index) => {
    checkSeries(`${where}, series ${index + 1}`, entry);
  });
  const names = series.map((entry) => fields(where, entry).name);
  if (new Set(names).size < names.length)
    throw refuse(`${where}, series names`, names, "each once", "Name the series apart.");
  const highlighted = series.filter((entry) => fields(where, entry).highlight === true).length;
  if (highlighted > 1)
    throw refuse(`${where}, highlighted series`, highlighted, "0 or 1", "Highlight the one the figure is about.");
  if (panel.limits !== undefined) {
    if (!Array.isArray(panel.limits))
      throw refuse(`${where}, limits`, panel.limits, "a list", "Leave it out when there is none.");
    panel.limits.forEach((entry: unknown, index) => {
      checkLimit(`${where}, limit ${index + 1}`, entry);
    });
  }
}

function slug(where: string, value: unknown): string {
  const name = text(where, value);
  if (/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(name)) return name;
  throw refuse(where, name, "lower case letters, digits and single hyphens", 'For example "hand-force".');
}

/** The line is checked by the solver itself: what it refuses cannot be drawn. */
function checkReeving(shown: Fields): void {
  const where = `drawing "${slug("name of the drawing", shown.name)}"`;
  for (const key of ["title", "caption"] as const) text(`${where}, ${key}`, shown[key]);
  if (shown.altText !== undefined) text(`${where}, altText`, shown.altText);
  if (typeof shown.line !== "object" || shown.line === null)
    throw refuse(`${where}, line`, shown.line, "a line, or a list of lines", "Give rope and stations.");
  finite(`${where}, load`, shown.load);
  if (shown.words !== undefined)
    for (const [end, word] of Object.entries(fields(`${where}, words`, shown.words))) {
      oneOf(`${where}, end of the line`, end, ["load", "hand"]);
      text(`${where}, word for the ${end}`, word);
    }
  reevingDrawing(shown as unknown as DrawnReeving);
}

function checkFigure(figure: Fields): void {
  const name = slug("figure name", figure.name);
  const where = `figure "${name}"`;
  for (const key of ["title", "caption", "altText"] as const) text(`${where}, ${key}`, figure[key]);
  checkAxis(`${where}, x`, figure.x);
  checkAxis(`${where}, y`, figure.y);
  if (figure.top !== undefined) {
    const top = fields(`${where}, top`, figure.top);
    text(`${where}, top, title`, top.title);
    for (const entry of list(`${where}, top, marks`, top.marks)) {
      const mark = fields(`${where}, top mark`, entry);
      finite(`${where}, top mark, at`, mark.at);
      text(`${where}, top mark, label`, mark.label);
    }
  }
  const panels = list(`${where}, panels`, figure.panels);
  panels.forEach((panel, index) => {
    checkPanel(`${where}, panel ${index + 1}`, panel, panels.length > 1);
  });
}

function checkTable(table: Fields): void {
  const where = `table "${text("table caption", table.caption)}"`;
  const columns = list(`${where}, columns`, table.columns);
  columns.forEach((column, index) => {
    oneOf(`${where}, column ${index + 1} (a text)`, typeof column, ["string"]);
  });
  if (!Array.isArray(table.rows)) throw refuse(`${where}, rows`, table.rows, "a list", "Give a list of rows.");
  table.rows.forEach((row: unknown, index) => {
    const cells = list(`${where}, row ${index + 1}`, row);
    if (cells.length !== columns.length) {
      throw refuse(
        `${where}, cells of row ${index + 1}`,
        cells.length,
        `${columns.length}, as many as columns`,
        "Fill every column.",
      );
    }
    for (const cell of cells)
      if (typeof cell !== "string") finite(`${where}, row ${index + 1}, a text or number`, cell);
  });
}

function checkChecks(checks: Fields): void {
  const where = `checks "${text("checks title", checks.title)}"`;
  list(`${where}, results`, checks.results).forEach((entry, index) => {
    const row = fields(`${where}, row ${index + 1}`, entry);
    for (const key of ["id", "quantity", "unit", "evidence", "status", "place"])
      text(`${where}, row ${index + 1}, ${key}`, row[key]);
    for (const key of ["computed", "expected", "allowed", "deviation"])
      finite(`${where}, row ${index + 1}, ${key}`, row[key]);
    oneOf(`${where}, row ${index + 1}, holds`, row.holds, [true, false]);
  });
}

function checkVerdicts(shown: Fields): void {
  const where = `verdicts "${text("caption of the verdicts", shown.caption)}"`;
  list(`${where}, list`, shown.verdicts).forEach((entry, index) => {
    const verdict = fields(`${where}, verdict ${index + 1}`, entry);
    for (const key of ["subject", "reason"]) text(`${where}, verdict ${index + 1}, ${key}`, verdict[key]);
    oneOf(`${where}, verdict ${index + 1}, outcome`, verdict.outcome, ["enough", "can't tell", "not enough"]);
    if (verdict.change !== undefined) text(`${where}, verdict ${index + 1}, change`, verdict.change);
  });
}

function checkCoefficients(shown: Fields): void {
  const where = `coefficients "${text("caption of the coefficients", shown.caption)}"`;
  list(`${where}, list`, shown.entries).forEach((entry, index) => {
    const { name, record } = fields(`${where}, entry ${index + 1}`, entry);
    const known = fields(`${where}, record of "${text(`${where}, name ${index + 1}`, name)}"`, record);
    for (const key of ["unit", "status"]) text(`${where}, "${name}", ${key}`, known[key]);
    for (const key of ["value", "low", "high"]) finite(`${where}, "${name}", ${key}`, known[key]);
  });
}

function checkWorkings(shown: Fields): void {
  const names = list("workings", shown.entries).map((entry, index) => {
    const { name, working } = fields(`workings, entry ${index + 1}`, entry);
    const called = text(`workings, name ${index + 1}`, name);
    if (!isMarkerName(called))
      throw refuse("name of a working", called, "lower case letters, digits and single hyphens", 'For example "hold".');
    checkWorking(`working "${called}"`, working);
    return called;
  });
  if (new Set(names).size < names.length) throw refuse("names of the workings", names, "each once", "Name them apart.");
}

function checkControl(where: string, value: unknown, setting: unknown): void {
  const control = fields(where, value);
  text(`${where}, label`, control.label);
  oneOf(`${where}, kind`, control.kind, ["range", "choice", "switch"]);
  if (control.kind === "switch") oneOf(`${where}, setting`, setting, [true, false]);
  else if (control.kind === "choice") oneOf(`${where}, setting`, setting, optionValues(where, control.options));
  else checkRange(where, control, setting);
}

function optionValues(where: string, options: unknown): string[] {
  return list(`${where}, options`, options).map((entry, index) => {
    const option = fields(`${where}, option ${index + 1}`, entry);
    text(`${where}, option ${index + 1}, label`, option.label);
    return text(`${where}, option ${index + 1}, value`, option.value);
  });
}

function checkRange(where: string, control: Fields, setting: unknown): void {
  oneOf(`${where}, measure`, control.measure, measures);
  const [least, most] = [finite(`${where}, minimum`, control.minimum), finite(`${where}, maximum`, control.maximum)];
  const at = finite(`${where}, setting`, setting);
  const step = finite(`${where}, step`, control.step);
  if (!(least <= at && at <= most && least < most && step > 0))
    throw refuse(
      where,
      [least, at, most, step],
      "minimum ≤ setting ≤ maximum, step above 0",
      "Set it within its range.",
    );
}

function checkPanelOutput(panel: Fields): void {
  const where = `panel "${text("model of the panel", panel.model)}"`;
  if (panel.facts !== undefined)
    text(`${where}, what its facts are about`, fields(`${where}, facts`, panel.facts).about);
  const settings = fields(`${where}, settings`, panel.settings);
  const controls = Object.entries(fields(`${where}, controls`, panel.controls));
  list(`${where}, controls`, controls);
  for (const [name, control] of controls) checkControl(`${where}, control "${name}"`, control, settings[name]);
  list(`${where}, results`, panel.results).forEach((entry, index) => {
    const result = fields(`${where}, result ${index + 1}`, entry);
    const label = text(`${where}, result ${index + 1}, label`, result.label);
    text(`${where}, "${label}", text`, result.text);
    oneOf(`${where}, "${label}", measure`, result.measure, measures);
    for (const key of ["value", "low", "high"])
      if (key === "value" || result[key] !== undefined) finite(`${where}, "${label}", ${key}`, result[key]);
    if (result.range !== undefined) text(`${where}, "${label}", range`, result.range);
  });
  checkFigure(fields(`${where}, figure`, panel.figure));
  text(`${where}, sentence`, panel.sentence);
}

/** A text that has its place on a sheet of paper. */
function shortText(where: string, value: unknown, most: number): string {
  const given = text(where, value);
  if (given.length <= most) return given;
  throw refuse(`${where}, length`, given.length, `at most ${most} characters`, "Say it in fewer words.");
}

function countOf(where: string, value: unknown, least: number, most: number): readonly unknown[] {
  const entries = list(where, value);
  if (entries.length >= least && entries.length <= most) return entries;
  throw refuse(`${where}, number`, entries.length, `${least} to ${most}`, "The table has to fit on a sheet of paper.");
}

function checkRule(rule: Fields): void {
  const said = shortText("rule", rule.text, 180);
  shortText(`rule "${said}", range`, rule.range, 120);
}

function checkSheetTable(sheet: Fields): void {
  const where = `table to fill in "${shortText("caption of the table to fill in", sheet.caption, 180)}"`;
  const columns = countOf(`${where}, columns`, sheet.columns, 2, 8);
  columns.forEach((column, index) => {
    shortText(`${where}, column ${index + 1}`, column, 24);
  });
  countOf(`${where}, rows`, sheet.rows, 1, 8).forEach((row, index) => {
    const at = `${where}, row ${index + 1}`;
    if (!Array.isArray(row)) throw refuse(at, row, "a list of texts", "Give an empty list for a blank row.");
    if (row.length > columns.length)
      throw refuse(`${at}, texts`, row.length, `at most ${columns.length}, as many as columns`, "Leave some out.");
    for (const cell of row) oneOf(`${at} (a text)`, typeof cell, ["string"]);
    for (const cell of row) if (cell !== "") shortText(`${at}, a text`, cell, 24);
  });
}

const kinds = {
  panel: checkPanelOutput,
  figure: checkFigure,
  reeving: checkReeving,
  table: checkTable,
  checks: checkChecks,
  verdicts: checkVerdicts,
  coefficients: checkCoefficients,
  workings: checkWorkings,
  rule: checkRule,
  sheetTable: checkSheetTable,
  result: (result: Fields) => {
    const label = text("result label", result.label);
    text(`result "${label}", text`, result.text);
    if (result.range !== undefined) text(`result "${label}", range`, result.range);
    if (result.working === undefined) return;
    checkAgreement(`result "${label}"`, String(result.text), checkWorking(`result "${label}"`, result.working));
  },
  title: (title: Fields) => void text("title", title.text),
  answer: (answer: Fields) => void text("answer", answer.text),
  question: (question: Fields) => {
    text("question", question.question);
    text("answer to the question", question.answer);
  },
} satisfies Record<Shown["kind"], (value: Fields) => void>;

/**
 * Returns the value when it is something that a report can show, and refuses it loudly otherwise.
 *
 * @param value  anything
 * @returns the value itself
 * @throws ValueError that names the part that does not fit
 * Example: checkShown({ kind: "answer", text: "About 80 N." }).kind → "answer"
 */
export function checkShown(value: unknown): Shown {
  const shown = fields("shown thing", value);
  oneOf("kind of the shown thing", shown.kind, Object.keys(kinds));
  kinds[shown.kind as Shown["kind"]](shown);
  return value as Shown;
}
