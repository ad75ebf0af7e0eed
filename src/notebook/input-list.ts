/** A file name that can stand in the name of a page. */
const plainName = /^[\p{L}\d][\p{L}\d ._-]*$/u;

/** File name without folder and ending. */
function stem(path: string): string {
  return path.replace(/^.*\//u, "").replace(/\.[^.]*$/u, "");
}

/**
 * Files that a notebook is run with, once each, from its metadata `haulbook.inputs`.
 *
 * @param metadata  of the notebook file
 * @returns paths from the notebook's folder, or nothing where the notebook names none
 * @throws Error that says in words what is wrong with the list
 * Example: inputList({ haulbook: { inputs: ["boats/demo-skiff.yaml"] } }) → ["boats/demo-skiff.yaml"]
 */
export function inputList(metadata: unknown): readonly string[] | undefined {
  const inputs = memberOf(memberOf(metadata, "haulbook"), "inputs");
  if (inputs === undefined) return undefined;
  const example = 'such as ["boats/one.yaml", "boats/other.yaml"]';
  if (!Array.isArray(inputs) || inputs.length === 0 || !inputs.every((path) => typeof path === "string"))
    throw new Error(`has inputs that are no list of paths; write paths from the notebook's folder, ${example}`);
  const paths: readonly string[] = inputs;
  for (const path of paths) {
    const trouble = troubleWith(path);
    if (trouble !== undefined)
      throw new Error(
        `has the input ${JSON.stringify(path)}, which ${trouble}; name a file inside the notebook's folder`,
      );
  }
  const stems = paths.map(stem);
  const twice = stems.find((name, index) => stems.indexOf(name) !== index);
  if (twice !== undefined)
    throw new Error(
      `has two inputs called "${twice}"; give the files different names, as their pages are named by them`,
    );
  return paths;
}

/** Name of the report that a notebook makes of an input. */
export function inputReportName(notebook: string, input: string): string {
  return `${notebook}-${stem(input)}`;
}

function troubleWith(path: string): string | undefined {
  if (path.includes("\\")) return "has a backslash where folders are parted by /";
  if (path.startsWith("/") || /^[a-z]:/iu.test(path)) return "begins at the root of a disk";
  const parts = path.split("/");
  if (parts.includes("..")) return "leads out of the folder";
  return parts.every((part) => plainName.test(part)) ? undefined : "is no plain path";
}

function memberOf(value: unknown, key: string): unknown {
  return typeof value === "object" && value !== null ? (value as Readonly<Record<string, unknown>>)[key] : undefined;
}
