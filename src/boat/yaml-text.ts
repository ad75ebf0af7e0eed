import {
  type Document,
  isAlias,
  isMap,
  isNode,
  isScalar,
  Lexer,
  LineCounter,
  type Node,
  parseDocument,
  visit,
} from "yaml";
import { BoatFileError, type Trouble } from "./trouble.js";

/** Most that a boat file may hold: hundreds of lines, far above any boat. */
export const yamlLimits = { characters: 256_000, words: 30_000, depth: 12, indent: 80 } as const;

const forbiddenKeys: ReadonlySet<unknown> = new Set(["__proto__", "constructor", "prototype"]);

/** Where something stands in a file. */
interface Spot {
  readonly line: number;
  readonly column: number;
}

/** A YAML text that was read, with the places of its parts. */
export interface YamlText {
  readonly file: string;
  readonly document: Document;
  /** Place of a value, or of the nearest thing around it. */
  spot(path: readonly PropertyKey[]): Spot;
  /** Place of a key. */
  keySpot(path: readonly PropertyKey[]): Spot;
}

/** Reads a YAML text without harm: size, depth, references and keys are looked at before anything is built from it. */
export function yamlText(text: string, file: string): YamlText {
  const refuse = (found: string, allowed: string, advice: string, spot: Spot = { line: 0, column: 0 }): never => {
    throw new BoatFileError([{ file, ...spot, at: "", found, allowed, advice }]);
  };
  if (text.length > yamlLimits.characters)
    refuse(
      `${text.length} characters`,
      `at most ${yamlLimits.characters}`,
      "A boat takes a few hundred lines: take out what is no part of it.",
    );
  const plainText = text.replace(/^\uFEFF/u, "");
  const deep = tooDeep(plainText);
  if (deep !== undefined)
    refuse(
      deep,
      `at most ${yamlLimits.depth} levels and ${yamlLimits.words} words`,
      "Write it flatter, as the demo boats are.",
    );
  const lines = new LineCounter();
  const document = parseDocument(plainText, { lineCounter: lines, prettyErrors: false, stringKeys: true });
  const at = (offset: number): Spot => {
    const { line, col } = lines.linePos(offset);
    return { line, column: col };
  };
  const faults = [...document.errors, ...document.warnings];
  if (faults.length > 0)
    throw new BoatFileError(
      faults.slice(0, 20).map((fault) => ({
        file,
        ...at(fault.pos[0]),
        at: "",
        found: `a fault in the YAML: ${fault.message.split("\n")[0]}`,
        allowed: "YAML 1.2 with every key once and no tags",
        advice: "Look at quotes, colons and the spaces before the line.",
      })) as [Trouble, ...Trouble[]],
    );
  const spotOf = (node: unknown): Spot => at((isNode(node) && node.range?.[0]) || 0);
  visit(document, (key, node, above) => {
    if (isAlias(node) || (isNode(node) && !isAlias(node) && node.anchor !== undefined))
      refuse(
        "a reference with & or *",
        "every value written out",
        "Write the value again where it is needed.",
        spotOf(node),
      );
    if (key === "key" && isScalar(node) && forbiddenKeys.has(node.value))
      refuse(`the key "${String(node.value)}"`, "names of things on a boat", "Choose another name.", spotOf(node));
    if (above.length > 2 * yamlLimits.depth)
      refuse("too many levels", `at most ${yamlLimits.depth}`, "Write it flatter.", spotOf(node));
  });
  if (!isMap(document.contents))
    refuse("no mapping", "a mapping of keys to values", "Begin with `name:`, as the demo boats do.");
  return {
    file,
    document,
    spot: (path) => spotOf(nearest(document, path)),
    keySpot: (path) => spotOf(keyAt(document, path) ?? nearest(document, path)),
  };
}

/** Looks at the words of the text alone, so that nothing is built from a text that nests without end. */
function tooDeep(text: string): string | undefined {
  let flow = 0;
  let words = 0;
  let dashes = 0;
  for (const word of new Lexer().lex(text)) {
    words += 1;
    if (words > yamlLimits.words) return `more than ${yamlLimits.words} words`;
    if (word === "[" || word === "{") flow += 1;
    else if (word === "]" || word === "}") flow -= 1;
    if (word === "\n" || word === "\r\n") dashes = 0;
    else if (word === "-" || word === "?") dashes += 1;
    else if (/^ +$/u.test(word) && word.length > yamlLimits.indent) return `${word.length} spaces before a line`;
    if (flow > yamlLimits.depth || dashes > yamlLimits.depth) return `more than ${yamlLimits.depth} levels`;
  }
  return undefined;
}

/** The node at a path, or the nearest one above it. */
function nearest(document: Document, path: readonly PropertyKey[]): Node | null {
  for (let length = path.length; length > 0; length--) {
    const node = document.getIn(path.slice(0, length), true);
    if (isNode(node)) return node;
  }
  return document.contents as Node | null;
}

function keyAt(document: Document, path: readonly PropertyKey[]): unknown {
  const around = path.length === 1 ? document.contents : document.getIn(path.slice(0, -1), true);
  if (!isMap(around)) return undefined;
  return around.items.find(({ key }) => isScalar(key) && String(key.value) === String(path.at(-1)))?.key;
}
