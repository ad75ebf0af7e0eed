import ts from "typescript";
import { describe, expect, it } from "vitest";
import { bibliography } from "../../src/sources/bibliography.js";
import { type Exported, exportsOf, filesBelow, publicFunctions } from "./project.js";

/** The folders of calculation, from quantities to published values. */
const core = filesBelow("src").filter((file) => !/^src\/(?:index\.ts|notebook\/|report\/|cli\/)/u.test(file));
const functions = core.flatMap(exportsOf).filter(({ node }) => ts.isFunctionDeclaration(node));
const label = ({ file, name }: Exported) => `${file}: ${name}`;
const ids = Object.keys(bibliography);

/** Tags of a doc comment with the lines that belong to each. */
function tags(comment: string, tag: "param" | "returns"): string[] {
  const text = comment
    .split("\n")
    .map((line) => line.replace(/^\s*\/?\*+\/?\s?/u, ""))
    .join("\n");
  return [...text.matchAll(new RegExp(`^@${tag}\\b([^@]*?)(?=^@|^[A-Z]|^\\s*$|$(?![\\s\\S]))`, "gmu"))].map((match) =>
    match[1]!.trim(),
  );
}

const says = (type: ts.TypeNode | undefined) => type?.getText() ?? "";

/** Type of the named parameter, or of the named member of its one object argument, as far as the file tells. */
function typeOf({ node }: Exported, name: string): string {
  if (!ts.isFunctionDeclaration(node)) return "";
  const named = node.parameters.find((parameter) => parameter.name.getText() === name);
  if (named) return says(named.type);
  const members = node.parameters.flatMap(({ type }) => membersOf(type, node.getSourceFile()));
  return says(members.find((member) => member.name.getText() === name)?.type);
}

function membersOf(type: ts.TypeNode | undefined, source: ts.SourceFile): ts.PropertySignature[] {
  if (!type) return [];
  if (ts.isTypeLiteralNode(type)) return type.members.filter(ts.isPropertySignature);
  if (ts.isIntersectionTypeNode(type)) return type.types.flatMap((part) => membersOf(part, source));
  if (!ts.isTypeReferenceNode(type)) return [];
  const declared = source.statements.find(
    (statement) => ts.isInterfaceDeclaration(statement) && statement.name.text === type.typeName.getText(),
  );
  return declared && ts.isInterfaceDeclaration(declared) ? declared.members.filter(ts.isPropertySignature) : [];
}

describe("doc comments", () => {
  it("stand above every exported function of the core", () => {
    expect(functions.length).toBeGreaterThan(80);
    expect(functions.filter(({ comment }) => comment === "").map(label)).toEqual([]);
  });

  it("begin with one sentence", () => {
    const first = ({ comment }: Exported) => comment.replace(/^\/\*\*\s*\*?\s*/u, "").split("\n")[0]!;
    const wrong = functions.filter((one) => !/^[A-Z][^@]{10,}/u.test(first(one)));
    expect(wrong.map((one) => `${label(one)}: ${first(one)}`)).toEqual([]);
  });

  it("give the unit of every number that a public function takes", () => {
    const offered = publicFunctions().filter(({ file }) => core.includes(file));
    expect(offered.length).toBeGreaterThan(50);
    const wrong = offered.flatMap((one) =>
      tags(one.comment, "param")
        .filter((tag) => {
          const [name = ""] = tag.split(/[\s,]+/u);
          return /\bnumber\b/u.test(typeOf(one, name)) && !/\[[^\]]+\]/u.test(tag);
        })
        .map((tag) => `${label(one)}: ${tag}`),
    );
    expect(wrong).toEqual([]);
  });

  it("name every number that a public function takes", () => {
    const wrong = publicFunctions()
      .filter(({ file }) => core.includes(file))
      .flatMap((one) => {
        const { node } = one;
        if (!ts.isFunctionDeclaration(node)) return [];
        const plain = node.parameters.filter(({ type }) => says(type) === "number" || type === undefined);
        return plain
          .map(({ name }) => name.getText())
          .filter((name) => !tags(one.comment, "param").some((tag) => new RegExp(`^${name}\\b`, "u").test(tag)))
          .map((name) => `${label(one)}: ${name}`);
      });
    expect(wrong).toEqual([]);
  });

  it("give the unit of what a public function returns as a number", () => {
    const wrong = publicFunctions()
      .filter(({ file, node }) => core.includes(file) && ts.isFunctionDeclaration(node) && says(node.type) === "number")
      .filter(({ comment }) => {
        const [returns] = tags(comment, "returns");
        return returns === undefined || !(/\[[^\]]+\]/u.test(returns) || /\bunit\b/u.test(returns));
      });
    expect(wrong.map(label)).toEqual([]);
  });

  it("say of every public model where it comes from", () => {
    const models = publicFunctions().filter(({ file }) => /^src\/(?:materials|wind|rope|reeving)\//u.test(file));
    const silent = models
      .filter(({ node }) => ts.isFunctionDeclaration(node))
      .filter(({ comment }) => {
        const [, id = ""] = /\bSource: (common practice|[a-z0-9-]+)/u.exec(comment) ?? [];
        return id !== "common practice" && !ids.includes(id);
      });
    expect(models.length).toBeGreaterThan(30);
    expect(silent.map(label)).toEqual([]);
  });

  it("name sources of the bibliography", () => {
    const unknown = core.flatMap(exportsOf).flatMap((one) =>
      [...one.comment.matchAll(/\bSource: ([a-z0-9]+(?:-[a-z0-9]+)*)/gu)]
        .map((match) => match[1]!)
        .filter((id) => id !== "common" && !ids.includes(id))
        .map((id) => `${label(one)}: ${id}`),
    );
    expect(unknown).toEqual([]);
  });
});
