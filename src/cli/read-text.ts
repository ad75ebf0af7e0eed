import { open } from "node:fs/promises";

/** Most that is read of one file [bytes]: far above any notebook, page or file of readings. */
const mostBytes = 256_000_000;
const pieceBytes = 1_000_000;

/** First bytes of texts that are not UTF-8, the longer ones first. */
const marks: readonly (readonly [name: string, bytes: readonly number[]])[] = [
  ["UTF-32", [0xff, 0xfe, 0x00, 0x00]],
  ["UTF-32", [0x00, 0x00, 0xfe, 0xff]],
  ["UTF-16", [0xff, 0xfe]],
  ["UTF-16", [0xfe, 0xff]],
];

/**
 * Reads a text, from a pipe as well, and gives up where it does not end.
 *
 * @param path  file, pipe or device
 * @returns its text
 * @throws Error in one sentence for a folder, for more than 256 MB, and for a text in UTF-16 or UTF-32
 * Example: await readText("boat.yaml")
 */
export async function readText(path: string): Promise<string> {
  const file = await open(path, "r");
  try {
    if ((await file.stat()).isDirectory()) throw new Error(`${path} is a folder. Name a file in it.`);
    const pieces: Buffer[] = [];
    let length = 0;
    for (;;) {
      const { bytesRead, buffer } = await file.read(Buffer.allocUnsafe(pieceBytes), 0, pieceBytes);
      if (bytesRead === 0) break;
      length += bytesRead;
      if (length > mostBytes)
        throw new Error(`${path} holds more than ${mostBytes / 1e6} MB, or has no end: it is not read.`);
      pieces.push(buffer.subarray(0, bytesRead));
    }
    return decoded(Buffer.concat(pieces, length), path);
  } finally {
    await file.close();
  }
}

function decoded(bytes: Buffer, path: string): string {
  const found = marks.find(([, mark]) => mark.every((byte, at) => bytes[at] === byte));
  if (found !== undefined) throw new Error(`${path} is written in ${found[0]}. Save it as UTF-8.`);
  return bytes.toString("utf8");
}
