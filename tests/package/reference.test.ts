import { execFile } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { publicFunctions, read, root } from "../house/project.js";

/** The reference as data, as far as it is used here. */
interface Reference {
  readonly children: readonly { readonly id: number; readonly name: string }[];
  readonly groups: readonly { readonly title: string; readonly children: readonly number[] }[];
}

let folder: string;
let reference: Reference;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "haulbook-reference-"));
  const tool = join(root, "node_modules/typedoc/bin/typedoc");
  const options = [
    "--options",
    ".api/options.js",
    "--out",
    join(folder, "pages"),
    "--json",
    join(folder, "names.json"),
  ];
  // Ends with an error where a public function says nothing of itself, or a link leads nowhere.
  await promisify(execFile)(process.execPath, [tool, ...options], { cwd: root });
  reference = JSON.parse(readFileSync(join(folder, "names.json"), "utf8")) as Reference;
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const pages = () => join(folder, "pages");
const page = (name: string) => readFileSync(join(pages(), name), "utf8");
const signs: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };

/** What a page says, without its markup, spaces and marks of code. */
function saidOn(name: string): string {
  const text = page(name).replaceAll(/<script[\s\S]*?<\/script>|<[^>]*>/gu, "");
  return text.replaceAll(/&(#?\w+);/gu, (whole, sign: string) => signs[sign] ?? whole).replaceAll(/[\s`]/gu, "");
}

/** Lines of a doc comment, without what marks its parts. */
function partsOf(comment: string): string[] {
  const lines = comment.split("\n").map((line) => line.replace(/^\s*(?:\/\*\*|\*\/|\*)?\s*|\s*\*\/$/gu, ""));
  return lines
    .flatMap((line) => line.replace(/^@(?:param \S+|returns|throws)/u, "").split(/(?:^|\s)(?:Source|Example): | → /u))
    .map((part) => part.replaceAll(/[\s`]/gu, ""))
    .filter((part) => part !== "");
}

describe("the reference", () => {
  it("has every public name under its question, in the order of the table of contents", () => {
    const sections = read("src/index.ts")
      .split(/^\/\/ /mu)
      .slice(1);
    const wanted = sections.map((section) => {
      const [title = "", ...lines] = section.split("\n");
      const lists = [...lines.join("\n").matchAll(/\{([^}]*)\}/gu)].flatMap(([, list = ""]) => list.split(","));
      return { title, names: lists.map((name) => name.trim().replace(/^type /u, "")).filter((name) => name !== "") };
    });
    expect(wanted.length).toBeGreaterThan(15);
    const nameOf = new Map(reference.children.map(({ id, name }) => [id, name]));
    const found = reference.groups.map(({ title, children }) => ({
      title,
      names: children.map((id) => nameOf.get(id)!),
    }));
    const sorted = ({ title, names }: { readonly title: string; readonly names: readonly string[] }) => ({
      title,
      names: [...new Set(names)].sort(),
    });
    expect(found.slice(0, wanted.length).map(sorted)).toEqual(wanted.map(sorted));
    expect(found.slice(wanted.length).map(({ title }) => title)).toEqual(["What else do these names speak of?"]);
  });

  it("says of every public function what its doc comment says: equation, units, result, source, example", () => {
    const functions = publicFunctions();
    expect(functions.length).toBeGreaterThan(200);
    const lost = functions.flatMap(({ name, comment }) => {
      const said = saidOn(`functions/${name}.html`);
      return partsOf(comment)
        .filter((part) => !said.includes(part))
        .map((part) => `${name}: ${part}`);
    });
    expect(lost).toEqual([]);
  });

  it("leads nowhere but to places of its own", () => {
    const names = (readdirSync(pages(), { recursive: true }) as string[]).filter((name) => name.endsWith(".html"));
    const anchors = new Map<string, Set<string>>();
    const anchorsOf = (file: string) => {
      const known = anchors.get(file);
      if (known) return known;
      const found = new Set([...readFileSync(file, "utf8").matchAll(/\bid="([^"]*)"/gu)].map((match) => match[1]!));
      anchors.set(file, found);
      return found;
    };
    const astray = names.flatMap((name) => {
      const file = join(pages(), name);
      const links = new Set([...page(name).matchAll(/\b(?:href|src)="([^"]*)"/gu)].map((match) => match[1]!));
      return [...links]
        .filter((link) => {
          const [path = "", anchor = ""] = link.split("#");
          const target = path === "" ? file : resolve(dirname(file), decodeURIComponent(path));
          const there = /^[\w-]+:|^\/\//u.test(link) ? false : target.startsWith(pages()) && existsSync(target);
          const isPlace =
            anchor === "" || !target.endsWith(".html") || anchorsOf(target).has(decodeURIComponent(anchor));
          return !(there && isPlace);
        })
        .map((link) => `${name}: ${link}`);
    });
    expect(names.length).toBeGreaterThan(500);
    expect(astray).toEqual([]);
  });

  it("brings its own style: nothing is fetched from elsewhere", () => {
    const style = page("assets/style.css");
    expect(style).not.toMatch(/@import|@font-face|url\(\s*["']?(?:https?:)?\/\//u);
  });
});
