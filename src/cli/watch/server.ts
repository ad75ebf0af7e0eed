import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { answerTo, type Site } from "./answer.js";
import type { Serve, Served } from "./live.js";

/** The only address that is listened on: nothing outside this machine reaches it. */
const ownAddress = "127.0.0.1";

function hostsAt(port: number): readonly string[] {
  const names = [ownAddress, "localhost"];
  return [...names.map((name) => `${name}:${port}`), ...(port === 80 ? names : [])];
}

/**
 * Serves a folder to the browsers of this machine.
 *
 * @param request  port, folder, and what pages are told
 * @returns address, a way to tell pages, and one to end
 * @throws Error when the port is taken or may not be used
 * Example: const { address, close } = await serveSite({ port: 0, site, state: () => "{}" });
 */
export async function serveSite({ port, site, state }: Serve): Promise<Served> {
  const listeners = new Set<ServerResponse>();
  let whole: Site = { ...site, hosts: [] };

  async function respond(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const { method = "", url = "", headers } = request;
    const { status, headers: told, body, stream } = await answerTo({ method, target: url, host: headers.host }, whole);
    if (stream === true && method === "GET") {
      response.writeHead(status, told);
      response.write(`data: ${state()}\n\n`);
      listeners.add(response);
      response.on("close", () => listeners.delete(response));
      return;
    }
    const bytes = typeof body === "string" ? Buffer.from(body) : body;
    response.writeHead(status, { ...told, "Content-Length": bytes.length });
    response.end(method === "HEAD" ? undefined : bytes);
  }

  const server = createServer((request, response) => {
    respond(request, response).catch(() => {
      if (!response.headersSent) response.writeHead(500);
      response.end();
    });
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      const why = error.code === "EADDRINUSE" ? "something else listens there" : error.message;
      reject(new Error(`Port ${port} cannot be used: ${why}. Name another with --port, or none for one that is free.`));
    });
    server.listen(port, ownAddress, resolve);
  });
  const taken = (server.address() as AddressInfo).port;
  whole = { ...site, hosts: hostsAt(taken) };
  return {
    address: `http://${ownAddress}:${taken}/`,
    tell: (text) => {
      for (const response of listeners) response.write(`data: ${text}\n\n`);
    },
    close: async () => {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      server.closeAllConnections();
      await closed;
    },
  };
}
