import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

/** A folder for notebooks inside the project, so that their cells can import what is installed here. */
export interface Scratch {
  readonly folder: string;
  /** Writes a notebook of code cells, or of any cells, and returns its path. */
  notebook(name: string, cells: readonly (string | { type: string; source: string })[], more?: object): string;
  remove(): void;
}

export function scratchFolder(): Scratch {
  const here = path.dirname(fileURLToPath(import.meta.url));
  mkdirSync(here, { recursive: true });
  const folder = mkdtempSync(path.join(here, `.scratch-${process.pid}-`));
  return {
    folder,
    notebook: (name, cells, more = {}) => {
      const file = path.join(folder, `${name}.ipynb`);
      const kernelspec = { name: "haulbook", display_name: "haulbook (TypeScript)", language: "typescript" };
      const content = {
        nbformat: 4,
        nbformat_minor: 5,
        metadata: { kernelspec },
        cells: cells.map((cell, index) => {
          const { type, source } = typeof cell === "string" ? { type: "code", source: cell } : cell;
          const code = type === "code" ? { outputs: [], execution_count: null } : {};
          return { cell_type: type, id: `cell-${index}`, metadata: {}, source: source.split(/(?<=\n)/), ...code };
        }),
        ...more,
      };
      writeFileSync(file, JSON.stringify(content));
      return file;
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Cell text that imports the display helpers as built. */
export const importDisplay = `import { show, figure, table, answer, result, question, checks } from "../../../dist/notebook/display.js";\n`;
