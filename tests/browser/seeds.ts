// What a reader may have kept, for views: heads, products of the invented shop, a routine, a log. All invented.
import type { Head } from '../../src/core/hair/head.ts';
import { type Product, usualUse } from '../../src/core/product/product.ts';
import type { LogEntry, Routine, Step } from '../../src/core/wash-day/routine.ts';
import type { Change } from '../../src/store/remembered.ts';
import { type Good, goods } from '../store/goods.ts';

const added = '2026-09-01T08:00:00.000Z';

export const wren: Head = {
  id: 'wren',
  name: 'Wren',
  thickness: 'coarse',
  porosity: 'low',
  damage: { kinds: [] },
  density: 'medium',
  shape: 'coily',
  avoid: [{ id: 'a1', family: 'nut', reacted: true, note: 'itch' }],
  stretch: [{ id: 's1', date: '2026-11-01', rest: 100, stretched: 128, after: 104, broke: false }],
  setAside: [],
  added,
};
export const robin: Head = {
  id: 'robin',
  name: 'Robin',
  thickness: 'fine',
  porosity: 'high',
  damage: { kinds: ['bleach', 'heat'], length: 'half', recent: 'months' },
  avoid: [],
  stretch: [],
  setAside: [],
  added: '2026-09-02T08:00:00.000Z',
};
const longNamed: Head = {
  ...robin,
  id: 'long',
  name: 'Maximiliane-Theodora of the House by the Old Breakwater',
  added: '2026-09-03T08:00:00.000Z',
};

export const productOf = (good: Good, i = 0): Product => ({
  id: good.id,
  name: good.name,
  maker: good.maker,
  kind: good.kind,
  use: usualUse[good.kind],
  size: good.size,
  sizeUnit: good.unit,
  labels: [{ text: good.list, seen: added }],
  sources: [
    { url: `https://shop.example/goods/${good.id}`, price: good.price, currency: 'EUR', seen: added },
  ],
  owned: i % 3 !== 2,
  notes: i % 7 === 0 ? 'Smells of rain.' : '',
  added: `2026-09-${String((i % 28) + 1).padStart(2, '0')}T08:00:00.000Z`,
});
const products = goods.map(productOf);

const kindsOfDay = ['bond-treatment', 'cleanser', 'deep-conditioner', 'leave-in', 'cream', 'gel'] as const;
const steps: Step[] = kindsOfDay.map((kind, i) => ({
  id: `step-${i}`,
  kind,
  use: usualUse[kind],
  product: goods.find((good) => good.kind === kind)!.id,
  optional: kind === 'leave-in',
  cadence: kind === 'bond-treatment' ? { every: 'days', n: 14 } : { every: 'wash' },
}));
export const routine: Routine = {
  id: 'sunday',
  head: 'wren',
  name: 'Sunday wash day',
  steps,
  added,
  washEvery: 7,
};
const emptyStep: Routine = {
  id: 'sketch',
  head: 'wren',
  name: 'A sketch',
  steps: [{ id: 'only', kind: 'cleanser', use: 'rinse-off', optional: false, cadence: { every: 'wash' } }],
  added: '2026-09-05T08:00:00.000Z',
  washEvery: 4,
};

const done = (r: Routine): LogEntry['done'] => ({
  name: r.name,
  steps: r.steps.map((step) => {
    const good = goods.find(({ id }) => id === step.product);
    return { ...step, ...(good && { productName: good.name, label: good.list }) };
  }),
});
const log = (n: number): LogEntry[] =>
  Array.from({ length: n }, (_, i) => ({
    id: `log-${i}`,
    head: 'wren',
    date: new Date(Date.UTC(2026, 10, 22 - i * 7)).toISOString().slice(0, 10),
    done: done(routine),
    ...(i % 2 === 0 && { weather: { celsius: 11 + i, humidity: 60 + i } }),
    feel: { soft: (i % 5) - 2, springy: ((i + 2) % 5) - 2, defined: ((i + 1) % 5) - 2, dry: 0 },
    notes: i % 3 === 0 ? 'Left it under the towel longer than usual.' : '',
  }));

const put = <T extends 'heads' | 'products' | 'routines' | 'log'>(thing: T, values: readonly unknown[]) =>
  values.map((value) => ({ do: 'put', thing, value }) as Change);

