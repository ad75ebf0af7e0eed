import { createHmac, timingSafeEqual } from "node:crypto";

/** Header of a message of the Jupyter messaging protocol, version 5.3. */
export interface MessageHeader {
  readonly msg_id: string;
  readonly msg_type: string;
  readonly session: string;
  readonly username: string;
  readonly date: string;
  readonly version: string;
}

/** JSON object as it travels in a message. */
export type JsonObject = Readonly<Record<string, unknown>>;

/** A message as data; `parent` is undefined when the message answers nothing. */
export interface Message {
  readonly identities: readonly Uint8Array[];
  readonly header: MessageHeader;
  readonly parent: MessageHeader | undefined;
  readonly metadata: JsonObject;
  readonly content: JsonObject;
  readonly buffers: readonly Uint8Array[];
}

/** A message that does not follow the protocol or whose signature does not fit. */
export class WireError extends Error {
  override readonly name = "WireError";
}

const delimiter = Buffer.from("<IDS|MSG>");

function signature(parts: readonly Uint8Array[], key: string): string {
  if (key === "") return "";
  const hash = createHmac("sha256", key);
  for (const part of parts) hash.update(part);
  return hash.digest("hex");
}

/**
 * Frames of a message, ready to send as one multipart message: identities, delimiter, signature, header, parent, metadata, content, buffers.
 *
 *     signature = hex(HMAC-SHA256(key, header + parent + metadata + content)), empty for an empty key
 *
 * @param message  message to send
 * @param key  signing key of the connection file
 * @returns frames in the order of the wire
 * Valid for protocol 5.3.
 * Example: encodeMessage(message, "secret").length → 6
 */
export function encodeMessage(message: Message, key: string): Buffer[] {
  const parts = [message.header, message.parent ?? {}, message.metadata, message.content].map((part) =>
    Buffer.from(JSON.stringify(part)),
  );
  return [
    ...message.identities.map((identity) => Buffer.from(identity)),
    delimiter,
    Buffer.from(signature(parts, key)),
    ...parts,
    ...message.buffers.map((buffer) => Buffer.from(buffer)),
  ];
}

/**
 * Message from the frames of one multipart message; the signature is checked before anything is read.
 *
 * @param frames  frames in the order of the wire
 * @param key  signing key of the connection file
 * @returns the message
 * @throws WireError when delimiter, frames or signature are wrong, or a part is not a JSON object
 * Valid for protocol 5.3.
 * Example: decodeMessage(encodeMessage(message, "secret"), "secret") → message
 */
export function decodeMessage(frames: readonly Uint8Array[], key: string): Message {
  const at = frames.findIndex((frame) => delimiter.equals(frame));
  if (at < 0) throw new WireError("message without the delimiter <IDS|MSG>");
  const [signed, ...rest] = frames.slice(at + 1);
  const parts = rest.slice(0, 4);
  if (signed === undefined || parts.length < 4) throw new WireError(`message with ${frames.length} frames: too few`);
  const expected = Buffer.from(signature(parts, key));
  if (signed.length !== expected.length || !timingSafeEqual(signed, expected)) {
    throw new WireError("message with a wrong signature");
  }
  const [header, parent, metadata, content] = parts.map(jsonObject) as [JsonObject, JsonObject, JsonObject, JsonObject];
  return {
    identities: frames.slice(0, at),
    header: messageHeader(header),
    parent: Object.keys(parent).length === 0 ? undefined : messageHeader(parent),
    metadata,
    content,
    buffers: rest.slice(4),
  };
}

function jsonObject(frame: Uint8Array): JsonObject {
  let value: unknown;
  try {
    value = JSON.parse(Buffer.from(frame).toString("utf8"));
  } catch {
    throw new WireError("message with a part that is not JSON");
  }
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    throw new WireError("message with a part that is not a JSON object");
  }
  return value as JsonObject;
}

/** Kernels leave out parts of the header that nobody needs: those become empty; id and type must be there. */
function messageHeader(value: JsonObject): MessageHeader {
  const text = (key: string) => (typeof value[key] === "string" ? value[key] : "");
  if (text("msg_id") === "" || text("msg_type") === "")
    throw new WireError("message header without msg_id or msg_type");
  return {
    msg_id: text("msg_id"),
    msg_type: text("msg_type"),
    session: text("session"),
    username: text("username"),
    date: text("date"),
    version: text("version"),
  };
}
