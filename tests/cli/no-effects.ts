/** Effects of a command line that a test does not look at. */
export const noEffects = {
  library: async () => undefined,
  lock: async () => async () => {},
  sweep: async () => {},
  remove: async () => {},
  panel: async () => "",
};
