// "1. Aqua 2. Glycerin", "01 - …", "(1) …", "a) …", "i. …": the numbers of a list that counts its names.
const first =
  /^(?<before>[^,;\n]{0,60}?(?<![\p{L}\d]))(?<open>\(?)(?<one>0?1|[ai])(?<close>\s?[.)\]/]|\s?-\s)\s*(?=[\p{L}\d(])/iu;
const roman = ['', 'x', 'xx', 'xxx'].flatMap((tens) =>
  ['', 'i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii', 'viii', 'ix'].map((ones) => tens + ones),
);
const fewest = 3; // numbers in a row that make a list counted; of "1. … 2. …" two
const longestName = 300; // letters between two numbers

/** Where each number of a counted list stands, and how many letters it takes. Linear in the text. */
export function numbersOf(letters: string): Map<number, number> {
  const { before, open, one, close } = first.exec(letters.slice(0, 160))?.groups ?? {};
  const numbers = new Map<number, number>();
  if (before === undefined || !one || !close || (/^[ai]$/i.test(one) && close.trim() === '-')) return numbers;
  const low = letters.toLowerCase();
  const sign = close.trimEnd();
  let at = before.length;
  for (let number = 1; at >= 0; number++) {
    const token = `${open}${numberAs(one.toLowerCase(), number)}${sign}`;
    const found = number === 1 ? at : nextOf(low, token, at);
    if (found < 0 || token.length === open!.length + sign.length) break;
    numbers.set(found, token.length);
    at = found + token.length;
  }
  return numbers.size >= (/\d[.)]/.test(one + sign) ? 2 : fewest) ? numbers : new Map();
}

function numberAs(one: string, number: number): string {
  if (one === 'a') return number <= 26 ? String.fromCharCode(96 + number) : '';
  if (one === 'i') return roman[number] ?? '';
  return String(number).padStart(one.length, '0');
}

/** The next place within reach where the number stands by itself. */
function nextOf(low: string, token: string, from: number): number {
  for (
    let at = low.indexOf(token, from);
    at >= 0 && at - from <= longestName;
    at = low.indexOf(token, at + 1)
  )
    if (/[\s,;•]/.test(low[at - 1] ?? '') && /[\s\p{L}(]/u.test(low[at + token.length] ?? '')) return at;
  return -1;
}
