import { parseDocument } from "htmlparser2";
import { escapeHtml } from "../notebook/escape.js";

type Node = ReturnType<typeof parseDocument>["children"][number];

/** A piece of a formula, ready to stand in a row. */
interface Piece {
  readonly name: string;
  readonly text: string;
  /** What stands in it, where it is a row that only holds it together. */
  readonly row?: string;
}

/** Elements whose content is a row: a row inside a row needs no element of its own. */
const rows: ReadonlySet<string> = new Set(["math", "mrow", "mtd", "msqrt"]);

/** Elements that say only what holds anyway: of their content all remains. */
const wrappers: ReadonlySet<string> = new Set(["span", "semantics", "mstyle"]);

/** Attributes that every browser takes for granted, and those that the style sheet gives. */
function isIdle(name: string, key: string, value: string): boolean {
  return (
    key === "xmlns" ||
    (key === "fence" && value === "true") ||
    (name === "mtable" && (key.startsWith("row") || (key.startsWith("column") && value !== "center")))
  );
}

/** An operator at the end of a row takes its space, its size and its meaning from there. */
function isOperatorAtEnd(pieces: readonly Piece[]): boolean {
  return pieces[0]?.name === "mo" || pieces.at(-1)?.name === "mo";
}

function piecesOf(node: Node, inRow: boolean): Piece[] {
  if (!("children" in node)) return "data" in node ? [{ name: "", text: escapeHtml(node.data) }] : [];
  const name = "name" in node ? node.name : "";
  if (name === "annotation") return [];
  if (wrappers.has(name)) return node.children.flatMap((child) => piecesOf(child, inRow));
  const isRow = rows.has(name);
  const pieces = node.children.flatMap((child) => piecesOf(child, isRow));
  const [only, ...others] = pieces;
  const content = (isRow && others.length === 0 && only?.row) || pieces.map(({ text }) => text).join("");
  if (name === "mrow") {
    if (pieces.length === 1 || (inRow && !isOperatorAtEnd(pieces))) return pieces;
    return [{ name, text: `<mrow>${content}</mrow>`, row: content }];
  }
  // Beside an operator a text counts as space, and takes away the operator's own: a number with its unit is a number.
  if (name === "mtext" && /^[(−\d]/u.test(content)) return [{ name: "mn", text: `<mn>${content}</mn>` }];
  const attributes = Object.entries("attribs" in node ? node.attribs : {})
    .filter(([key, value]) => !isIdle(name, key, value))
    .map(([key, value]) => ` ${key}="${escapeHtml(value)}"`);
  return [{ name, text: `<${name}${attributes.join("")}>${content}</${name}>` }];
}

/**
 * A formula in MathML with the fewest elements that draw the same picture.
 *
 * @param mathml  one `math` element, as a typesetter of TeX writes it
 * @returns the same without its TeX, name spaces, idle rows and attributes
 * Example: lightMathml("<math><mrow><mrow></mrow><mi>a</mi></mrow></math>") → "<math><mi>a</mi></math>"
 */
export function lightMathml(mathml: string): string {
  return parseDocument(mathml, { xmlMode: true })
    .children.flatMap((child) => piecesOf(child, false))
    .map(({ text }) => text)
    .join("");
}
