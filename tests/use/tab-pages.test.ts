import { describe, expect, it } from 'vitest';
import type { TabPage } from '../../src/contract/messages.ts';
import { badgeOf, createTabPages } from '../../src/use/tabs/tab-pages.ts';
import { slowSession } from '../keeping/session.ts';

describe('what a tab shows', () => {
  const page = (name: string, proteins: number[]): TabPage => ({
    url: `https://shop.example/${name}`,
    title: name,
    lists: proteins.map((n, id) => ({ id, text: `${name} ${id}`, via: 'names', proteins: n })),
  });

  it('frames of one tab write at once and none is lost; the top frame names the page', async () => {
    const pages = createTabPages(slowSession());
    await Promise.all([
      pages.put(7, 0, page('top', [2, 1])),
      pages.put(7, 31, page('inner', [3])),
      pages.put(7, 32, page('other', [1])),
      pages.put(8, 0, page('elsewhere', [9])),
    ]);
    const shown = await pages.get(7);
    expect(shown?.title).toBe('top');
    expect(shown?.lists.map(({ text }) => text).sort()).toEqual(['inner 0', 'other 0', 'top 0', 'top 1']);
    expect(new Set(shown?.lists.map(({ id, frame }) => `${frame} ${id}`)).size).toBe(4);
    expect(badgeOf(shown)).toBe('7');
    expect((await pages.tabs()).sort()).toEqual([7, 8]);
    await pages.put(7, 0, page('top', []));
    expect((await pages.get(7))?.lists.length).toBe(2);
    await pages.drop(7);
    expect(await pages.get(7)).toBeNull();
  });

  it('the badge: nothing without a list, 0 for a list without protein', () => {
    expect(badgeOf(null)).toBe('');
    expect(badgeOf(page('none', []))).toBe('');
    expect(badgeOf(page('free', [0]))).toBe('0');
    expect(badgeOf(page('two', [2, 1]))).toBe('3');
  });
});
