type Question<T> = { by: readonly unknown[]; answer: Promise<T>; known?: { value: T } };

/**
 * Keeps the newest question with its answer: it is asked once, however many ask it, while all it goes by stays.
 * One that failed fails for all who asked it, and is asked anew.
 */
export function createAskedOnce<T>() {
  let newest: Question<T> | undefined;
  const find = (by: readonly unknown[]) =>
    newest && by.length === newest.by.length && by.every((each, at) => each === newest?.by[at])
      ? newest
      : undefined;

  return {
    /** Its answer where that has come. */
    known: (by: readonly unknown[]): { value: T } | undefined => find(by)?.known,
    answer(by: readonly unknown[], ask: () => Promise<T>): Promise<T> {
      const question: Question<T> = find(by) ?? { by, answer: ask() };
      if (question !== newest) {
        newest = question;
        question.answer.then(
          (value) => {
            question.known = { value };
          },
          () => {
            if (question === newest) newest = undefined; // asked anew by whoever asks next
          },
        );
      }
      return question.answer;
    },
  };
}
