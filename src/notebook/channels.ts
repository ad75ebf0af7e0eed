import { randomUUID } from "node:crypto";
import { Dealer, Subscriber } from "zeromq";
import type { Connection } from "./connection.js";
import { decodeMessage, encodeMessage, type JsonObject, type Message, WireError } from "./wire.js";

/** Open channels to one kernel. */
export interface Channels {
  /** Sends a request and returns its id. */
  send(channel: "shell" | "control", type: string, content: JsonObject): string;
  close(): void;
}

export interface OpenChannels {
  readonly connection: Connection;
  readonly onReply: (message: Message) => void;
  readonly onBroadcast: (message: Message) => void;
  /** A message that breaks the protocol: whoever sent it, it is not read. */
  readonly onBadMessage: (error: WireError) => void;
}

/** Messages of a socket; one that is closed in the middle of a message has no more of them. */
async function* untilClosed(socket: Dealer | Subscriber): AsyncGenerator<Buffer[]> {
  try {
    yield* socket;
  } catch (error) {
    if (!socket.closed) throw error;
  }
}

/** Opens shell, control and broadcast channels; messages wait without limit until they are read. */
export function openChannels({ connection, onReply, onBroadcast, onBadMessage }: OpenChannels): Channels {
  const session = randomUUID();
  const shell = new Dealer({ linger: 0, receiveHighWaterMark: 0 });
  const control = new Dealer({ linger: 0, receiveHighWaterMark: 0 });
  const broadcast = new Subscriber({ linger: 0, receiveHighWaterMark: 0 });
  shell.connect(connection.address("shell"));
  control.connect(connection.address("control"));
  broadcast.connect(connection.address("iopub"));
  broadcast.subscribe();

  const read = async (socket: Dealer | Subscriber, take: (message: Message) => void) => {
    for await (const frames of untilClosed(socket)) {
      try {
        take(decodeMessage(frames, connection.key));
      } catch (error) {
        if (!(error instanceof WireError)) throw error;
        onBadMessage(error);
      }
    }
  };
  void read(shell, onReply);
  void read(control, onReply);
  void read(broadcast, onBroadcast);

  // A socket takes one message at a time: the next waits for the one before.
  const queues = { shell: Promise.resolve(), control: Promise.resolve() };
  const sockets = { shell, control };
  return {
    send: (channel, type, content) => {
      const id = randomUUID();
      const header = {
        msg_id: id,
        msg_type: type,
        session,
        username: "haulbook",
        date: new Date().toISOString(),
        version: "5.3",
      };
      const message = { identities: [], header, parent: undefined, metadata: {}, content, buffers: [] };
      const socket = sockets[channel];
      queues[channel] = queues[channel].then(() =>
        socket.closed ? undefined : socket.send(encodeMessage(message, connection.key)).catch(() => undefined),
      );
      return id;
    },
    close: () => {
      for (const socket of [shell, control, broadcast]) socket.close();
    },
  };
}
