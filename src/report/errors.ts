/** What stops a report from being built, other than the run of its notebook. */
export class ReportError extends Error {
  /** Notebook file, and cell where one is to blame. */
  readonly place: string;
  /** What is wrong and what to do. */
  readonly text: string;

  constructor(place: string, text: string) {
    super(`${place}: ${text}`);
    this.name = new.target.name;
    this.place = place;
    this.text = text;
  }
}
