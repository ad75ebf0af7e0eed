/** Environment variables that name the files a notebook is run with, in the order in which it asks for them. */
const inputVariables = ["HAULBOOK_INPUT", "HAULBOOK_INPUT_2"] as const;

/** Environment variable that names a file of readings: the lines that it holds replace those of the catalogue. */
export const readingsVariable = "HAULBOOK_READINGS";

/**
 * The file that this notebook is run with: the one that the report build gives, in a plain session the one written here.
 *
 * @param usual  path from the notebook's folder
 * @returns path from the notebook's folder, or a whole path
 * Example: inputFile("boats/demo-skiff.yaml") → "boats/demo-skiff.yaml"
 */
export function inputFile(usual: string): string {
  return process.env[inputVariables[0]] || usual;
}

/**
 * The second file that this notebook is run with, for notebooks that set two files side by side.
 *
 * @returns path from the notebook's folder, or a whole path; nothing where only one file is given, or none
 * Example: secondInputFile() → undefined
 */
export function secondInputFile(): string | undefined {
  return process.env[inputVariables[1]] || undefined;
}

/** The environment that hands files to a notebook; variables that are left over from elsewhere are taken out. */
export function inputEnvironment(inputs: readonly string[]): Record<string, string | undefined> {
  return Object.fromEntries(inputVariables.map((name, index) => [name, inputs[index]]));
}
