import { ValueError } from "../quantity/errors.js";
import { pageAddress } from "./record.js";

/** Longest address of a page: its code still has squares of 0.4 mm on a side of 26 mm. */
const mostCharacters = 200;

function refuse(
  value: string,
  advice: string,
  allowed = "the address of the folder that holds the reports",
): ValueError {
  return new ValueError({ quantity: "address of the reports", value: `"${value}"`, allowed, advice });
}

/**
 * The folder on the web that holds the reports.
 *
 * @param typed  as typed by a person: http or https, without a page, query or mark
 * @returns the address, ending in a slash
 * @throws ValueError for anything else
 * Example: reportsAddress("https://club.example/clinic").href → "https://club.example/clinic/"
 */
export function reportsAddress(typed: string): URL {
  const example = 'Write it like "https://club.example/clinic".';
  const address = URL.canParse(typed) ? new URL(typed) : undefined;
  const isWeb = address !== undefined && /^https?:\/\//iu.test(typed) && /^https?:$/u.test(address.protocol);
  if (!isWeb || /\s/u.test(typed)) {
    const whole = `https://${typed}`;
    const near = /^[\w-]+(?:\.[\w-]+)+(?::\d+)?(?:\/\S*)?$/u.test(typed) && URL.canParse(whole);
    throw refuse(
      typed,
      near ? `Write the whole address: ${whole}` : example,
      "an address that begins with https:// or http://",
    );
  }
  if (address.username !== "" || address.password !== "")
    throw refuse(typed, "Leave out name and password: everybody can read them on the sheet.");
  if (address.search !== "" || address.hash !== "") throw refuse(typed, "Leave out what follows ? or #.");
  if (/\.html?$/iu.test(address.pathname)) throw refuse(typed, "Leave out the page at its end.");
  if (!address.pathname.endsWith("/")) address.pathname += "/";
  return address;
}

/**
 * The address of a report.
 *
 * @param folder  from `reportsAddress`
 * @param name  of the report
 * @returns the whole address of its page
 * @throws ValueError for an address that is too long for a code that a phone can read from paper
 * Example: addressOf(reportsAddress("https://club.example"), "around-a-ring") → "https://club.example/around-a-ring.html"
 */
export function addressOf(folder: URL, name: string): string {
  const whole = new URL(pageAddress(name), folder).href;
  if (whole.length <= mostCharacters) return whole;
  throw refuse(whole, "Use a shorter address.", `at most ${mostCharacters} characters with the name of the report`);
}
