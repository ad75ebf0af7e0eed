/**
 * Help while a call is written: where nothing stands under the cursor, as behind the bracket of `tackle(`, what is called is
 * explained, which is where notebooks ask for it. That a name was imported goes unsaid, so that the first lines, which are all that a
 * notebook shows at first, hold the first sentence of the doc comment. What is returned and thrown says so. Runs in the kernel.
 */
export const hoverInCalls = `
  {
    const ts = require("@tslab/typescript-for-tslab");
    const converter = require("../dist/converter.js");
    const { createConverter } = converter;
    const isOver = (call, file, position) =>
      call.getChildren(file).at(-1).kind === ts.SyntaxKind.CloseParenToken && position >= call.end;
    const calledAt = (cell, position) => {
      const file = ts.createSourceFile("cell.ts", cell, ts.ScriptTarget.Latest, true);
      const place = cell.slice(0, position).trimEnd().length;
      let called;
      const visit = (node) => {
        if (node.getFullStart() > place || node.end < place) return;
        const isCall = (ts.isCallExpression(node) || ts.isNewExpression(node)) && node.arguments !== undefined;
        if (isCall && node.arguments.pos <= place && !isOver(node, file, position)) called = node.expression;
        ts.forEachChild(node, visit);
      };
      visit(file);
      return called;
    };
    const labelled = (tag) =>
      tag.text && ["returns", "throws"].includes(tag.name)
        ? { ...tag, text: [{ kind: "text", text: "@" + tag.name + " " }, ...tag.text] }
        : tag;
    const ownParts = (parts = []) => {
      const start = parts[1]?.text === "alias" ? 4 : 0;
      const end = parts.findIndex(({ text }, index) => text === "\\n" && parts[index + 1]?.text === "import");
      return parts.slice(start, start === 0 || end < 0 ? undefined : end);
    };
    converter.createConverter = (options) => {
      const made = createConverter(options);
      const inspect = (earlier, cell, position) => {
        const there = made.inspect(earlier, cell, position);
        const called = there ? undefined : calledAt(cell, position);
        const info = called ? made.inspect(earlier, cell, called.end - 1) : there;
        return info && { ...info, displayParts: ownParts(info.displayParts), tags: info.tags?.map(labelled) };
      };
      return { ...made, inspect };
    };
  }`;
