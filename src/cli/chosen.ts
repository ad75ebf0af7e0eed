import { suggestion } from "../quantity/suggestion.js";
import type { NotebookFile } from "../report/build.js";
import { reportName } from "./folders.js";

/** Reports that a person named: their names, or what to say where one is not known. */
type Chosen = { readonly names: readonly string[] } | { readonly refusal: string };

/**
 * The reports that a person means.
 *
 * @param typed  names, notebook files or paths to them; that of a notebook with several inputs means all its reports
 * @param notebooks  all there are
 * @returns names of reports, or a refusal with what was probably meant
 * Example: chosenReports(["around-a-ring.ipynb"], notebooks)
 */
export function chosenReports(typed: readonly string[], notebooks: readonly NotebookFile[]): Chosen {
  const known = notebooks.map(({ name }) => name);
  const families = notebooks.filter(({ inputs }) => inputs !== undefined).map(({ path }) => reportName(path));
  const asked = typed.map(reportName);
  const unknown = asked.filter((name) => !known.includes(name) && !families.includes(name));
  if (unknown.length > 0) {
    const lines = unknown.map((name) => {
      const near = suggestion(name, [...known, ...families]);
      return `No report is called "${name}".${near === undefined ? "" : ` Did you mean "${near}"?`}\n`;
    });
    return { refusal: `${lines.join("")}There are: ${known.join(", ")}.\n` };
  }
  return {
    names: asked.flatMap((name) =>
      known.includes(name) ? [name] : notebooks.filter(({ path }) => reportName(path) === name).map((one) => one.name),
    ),
  };
}
