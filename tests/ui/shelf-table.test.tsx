// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import type { ShelfRow } from '../../src/contract/shelf.ts';
import { ShelfTable } from '../../src/ui/shelf/shelf-table.tsx';
import { fakeWorld } from './fake-world.ts';
import { settle, type } from './pressing.ts';

const rows: ShelfRow[] = [
  { address: 'https://a.example/p/1', name: 'Gel', state: 'read', per100: 4, currency: 'EUR' },
  { address: 'https://a.example/p/2', name: 'Foam', state: 'read', per100: 9, currency: 'euros' },
  { address: 'https://a.example/p/3', name: 'Hand balm', state: 'read', notForHair: true },
  { address: 'https://a.example/p/4', name: 'Oil', state: 'met' },
];
async function draw(shown: ShelfRow[]) {
  const { world, told } = fakeWorld({
    shelf: { rows: async () => shown, read: async () => undefined, save: async () => undefined },
  });
  await act(() => render(<ShelfTable world={world} />, document.body));
  await settle();
  return told;
}
afterEach(() => render(null, document.body));

describe('a shelf as a table', () => {
  it('a currency that is none is shown as printed, and what is for no hair is said so', async () => {
    await draw(rows);
    const cells = [...document.querySelectorAll('tbody tr')].map(({ textContent }) => textContent);
    expect(cells[0]).toContain('€4.00');
    expect(cells[1]).toContain('9.00 euros');
    expect(cells[2]).toContain('Not for hair');
  });
  it('takes the most that 100 ml may cost, in the shop’s currency, and takes it back', async () => {
    const told = await draw([rows[0]!, rows[2]!]);
    await type('Most for 100 ml or g', '6,5');
    expect(told.changes).toEqual([{ do: 'set', settings: { shelfPrice: { most: 6.5, currency: 'EUR' } } }]);
    await type('Most for 100 ml or g', '');
    expect(told.changes.at(-1)).toEqual({ do: 'set', settings: {}, unset: ['shelfPrice'] });
  });
  it('asks for no price where none is known', async () => {
    await draw([rows[2]!, rows[3]!]);
    expect(document.body.textContent).not.toContain('Most for 100 ml');
  });
});
