import { darkPalette, lightPalette, type Palette } from "../notebook/palette.js";
import { checkStyle } from "./style/checks.js";
import { figureStyle } from "./style/figures.js";
import { liveStyle } from "./style/live.js";
import { printStyle } from "./style/print.js";
import { reevingStyle } from "./style/reeving.js";
import { searchStyle } from "./style/search.js";
import { tableStyle } from "./style/tables.js";
import { textStyle } from "./style/text.js";
import { wordStyle } from "./style/words.js";
import { workingStyle } from "./style/working.js";

function properties(palette: Palette, prefix: string): string {
  return Object.entries(palette)
    .map(([role, colour]) => `  --${prefix}${role}: ${colour};`)
    .join("\n");
}

function references(palette: Palette, prefix: string): string {
  return Object.keys(palette)
    .map((role) => `--${role}: var(--${prefix}${role});`)
    .join(" ");
}

/** A style sheet without the spaces that only its reader needs: at the ends of lines, around braces, before values. */
function withoutIdleSpace(style: string): string {
  return style
    .replaceAll(/\s*\n\s*/gu, "\n")
    .replaceAll(/\s*([{}])\s*/gu, "$1")
    .replaceAll(/;\s+/gu, ";")
    .replaceAll(/([\w-]): /gu, "$1:")
    .replaceAll(/;\}/gu, "}\n");
}

/** Style of all pages. The colours are those of the figures: one palette for words and curves, in light, dark and on paper. */
export const styleSheet = withoutIdleSpace(`:root {
  color-scheme: light dark;
${properties(lightPalette, "light-")}
${properties(darkPalette, "dark-")}
${properties({ ...lightPalette, paper: "#ffffff" }, "print-")}
  ${references(lightPalette, "light-")}
}
@media screen and (prefers-color-scheme: dark) {
  :root { ${references(darkPalette, "dark-")} }
}
@media print {
  :root { color-scheme: light; ${references(lightPalette, "print-")} }
}
${textStyle}${tableStyle}${checkStyle}${figureStyle}${reevingStyle}${workingStyle}${wordStyle}${searchStyle}${liveStyle}${printStyle}`);
