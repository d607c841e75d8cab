// What Windows-1252 has for the bytes 0x80 to 0x9f.
const upper = '€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ';
const goesOn = `[\\x80-\\xbf${upper}]`;
// Only leads of Latin and Greek letters, and of signs: a capital with an accent before a sign is no mistake.
const misread = new RegExp(`[ÂÃÎÏ]${goesOn}|â[€„]${goesOn}?|Â(?=[\\s,;.)]|$)`, 'g');

/** UTF-8 read as Windows-1252 ("â€¢", "Ã©", "Â®") as what it was, and lost letters left out. Same length: filled up with `blank`. */
export function rightlyEncoded(text: string, blank: string): string {
  const letters = /[ÂÃÎÏâ]/.test(text)
    ? text.replace(misread, (run) => decoded(run).padStart(run.length, blank))
    : text;
  return letters.includes('\ufffd')
    ? letters.replace(/(?<=\s)\ufffd(?=\s)/g, '•').replaceAll('\ufffd', blank)
    : letters;
}

function decoded(run: string): string {
  const [lead = 0, ...rest] = [...run].map(byteOf);
  if (rest.length === 0) return ' ';
  const wanted = lead >= 0xe0 ? 2 : 1;
  if (rest.length < wanted) return ' '; // the last byte was an invisible one
  const code = rest.reduce((sum, byte) => sum * 64 + (byte & 0x3f), lead & (wanted === 2 ? 0x0f : 0x1f));
  return String.fromCharCode(code);
}

const byteOf = (letter: string) => {
  const at = upper.indexOf(letter);
  return at < 0 ? letter.charCodeAt(0) : 0x80 + at;
};
