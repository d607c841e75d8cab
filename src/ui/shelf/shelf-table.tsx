import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { ShelfRow } from '../../contract/shelf.ts';
import { answersByWeight } from '../../core/judge/finding.ts';
import { money as amountOf } from '../describe/money.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { glyphOfAnswer } from '../glyphs/shapes.ts';
import { Button } from '../parts/controls/button.tsx';
import { NumberField } from '../parts/controls/field.tsx';
import type { World } from '../world.ts';
import './shelf-table.css';

type Column = 'name' | 'answer' | 'protein' | 'moisture' | 'price';
const columns: Column[] = ['name', 'answer', 'protein', 'moisture', 'price'];
const amounts = ['none', 'a-little', 'some', 'a-lot'] as const;

/** Rows by a column; rows that have nothing there stand last either way. */
export function sortShelf(rows: readonly ShelfRow[], by: Column, down: boolean, lang: string): ShelfRow[] {
  const { compare } = new Intl.Collator(lang, { numeric: true });
  const rank = (row: ShelfRow): number | string | undefined => {
    if (by === 'name') return row.name;
    if (by === 'price') return row.per100;
    if (by === 'answer') return row.answer && answersByWeight.length - answersByWeight.indexOf(row.answer);
    const amount = row[by];
    return amount === undefined || amount === 'unknown' ? undefined : amounts.indexOf(amount);
  };
  return rows.toSorted((a, b) => {
    const [x, y] = [rank(a), rank(b)];
    if (x === undefined || y === undefined) return Number(x === undefined) - Number(y === undefined);
    const order = typeof x === 'string' ? compare(x, String(y)) : x - Number(y);
    return down ? -order : order;
  });
}

/** The shelf of the page in view as a table: sorted by any column, as a file, and read from here too. */
export function ShelfTable({ world, otherwise = null }: { world: World; otherwise?: ComponentChildren }) {
  const { t, shelf } = world;
  const [rows, setRows] = useState<ShelfRow[] | null>(null);
  const [[by, down], setOrder] = useState<[Column | undefined, boolean]>([undefined, false]);
  useEffect(() => {
    let gone = false;
    const ask = () =>
      void shelf?.rows().then(
        (now) => !gone && setRows(now),
        () => undefined,
      );
    ask();
    const timer = setInterval(ask, 1500);
    return () => {
      gone = true;
      clearInterval(timer);
    };
  }, [world.page?.url, world.remembered]);
  if (!shelf || !rows || rows.length === 0) return <>{otherwise}</>;

  const shown = by ? sortShelf(rows, by, down, t.lang) : rows;
  const read = rows.filter(({ state }) => state === 'read').length;
  const money = ({ per100, currency }: ShelfRow) => {
    if (per100 === undefined || !currency) return '';
    return amountOf(per100, currency, t.lang);
  };
  return (
    <section class="shelf-table">
      <h3>{t('shelf.title')}</h3>
      <p>{t('shelf.count', { n: rows.length, read })}</p>
      {read < rows.length && <p class="hint">{t('shelf.first')}</p>}
      <div class="buttons">
        {read < rows.length && (
          <Button onClick={() => void shelf.read()}>{t('shelf.read', { n: rows.length - read })}</Button>
        )}
        <Button onClick={() => void shelf.save(shown)}>{t('shelf.save')}</Button>
      </div>
      <PriceLimitField world={world} rows={rows} />
      <div class="scrolls">
        <table>
          <thead>
            <tr>
              {columns.map((column) => (
                <th
                  key={column}
                  scope="col"
                  aria-sort={by === column ? (down ? 'descending' : 'ascending') : 'none'}
                >
                  <button type="button" onClick={() => setOrder([column, by === column && !down])}>
                    {t(`shelf.column.${column}`)}
                  </button>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((row) => (
              <tr key={row.address}>
                <th scope="row">
                  <a href={row.address} target="_blank" rel="noopener noreferrer">
                    {row.name}
                  </a>
                </th>
                {row.state === 'read' ? (
                  <>
                    <td>
                      {row.notForHair && t('page.verdict.not-hair')}
                      {row.answer && (
                        <>
                          <Glyph name={glyphOfAnswer(row.answer)} ground="var(--raised)" />{' '}
                          {t('page.verdict.mine', { answer: row.answer })}
                        </>
                      )}
                    </td>
                    <td>{row.protein && t(`shelf.amount.${row.protein}`)}</td>
                    <td>{row.moisture && t(`shelf.amount.${row.moisture}`)}</td>
                    <td>{money(row)}</td>
                  </>
                ) : (
                  <td colSpan={4} class="hint">
                    {row.why
                      ? t(`shelf.why.${row.why}`)
                      : t(row.state === 'reading' ? 'shelf.reading' : 'shelf.not-yet')}
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

/** The most that 100 ml or g may cost, in this shop's currency: a filter of every shelf. */
function PriceLimitField({ world: { t, change, remembered }, rows }: { world: World; rows: ShelfRow[] }) {
  const priced = rows.filter(({ per100, currency }) => per100 !== undefined && currency);
  const [common] = [...Map.groupBy(priced, ({ currency }) => currency)].toSorted(
    ([, a], [, b]) => b.length - a.length,
  );
  const currency = common?.[0];
  if (!currency) return null;
  const { shelfPrice } = remembered.settings;
  return (
    <NumberField
      lang={t.lang}
      label={t('shelf.price')}
      hint={t('shelf.price.hint')}
      unit={currency}
      min={0}
      wrong={t('shelf.price.wrong')}
      value={shelfPrice?.currency === currency ? shelfPrice.most : undefined}
      onNumber={(most) =>
        void change(
          most === undefined
            ? { do: 'set', settings: {}, unset: ['shelfPrice'] }
            : { do: 'set', settings: { shelfPrice: { most, currency } } },
        )
      }
    />
  );
}
