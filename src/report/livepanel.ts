import type { Control, SettingValue } from "../notebook/control.js";
import { chosenUnits, firstUnits, type Measure, printed, type Units } from "../notebook/measure.js";
import type { LivePanel, LiveResult } from "../notebook/output.js";
import { type Content, html, type Markup } from "./html.js";
import { builtFigure } from "./livefigure.js";
import { resultList } from "./results.js";

/** Most letters of all options together that stand side by side as radio buttons. */
const mostLetters = 34;

/** Results of a panel, one below the other. */
export function liveResults(results: readonly LiveResult[]): Markup {
  return resultList(
    results.map(({ label, text, range }) => ({ label, value: text, range: range && `likely ${range}` })),
  );
}

function radios(
  name: string,
  legend: string,
  options: readonly { readonly value: string; readonly label: string }[],
  chosen: string,
): Markup {
  return html`<fieldset class="choice"><legend>${legend}</legend>
${options.map(
  ({ value, label }) =>
    html`<label><input type="radio" name="${name}" value="${value}"${value === chosen && html` checked`}> ${label}</label>\n`,
)}</fieldset>
`;
}

function controlBlock(name: string, control: Control, setting: SettingValue | undefined): Markup {
  const id = `try-${name}`;
  switch (control.kind) {
    case "range": {
      const { label, measure, minimum, maximum, step } = control;
      return html`<div class="slide"><label for="${id}">${label}</label> <output for="${id}">${printed(measure, Number(setting), firstUnits)}</output>
<input type="range" id="${id}" name="${name}" min="${minimum}" max="${maximum}" step="${step}" value="${Number(setting)}"></div>
`;
    }
    case "switch":
      return html`<label class="switch"><input type="checkbox" role="switch" name="${name}"${setting === true && html` checked`}> ${control.label}</label>
`;
    case "choice": {
      const { label, options } = control;
      if (options.reduce((sum, one) => sum + one.label.length, 0) <= mostLetters)
        return radios(name, label, options, String(setting));
      return html`<div class="choice"><label for="${id}">${label}</label>
<select id="${id}" name="${name}">
${options.map((one) => html`<option value="${one.value}"${one.value === setting && html` selected`}>${one.label}</option>\n`)}</select></div>
`;
    }
  }
}

const unitLegends: Readonly<Record<keyof Units, string>> = { force: "Forces in", wind: "Wind in" };

/** Switches for the units that the panel speaks of. */
function unitSwitches(used: ReadonlySet<Measure>): Content {
  return (Object.keys(chosenUnits) as (keyof Units)[])
    .filter((name) => used.has(name))
    .map((name) => {
      const options = Object.keys(chosenUnits[name]).map((unit) => ({ value: unit, label: unit }));
      return radios(`unit-${name}`, unitLegends[name], options, firstUnits[name]);
    });
}

/**
 * A live panel on a page: the page's own case as text and figure, and controls that wait for the page's script.
 *
 * @param panel  the panel
 * @returns markup; without script all but the controls stands there
 */
export function livePanelBlock({ model, facts, controls, settings, results, figure, sentence }: LivePanel): Markup {
  const measures = [
    ...results.map(({ measure }) => measure),
    ...Object.values(controls).flatMap((control) => (control.kind === "range" ? [control.measure] : [])),
  ];
  return html`<div class="trial" data-live-model="${model}"${facts !== undefined && html` data-live-facts="${JSON.stringify(facts)}"`}>
<div class="setting">
<p class="sentence" aria-live="polite">${sentence}</p>
<noscript><p class="note">This is the page's own case. To change it, allow scripts: the controls need them.</p></noscript>
<form class="controls" aria-label="Your setting" hidden>
${Object.entries(controls).map(([name, control]) => controlBlock(name, control, settings[name]))}<div class="units">
${unitSwitches(new Set(measures))}</div>
<div class="actions"><button type="reset">Back to the page's own case</button> <button type="button" class="copy">Copy a link to this setting</button>
<label class="link" hidden>The link <input type="text" readonly></label></div>
<p class="told" role="status"></p>
</form>
</div>
<div class="numbers-now">
${liveResults(results)}</div>
<figure class="own">
${builtFigure(figure)}</figure>
</div>
`;
}
