// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import type { TabPage } from '../../src/contract/messages.ts';
import type { Head } from '../../src/core/hair/head.ts';
import { ThisPagePlace } from '../../src/ui/places/this-page.tsx';
import type { World } from '../../src/ui/world.ts';
import { creamText, fakeWorld, gelText, nothing, type Told } from './fake-world.ts';

const page: TabPage = {
  url: 'https://shop.example/p/1',
  title: 'A page',
  lists: [
    { id: 4, text: creamText, via: 'open', product: { name: 'Harbour Curl Cream', kind: 'cream' } },
    { id: 7, text: gelText, via: 'open', product: { name: 'Tide Pool Gel', kind: 'gel' } },
  ],
};
const wren: Head = {
  id: 'wren',
  name: 'Wren',
  thickness: 'coarse',
  porosity: 'low',
  damage: { kinds: [] },
  avoid: [],
  stretch: [],
  setAside: [],
  added: '2026-01-01',
};

const draw = async (over: Partial<World>): Promise<Told> => {
  const { world, told } = fakeWorld(over);
  await act(() => render(<ThisPagePlace world={world} />, document.body));
  return told;
};
const words = () => document.body.textContent ?? '';
const button = (name: string) =>
  [...document.querySelectorAll('button')].find(
    (each) => (each.getAttribute('aria-label') ?? each.textContent) === name,
  );
const press = (name: string) => act(async () => button(name)!.click());
afterEach(() => render(null, document.body));

describe('a page that was read', () => {
  it('names the product, sums it up and lists what tells', async () => {
    await draw({ page });
    expect(document.querySelector('.card h3')?.textContent).toBe('Harbour Curl Cream');
    expect(document.querySelector('.sums')?.textContent).toMatch(/a lot of protein .large, small./);
    const names = [...document.querySelectorAll('.mention-name')].map((each) => each.textContent?.trim());
    expect(names).toEqual([
      'Cetearyl Alcohol',
      'Glycerin',
      'Hydrolyzed Wheat Protein',
      'Hydrolyzed Silk',
      'Panthenol',
    ]);
    expect(words()).toContain('up to 20\u00a0%');
  });

  it('says where the one-percent line falls', async () => {
    await draw({ page });
    const line = document.querySelector('.one-percent');
    expect(line?.parentElement?.querySelector('.mention-name')?.textContent).toMatch('Panthenol');
  });

  it('offers the other lists of the page', async () => {
    await draw({ page });
    const select = document.querySelector('select')!;
    expect([...select.options].map((each) => each.label || each.textContent)).toEqual([
      '1. Harbour Curl Cream',
      '2. Tide Pool Gel',
    ]);
    await act(() => {
      select.value = '0 7';
      select.dispatchEvent(new Event('change', { bubbles: true }));
    });
    expect(document.querySelector('.card h3')?.textContent).toBe('Tide Pool Gel');
  });

  it('answers for the head in use, with reasons and the names that decided', async () => {
    await draw({ page, remembered: { ...nothing, heads: [wren] } });
    expect(document.querySelector('.answer-head.large .answer')?.textContent).toBe('Not for Wren');
    expect(button('Hydrolyzed Wheat Protein')).toBeDefined();
    expect(document.querySelector('.decides .mention-name')?.textContent).toMatch('Hydrolyzed Wheat Protein');
  });

  it('says whom of several people it fits, by name, when asked', async () => {
    const fine: Head = { ...wren, id: 'ash', name: 'Ash', thickness: 'fine', porosity: 'high' };
    await draw({ page, remembered: { ...nothing, heads: [wren, fine] } });
    const list = [...document.querySelectorAll('details')].find((each) =>
      each.textContent?.startsWith('Which of 2 people does it fit'),
    )!;
    expect(list.querySelectorAll('li')).toHaveLength(0);
    await act(async () => {
      list.open = true;
      list.dispatchEvent(new Event('toggle'));
    });
    const titles = [...list.querySelectorAll('.answer')].map((each) => each.textContent);
    expect(titles).toHaveLength(2);
    expect(titles[0]).toContain('Ash');
    expect(titles[1]).toBe('Not for Wren');
  });

  it('of many people it says how many it fits, and shows those of one answer or of one name', async () => {
    const called = ['Ada', 'Björn', 'Cleo', 'Daria', 'Émile', 'Fern', 'Gus', 'Hana'];
    // Every other avoids what is in the gel.
    const avoid = [{ id: 'a', name: 'Glycerin', reacted: false }];
    const heads = called.map((name, i): Head => ({ ...wren, id: name, name, ...(i % 2 === 0 && { avoid }) }));
    await draw({ page: { ...page, lists: [page.lists[1]!] }, remembered: { ...nothing, heads } });
    const list = [...document.querySelectorAll('details')].find((each) =>
      each.textContent?.startsWith('Which of 8 people does it fit'),
    )!;
    await act(async () => {
      list.open = true;
      list.dispatchEvent(new Event('toggle'));
    });
    const rows = () => [...list.querySelectorAll('.answer')].map((each) => each.textContent ?? '');
    expect(rows()).toHaveLength(8);
    const counts = [...list.querySelectorAll('.option-words')].map((each) => each.textContent);
    expect(counts[0]).toBe('all (8)');
    expect(counts).toContain('not a fit (4)');
    const none = list.querySelector<HTMLInputElement>('input[value="does-not-suit"]')!;
    await act(async () => none.click());
    expect(rows()).toEqual(['Ada', 'Cleo', 'Émile', 'Gus'].map((name) => `Not for ${name}`));
    const search = list.querySelector<HTMLInputElement>('input[type=search]')!;
    await act(async () => {
      search.value = 'emi';
      search.dispatchEvent(new Event('input', { bubbles: true }));
    });
    expect(rows()).toEqual(['Not for Émile']);
  });

  it('asks for a head where there is none', async () => {
    const told = await draw({ page });
    await press('Describe your hair');
    expect(told.went).toEqual([['hair', undefined]]);
  });

  it('keeps, pins and adds', async () => {
    const told = await draw({ page });
    await press('Keep product');
    expect(told.changes[0]).toMatchObject({
      do: 'put',
      thing: 'products',
      value: { name: 'Harbour Curl Cream', kind: 'cream', owned: false, labels: [{ text: creamText }] },
    });
    await press('Compare with…');
    expect(told.changes[1]).toMatchObject({
      do: 'set',
      settings: { pinned: [{ met: { text: creamText } }] },
    });
    await press('Add to routine…');
    expect(told.went[0]).toMatchObject([
      'routine',
      { add: { text: creamText, facts: { name: 'Harbour Curl Cream', url: page.url } } },
    ]);
  });
});

