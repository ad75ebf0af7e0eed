import { randomBytes } from "node:crypto";
import { chmodSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { isAlive } from "./alive.js";

/** Channels of a kernel, in the order in which ports are asked for. */
const channels = ["shell", "iopub", "stdin", "control", "hb"] as const;

/** Where a kernel listens. */
export interface Connection {
  readonly file: string;
  readonly folder: string;
  readonly key: string;
  address(channel: (typeof channels)[number]): string;
}

/** Gives that many free ports on this machine; another program may still take one before the kernel does. */
export type FindPorts = (count: number) => Promise<number[]>;

const host = "127.0.0.1";

function listen(): Promise<Server> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, host, () => resolve(server));
  });
}

/** Asks the system for free ports; all are held at once, so that they differ. */
export async function freePorts(count: number): Promise<number[]> {
  const servers = await Promise.all(Array.from({ length: count }, listen));
  const ports = servers.map((server) => {
    const address = server.address();
    return typeof address === "object" && address !== null ? address.port : 0;
  });
  await Promise.all(servers.map((server) => new Promise((done) => server.close(done))));
  return ports;
}

const prefix = "haulbook-kernel-";

/** What is done where it may be: a kernel starts all the same where nobody may look, or a folder belongs to somebody else. */
function ifAllowed<Done>(act: () => Done): Done | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}

/** Clears away folders whose process was killed before its kernel could watch over them. */
function clearAbandoned(place: string): void {
  for (const name of ifAllowed(() => readdirSync(place)) ?? []) {
    const pid = new RegExp(`^${prefix}(\\d+)-`, "u").exec(name)?.[1];
    if (pid === undefined || isAlive(Number(pid))) continue;
    ifAllowed(() => rmSync(path.join(place, name), { recursive: true, force: true }));
  }
}

/**
 * Writes a connection file that only its owner can read, in a folder of its own, with a fresh signing key. It is written without
 * waiting, so that hardly a moment is left between the folder and the kernel that clears it away.
 */
export async function writeConnection(findPorts: FindPorts): Promise<Connection> {
  const ports = await findPorts(channels.length);
  clearAbandoned(tmpdir());
  const key = randomBytes(32).toString("hex");
  const folder = mkdtempSync(path.join(tmpdir(), `${prefix}${process.pid}-`));
  const file = path.join(folder, "connection.json");
  const byChannel = Object.fromEntries(channels.map((channel, index) => [`${channel}_port`, ports[index]]));
  const content = { transport: "tcp", ip: host, key, signature_scheme: "hmac-sha256", ...byChannel };
  try {
    writeFileSync(file, JSON.stringify(content), { mode: 0o600, flag: "wx" });
    chmodSync(file, 0o600);
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    throw error;
  }
  return { file, folder, key, address: (channel) => `tcp://${host}:${byChannel[`${channel}_port`]}` };
}
