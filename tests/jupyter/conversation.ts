import { setTimeout as pause } from "node:timers/promises";
import { openChannels } from "../../src/notebook/channels.js";
import { startProcess } from "../../src/notebook/child.js";
import { freePorts, writeConnection } from "../../src/notebook/connection.js";
import type { JsonObject } from "../../src/notebook/wire.js";

/** A kernel to which a front end's requests are sent, as they are. */
export interface Conversation {
  /** Content of the answer to a request on the shell channel. */
  ask(type: string, content: JsonObject): Promise<JsonObject>;
  close(): Promise<void>;
}

/** Starts the notebooks' kernel in a folder and waits until it answers. */
export async function startConversation(folder: string): Promise<Conversation> {
  const connection = await writeConnection(freePorts);
  const child = startProcess({ connection, folder, environment: process.env });
  const waiting = new Map<string, (content: JsonObject) => void>();
  const channels = openChannels({
    connection,
    onReply: ({ parent, content }) => waiting.get(parent?.msg_id ?? "")?.(content),
    onBroadcast: () => {},
    onBadMessage: (error) => {
      throw error;
    },
  });
  const ask: Conversation["ask"] = (type, content) =>
    new Promise((resolve) => waiting.set(channels.send("shell", type, content), resolve));
  const close = async () => {
    child.kill();
    await child.exited;
    channels.close();
  };
  const greeted = ask("kernel_info_request", {}).then(() => "ready");
  const state = await Promise.race([greeted, child.exited.then(() => "gone"), pause(60_000, "silent", { ref: false })]);
  if (state !== "ready") {
    await close();
    throw new Error(`the kernel is ${state}: ${child.errorText()}`);
  }
  return { ask, close };
}