describe('a name that is not known', () => {
  const gel = { ...page, lists: [page.lists[1]!] };
  it('is shown as unknown, with close spellings that change nothing until pressed', async () => {
    const told = await draw({ page: gel, close: async () => [['Glycerin']] });
    await act(async () => {});
    expect(document.querySelector('.unknown-name')?.textContent).toBe('Glycerine Extra');
    expect(told.changes).toEqual([]);
    await press('Read Glycerine Extra as Glycerin');
    expect(told.changes).toEqual([{ do: 'read-as', printed: 'Glycerine Extra', name: 'Glycerin' }]);
    expect(told.said[0]).toMatch('Glycerine Extra is now read as Glycerin');
  });
  it('that was read as another says so, with a way back', async () => {
    const remembered = { ...nothing, readAs: { 'Glycerine Extra': 'Glycerin' } };
    const told = await draw({ page: gel, remembered });
    expect(words()).toContain('Glycerine Extra is read as Glycerin, as you said.');
    await press('Stop reading Glycerine Extra that way');
    expect(told.changes).toEqual([{ do: 'read-as', printed: 'Glycerine Extra', name: null }]);
  });
  it('can be looked up under any other name', async () => {
    const told = await draw({ page: gel });
    await press('Look up another name for Glycerine Extra');
    const field = document.querySelector<HTMLInputElement>('.look-up input')!;
    expect(field.value).toBe('Glycerine Extra');
    await act(async () => {
      field.value = 'petrol';
      field.dispatchEvent(new Event('input', { bubbles: true }));
    });
    await expect.poll(() => document.querySelector('.look-up [role=status]')?.textContent).toBe('1 name');
    await press('Read Glycerine Extra as Petrolatum');
    expect(told.changes).toEqual([{ do: 'read-as', printed: 'Glycerine Extra', name: 'Petrolatum' }]);
  });
  it('can be told to be a protein, one thing that moisture does, or neither', async () => {
    const told = await draw({ page: gel });
    await press('Glycerine Extra: I know what it is…');
    await press('Glycerine Extra: a protein');
    expect(told.changes).toEqual([{ do: 'read-as', printed: 'Glycerine Extra', name: { as: 'protein' } }]);
    expect(told.said).toEqual(['Glycerine Extra counts as a protein, as you said.']);
  });
  it('that was told counts as that, with a way back', async () => {
    const remembered = { ...nothing, readAs: { 'Glycerine Extra': { as: 'protein' as const } } };
    const told = await draw({ page: gel, remembered });
    expect(document.querySelector('.sums')?.textContent).toMatch(/some protein .size not known./);
    await press('Stop reading Glycerine Extra that way');
    expect(told.changes).toEqual([{ do: 'read-as', printed: 'Glycerine Extra', name: null }]);
  });
});

