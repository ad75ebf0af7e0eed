/** Keeps a number and its unit on one line, and a sign with the number that it equals. */
export function unparted(text: string): string {
  return text
    .replace(/(?<=(?<!\p{L})\p{L}) = (?=[\d−-])/gu, "\u00a0=\u00a0")
    .replace(
      /(\d) (?=(?:k?N|kgf|k?g|[cmk]?m|s|min|minutes|kn|knots|litres?|J|W|EUR|%|°C?)(?![\p{L}\p{N}]))/gu,
      "$1\u00a0",
    );
}

/** A range that is short enough to stand on one line: in brackets, or all of a text. */
const range = /(?<=^|\()[^() ]{1,9}(?: \p{L}{1,3})? (?:to|–) [^() ]{1,9}(?: \p{L}{1,3})?(?=\)|$)/gu;

/** Keeps ranges together as well, in cells of tables, which break before a range in brackets where they are narrow. */
export function unpartedCell(text: string): string {
  return unparted(text)
    .replace(range, (found) => found.replaceAll(" ", "\u00a0"))
    .replaceAll(" ± ", "\u00a0±\u00a0");
}
