/** Whether tests run in their full length, as `npm run test:long` asks. */
export const isLong = process.env.HAULBOOK_LONG !== undefined;

/** What a test takes in `npm test`, where it is to be short, and in `npm run test:long`. */
export function long<Amount>(short: Amount, full: Amount): Amount {
  return isLong ? full : short;
}
