import type { Head } from '../../src/core/hair/head.ts';
import type { Product } from '../../src/core/product/product.ts';
import type { LogEntry, Routine } from '../../src/core/wash-day/routine.ts';

// Invented heads and products, for tests of what is kept.
export const madeHead = (over: Partial<Head> = {}): Head => ({
  id: 'wren',
  name: 'Wren',
  thickness: 'coarse',
  porosity: 'low',
  damage: { kinds: ['heat'], length: 'ends', recent: 'months' },
  avoid: [{ id: 'a1', family: 'wheat', reacted: true }],
  stretch: [{ id: 's1', date: '2026-01-09', rest: 100, stretched: 125, after: 101, broke: false }],
  setAside: [],
  uses: { conditioner: 18, gel: 3.5 },
  added: '2026-01-01T10:00:00.000Z',
  ...over,
});

export const madeProduct = (over: Partial<Product> = {}): Product => ({
  id: 'p1',
  name: 'Tidepool Curl Cream',
  maker: 'Marrow & Fennel',
  kind: 'cream',
  use: 'leave-on',
  size: 200,
  sizeUnit: 'ml',
  labels: [{ text: 'Aqua, Cetearyl Alcohol, Glycerin', seen: '2026-01-02T10:00:00.000Z' }],
  sources: [
    {
      url: 'https://shop.example/tidepool',
      price: 14,
      currency: 'EUR',
      language: 'de',
      seen: '2026-01-02T10:00:00.000Z',
    },
  ],
  owned: true,
  notes: '',
  added: '2026-01-02T10:00:00.000Z',
  ...over,
});

export const madeRoutine = (over: Partial<Routine> = {}): Routine => ({
  id: 'r1',
  head: 'wren',
  name: 'Sunday',
  steps: [
    { id: 'st1', kind: 'cream', use: 'leave-on', product: 'p1', optional: false, cadence: { every: 'wash' } },
  ],
  added: '2026-01-03T10:00:00.000Z',
  washEvery: 7,
  ...over,
});

export const madeLog = (over: Partial<LogEntry> = {}): LogEntry => ({
  id: 'l1',
  head: 'wren',
  date: '2026-01-10',
  done: { name: 'Sunday', steps: [] },
  feel: { soft: 1, springy: 2 },
  notes: 'Dried in the sun.',
  ...over,
});
