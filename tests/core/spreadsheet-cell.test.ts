// OWASP, "CSV Injection" (https://owasp.org/www-community/attacks/CSV_Injection): what begins with = + - @ tab or CR
// may be run; separators differ from spreadsheet to spreadsheet.
import Papa from 'papaparse';
import { expect, it } from 'vitest';
import { plainCell, wantsQuotes } from '../../src/core/spreadsheet-cell.ts';
import { spent } from '../spent.ts';

it.each([
  ['=HYPERLINK("x")', '\'=HYPERLINK("x")'],
  ['=1\n+2', "'=1\n'+2"],
  ['Gel;=cmd', "Gel;'=cmd"],
  ['Gel\t@SUM(A1)', "Gel\t'@SUM(A1)"],
  ['Gel\r\n  -1', "Gel\r\n  '-1"],
  ['＝1', "'＝1"],
  ['Aqua, CI 77891 (+/-)', 'Aqua, CI 77891 (+/-)'],
  ['2-in-1 wash', '2-in-1 wash'],
  ['a\0b', 'ab'],
])('%j → %j', (text, cell) => expect(plainCell(text)).toBe(cell));

it.each([',', ';', '\t', '|'])('no cell begins with a formula, read with %j between cells', (delimiter) => {
  const evil = ['=1', '+1', '-1', '@x', 'a;=1', 'a\t=1', 'a|=1', 'a\n=1', 'a\r=1', 'x;"y;=1', '";=1'];
  const csv = Papa.unparse([evil.map(plainCell), ['plain', ...evil.map(plainCell)]], { quotes: wantsQuotes });
  const cells = Papa.parse<string[]>(csv, { delimiter }).data.flat();
  expect(cells.filter((cell) => /^\s*[=+\-@]/.test(cell))).toEqual([]);
});

it('150,000 line ends take no longer than their number', () => {
  expect(spent(() => plainCell('\n'.repeat(150_000)))).toBeLessThan(500);
});
