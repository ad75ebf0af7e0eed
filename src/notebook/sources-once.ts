import { dataModeVariable } from "./output.js";

/**
 * In a build each source file that cells import is read once: the kernel does not watch it. It would end when one changed while a cell
 * was compiled, as when the library is built again. In front ends files are watched, so that a changed one takes effect. Runs in the kernel.
 */
export const readSourcesOnce = `
  if (process.env.${dataModeVariable} === "data") {
    const { sys } = require("@tslab/typescript-for-tslab");
    sys.watchFile = sys.watchDirectory = () => ({ close: () => {} });
  }`;