const callNames = 'Ada Björn Cleo Daria Émile Fern Gus Hana Ines Joost Kit Lila Mia Nils Ole Pia'.split(' ');
/** So many people of a stylist, every other like one of two heads. */
const clients = (n: number): Head[] =>
  Array.from({ length: n }, (_, i) => ({
    ...(i % 2 === 0 ? wren : robin),
    id: `client-${i}`,
    name: `${callNames[(i * 7) % callNames.length]} ${String.fromCharCode(65 + ((i * 11) % 26))}.`,
    thickness: (['coarse', 'medium', 'fine'] as const)[i % 3]!,
    avoid: [],
    added: `2026-09-${10 + (i % 20)}T08:00:00.000Z`,
  }));

export type SeedName = 'empty' | 'one' | 'many' | 'long' | 'twelve' | 'sixty';

const longProducts: Product[] = [
  {
    ...products[0]!,
    id: 'long-1',
    name: 'Extraordinarily Nourishing Midnight-Harbour Overnight Restorative Pre-Wash Oil Treatment for Weathered Lengths, Limited Winter Edition',
    maker: 'The Amalgamated Apothecaries of Upper and Lower Dunnocksea & Daughters',
    labels: [
      {
        text: 'Hydroxypropyltrimonium Hydrolyzed Wheat Protein/Wheat Starch Crosspolymer Dimethylpolysiloxane, Donaudampfschifffahrtsgesellschaftsextraktkonzentrat, Aqua, Glycerin, Parfum',
        seen: added,
      },
    ],
  },
  { ...products[5]!, id: 'long-2', name: 'Supercalibratedmoisturizingconcentratewithoutanyspaces' },
];

/** Changes that bring an empty store to a state. */
export const seeds: Record<SeedName, Change[]> = {
  empty: [],
  one: [
    ...put('heads', [wren]),
    ...put('products', products.slice(0, 1)),
    ...put('routines', [emptyStep]),
    ...put('log', log(1)),
    { do: 'set', settings: { headInUse: 'wren', pinned: [{ product: products[0]!.id }] } },
  ],
  many: [
    ...put('heads', [wren, robin]),
    ...put('products', products),
    ...put('routines', [routine, emptyStep]),
    ...put('log', log(14)),
    {
      do: 'put',
      thing: 'sites',
      value: { origin: 'https://quay.example', paused: true, notLists: ['x'], listsAt: [] },
    },
    { do: 'read-as', printed: 'Glycerine Extra', name: 'Glycerin' },
    {
      do: 'set',
      settings: {
        headInUse: 'wren',
        routineInUse: 'sunday',
        pinned: [
          { product: goods.find(({ kind }) => kind === 'protein-treatment')!.id },
          { product: goods.find(({ kind }) => kind === 'deep-conditioner')!.id },
        ],
      },
    },
  ],
  twelve: [...put('heads', clients(12)), { do: 'set', settings: { headInUse: 'client-0' } }],
  sixty: [...put('heads', clients(60)), { do: 'set', settings: { headInUse: 'client-0' } }],
  long: [
    ...put('heads', [longNamed, clients(1)[0]!]),
    {
      do: 'put',
      thing: 'sites',
      value: {
        origin: 'https://the-amalgamated-apothecaries-of-upper-and-lower-dunnocksea.example',
        paused: true,
        notLists: ['x'],
        listsAt: [],
      },
    },
    {
      do: 'read-as',
      printed:
        'Acrylamidopropyltrimonium Chloride/Acrylamide/Hydroxypropyltrimonium Hydrolyzed Wheat Protein/Polydimethylsiloxane PEG-8 Phosphate Copolymer Crosspolymer',
      name: 'Glycerin',
    },
    ...put('products', longProducts),
    ...put('routines', [
      {
        ...routine,
        head: 'long',
        name: 'The long Sunday of treatments, oils, foams and everything that stands on the shelf',
        steps: steps.map((step, i) => ({ ...step, product: longProducts[i % 2]!.id })),
      },
    ]),
    ...put(
      'log',
      log(2).map((entry) => ({ ...entry, head: 'long' })),
    ),
    { do: 'set', settings: { headInUse: 'long', pinned: longProducts.map(({ id }) => ({ product: id })) } },
  ],
};
