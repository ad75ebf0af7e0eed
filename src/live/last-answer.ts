/**
 * A function that gives its last answer again when it is asked for the same: most sliders leave most of a model as it was.
 *
 * @param work  a pure function of texts, numbers and switches, or of things that are the same one as before
 * @returns the same function
 * Example: lastAnswer((side: number) => [side])(2) → [2]
 */
export function lastAnswer<Asked extends readonly (string | number | boolean | object)[], Answer>(
  work: (...asked: Asked) => Answer,
): (...asked: Asked) => Answer {
  let last: { readonly asked: Asked; readonly answer: Answer } | undefined;
  return (...asked) => {
    if (last === undefined || asked.some((one, place) => one !== last?.asked[place]))
      last = { asked, answer: work(...asked) };
    return last.answer;
  };
}
