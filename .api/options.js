import { fileURLToPath } from "node:url";
import { OptionDefaults } from "typedoc";
import { sectionsOfComments, sectionTags } from "./comments.js";
import { groupsByQuestion } from "./questions.js";

const path = (name) => fileURLToPath(new URL(`../${name}`, import.meta.url));

/** The reference: static pages from the doc comments, read offline. */
export default {
  name: "haulbook",
  entryPoints: [path("src/index.ts")],
  tsconfig: path("tsconfig.json"),
  out: path("reports/api"),
  plugin: ["typedoc-plugin-missing-exports", sectionsOfComments, groupsByQuestion(path("src/index.ts"))],
  placeInternalsInOwningModule: true,
  blockTags: [...OptionDefaults.blockTags, ...sectionTags],
  includeVersion: true,
  readme: "none",
  // The build checks the types; the reference takes them as they are.
  skipErrorChecking: true,
  excludeExternals: true,
  disableSources: true,
  disableGit: true,
  githubPages: false,
  hideGenerator: true,
  navigation: { includeGroups: true },
  requiredToBeDocumented: ["Function"],
  validation: { notDocumented: true, notExported: true, invalidLink: true },
  intentionallyNotDocumented: [],
  treatWarningsAsErrors: true,
  treatValidationWarningsAsErrors: true,
  logLevel: "Warn",
};
