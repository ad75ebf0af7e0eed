import { dataModeVariable } from "./output.js";

/**
 * In a build nobody asks what a name means: doc comments of declarations are read as plain comments, which saves the kernel a fifth of
 * its start. In front ends they are kept, and shown. Runs in the kernel.
 */
export const passOverComments = `
  if (process.env.${dataModeVariable} === "data") {
    const { sys } = require("@tslab/typescript-for-tslab");
    const { readFile } = sys;
    sys.readFile = (path, encoding) => {
      const text = readFile.call(sys, path, encoding);
      return path.endsWith(".d.ts") ? text?.replace(/^(\\s*)\\/\\*\\*(?!\\/)/gmu, "$1/* ") : text;
    };
  }`;
