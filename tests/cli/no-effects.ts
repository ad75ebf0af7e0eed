/** Effects of a command line that a test does not look at. */
export const noEffects = {
  library: async () => undefined,
  lock: async () => async () => {},
  sweep: async () => {},
  remove: async () => {},
  rename: async () => {},
  panel: async () => "",
  print: async () => {
    throw new Error("nothing prints here");
  },
  live: {
    serve: async () => ({ address: "http://127.0.0.1:1/", tell: () => {}, close: async () => {} }),
    folders: () => ({ set: () => {}, close: () => {} }),
    settle: async () => {},
    session: "session",
    find: async () => undefined,
  },
  trust: { holds: async () => true, add: async () => "trusted.json" },
  minisearch: async () => "",
};
