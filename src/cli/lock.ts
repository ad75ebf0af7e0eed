import { link, mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { hostname } from "node:os";
import { dirname, join } from "node:path";
import { isAlive } from "../notebook/alive.js";
import { memoryFolder } from "../report/stamp.js";

/** Who holds a lock. */
interface Owner {
  readonly process: number;
  readonly machine: string;
}

/** A folder that another build writes to. */
class LockedError extends Error {
  override readonly name = "LockedError";
}

/**
 * Takes a folder for this process alone.
 *
 * The lock is a file that names its owner. It appears whole or not at all; one whose owner is gone is cleared away.
 *
 * @param folder  that is written to
 * @returns gives the folder free again
 * @throws LockedError naming the owner while it lives, or when it lives on another machine
 * Example: const free = await takeLock("reports"); await free();
 */
export async function takeLock(folder: string): Promise<() => Promise<void>> {
  const path = join(folder, memoryFolder, "lock");
  const own: Owner = { process: process.pid, machine: hostname() };
  const beside = `${path}.${own.process}.part`;
  await mkdir(dirname(path), { recursive: true });
  await writeFile(beside, JSON.stringify(own));
  try {
    while (!(await appears(beside, path))) await clearIfLeft({ folder, path, own });
  } finally {
    await rm(beside, { force: true });
  }
  return () => rm(path, { force: true });
}

/** Gives the file its second name; false where another stands there. */
async function appears(beside: string, path: string): Promise<boolean> {
  try {
    await link(beside, path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
    return false;
  }
}

/** Clears a lock away whose owner is gone. */
async function clearIfLeft({ folder, path, own }: { folder: string; path: string; own: Owner }): Promise<void> {
  const owner = await ownerOf(path);
  if (owner === undefined) {
    // Gone by now, or no lock at all: such a file is in nobody's hands.
    await rm(path, { force: true });
    return;
  }
  if (owner.machine !== own.machine) {
    throw new LockedError(
      `A build on ${owner.machine} is writing to ${folder}. Wait for it; if it is gone, delete ${path}.`,
    );
  }
  if (isAlive(owner.process)) {
    throw new LockedError(
      `Another build (process ${owner.process}) is writing to ${folder}. Wait for it, or write elsewhere with --output.`,
    );
  }
  const left = `${path}.${own.process}.left`;
  await rename(path, left).catch(() => {});
  // Another build may have cleared it in the meantime and taken the lock: give that one its file back.
  const moved = await ownerOf(left);
  if (moved !== undefined && moved.process !== owner.process) await link(left, path).catch(() => {});
  await rm(left, { force: true });
}

async function ownerOf(path: string): Promise<Owner | undefined> {
  try {
    return JSON.parse(await readFile(path, "utf8")) as Owner;
  } catch {
    return undefined;
  }
}
