import { Comment, CommentTag, Converter, ReflectionKind } from "typedoc";

/** Sections of a doc comment that the language has no tag for. */
export const sectionTags = ["@validity", "@source"];

const text = (content) => ({ kind: "text", text: content });
const textOf = (parts) => parts.map((part) => part.text).join("");
const tagged = (tag, content) => new CommentTag(tag, [text(content)]);

/** Sections that stand at the end of a doc comment, from a line that begins with a capital. */
function closingSections(closing) {
  const [prose, ...rest] = closing.split(/(?:^|\s)(?=(?:Source|Example): )/u);
  const sections = prose.trim() === "" ? [] : [tagged("@validity", prose.trim())];
  for (const part of rest) {
    const body = part
      .replace(/^\w+: /u, "")
      .trim()
      .replaceAll(/\s*\n\s*/gu, " ");
    if (part.startsWith("Source")) sections.push(tagged("@source", body));
    else {
      const [call, result] = body.split(" → ");
      const code = result === undefined ? call : `${call}\n// → ${result}`;
      sections.push(tagged("@example", `\`\`\`ts\n${code}\n\`\`\``));
    }
  }
  return sections;
}

/** Takes the closing part off the last tag, or off the summary of a comment without tags. */
function takeClosing(comment) {
  const last = comment.blockTags.at(-1);
  const holder = last ?? { content: comment.summary };
  const whole = textOf(holder.content);
  const start = whole.search(last === undefined ? /\n(?=(?:Source|Example): )/u : /\n\s*(?=[A-Z])/u);
  if (start < 0) return "";
  const kept = [text(whole.slice(0, start))];
  if (last === undefined) comment.summary = kept;
  else last.content = kept;
  return whole.slice(start);
}

/** Inputs that are members of the one object argument, and no parameters of their own, stand with that argument. */
function placeInputs(comment, parameters) {
  const named = comment.blockTags.filter(({ tag }) => tag === "@param");
  const inputs = named.filter(({ name }) => !parameters.some((parameter) => parameter.name === name));
  const holder = parameters.find(({ name }) => !named.some((tag) => tag.name === name)) ?? parameters[0];
  if (inputs.length === 0 || holder === undefined) return;
  const own = named.filter(({ name }) => name === holder.name);
  const list = inputs.map(({ name, content }) => `- \`${name}\`: ${textOf(content).trim()}`).join("\n");
  holder.comment = new Comment([text([...own.map(({ content }) => textOf(content)), list].join("\n\n"))]);
  comment.blockTags = comment.blockTags.filter((tag) => !inputs.includes(tag) && !own.includes(tag));
}

/** Gives the fixed order of doc comments its sections: inputs, result, validity, source, example. */
export function sectionsOfComments(app) {
  const divide = ({ project }) => {
    const kinds = ReflectionKind.CallSignature | ReflectionKind.SomeType | ReflectionKind.Variable;
    for (const { comment, parameters = [] } of project.getReflectionsByKind(kinds)) {
      for (const parameter of parameters) if (parameter.name === "__namedParameters") parameter.name = "input";
      if (comment === undefined) continue;
      comment.blockTags.push(...closingSections(takeClosing(comment)));
      placeInputs(comment, parameters);
    }
  };
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, divide, -40);
}
