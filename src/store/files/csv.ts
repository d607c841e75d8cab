import Papa from 'papaparse';
import type { ShelfRow } from '../../contract/shelf.ts';
import { plainCell, wantsQuotes } from '../../core/spreadsheet-cell.ts';
import type { Remembered } from '../remembered.ts';

// The mark at the start tells spreadsheets that the letters are UTF-8.
const written = (rows: Record<string, string | number | boolean | undefined>[], fields: string[]) =>
  `\uFEFF${Papa.unparse({ fields, data: rows.map((row) => fields.map((field) => cell(row[field]))) }, { quotes: wantsQuotes, newline: '\r\n' })}`;
const cell = (value: string | number | boolean | undefined) =>
  typeof value === 'string' ? plainCell(value) : (value ?? '');

/** One row for each label of each product, newest first. RFC 4180 with a byte order mark. */
export function productsCsv({ products }: Pick<Remembered, 'products'>): string {
  const fields = [
    'name',
    'maker',
    'kind',
    'use',
    'size',
    'unit',
    'owned',
    'price',
    'currency',
    'page',
    'label',
    'label seen',
    'notes',
  ];
  const rows = products.flatMap(({ labels, sources, ...product }) =>
    (labels.length > 0 ? labels : [undefined]).map((label) => {
      const priced = sources.find(({ price }) => price !== undefined) ?? sources[0];
      return {
        name: product.name,
        maker: product.maker,
        kind: product.kind,
        use: product.use,
        size: product.size,
        unit: product.size === undefined ? undefined : (product.sizeUnit ?? 'ml'),
        owned: product.owned ? 'yes' : 'no',
        price: priced?.price,
        currency: priced?.currency,
        page: priced?.url,
        label: label?.text,
        'label seen': label?.seen,
        notes: product.notes,
      };
    }),
  );
  return written(rows, fields);
}

/** One row for each product of a shelf, in the order shown. */
export function shelfCsv(rows: readonly ShelfRow[]): string {
  const fields = ['name', 'answer', 'protein', 'moisture', 'per 100', 'currency', 'page'];
  return written(
    rows.map(({ name, answer, protein, moisture, per100, currency, address, why }) => ({
      name,
      answer: answer ?? why,
      protein,
      moisture,
      'per 100': per100 === undefined ? undefined : Math.round(per100 * 100) / 100,
      currency,
      page: address,
    })),
    fields,
  );
}

/** One row for each wash day, oldest first. */
export function logCsv({ log, heads }: Pick<Remembered, 'log' | 'heads'>): string {
  const feels = ['soft', 'springy', 'defined', 'dry', 'elastic'] as const;
  const fields = ['date', 'head', 'routine', 'products', ...feels, 'celsius', 'humidity', 'notes'];
  const rows = log.map(({ date, head, done, feel, weather, notes }) => ({
    date,
    head: heads.find(({ id }) => id === head)?.name ?? head,
    routine: done.name,
    products: done.steps.map(({ kind, productName }) => productName ?? kind).join('; '),
    ...Object.fromEntries(feels.map((name) => [name, feel[name]])),
    celsius: weather?.celsius,
    humidity: weather?.humidity,
    notes,
  }));
  return written(rows, fields);
}
