/// <reference lib="dom" />
import { plainText } from "../notebook/escape.js";

/** A piece of markup: an element with its opening tag, or a text, as they are written; and what stands for it on the page. */
interface Piece {
  readonly name: string | undefined;
  readonly written: string;
  readonly inside: Piece[];
  node?: Node;
}

const svg = "http://www.w3.org/2000/svg";
const htmlSpace = "http://www.w3.org/1999/xhtml";
const pieceOf = /<\/[^>]*>|<([\w-]+)([^>]*?)(\/?)>|[^<]+/gu;
const attribute = /([\w:-]+)(?:="([^"]*)")?/gu;

/** Pieces of a markup in which every element is closed, and every sign of HTML in a value is spelled out. */
function piecesOf(markup: string): Piece[] {
  const top: Piece[] = [];
  const open = [top];
  for (const [written, name, attributes = "", alone] of markup.matchAll(pieceOf)) {
    if (written.startsWith("</")) open.pop();
    else {
      const piece: Piece = { name, written: name === undefined ? written : attributes, inside: [] };
      open.at(-1)?.push(piece);
      if (name !== undefined && alone === "") open.push(piece.inside);
    }
  }
  return top;
}

function attributesOf(written: string): Map<string, string> {
  return new Map(Array.from(written.matchAll(attribute), ([, name = "", value = ""]) => [name, plainText(value)]));
}

function made({ name, written, inside }: Piece, space: string): Node {
  if (name === undefined) return document.createTextNode(plainText(written));
  const own = name === "svg" ? svg : space;
  const element = document.createElementNS(own, name);
  for (const [key, value] of attributesOf(written)) element.setAttribute(key, value);
  for (const piece of inside) {
    piece.node = made(piece, own);
    element.append(piece.node);
  }
  return element;
}

function changed(element: Element, before: string, after: string): void {
  const old = attributesOf(before);
  const next = attributesOf(after);
  for (const [key, value] of next) if (old.get(key) !== value) element.setAttribute(key, value);
  for (const key of old.keys()) if (!next.has(key)) element.removeAttribute(key);
}

/** Brings what stands inside an element from some pieces to others: equal places keep their nodes. */
function bring(parent: Node, before: readonly Piece[], after: readonly Piece[], space: string): void {
  after.forEach((piece, index) => {
    const known = before[index];
    if (known?.node === undefined || known.name !== piece.name) {
      piece.node = made(piece, space);
      if (known?.node === undefined) parent.appendChild(piece.node);
      else parent.replaceChild(piece.node, known.node);
      return;
    }
    piece.node = known.node;
    if (piece.name === undefined) {
      if (known.written !== piece.written) piece.node.nodeValue = plainText(piece.written);
      return;
    }
    if (known.written !== piece.written) changed(piece.node as Element, known.written, piece.written);
    bring(piece.node, known.inside, piece.inside, piece.name === "svg" ? svg : space);
  });
  for (const { node } of before.slice(after.length)) if (node !== undefined) parent.removeChild(node);
}

/**
 * A place on a page whose markup is written again and again: only what is different is changed, so that the browser
 * lays out and paints no more. The markup is compared as text; no document is made of it.
 */
export class PatchedPlace {
  readonly #place: Element;
  #pieces: Piece[] | undefined;

  constructor(place: Element) {
    this.#place = place;
  }

  /** Writes markup as `html` makes it. */
  write(markup: string): void {
    const pieces = piecesOf(markup);
    if (this.#pieces === undefined) this.#place.replaceChildren();
    bring(this.#place, this.#pieces ?? [], pieces, htmlSpace);
    this.#pieces = pieces;
  }
}
