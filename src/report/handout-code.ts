import qrcode from "qrcode-generator";
import { html, type Markup } from "./html.js";

/** Side of the code itself, without the quiet zone around it [mm]. */
const side = 26;
/** Quiet zone on each side, in squares of the code. */
const quiet = 4;

/**
 * An address as a code that a phone reads, with its quiet zone: black on white, at least 25 mm without that zone.
 *
 * @param address  plain ASCII
 * @returns an `svg` element with its size in millimetres
 * Example: addressCode("https://club.example/around-a-ring.html").text.startsWith("<svg ") → true
 */
export function addressCode(address: string): Markup {
  const code = qrcode(0, "M");
  code.addData(address, "Byte");
  code.make();
  const count = code.getModuleCount();
  const whole = count + 2 * quiet;
  const squares: string[] = [];
  for (let row = 0; row < count; row++) {
    for (let column = 0; column < count; column++) {
      if (!code.isDark(row, column)) continue;
      let end = column + 1;
      while (end < count && code.isDark(row, end)) end++;
      squares.push(`M${column + quiet} ${row + quiet}h${end - column}v1h-${end - column}z`);
      column = end;
    }
  }
  const size = ((side * whole) / count).toFixed(2);
  return html`<svg class="code" role="img" aria-label="Code that leads a phone to ${address}" viewBox="0 0 ${whole} ${whole}" width="${size}mm" height="${size}mm" shape-rendering="crispEdges"><rect width="${whole}" height="${whole}" fill="#fff"/><path fill="#000" d="${squares.join("")}"/></svg>`;
}
