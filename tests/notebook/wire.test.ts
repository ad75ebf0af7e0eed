import { createHmac } from "node:crypto";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decodeMessage, encodeMessage, type Message, WireError } from "../../src/notebook/wire.js";

const header = {
  msg_id: "id-1",
  msg_type: "execute_request",
  session: "session-1",
  username: "tester",
  date: "2024-01-01T00:00:00.000Z",
  version: "5.3",
};

const message: Message = {
  identities: [Buffer.from("route")],
  header,
  parent: undefined,
  metadata: {},
  content: { code: "1 + 1" },
  buffers: [Buffer.from([1, 2, 3])],
};

describe("wire format", () => {
  test("frames stand in the order of the protocol, signed over the four parts", () => {
    const frames = encodeMessage(message, "secret");
    expect(frames).toHaveLength(8);
    expect(frames[0]?.toString()).toBe("route");
    expect(frames[1]?.toString()).toBe("<IDS|MSG>");
    const signed = Buffer.concat(frames.slice(3, 7));
    expect(frames[2]?.toString()).toBe(createHmac("sha256", "secret").update(signed).digest("hex"));
    expect(JSON.parse(String(frames[3]))).toEqual(header);
    expect(frames[4]?.toString()).toBe("{}");
    expect(frames[7]).toEqual(Buffer.from([1, 2, 3]));
  });

  test("an empty key leaves the signature empty", () => {
    const frames = encodeMessage(message, "");
    expect(frames[2]).toHaveLength(0);
    expect(decodeMessage(frames, "").content).toEqual({ code: "1 + 1" });
  });

  test("decoding gives back what was encoded", () => {
    fc.assert(
      fc.property(
        fc.dictionary(fc.string(), fc.jsonValue()),
        fc.dictionary(fc.string(), fc.string()),
        fc.array(fc.uint8Array({ minLength: 1, maxLength: 8 }), { maxLength: 3 }),
        fc.string({ minLength: 1 }),
        fc.boolean(),
        (content, metadata, identities, key, answers) => {
          const sent: Message = { ...message, content, metadata, identities, parent: answers ? header : undefined };
          const got = decodeMessage(encodeMessage(sent, key), key);
          expect(got.content).toEqual(JSON.parse(JSON.stringify(content)));
          expect(got.metadata).toEqual(JSON.parse(JSON.stringify(metadata)));
          expect(got.identities.map((one) => [...one])).toEqual(identities.map((one) => [...one]));
          expect(got.header).toEqual(header);
          expect(got.parent).toEqual(sent.parent);
        },
      ),
      { seed: 7 },
    );
  });

  test("a changed byte in any signed frame, another key and a changed signature are refused", () => {
    const frames = encodeMessage(message, "secret");
    for (const index of [2, 3, 4, 5, 6]) {
      const tampered = frames.map((frame) => Buffer.from(frame));
      const frame = tampered[index] as Buffer;
      frame[0] = (frame[0] ?? 0) ^ 1;
      expect(() => decodeMessage(tampered, "secret"), `frame ${index}`).toThrow(/wrong signature/);
    }
    expect(() => decodeMessage(frames, "other")).toThrow(WireError);
    expect(() => decodeMessage(frames, "")).toThrow(WireError);
    const short = frames.map((frame, index) => (index === 2 ? Buffer.from("ab") : frame));
    expect(() => decodeMessage(short, "secret")).toThrow(/wrong signature/);
  });

  test("what is not a message is refused in words", () => {
    expect(() => decodeMessage([Buffer.from("a")], "k")).toThrow(/delimiter/);
    expect(() => decodeMessage([Buffer.from("<IDS|MSG>"), Buffer.from("")], "k")).toThrow(/too few/);
    const signed = (parts: string[]) => {
      const hash = createHmac("sha256", "k");
      for (const part of parts) hash.update(part);
      return [Buffer.from("<IDS|MSG>"), Buffer.from(hash.digest("hex")), ...parts.map((part) => Buffer.from(part))];
    };
    expect(() => decodeMessage(signed(["{", "{}", "{}", "{}"]), "k")).toThrow(/not JSON/);
    expect(() => decodeMessage(signed(["[]", "{}", "{}", "{}"]), "k")).toThrow(/not a JSON object/);
    expect(() => decodeMessage(signed(["{}", "{}", "{}", "{}"]), "k")).toThrow(/msg_id or msg_type/);
  });
});
