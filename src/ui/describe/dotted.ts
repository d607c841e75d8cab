/** "a · b · c", without what is empty: a line may end with a dot and never begins with one. */
export const dotted = (parts: readonly unknown[]): string => parts.filter(Boolean).join('\u00a0· ');
