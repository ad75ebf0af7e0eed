/** Keeps a number and its unit on one line, and a sign with the number that it equals. */
export function unparted(text: string): string {
  return text
    .replace(/(?<=(?<!\p{L})\p{L}) = (?=[\d−-])/gu, "\u00a0=\u00a0")
    .replace(
      /(\d) (?=(?:k?N|kgf|k?g|[cmk]?m|s|min|minutes|kn|knots|litres?|J|W|EUR|%|°C?)(?![\p{L}\p{N}]))/gu,
      "$1\u00a0",
    );
}
