const stroke = /(?<=\p{L})[!|](?=\p{L}|[,;.):]*$)/gu;

/**
 * A word as it was printed, where its reader surely erred: no name holds "!" or "|" inside, it is an upright letter
 * ("Undecy!"), or the edge of the one before it ("Methyl!"). Specks without any letter are nothing.
 */
export function printedWord(read: string): string {
  if (!/[\p{L}\p{N},;•·|/&+%*()-]/u.test(read)) return '';
  return read.replace(stroke, (_, at: number) => {
    const before = read[at - 1]!;
    if (/[lI]/.test(before)) return '';
    return before === before.toUpperCase() ? 'I' : 'l';
  });
}
