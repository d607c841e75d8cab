const longestKey = 3; // letters by which a stretch is looked up

/**
 * Which of many rules may take a text: those that need no stretch of letters, and those one of whose stretches stands
 * in it. Indexes in order. A walk over the text, however many rules there are.
 */
export function createCandidates(rules: readonly { needs?: readonly string[] | undefined }[]) {
  const always: number[] = [];
  const starts = new Map<string, [stretch: string, rule: number][]>();
  for (const [rule, { needs }] of rules.entries()) {
    if (!needs || needs.includes('')) always.push(rule);
    else
      for (const stretch of needs) {
        const key = stretch.slice(0, longestKey);
        const same = starts.get(key);
        if (same) same.push([stretch, rule]);
        else starts.set(key, [[stretch, rule]]);
      }
  }
  const sizes = new Set([...starts.keys()].map(({ length }) => length));
  return (text: string): number[] => {
    const found = new Set(always);
    for (let at = 0; at < text.length; at++)
      for (const size of sizes)
        for (const [stretch, rule] of starts.get(text.slice(at, at + size)) ?? [])
          if (!found.has(rule) && text.startsWith(stretch, at)) found.add(rule);
    return [...found].sort((a, b) => a - b);
  };
}
