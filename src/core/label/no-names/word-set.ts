/** Words of the dictionary as one question; a star at an end stands for any letters there. Case does not count. */
export function wordSet(...lists: (readonly string[])[]): (word: string) => boolean {
  const whole = new Set<string>();
  const stems = new Map<string, string[]>(); // by their first two letters
  for (const word of lists.flat()) {
    if (!word.endsWith('*')) whole.add(word);
    else {
      const key = word.slice(0, 2);
      stems.set(key, [...(stems.get(key) ?? []), word.slice(0, -1)]);
    }
  }
  return (word) => {
    const low = word.toLowerCase();
    return whole.has(low) || stems.get(low.slice(0, 2))?.some((stem) => low.startsWith(stem)) === true;
  };
}
