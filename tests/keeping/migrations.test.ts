import { describe, expect, it } from 'vitest';
import { createKeeper } from '../../src/store/keeper.ts';
import { currentVersion } from '../../src/store/schema/migrations.ts';
import { slowArea } from './area.ts';
import { madeHead, madeLog, madeProduct, madeRoutine } from './made.ts';

const now = () => '2026-03-01T12:00:00.000Z';

// A store of each older version, as it was written then.
const older: Record<number, Record<string, unknown>> = {
  1: {
    strandline: {
      version: 1,
      heads: [
        {
          id: 'wren',
          name: 'Wren',
          thickness: 'coarse',
          porosity: 'low',
          avoid: ['Parfum', 'Isopropyl Alcohol'],
          added: '2025-01-01',
        },
      ],
      products: [
        {
          id: 'p1',
          name: 'Tidepool Curl Cream',
          kind: 'cream',
          label: 'Aqua, Glycerin',
          seen: '2025-01-02',
          url: 'https://shop.example/tidepool',
          price: 14,
          currency: 'EUR',
          owned: true,
          notes: '',
          added: '2025-01-02',
        },
        { id: 'p2', name: 'Bought at a fair', owned: false, notes: 'blue lid', added: '2025-01-03' },
        'half a product',
        { id: 'p3', name: 12, added: '2025-01-03' },
      ],
      routines: [
        {
          id: 'r1',
          head: 'wren',
          name: 'Sunday',
          steps: [{ id: 's', kind: 'cream', use: 'leave-on', product: 'p1' }],
          added: '2025-01-04',
        },
      ],
      log: [madeLog()],
      sites: [{ origin: 'https://shop.example', paused: false, notLists: [], listsAt: [] }],
      readAs: { Glycerine: 'Glycerin' },
      settings: {
        units: 'imperial',
        underline: { protein: true, moisture: false },
        glyphSize: 'large',
        reach: 'press',
        welcomed: true,
      },
    },
  },
};

describe.each(Object.keys(older).map(Number))('a store of version %d', (version) => {
  it('is brought up to date on the first read, with a copy of what was there', async () => {
    const { area, held } = slowArea(older[version]!);
    const keeper = createKeeper(area, { now });
    const all = await keeper.remembered();
    expect(all.heads).toEqual([
      {
        id: 'wren',
        name: 'Wren',
        thickness: 'coarse',
        porosity: 'low',
        avoid: [
          { id: 'wren-avoid-0', name: 'Parfum', reacted: false },
          { id: 'wren-avoid-1', name: 'Isopropyl Alcohol', reacted: false },
        ],
        stretch: [],
        setAside: [],
        added: '2025-01-01',
      },
    ]);
    expect(all.products.map(({ id }) => id)).toEqual(['p1', 'p2']);
    expect(all.products[0]).toMatchObject({
      labels: [{ text: 'Aqua, Glycerin', seen: '2025-01-02' }],
      sources: [{ url: 'https://shop.example/tidepool', price: 14, currency: 'EUR', seen: '2025-01-02' }],
    });
    expect(all.routines[0]).toMatchObject({ washEvery: 7, steps: [{ cadence: { every: 'wash' } }] });
    expect(all.log).toHaveLength(1);
    expect(all.sites).toHaveLength(1);
    expect(all.readAs).toEqual({ Glycerine: 'Glycerin' });
    expect(all.settings).toMatchObject({ units: 'imperial', glyphSize: 'large' });

    expect(held()['snapshot:migration']).toEqual({ version, when: now(), values: older[version] });
    const { rejects, version: nowAt, readOnly } = await keeper.state();
    expect([nowAt, readOnly]).toEqual([currentVersion, false]);
    expect(rejects.map(({ value }) => value)).toEqual([
      { id: 'p3', name: 12, labels: [], sources: [], added: '2025-01-03' },
      'half a product',
    ]);
  });

  it('is brought up to date before the first write, by whoever comes first', async () => {
    const { area } = slowArea(older[version]!);
    const [one, two] = [createKeeper(area, { now }), createKeeper(area, { now })];
    const put = { do: 'put', thing: 'heads', value: madeHead({ id: 'new' }) } as const;
    const [a, all] = await Promise.all([one.change([put]), two.remembered()]);
    expect(a.ok).toBe(true);
    expect(all.products).toHaveLength(2);
    expect((await one.remembered()).heads.map(({ id }) => id)).toEqual(['wren', 'new']);
  });

  it('stays as it was where there is no room for the copy: shown, not written to', async () => {
    const { area, held } = slowArea(older[version]!, { quota: 2600 });
    const keeper = createKeeper(area, { now });
    expect((await keeper.remembered()).products).toHaveLength(2);
    expect(held()).toEqual(older[version]);
    expect(await keeper.change([{ do: 'set', settings: { units: 'metric' } }])).toEqual({
      ok: false,
      reason: 'keeping.no-room',
    });
    expect(await keeper.state()).toMatchObject({ readOnly: 'no-room' });
  });

  it('killed in the middle, it is whole at the next start', async () => {
    for (const call of ['set', 'remove'] as const) {
      const { area, failNext } = slowArea(older[version]!);
      failNext(call);
      await createKeeper(area, { now }).remembered();
      const keeper = createKeeper(area, { now });
      expect((await keeper.remembered()).products).toHaveLength(2);
      expect(await keeper.state()).toMatchObject({ version: currentVersion, readOnly: false });
    }
  });
});

it('every older version has its store here', () => {
  expect(Object.keys(older).map(Number)).toEqual(Array.from({ length: currentVersion - 1 }, (_, i) => i + 1));
});

it('a store of a newer version is shown and exported, never written', async () => {
  const values = {
    store: { version: 99 },
    'heads:wren': madeHead(),
    'products:p1': { ...madeProduct(), aura: 'blue' },
    'routines:r1': madeRoutine(),
  };
  const { area, held } = slowArea(values);
  const keeper = createKeeper(area, { now });
  expect((await keeper.remembered()).heads).toHaveLength(1);
  expect(await keeper.change([{ do: 'remove', thing: 'heads', id: 'wren' }])).toEqual({
    ok: false,
    reason: 'keeping.newer',
  });
  expect(held()).toEqual(values);
  expect(await keeper.state()).toMatchObject({ readOnly: 'newer', version: 99 });
});
