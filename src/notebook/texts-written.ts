/** Most text that a cell may write [characters]; the rest is counted and left out. */
const mostText = 100_000;

/** Marks with which the kernel prints errors that no cell caught. */
export const uncaughtMark = /^(UnhandledPromiseRejection|UncaughtException):/;

/**
 * Joins what a cell writes, and cuts it: a message for each line would take a minute for a million lines, and lose outputs. What an
 * error says is always sent: errors that nobody caught, and the last text on stderr. Runs in the kernel.
 */
export const joinTexts = `
  const { JupyterHandlerImpl } = require("../dist/jupyter.js");
  const { handleExecuteImpl } = JupyterHandlerImpl.prototype;
  const textsOfCell = (send) => {
    let joined = "";
    let left = ${mostText};
    let cut = 0;
    let lastError;
    let uncaught = false;
    let waiting = false;
    const flush = () => {
      if (joined !== "") send("stdout", joined);
      joined = "";
    };
    const end = () => {
      waiting = false;
      flush();
      if (lastError !== undefined) send("stderr", lastError);
      if (cut > 0) send("stderr", "Cut here: " + cut + " more characters were written.\\n");
      lastError = undefined;
      cut = 0;
    };
    const later = (over) => {
      if (!waiting) setImmediate(() => (over() ? end() : ((waiting = false), flush())));
      waiting = true;
    };
    const write = (stream, text, over) => {
      const error = stream === "stderr";
      if (error) flush();
      if (error && !uncaught && ${uncaughtMark}.test(text)) {
        uncaught = true;
        return send(stream, text);
      }
      const kept = text.slice(0, left);
      left -= kept.length;
      cut += text.length - kept.length;
      if (error && kept.length < text.length) lastError = text.slice(0, ${mostText});
      if (error && kept !== "") send(stream, kept);
      if (!error) joined += kept;
      later(over);
    };
    return { write, flush, end };
  };
  JupyterHandlerImpl.prototype.handleExecuteImpl = async function (request, send, display) {
    const texts = textsOfCell(send);
    let over = false;
    const write = (stream, text) => texts.write(stream, text, () => over);
    const displayInTurn = (...shown) => {
      texts.flush();
      display(...shown);
    };
    try {
      return await handleExecuteImpl.call(this, request, write, displayInTurn);
    } finally {
      over = true;
      texts.end();
    }
  };`;
