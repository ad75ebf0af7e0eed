import { spawn } from "node:child_process";
import { existsSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { createServer } from "node:net";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { openChannels } from "../../src/notebook/channels.js";
import { freePorts, writeConnection } from "../../src/notebook/connection.js";
import { startKernel } from "../../src/notebook/kernel.js";
import { kernelImage } from "../../src/notebook/kernel-image.js";
import { kernelCommand } from "../../src/notebook/tslab.js";
import { scratchFolder } from "./scratch.js";

const folder = path.dirname(fileURLToPath(import.meta.url));

const alive = (pid: number) => {
  try {
    process.kill(pid, 0);
    return !/\) Z /.test(readFileSync(`/proc/${pid}/stat`, "utf8"));
  } catch {
    return false;
  }
};

test("the connection file is readable for its owner alone and names different ports", async () => {
  const connection = await writeConnection(freePorts);
  const content = JSON.parse(readFileSync(connection.file, "utf8"));
  expect(statSync(connection.file).mode & 0o777).toBe(0o600);
  expect(statSync(connection.folder).mode & 0o077).toBe(0);
  expect(content).toMatchObject({ transport: "tcp", ip: "127.0.0.1", signature_scheme: "hmac-sha256" });
  expect(content.key).toMatch(/^[0-9a-f]{64}$/);
  const ports = ["shell", "iopub", "stdin", "control", "hb"].map((channel) => content[`${channel}_port`]);
  expect(new Set(ports).size).toBe(5);
  rmSync(connection.folder, { recursive: true });
});

test("a port that another program took means another try", async () => {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const taken = (server.address() as { port: number }).port;
  let tries = 0;
  const kernel = await startKernel({
    folder,
    environment: process.env,
    image: await kernelImage(),
    findPorts: async (count) => {
      tries += 1;
      const ports = await freePorts(count);
      return tries === 1 ? ports.with(1, taken) : ports;
    },
  });
  expect(tries).toBe(2);
  const written: unknown[] = [];
  const { reply, idle } = kernel.execute("console.log(6 * 7)", ({ content }) => written.push(content.text));
  expect((await reply).status).toBe("ok");
  await idle;
  expect(written).toContain("42\n");
  expect(await kernel.close()).toEqual({ code: 0, signal: null });
  expect(kernel.pid !== undefined && alive(kernel.pid)).toBe(false);
  server.close();
});

test("a kernel that cannot start says why", async () => {
  await expect(startKernel({ folder: path.join(folder, "absent"), environment: process.env })).rejects.toThrow(
    /ENOENT/,
  );
  const broken = { ...process.env, NODE_OPTIONS: "--require=/absent/file.js" };
  await expect(startKernel({ folder, environment: broken })).rejects.toThrow(/exit code 1[\s\S]*Cannot find module/);
});

const program = (ending: string) => `
  import { startKernel } from ${JSON.stringify(path.join(folder, "../../dist/notebook/kernel.js"))};
  import { kernelImage } from ${JSON.stringify(path.join(folder, "../../dist/notebook/kernel-image.js"))};
  const kernel = await startKernel({ folder: process.cwd(), environment: process.env, image: await kernelImage() });
  kernel.execute("for (;;);", () => {});
  process.stdout.write(String(kernel.pid));
  ${ending}
  setInterval(() => {}, 1000);`;

test.each([
  ["SIGINT", "", [null, "SIGINT"]],
  ["SIGTERM", "", [null, "SIGTERM"]],
  ["SIGUSR2", 'process.on("SIGUSR2", () => process.exit(5));', [5, null]],
] as const)("no kernel is left behind after %s of this process", async (cause, ending, how) => {
  const scratch = scratchFolder();
  try {
    const temporary = { ...process.env, TMPDIR: scratch.folder };
    const child = spawn(process.execPath, ["--input-type=module", "-e", program(ending)], {
      cwd: scratch.folder,
      env: temporary,
      stdio: ["ignore", "pipe", "ignore"],
    });
    const ended = new Promise<unknown[]>((done) => child.once("exit", (...how) => done(how)));
    const pid = await new Promise<number>((done) => child.stdout.once("data", (text) => done(Number(text))));
    expect(alive(pid)).toBe(true);
    child.kill(cause);
    expect(await ended).toEqual(how);
    await expect.poll(() => alive(pid)).toBe(false);
    expect(readdirSync(scratch.folder)).toEqual([]);
  } finally {
    scratch.remove();
  }
});

test("a kernel of Jupyter ends when its front end was killed, even while a cell never ends", async () => {
  const connection = await writeConnection(freePorts);
  const [command, ...args] = kernelCommand(connection.file);
  const front = spawn(
    process.execPath,
    [
      "-e",
      `const [command, args] = ${JSON.stringify([command, args])};
      const kernel = require("node:child_process").spawn(command, args, { stdio: "ignore", detached: true });
      process.stdout.write(String(kernel.pid));
      setInterval(() => {}, 1000);`,
    ],
    { stdio: ["ignore", "pipe", "inherit"], env: { ...process.env, JPY_PARENT_PID: "1" } },
  );
  const pid = Number(await new Promise((resolve) => front.stdout.once("data", resolve)));
  let channels: ReturnType<typeof openChannels> | undefined;
  await new Promise<void>((answered) => {
    channels = openChannels({ connection, onReply: () => answered(), onBroadcast: () => {}, onBadMessage: () => {} });
    channels.send("shell", "kernel_info_request", {});
  });
  const begun = path.join(connection.folder, "begun");
  const code = `import { writeFileSync } from "fs";\nwriteFileSync(${JSON.stringify(begun)}, "");\nfor (;;);`;
  channels?.send("shell", "execute_request", { code, silent: false });
  await expect.poll(() => existsSync(begun)).toBe(true);
  expect(alive(pid)).toBe(true);
  front.kill("SIGKILL");
  await expect.poll(() => alive(pid)).toBe(false);
  channels?.close();
  rmSync(connection.folder, { recursive: true });
});
