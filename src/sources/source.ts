/** A book, paper, standard or page from which numbers were taken. */
export interface Source {
  readonly title: string;
  readonly author?: string;
  readonly year?: number;
  /** Open address, where there is a neutral one. */
  readonly address?: string;
  /** Whether the number was read there, read on a page that repeats it, or comes from memory. */
  readonly seen: "read" | "read on a secondary page" | "from memory";
}
