import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { logCsv, productsCsv } from '../../src/store/files/csv.ts';
import { type Everything, everythingSchema } from '../../src/store/files/everything.ts';
import { planImport } from '../../src/store/files/import-plan.ts';
import { openPanelStore } from '../../src/store/files/panel-store.ts';
import { readFile } from '../../src/store/files/read-file.ts';
import { createKeeper } from '../../src/store/keeper.ts';
import type { Change } from '../../src/store/remembered.ts';
import { slowArea } from './area.ts';
import { madeHead, madeLog, madeProduct, madeRoutine } from './made.ts';

const now = () => '2026-03-01T12:00:00.000Z';
const picture = 'data:image/png;base64,iVBORw0KGgo=';
const labelMet = (day: string, text = 'Aqua, Glycerin') => ({
  address: 'https://shop.example/p/gel',
  text,
  product: { name: 'Isinglass Gel', price: 9, currency: 'EUR', language: 'de-AT' },
  readOn: `${day}T10:00:00.000Z`,
});
const full: Change[] = [
  { do: 'put', thing: 'heads', value: madeHead() },
  { do: 'put', thing: 'products', value: madeProduct() },
  { do: 'put', thing: 'routines', value: madeRoutine() },
  { do: 'put', thing: 'log', value: madeLog({ photo: 'ph1' }) },
  {
    do: 'put',
    thing: 'sites',
    value: { origin: 'https://shop.example', paused: true, notLists: ['x'], listsAt: ['.list'] },
  },
  { do: 'set', settings: { headInUse: 'wren', units: 'imperial', pinned: [{ product: 'p1' }] } },
  { do: 'read-as', printed: 'Panthenoll', name: 'Panthenol' },
  { do: 'photo', key: 'ph1', data: picture },
  { do: 'label-met', address: 'https://shop.example/p/gel', entry: labelMet('2026-02-01') },
];
async function store(changes: Change[] = full) {
  const { area, held } = slowArea();
  const keeper = createKeeper(area, { now });
  const outcome = await keeper.change(changes);
  expect(outcome.ok).toBe(true);
  return { area, held, keeper, door: openPanelStore(keeper) };
}
const fileOf = async (text: string): Promise<Everything> => {
  const reading = readFile(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.everything;
};

describe('export, wipe, import', () => {
  it('gives the identical state', async () => {
    const { held, keeper, door } = await store();
    const before = held();
    const text = await door.everything();
    await keeper.forget();
    expect(held()).toEqual({});
    const { changes, tallies } = await door.plan(await fileOf(text), 'replace');
    expect(tallies.find(({ thing }) => thing === 'products')).toMatchObject({ added: 1, removed: 0 });
    expect(await keeper.change(changes)).toMatchObject({ ok: true });
    const { 'snapshot:import': _, ...after } = held();
    expect(after).toEqual({ ...before, written: expect.any(String) });
    expect(await door.everything()).toBe(text);
  });

  it('a second import of the same file would change nothing, either way', async () => {
    const { door } = await store();
    const file = await fileOf(await door.everything());
    for (const how of ['merge', 'replace'] as const) {
      const { changes, tallies } = await door.plan(file, how);
      expect(changes).toEqual([{ do: 'snapshot' }]);
      for (const { added, changed, removed } of tallies) expect([added, changed, removed]).toEqual([0, 0, 0]);
    }
  });

  it('can be undone, and a copy from before is kept', async () => {
    const { keeper, door } = await store();
    const before = await door.everything();
    const other = await store([{ do: 'put', thing: 'heads', value: madeHead({ id: 'ash', name: 'Ash' }) }]);
    const { changes, tallies } = await door.plan(await fileOf(await other.door.everything()), 'replace');
    expect(tallies.find(({ thing }) => thing === 'heads')).toMatchObject({
      added: 1,
      removed: 1,
      removedNames: ['Wren'],
    });
    const done = await keeper.change(changes);
    expect((await keeper.remembered()).products).toEqual([]);
    const copy = await fileOf((await door.copy('import'))!.text);
    expect(copy.products).toEqual([madeProduct()]);
    if (done.ok) await keeper.change(done.undo!);
    expect(await door.everything()).toBe(before);
  });

  it('carries along what does not parse', async () => {
    const { area, door } = await store();
    await area.set({ 'products:odd': { id: 'odd', name: 3 } });
    const file = await fileOf(await door.everything());
    expect(file.aside).toMatchObject([{ key: 'products:odd', value: { id: 'odd', name: 3 } }]);
  });

  it('of whatever strings: what is written is what is read', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.string({ unit: 'binary' }),
        fc.string({ unit: 'grapheme' }),
        async (notes, label) => {
          const { door, keeper } = await store([
            {
              do: 'put',
              thing: 'products',
              value: madeProduct({ notes, labels: [{ text: label, seen: '2026-01-01' }] }),
            },
          ]);
          const file = await fileOf(await door.everything());
          expect(file.products).toEqual((await keeper.remembered()).products);
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe('merging', () => {
  it('takes products met on both sides for one, and routines follow', async () => {
    const here = await store([
      { do: 'put', thing: 'products', value: madeProduct({ id: 'mine', notes: 'mine' }) },
      { do: 'set', settings: { units: 'imperial' } },
    ]);
    const there = await store([
      {
        do: 'put',
        thing: 'products',
        value: madeProduct({
          id: 'theirs',
          sources: [],
          labels: [{ text: 'Aqua, Panthenol', seen: '2026-02-01' }],
        }),
      },
      {
        do: 'put',
        thing: 'routines',
        value: madeRoutine({ steps: [{ ...madeRoutine().steps[0]!, product: 'theirs' }] }),
      },
    ]);
    const file = await fileOf(await there.door.everything());
    const { changes } = await here.door.plan(file, 'merge');
    expect(await here.keeper.change(changes)).toMatchObject({ ok: true });
    const { products, routines, settings } = await here.keeper.remembered();
    expect(products).toHaveLength(1);
    expect(products[0]).toMatchObject({ id: 'mine', notes: 'mine' });
    expect(products[0]!.labels.map(({ text }) => text)).toEqual([
      'Aqua, Panthenol',
      'Aqua, Cetearyl Alcohol, Glycerin',
    ]);
    expect(routines[0]!.steps[0]!.product).toBe('mine');
    expect(settings.units).toBe('imperial');
  });

  it('two of the file that are one of here lose no label', async () => {
    const { door, keeper } = await store([{ do: 'put', thing: 'products', value: madeProduct() }]);
    const file = await fileOf(await door.everything());
    const of = (id: string, text: string) =>
      madeProduct({ id, labels: [{ text, seen: '2026-02-01' }], sources: [] });
    const { changes } = planImport(
      { ...file, products: [of('x', 'Aqua, Panthenol'), of('y', 'Aqua, Glycerin')] },
      await keeper.everything(),
      'merge',
    );
    await keeper.change(changes);
    const { products } = await keeper.remembered();
    expect(products).toHaveLength(1);
    expect(products[0]!.labels.map(({ text }) => text).toSorted()).toEqual([
      'Aqua, Cetearyl Alcohol, Glycerin',
      'Aqua, Glycerin',
      'Aqua, Panthenol',
    ]);
  });

  it('removes nothing and says what it changes', async () => {
    const { door, keeper } = await store();
    const file = await fileOf(await door.everything());
    const changed = {
      ...file,
      heads: [madeHead({ porosity: 'high' })],
      products: [],
      photos: {},
      readAs: {},
    };
    const { changes, tallies } = planImport(changed, await keeper.everything(), 'merge');
    expect(tallies.find(({ thing }) => thing === 'heads')).toMatchObject({
      changed: 1,
      changedNames: ['Wren'],
    });
    await keeper.change(changes);
    const after = await keeper.everything();
    expect(after.heads[0]!.porosity).toBe('high');
    expect([after.products.length, Object.keys(after.photos).length]).toEqual([1, 1]);
  });
});

describe('a bad file', () => {
  const good = JSON.stringify(
    {
      strandline: 'everything',
      version: 2,
      made: '2026-01-01',
      heads: [madeHead()],
      products: [madeProduct(), madeProduct({ id: 'p2' })],
      routines: [],
      log: [],
      sites: [],
      readAs: {},
      settings: {
        units: 'metric',
        underline: { protein: true, moisture: true },
        glyphSize: 'medium',
        reach: 'press',
        welcomed: true,
      },
      photos: {},
      labelsMet: [labelMet('2026-01-01')],
      aside: [],
    },
    null,
    2,
  );
  const lines = good.split('\n');
  /** Where a text stands in the good file, 1-based. */
  const placeOf = (needle: string, nth = 0) => {
    const at = lines.flatMap((line, i) => (line.includes(needle) ? [i] : []))[nth]!;
    return { line: at + 1, column: lines[at]!.indexOf(needle) + 1 };
  };
  it('is good before it is spoilt', () => expect(readFile(good).ok).toBe(true));

  it.each<[string, string, string, string, string, number?]>([
    ['a wrong word', '"coarse"', '"thick"', 'heads[1].thickness', 'keeping.issue.invalid_value'],
    ['a text for a number', '200', '"big"', 'products[1].size', 'keeping.issue.invalid_type'],
    [
      'a wrong date',
      '"2026-01-09"',
      '"9 January"',
      'heads[1].stretch[1].date',
      'keeping.issue.invalid_format',
    ],
    ['an empty id', '"p2"', '""', 'products[2].id', 'keeping.issue.too_small'],
  ])('%s is told by line and column', (_what, from, to, path, key) => {
    const reading = readFile(good.replace(from, to));
    if (reading.ok) throw new Error('it was taken');
    expect(reading.issues).toMatchObject([{ ...placeOf(from), path, said: { key } }]);
  });

  it('a missing value is told at the thing that lacks it', () => {
    const reading = readFile(good.replace(/\n\s*"name": "Wren",/, ''));
    if (reading.ok) throw new Error('it was taken');
    const [issue] = reading.issues;
    expect(issue).toMatchObject({
      path: 'heads[1].name',
      said: { key: 'keeping.issue.invalid_type', values: { expected: 'string' } },
    });
    expect(issue!.line).toBe(placeOf('"heads"').line + 1);
  });

  it('a thing that stands there twice is told at the second', () => {
    const reading = readFile(good.replace('"p2"', '"p1"'));
    if (reading.ok) throw new Error('it was taken');
    expect(reading.issues).toMatchObject([{ path: 'products[2]', said: { key: 'keeping.issue.twice' } }]);
    expect(reading.issues[0]!.line).toBe(placeOf('"id": "p2"').line - 1);
  });

  it.each<[string, string, string, { line: number; column: number }]>([
    [
      'cut short',
      '{"strandline": "everything",\n "version"',
      'keeping.issue.not-json',
      { line: 2, column: 11 },
    ],
    ['empty', '', 'keeping.issue.not-json', { line: 1, column: 1 }],
    ['with a comment', '{\n  // mine\n}', 'keeping.issue.not-json', { line: 2, column: 3 }],
    ['not ours', '\n{"name": "package"}', 'keeping.issue.not-ours', { line: 2, column: 1 }],
    ['a list', '[]', 'keeping.issue.not-ours', { line: 1, column: 1 }],
    ['without a version', '{"strandline": "everything"}', 'keeping.issue.no-version', { line: 1, column: 1 }],
    [
      'of a newer version',
      '{"strandline":"everything",\r\n"version": 99}',
      'keeping.issue.newer',
      { line: 2, column: 12 },
    ],
    ['nested without end', '['.repeat(100_000), 'keeping.issue.too-deep', { line: 1, column: 1 }],
  ])('%s', (_what, text, key, place) => {
    expect(readFile(text)).toMatchObject({ ok: false, issues: [{ ...place, said: { key } }] });
  });

  it('of any kind never throws', () => {
    fc.assert(
      fc.property(fc.nat(good.length), fc.nat(good.length), fc.string(), (from, length, put) => {
        readFile(good.slice(0, from) + put + good.slice(from + length));
      }),
      { numRuns: 300 },
    );
  });

  it('prototype names are plain names', () => {
    const reading = readFile(
      good.replace('"readAs": {}', '"readAs": {"__proto__": "Glycerin", "constructor": "Aqua"}'),
    );
    expect(reading.ok).toBe(true);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

it('a file of version 1 takes the path of a store of version 1', async () => {
  const text = JSON.stringify({
    strandline: 'everything',
    version: 1,
    made: '2025-02-01',
    heads: [{ id: 'wren', name: 'Wren', avoid: ['Parfum'], added: '2025-01-01' }],
    products: [
      {
        id: 'p1',
        name: 'Cream',
        label: 'Aqua',
        seen: '2025-01-02',
        owned: true,
        notes: '',
        added: '2025-01-02',
      },
    ],
    routines: [],
    log: [],
    sites: [],
    readAs: {},
    settings: {
      units: 'metric',
      underline: { protein: true, moisture: true },
      glyphSize: 'medium',
      reach: 'press',
      welcomed: true,
    },
  });
  const file = await fileOf(text);
  expect(file.heads[0]!.avoid).toEqual([{ id: 'wren-avoid-0', name: 'Parfum', reacted: false }]);
  expect(file.products[0]!.labels).toEqual([{ text: 'Aqua', seen: '2025-01-02' }]);
});

it('a store of a newer version is exported as it was stored', async () => {
  const { area } = slowArea({ store: { version: 99 }, 'products:p1': { ...madeProduct(), aura: 'blue' } });
  const file = JSON.parse(await openPanelStore(createKeeper(area, { now })).everything());
  expect(file).toMatchObject({ version: 99, products: [{ id: 'p1', aura: 'blue' }] });
});

describe('tables', () => {
  const rows = (csv: string) =>
    Papa.parse<Record<string, string>>(csv.replace(/^\uFEFF/, ''), { header: true }).data;
  const product = madeProduct({
    name: '=HYPERLINK("x")',
    maker: '@maker',
    notes: 'two\nlines, "quoted"',
    labels: [
      { text: '+Aqua', seen: '2026-01-01' },
      { text: '-Aqua', seen: '2025-01-01' },
    ],
  });

  it('guard cells that a spreadsheet would run, and keep the rest as it is', () => {
    const [first, second] = rows(productsCsv({ products: [product] }));
    expect(first).toMatchObject({
      name: `'=HYPERLINK("x")`,
      maker: "'@maker",
      label: "'+Aqua",
      notes: 'two\nlines, "quoted"',
      size: '200',
      unit: 'ml',
      owned: 'yes',
    });
    expect(second!.label).toBe("'-Aqua");
  });

  it('no cell of any text begins with what a spreadsheet runs', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (name, notes) => {
        const [row] = rows(productsCsv({ products: [madeProduct({ name, notes })] }));
        for (const cell of Object.values(row ?? {})) expect(cell).not.toMatch(/^[=+\-@]/);
      }),
    );
  });

  it('the log has a row for each wash day, feels as numbers', () => {
    const csv = logCsv({
      heads: [madeHead()],
      log: [madeLog({ feel: { soft: -2 }, weather: { celsius: -3, humidity: 40 } })],
    });
    expect(rows(csv)).toMatchObject([
      { date: '2026-01-10', head: 'Wren', soft: '-2', celsius: '-3', notes: 'Dried in the sun.' },
    ]);
  });
});

describe('labels met while browsing', () => {
  const planned = async (theirs: string, how: 'merge' | 'replace') => {
    const { keeper, door } = await store();
    const file = JSON.parse(await door.everything());
    file.labelsMet = [
      labelMet(theirs, 'Aqua, Panthenol'),
      { ...labelMet(theirs), address: 'https://shop.example/p/foam' },
    ];
    const { changes, tallies } = await door.plan(await fileOf(JSON.stringify(file)), how);
    expect(await keeper.change(changes)).toMatchObject({ ok: true });
    const { labelsMet } = await keeper.everything();
    const tally = tallies.find(({ thing }) => thing === 'labelsMet')!;
    return { texts: Object.fromEntries(labelsMet.map(({ address, text }) => [address.at(-1), text])), tally };
  };

  it.each([
    ['a later reading of the file wins', '2026-02-02', 'merge', 'Aqua, Panthenol', { added: 1, changed: 1 }],
    ['an earlier one does not', '2026-01-02', 'merge', 'Aqua, Glycerin', { added: 1, changed: 0, same: 1 }],
    [
      'but takes the place of everything',
      '2026-01-02',
      'replace',
      'Aqua, Panthenol',
      { added: 1, changed: 1 },
    ],
  ] as const)('%s', async (_, day, how, text, counted) => {
    const { texts, tally } = await planned(day, how);
    expect(texts).toEqual({ l: text, m: 'Aqua, Glycerin' });
    expect(tally).toMatchObject(counted);
  });

  it('a file from before they were kept is read as one without', async () => {
    const { door } = await store();
    const { labelsMet: _, ...older } = JSON.parse(await door.everything());
    expect((await fileOf(JSON.stringify(older))).labelsMet).toEqual([]);
  });

  it('one that does not parse is left out of the file, and spoils nothing', async () => {
    const { area, keeper } = await store();
    await area.set({ 'shelf:https://shop.example/p/odd': { address: 7 } });
    expect((await keeper.everything()).labelsMet).toHaveLength(1);
    expect((await keeper.everything()).aside).toEqual([]);
  });
});

describe('photos left behind', () => {
  it('are swept at the start of a session, those still spoken of are not', async () => {
    const { keeper, held } = await store();
    await keeper.change([{ do: 'photo', key: 'ph2', data: picture }]);
    await keeper.change([{ do: 'remove', thing: 'log', id: 'l1' }]);
    await keeper.change([{ do: 'put', thing: 'log', value: madeLog({ id: 'l2', photo: 'ph2' }) }]);
    await keeper.sweep();
    expect(Object.keys(held()).filter((key) => key.startsWith('photo:'))).toEqual(['photo:ph2']);
  });
});

it('the schema of the file is written down as it is', async () => {
  const schema = z.toJSONSchema(everythingSchema, { unrepresentable: 'any' });
  await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot(
    '../../src/store/files/everything.schema.json',
  );
});
