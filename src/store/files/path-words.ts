/** Where in a file something stands, as a user would say it: the items of a list are counted from 1. */
export const pathWords = (path: readonly PropertyKey[]): string =>
  path
    .map((part, at) => (typeof part === 'number' ? `[${part + 1}]` : `${at > 0 ? '.' : ''}${String(part)}`))
    .join('');
