import { isCollection, isScalar } from "yaml";
import type { z } from "zod";
import type { Boat } from "./boat.js";
import { crossTroubles, type Finding } from "./references.js";
import { boatSchema } from "./schema.js";
import { quotedForeign, wantedParts, wayTo } from "./schema-words.js";
import { BoatFileError, type Trouble } from "./trouble.js";
import { type YamlText, yamlText } from "./yaml-text.js";

/** A file of the same folder: a name that leads nowhere else. */
const plainName = /^[\p{L}\d][\p{L}\d ._-]*\.ya?ml$/u;

/** Where a boat file stands, for messages, and how to read the file beside it that holds the catalogue. */
export interface Place {
  /** Name of the file as messages show it. */
  readonly file: string;
  /** Text of a file in the same folder, by its plain name; nothing when there is none. */
  readonly beside?: (name: string) => string | undefined;
}

/**
 * Reads a boat file.
 *
 * @param text  the file, YAML
 * @param place  its name, and how to read a catalogue that lies beside it
 * @returns the boat, all quantities in SI
 * @throws BoatFileError with every trouble: file, line, column, what was found, what is allowed, what to do
 */
export function boatOf(text: string, place: Place): Boat {
  return checkedBoat(yamlText(text, place.file), place);
}

/**
 * Name of the file that holds the catalogue of a boat file, if it is not in the boat file itself.
 *
 * @param text  the boat file, YAML
 * @param file  its name, for messages
 * @returns plain name of a file in the same folder, or nothing
 * @throws BoatFileError for a text that is no YAML mapping
 */
export function catalogueFile(text: string, file: string): string | undefined {
  const name = yamlText(text, file).document.get("catalogue");
  return typeof name === "string" && plainName.test(name) ? name : undefined;
}

/** A value to be put in the place of another, key by key. */
export interface FileChange {
  readonly path: readonly (string | number)[];
  /** As the file writes it, such as `5 mm`. */
  readonly value: string | number | boolean;
}

/**
 * Writes a boat file again, some of its values changed, all its comments kept.
 *
 * @param text  the file, YAML
 * @param changes  values to put in, each at a key that the file has
 * @param place  as for `boatOf`
 * @returns the new text, with lines that end in a line feed
 * @throws BoatFileError when the text, or what becomes of it, is no boat file
 */
export function rewriteBoat(text: string, changes: readonly FileChange[], place: Place): string {
  const yaml = yamlText(text, place.file);
  for (const { path, value } of changes) {
    const old = yaml.document.getIn(path, true);
    if (!isScalar(old))
      throw new BoatFileError([
        {
          file: place.file,
          ...yaml.spot(path),
          at: wayTo(path),
          found: old === undefined ? "nothing" : "more than one value",
          allowed: "a value that stands in the file",
          advice: "Name every key on the way to it.",
        },
      ]);
    old.value = value;
  }
  const written = yaml.document.toString({ lineWidth: 0 });
  boatOf(written, place);
  return written;
}

function checkedBoat(yaml: YamlText, place: Place): Boat {
  const raw = yaml.document.toJS() as Record<string, unknown>;
  const shop = typeof raw.catalogue === "string" ? shopText(raw.catalogue, yaml, place) : undefined;
  const whole = shop === undefined ? raw : { ...raw, catalogue: shop.document.toJS() as unknown };
  const found = boatSchema.safeParse(whole);
  const troubles = found.success
    ? crossTroubles(found.data).map((one) => crossTrouble(one, yaml, shop))
    : found.error.issues.flatMap((issue) => schemaTroubles(issue, yaml, shop));
  const [first, ...others] = troubles.sort((one, other) => one.line - other.line || one.column - other.column);
  if (first !== undefined) throw new BoatFileError([first, ...others]);
  return found.data as Boat;
}

/** The file beside this one that holds the catalogue: a plain name, so that no path leads out of the folder. */
function shopText(name: string, yaml: YamlText, place: Place): YamlText {
  const refuse = (found: string, allowed: string, advice: string): never => {
    throw new BoatFileError([
      { file: place.file, ...yaml.spot(["catalogue"]), at: "catalogue", found, allowed, advice },
    ]);
  };
  if (!plainName.test(name))
    refuse(
      JSON.stringify(name),
      'a file of the same folder by its plain name, such as "shop.yaml"',
      "Put the catalogue beside the boat file.",
    );
  const text = place.beside?.(name);
  return text === undefined
    ? refuse(
        `"${name}", which is not there`,
        "a file that lies beside the boat file",
        "Put it there, or write the catalogue into the boat file.",
      )
    : yamlText(text, name);
}

/** The text in which a path stands, and its path there. */
function whereIs(
  path: readonly PropertyKey[],
  yaml: YamlText,
  shop: YamlText | undefined,
): [YamlText, readonly PropertyKey[]] {
  return shop !== undefined && path[0] === "catalogue" ? [shop, path.slice(1)] : [yaml, path];
}

function schemaTroubles(issue: z.core.$ZodIssue, yaml: YamlText, shop: YamlText | undefined): Trouble[] {
  const [text, path] = whereIs(issue.path, yaml, shop);
  const at = wayTo(issue.path);
  const { allowed, advice } = wantedParts(issue.message);
  if (issue.code === "unrecognized_keys")
    return issue.keys.map((key) => ({
      file: text.file,
      ...text.keySpot([...path, key]),
      at,
      found: `the unknown key ${quotedForeign(key)}`,
      allowed,
      advice,
    }));
  const node = path.length === 0 ? text.document.contents : text.document.getIn(path, true);
  const spot = node === undefined ? text.keySpot(path.slice(0, -1)) : text.spot(path);
  const missing = node === undefined && issue.path.length > 0;
  return [
    {
      file: text.file,
      ...spot,
      at,
      found: foundAt(node),
      allowed,
      advice: missing && at !== "version" ? "Add it." : advice,
    },
  ];
}

/** What stands there, in words. */
function foundAt(node: unknown): string {
  if (node === undefined) return "nothing";
  if (isCollection(node)) return node.items.length === 0 ? "an empty list or mapping" : "a list or mapping";
  const value = isScalar(node) ? node.value : node;
  if (typeof value === "number") return `the plain number ${value}`;
  return value === null ? "nothing" : typeof value === "string" ? quotedForeign(value) : JSON.stringify(value);
}

function crossTrouble(one: Finding, yaml: YamlText, shop: YamlText | undefined): Trouble {
  const [text, path] = whereIs(one.path, yaml, shop);
  const { found, allowed, advice } = one;
  return { file: text.file, ...text.spot(path), at: wayTo(one.path), found, allowed, advice };
}
