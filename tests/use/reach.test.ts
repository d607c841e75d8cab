// Where pages are read, with a browser made for the test.
import { describe, expect, it } from 'vitest';
import type { Site } from '../../src/store/remembered.ts';
import { siteOf } from '../../src/use/acts/matters/sites.ts';
import { createReach } from '../../src/use/reach/reach.ts';

const site = (origin: string, rest: Partial<Site> = {}): Site => ({
  origin,
  paused: false,
  notLists: [],
  listsAt: [],
  ...rest,
});
describe('where pages are read', () => {
  function browser(origins: string[], open: { id: number; url?: string }[] = [{ id: 1 }, { id: 2 }]) {
    type Injection = { target: { tabId: number }; files: [string] };
    const scripts: { id: string; matches: string[]; excludeMatches?: string[] }[] = [];
    const injected: [number, string][] = [];
    const at = (id: string) => scripts.findIndex((script) => script.id === id);
    const made = {
      permissions: { getAll: async () => ({ origins }) },
      scripting: {
        getRegisteredContentScripts: async () => structuredClone(scripts),
        registerContentScripts: async (wanted: typeof scripts) => {
          if (wanted.some(({ id }) => at(id) >= 0)) throw new Error('Duplicate script ID');
          scripts.push(...wanted);
        },
        updateContentScripts: async (wanted: typeof scripts) => {
          if (wanted.some(({ id }) => at(id) < 0)) throw new Error('Nonexistent script ID');
          for (const script of wanted) scripts[at(script.id)] = script;
        },
        unregisterContentScripts: async ({ ids }: { ids: string[] }) => {
          for (const id of ids) scripts.splice(at(id), 1);
        },
        executeScript: async ({ target, files }: Injection) =>
          void injected.push([target.tabId, files.join()]),
      },
      tabs: {
        query: async () => open,
        get: async (id: number) => open.find((tab) => tab.id === id),
        // A reader stands in the second tab already.
        sendMessage: async (tab: number) =>
          tab === 2 ? { ok: true } : Promise.reject(new Error('no receiver')),
      },
    };
    return { made: made as never, scripts, injected };
  }

  it('registers once for what is granted, leaves out paused sites, and brings the reader to open tabs', async () => {
    const { made, scripts, injected } = browser(['https://*/*']);
    const sites = [site('https://quiet.example', { paused: true }), site('https://shop.example')];
    const reach = createReach(made, async () => sites);
    await Promise.all([reach.sync(), reach.sync(), reach.sync()]);
    expect(scripts).toMatchObject([
      {
        matches: ['https://*/*'],
        excludeMatches: ['https://quiet.example/*'],
        js: ['content-scripts/reader.js'],
      },
    ]);
    expect(new Set(injected.map(([tab]) => tab))).toEqual(new Set([1]));
    expect(injected[0]?.[1]).toBe('content-scripts/reader.js');
    expect(scripts[0]).not.toHaveProperty('css'); // nothing of ours before a list is found
  });

  it('where lists are known to stand, and on paused sites told only by their port, it asks before it reads', async () => {
    const { made, scripts } = browser(['https://*/*']);
    const sites = [
      site('https://known.example', { listsAt: ['#list'] }),
      site('https://quiet.example:8443', { paused: true }),
    ];
    const reach = createReach(made, async () => sites);
    await reach.sync();
    const taught = ['https://known.example/*', 'https://quiet.example/*'];
    expect(scripts).toMatchObject([
      { id: 'reader', excludeMatches: taught, js: ['content-scripts/reader.js'] },
      { id: 'reader-taught', matches: taught, js: ['taught.js', 'content-scripts/reader.js'] },
    ]);
    sites.splice(0);
    await reach.sync();
    expect(scripts).toMatchObject([{ id: 'reader', excludeMatches: [] }]);
  });

  it('a site that is resumed is read at once in its open tabs, and in no others', async () => {
    const open = [
      { id: 1, url: 'https://shop.example/goods/1' },
      { id: 3, url: 'https://other.example/' },
      { id: 4 },
    ];
    const { made, injected } = browser([], open);
    await createReach(made, async () => [site('https://shop.example')]).sync(['https://shop.example']);
    expect(injected).toEqual([[1, 'content-scripts/reader.js']]);
  });

  it('a paused site is not read, whoever asks', async () => {
    const { made, injected } = browser(['https://*/*'], [{ id: 1, url: 'https://shop.example/x' }]);
    const reach = createReach(made, async () => [site('https://shop.example', { paused: true })]);
    await reach.sync();
    await reach.read(1);
    expect(injected).toEqual([]);
  });

  it('takes the registration back when nothing is granted any more', async () => {
    const origins = ['https://shop.example/*'];
    const { made, scripts } = browser(origins);
    const reach = createReach(made, async () => []);
    await reach.sync();
    expect(scripts.length).toBe(1);
    origins.pop();
    await reach.sync();
    expect(scripts).toEqual([]);
  });

  it('what a worker was stopped in is done by the next as it starts; where all stands, it asks no tab', async () => {
    const { made, scripts, injected } = browser(['https://*/*', 'https://a.example/*']);
    const sites = [site('https://b.example', { paused: true }), site('https://a.example', { paused: true })];
    const settle = () => createReach(made, async () => sites).settle();
    await settle();
    expect(scripts).toMatchObject([{ id: 'reader' }]);
    expect(injected.map(([tab]) => tab)).toEqual([1]);
    for (const { matches, excludeMatches } of scripts)
      for (const each of [matches, excludeMatches]) each?.reverse();
    await settle();
    expect(injected.length).toBe(1);
    sites.pop();
    await settle();
    expect(scripts).toMatchObject([{ excludeMatches: ['https://b.example/*'] }]);
    expect(injected.length).toBe(2);
  });

  it('a site is known by its origin; an address that is none has no site', () => {
    const sites = [site('https://shop.example')];
    expect(siteOf(sites, 'https://shop.example/goods?x=1')).toBe(sites[0]);
    expect(siteOf(sites, 'https://other.example/')).toBeUndefined();
    expect(siteOf(sites, 'not an address')).toBeUndefined();
  });
});