describe('looking up a name', () => {
  it('shows what is known of it, under which other name it was found, and from which source', async () => {
    await draw({});
    const field = document.querySelector<HTMLInputElement>('.look-up input')!;
    await act(async () => {
      field.value = 'frag';
      field.dispatchEvent(new Event('input', { bubbles: true }));
    });
    const words = () => document.querySelector('.look-up .mention')?.textContent;
    await expect.poll(words).toMatch(/^Parfum/);
    const hit = words();
    expect(hit).toContain('Also printed as Fragrance.');
    expect(hit).toContain('In a product: fragrance.');
    expect(hit).toMatch(/Source: .*memory/);
  });
});

describe('without a list', () => {
  it('says what to do, and reads what is pasted', async () => {
    await draw({});
    expect(words()).toContain('No ingredient list here yet');
    const area = document.querySelector('textarea')!;
    await act(() => {
      area.value = creamText;
      area.dispatchEvent(new Event('input', { bubbles: true }));
    });
    await press('Read this list');
    expect(document.querySelector('.sums')?.textContent).toMatch(/2 proteins/);
  });
  it('asks for names before it reads nothing', async () => {
    await draw({});
    await press('Read this list');
    expect(document.querySelector('[role=alert]')?.textContent).toBe('Paste or type the names first.');
  });
  it('refuses what is too long with a sentence', async () => {
    await draw({ page: { ...page, lists: [{ id: 1, text: 'a, '.repeat(20_000), via: 'x' }] } });
    expect(words()).toContain('too long');
  });
});

describe('where pages are read', () => {
  const reach = {
    origin: 'https://shop.example',
    here: false,
    everywhere: false,
    origins: [],
    withdraw: async () => true,
    readNow: async () => false,
    pickList: async () => true,
  };
  it('asks the browser within the press itself', async () => {
    const asked: string[] = [];
    const told = await draw({
      page,
      reach: { ...reach, allow: async (what) => asked.push(what) > 0 },
    });
    button('Read this shop automatically')!.click();
    expect(asked).toEqual(['here']);
    await act(async () => {});
    expect(told.changes).toEqual([{ do: 'set', settings: { reach: 'shops' } }]);
  });
  it('changes nothing when the reader refuses', async () => {
    const told = await draw({ page, reach: { ...reach, allow: async () => false } });
    await press('Read all shops automatically');
    expect(told.changes).toEqual([]);
    expect(told.said).toEqual([expect.stringMatching('Nothing was changed')]);
  });
  it('pauses and takes up again, keeping the rest of what the site remembers', async () => {
    const site = { origin: reach.origin, paused: true, notLists: ['x'], listsAt: ['#y'] };
    const told = await draw({
      page,
      remembered: { ...nothing, sites: [site] },
      reach: { ...reach, here: true, allow: async () => true },
    });
    await press('Read this shop again');
    expect(told.changes).toEqual([{ do: 'put', thing: 'sites', value: { ...site, paused: false } }]);
  });
  it('names the closed part that may hold the list', async () => {
    await draw({
      reach: { ...reach, here: true, allow: async () => true, closedParts: async () => ['Full ingredients'] },
    });
    expect(words()).toContain('A closed part of this page is called “Full ingredients”.');
  });
  it('says plainly when the browser does not let it read', async () => {
    const told = await draw({ reach: { ...reach, allow: async () => true } });
    await press('Read this page now');
    expect(told.said).toEqual([expect.stringMatching('does not let')]);
  });
});

describe('a mended name', () => {
  const list = {
    ...page,
    lists: [{ ...page.lists[1]!, text: 'Aqua, Panthenol, Hydrolyzed Wheat Protien, Parfum' }],
  };
  it('says so, with a mark of its own, and is left as printed on one press', async () => {
    const told = await draw({ page: list });
    expect(document.querySelector('.glyph.mended')?.getAttribute('aria-label')).toBe('corrected');
    expect(words()).toContain(
      'the label says “Hydrolyzed Wheat Protien”, a misspelling. Read as Hydrolyzed Wheat Protein.',
    );
    await press('Hydrolyzed Wheat Protien: That is wrong');
    expect(told.changes).toEqual([{ do: 'read-as', printed: 'Hydrolyzed Wheat Protien', name: '' }]);
    expect(told.said).toEqual(['Hydrolyzed Wheat Protien is left as printed, as you said.']);
  });
  it('that was refused stays as printed, with a way back', async () => {
    const told = await draw({
      page: list,
      remembered: { ...nothing, readAs: { 'Hydrolyzed Wheat Protien': '' } },
    });
    expect(document.querySelector('.glyph.mended')).toBeNull();
    expect(words()).toContain('Hydrolyzed Wheat Protien is left as printed, as you said.');
    await press('Stop reading Hydrolyzed Wheat Protien that way');
    expect(told.changes).toEqual([{ do: 'read-as', printed: 'Hydrolyzed Wheat Protien', name: null }]);
  });
});
