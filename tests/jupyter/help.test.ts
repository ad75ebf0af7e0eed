import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { publicFunctions } from "../house/project.js";
import { type Conversation, startConversation } from "./conversation.js";

const notebooksFolder = fileURLToPath(new URL("../../notebooks", import.meta.url));

let kernel: Conversation;

beforeAll(async () => {
  kernel = await startConversation(notebooksFolder);
  const code = 'import { capstanRatio, fibres, prepareLine, tackle } from "haulbook";\nconst grip = { hold: 80 };';
  const options = { silent: false, store_history: false, allow_stdin: false, stop_on_error: true };
  expect(await kernel.ask("execute_request", { code, ...options })).toMatchObject({ status: "ok" });
});

afterAll(() => kernel?.close());

/** Splits a cell at the cursor, which the tests write as a bar. */
const atCursor = (cell: string) => ({ code: cell.replace("|", ""), cursor_pos: cell.indexOf("|") });

async function explained(cell: string): Promise<string | undefined> {
  const answer = await kernel.ask("inspect_request", { ...atCursor(cell), detail_level: 0 });
  expect(answer.status).toBe("ok");
  const text = (answer.data as { readonly "text/plain"?: string })["text/plain"];
  expect(answer.found).toBe(text !== undefined);
  return text;
}

async function offered(cell: string): Promise<readonly string[]> {
  const answer = await kernel.ask("complete_request", atCursor(cell));
  expect(answer.status).toBe("ok");
  return answer.matches as readonly string[];
}

/** Doc comment of a public function as it stands in the code, in lines without the marks of a comment. */
function docLines(name: string): string[] {
  const { comment } = publicFunctions().find((one) => one.name === name)!;
  const lines = comment.split("\n").map((line) => line.replace(/^\s*(?:\/\*\*|\*\/|\*)?\s*|\s*\*\/$/gu, ""));
  return lines.filter((line) => line !== "");
}

const plain = (text: string) => text.replaceAll(/\s+/gu, " ");

describe("what a notebook says of a name", () => {
  it.each(["prepareLine", "tackle", "capstanRatio"])("%s: every line of its doc comment", async (name) => {
    const lines = docLines(name);
    expect(lines.length).toBeGreaterThan(4);
    const text = plain((await explained(`${name.slice(0, 3)}|${name.slice(3)}`)) ?? "");
    for (const line of lines) expect(text).toContain(plain(line));
  });

  it.each([
    "tackle(|",
    "tackle( |",
    "tackle({ |",
    "tackle({ parts: 4, |})",
    "const four = tackle(|)",
    "capstanRatio(1, tackle(|",
    "capstanRatio(1, tackle(|))",
  ])("%s: the function that is called", async (cell) => {
    expect(await explained(cell)).toContain("Reeving of a simple purchase");
  });

  it("the call around one that is over", async () => {
    expect(await explained("capstanRatio(tackle(1), |")).toContain("Tension ratio across a line bent");
  });

  it.each(["tackle(4)|;", "|", "tackle(4);\n|", "|\ntackle(4);"])(
    "nothing of a call outside of it: %j",
    async (cell) => {
      expect((await explained(cell)) ?? "").not.toContain("Reeving of");
    },
  );

  it("what stands under the cursor before the call around it", async () => {
    expect(await explained("tackle(gr|ip)")).toContain("hold: number");
    expect(await explained("tackle(ha|ul)")).not.toContain("Reeving of");
  });
});

describe("the first lines, which a notebook shows at first", () => {
  it("hold what the function takes and its first sentence", async () => {
    const [head, space, sentence] = ((await explained("tackle(|")) ?? "").split("\n");
    expect(head).toBe("tackle(input: TackleInput): Reeving");
    expect(space).toBe("");
    expect(sentence).toMatch(/^Reeving of a simple purchase/u);
  });

  it("say of a record and of a value of the cell what it is", async () => {
    expect(await explained("fib|res")).toMatch(/^const fibres: \{\n/u);
    expect(await explained("gr|ip")).toBe("const grip: {\n    hold: number;\n}");
  });
});

describe("what a notebook offers", () => {
  it("names of the library that were imported", async () => {
    expect((await offered("prepareLi|"))[0]).toBe("prepareLine");
    expect((await offered("const four = tac|"))[0]).toBe("tackle");
  });

  it("names of the library while they are imported", async () => {
    expect(await offered('import { tack| } from "haulbook";')).toContain("tackleBalance");
  });

  it("names of inputs and of records", async () => {
    expect(await offered("tackle({ |")).toEqual(expect.arrayContaining(["parts", "hauledFrom", "turn", "spreadAngle"]));
    expect(await offered("fibres.|")).toEqual(expect.arrayContaining(["polyester", "hmpe", "lcp"]));
  });
});
