import { readFileSync } from "node:fs";
import { Comment, CommentTag, Converter } from "typedoc";

/** Heading of what the public names speak of without being public themselves. */
const spokenOf = "What else do these names speak of?";

/**
 * Public names by the reader's question under which the table of contents offers them.
 *
 * @param {string} contents  text of the table of contents
 * @returns {Map<string, string>} question by name, in order
 */
export function questionsOf(contents) {
  const [, ...parts] = contents.split(/^\/\/ (?=.*\?$)/mu);
  const pairs = parts.flatMap((part) => {
    const question = part.split("\n", 1)[0].trim();
    const lists = [...part.matchAll(/^export (?:type )?\{([^}]*)\}/gmu)].flatMap(([, list]) => list.split(","));
    const names = lists.map((name) => name.trim().replace(/^type /u, "")).filter((name) => name !== "");
    return names.map((name) => [name, question]);
  });
  return new Map(pairs);
}

/** Puts every name under its question, in the order of the table of contents. */
export function groupsByQuestion(file) {
  const questions = questionsOf(readFileSync(file, "utf8"));
  return (app) => {
    app.on("bootstrapEnd", () => app.options.setValue("groupOrder", [...new Set(questions.values()), spokenOf]));
    const group = ({ project }) => {
      for (const declared of project.children ?? []) {
        const owner = declared.signatures?.[0] ?? declared;
        owner.comment ??= new Comment();
        const title = questions.get(declared.name) ?? spokenOf;
        owner.comment.blockTags.push(new CommentTag("@group", [{ kind: "text", text: title }]));
      }
    };
    // After the names that are spoken of were found, which comes at the usual time.
    app.converter.on(Converter.EVENT_RESOLVE_BEGIN, group, -50);
  };
}
