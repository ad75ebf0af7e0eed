/** What the build needs of a disk. */
export interface Files {
  /** The text of a file, or nothing when there is none. */
  read(path: string): Promise<string | undefined>;
  /** Writes a file whole or not at all, with the folders above it; a reader never sees half of it. */
  replace(path: string, text: string): Promise<void>;
}
