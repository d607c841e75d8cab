// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import { openPanelStore } from '../../src/store/files/panel-store.ts';
import type { Change } from '../../src/store/remembered.ts';
import { Backup } from '../../src/ui/keeping/backup.tsx';
import { keptWorld } from '../keeping/kept-world.ts';
import { madeHead, madeProduct } from '../keeping/made.ts';
import { press, settle } from './pressing.ts';

const text = () => document.body.textContent ?? '';
async function open(start: Change[] = []) {
  const kept = await keptWorld({}, start);
  const store = async () => openPanelStore(kept.keeper);
  await act(() => kept.onDraw((world) => render(<Backup world={{ ...world, store }} />, document.body)));
  await settle();
  return kept;
}
async function pick(content: string) {
  const input = document.querySelector<HTMLInputElement>('input[type=file]')!;
  Object.defineProperty(input, 'files', { value: [new File([content], 'x.json')], configurable: true });
  await act(() => void input.dispatchEvent(new Event('change', { bubbles: true })));
  await settle();
}
afterEach(() => render(null, document.body));
const wren: Change = { do: 'put', thing: 'heads', value: madeHead() };
const cream: Change = { do: 'put', thing: 'products', value: madeProduct() };

it('saves everything, and tables', async () => {
  const { saved } = await open([wren, cream]);
  await press('button', 'Save everything as a file');
  await press('button', 'Products as a table');
  await press('button', 'Log as a table');
  expect(saved.map(({ name }) => name)).toEqual([
    'strandline-everything-2026-03-01.json',
    'strandline-products-2026-03-01.csv',
    'strandline-log-2026-03-01.csv',
  ]);
  expect(JSON.parse(saved[0]!.content as string)).toMatchObject({ products: [{ id: 'p1' }] });
  expect(text()).toContain('of 10 MB are used');
});

it('a bad file is told line by line and changes nothing', async () => {
  const { remembered, saved } = await open([wren]);
  await press('button', 'Save everything as a file');
  const before = remembered();
  await pick((saved[0]!.content as string).replace('"coarse"', '"thick"'));
  const field = document.querySelector('input[type=file]')!;
  expect(field.getAttribute('aria-invalid')).toBe('true');
  const told = field.getAttribute('aria-describedby')!.split(' ');
  expect(told.map((id) => document.getElementById(id)!.textContent)).toContain(
    'This file cannot be imported. Nothing was changed.',
  );
  expect(text()).toMatch(/Line \d+, column \d+ heads\[1\].thickness: This is none of the words/);
  expect(remembered()).toEqual(before);
  await pick('{');
  expect(text()).toContain('Line 1, column 2: This is where the file stops being JSON.');
});

it('a good file shows what would change, is taken in, and undone', async () => {
  const other = await open([wren, cream]);
  await press('button', 'Save everything as a file');
  const file = other.saved[0]!.content as string;
  render(null, document.body);
  const { remembered, said, takeBack } = await open([
    { do: 'put', thing: 'heads', value: madeHead({ id: 'ash', name: 'Ash' }) },
  ]);
  await pick(file);
  expect(text()).toContain('People: 1 new');
  expect(text()).toContain('Products: 1 new');
  await act(() => document.querySelectorAll<HTMLInputElement>('.option input')[1]!.click());
  await settle();
  expect(text()).toContain('People: 1 new, 1 removed');
  expect(text()).toContain('Removed: Ash.');
  await press('button', 'Import');
  expect(said.at(-1)).toBe('The file was imported.');
  expect(remembered().heads.map(({ name }) => name)).toEqual(['Wren']);
  await expect.poll(text).toContain('Save the copy from before the last import');
  await act(async () => void (await takeBack()));
  expect(remembered().heads.map(({ name }) => name)).toEqual(['Ash']);
  expect(remembered().products).toEqual([]);
});
