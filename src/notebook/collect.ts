import { stripVTControlCharacters } from "node:util";
import type { CellOutput, StreamText } from "./executed.js";
import { figureMediaType, type Shown, shownMediaType } from "./output.js";
import { checkShown } from "./shape.js";
import { uncaughtMark } from "./texts-written.js";
import type { JsonObject, Message } from "./wire.js";

const mostErrorTexts = 50;

/** Gathers what one cell puts out. */
export interface CellCollector {
  take(message: Message): void;
  /** Outputs in order; adjacent texts of one stream are one. */
  outputs(): CellOutput[];
  /** Texts that were written to stderr, one for each write: the first ones and the last. */
  errorTexts(): string[];
  /** Text of an error that nobody caught. */
  uncaughtText(): string | undefined;
  /** Why an output cannot be shown on a report. */
  refusal(): string | undefined;
}

export function cellCollector(): CellCollector {
  const outputs: CellOutput[] = [];
  const errorTexts: string[] = [];
  let uncaughtText: string | undefined;
  let refusal: string | undefined;

  const takeStream = (stream: StreamText["stream"], raw: string) => {
    const text = stripVTControlCharacters(raw);
    if (stream === "stderr") {
      if (errorTexts.length === mostErrorTexts) errorTexts.pop();
      errorTexts.push(text);
      if (uncaughtMark.test(text)) uncaughtText ??= text;
    }
    if (text === "") return;
    const last = outputs.at(-1);
    if (last?.kind === "stream" && last.stream === stream) {
      outputs[outputs.length - 1] = { ...last, text: last.text + text };
    } else outputs.push({ kind: "stream", stream, text });
  };

  const takeData = (content: JsonObject) => {
    try {
      outputs.push(shownOf(content.data));
    } catch (error) {
      refusal ??= error instanceof Error ? error.message : String(error);
    }
  };

  return {
    take: ({ header, content }) => {
      if (header.msg_type === "display_data" || header.msg_type === "execute_result") takeData(content);
      else if (header.msg_type === "update_display_data") {
        refusal ??= "a display was changed after it was shown: a report shows each output once";
      } else if (header.msg_type === "stream" && typeof content.text === "string") {
        takeStream(content.name === "stderr" ? "stderr" : "stdout", content.text);
      }
    },
    outputs: () => [...outputs],
    errorTexts: () => [...errorTexts],
    uncaughtText: () => uncaughtText,
    refusal: () => refusal,
  };
}

function shownOf(data: unknown): Shown {
  const byType: JsonObject = typeof data === "object" && data !== null ? (data as JsonObject) : {};
  if (shownMediaType in byType) return checkShown(byType[shownMediaType]);
  if (figureMediaType in byType) {
    const payload = byType[figureMediaType];
    const figure = typeof payload === "object" && payload !== null ? (payload as JsonObject).haulbook : undefined;
    if (figure === undefined)
      throw new Error("a chart without the figure it was made from: show it with show(figure({ … }))");
    return checkShown(figure);
  }
  throw new Error(
    `an output of type ${Object.keys(byType).join(", ") || "unknown"}: only what the display helper show(…) puts out appears in a report`,
  );
}
