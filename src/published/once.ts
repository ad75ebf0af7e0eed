/**
 * Puts off a piece of work until it is asked for, and does it once.
 *
 * @param make  the work
 * @returns function that gives its result
 * Example: once(() => 2)() → 2
 */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
