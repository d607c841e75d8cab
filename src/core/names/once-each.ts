/** What is made when it is first asked for. */
export function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/**
 * Answers worked out once for each key and kept; past `most` of them all are forgotten. Nothing (`undefined`) is
 * an answer too.
 */
export function onceEach<Answer>(most: number) {
  const kept = new Map<string, Answer>();
  return (key: string, answer: () => Answer): Answer => {
    const known = kept.get(key);
    if (known !== undefined || kept.has(key)) return known as Answer;
    const made = answer();
    if (kept.size >= most) kept.clear();
    kept.set(key, made);
    return made;
  };
}
