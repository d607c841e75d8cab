import type { GlyphName } from '../../contract/paint-order.ts';
import { type Brings, type Brought, bringsFor } from '../../core/amounts/brings.ts';
import type { MoistureRole } from '../../core/names/entry.ts';
import type { ReadFor } from '../../core/product/read-as.ts';
import type { Reading } from '../../core/reading/reading.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { Help } from '../parts/help.tsx';
import { Pending } from '../parts/waiting/pending.tsx';
import type { World } from '../world.ts';
import { moistOf, moistureRows, proteinRows, proteinsOf } from './align.ts';
import { BroughtCell } from './brought-cell.tsx';
import { SharesCell } from './shares-cell.tsx';
import { ComparedRow } from './table.tsx';

const glyph: Record<string, GlyphName> = {
  large: 'large',
  small: 'small',
  free: 'free',
  unknown: 'bearing',
  bearing: 'bearing',
  humectant: 'draws',
  emollient: 'softens',
  occlusive: 'seals',
};

function Head({ name, children }: { name: string; children: preact.ComponentChildren }) {
  return (
    <span class="row-head">
      <Glyph name={glyph[name] ?? 'unsure'} /> {children}
    </span>
  );
}

/**
 * Protein by size and moisture by role: what each product brings as it is used, in the four steps; its share on the
 * one scale where it is not known how it is used. Rows nobody has are left out.
 */
export function AmountRows({
  world,
  columns,
  which,
}: {
  world: World;
  columns: readonly { reading: Reading | undefined; product: ReadFor }[];
  /** Rows in which the products differ, or those in which they are the same. */
  which: 'differ' | 'same';
}) {
  const { t, practice } = world;
  const readings = columns.map(({ reading }) => reading);
  const all = columns.map(({ reading, product }) => bringsFor(reading, product, practice.washDay));
  const cell = (
    column: number,
    of: (reading: Reading) => Reading['mentions'],
    hue: 'plum' | 'teal',
    part?: (brings: Brings) => Brought,
  ) => {
    const [reading, brings] = [readings[column], all[column]];
    if (!reading) return <Pending world={world} />;
    if (brings && part) return <BroughtCell world={world} brings={brings} brought={part(brings)} hue={hue} />;
    return <SharesCell world={world} mentions={of(reading)} hue={hue} />;
  };
  const has = (of: (reading: Reading) => Reading['mentions']) =>
    readings.some((reading) => reading && of(reading).length > 0);
  /** All in the same step; of one product alone, and where steps are not known, no row is the same. */
  const same = (part: (brings: Brings) => Brought) =>
    columns.length > 1 &&
    all.every((brings) => brings) &&
    new Set(all.map((brings) => part(brings!).step)).size === 1;
  const wanted = (part: (brings: Brings) => Brought) => same(part) === (which === 'same');
  const some = proteinRows.filter((size) => has((reading) => proteinsOf(reading, size)));
  const proteins = some.filter((size) =>
    size === 'bearing' ? which === 'differ' : wanted(({ protein }) => protein.bySize[size]),
  );
  return (
    <>
      {some.length === 0 && which === 'same' ? (
        <ComparedRow head={t('compare.protein')} cells={readings.map(() => t('compare.none'))} />
      ) : (
        proteins.map((size) => (
          <ComparedRow
            key={size}
            head={<Head name={size}>{t(`compare.protein.${size}`)}</Head>}
            cells={readings.map((_, column) =>
              cell(
                column,
                (each) => proteinsOf(each, size),
                'plum',
                size === 'bearing' ? undefined : ({ protein }) => protein.bySize[size],
              ),
            )}
          />
        ))
      )}
      {moistureRows
        .filter((role) => wanted(({ moisture }) => moisture.byRole[role]))
        .map((role: MoistureRole) => (
          <ComparedRow
            key={role}
            head={
              <Head name={role}>
                {t(`compare.moisture.${role}`)} <Help t={t} term={role} />
              </Head>
            }
            cells={readings.map((_, column) =>
              cell(
                column,
                (each) => moistOf(each, role),
                'teal',
                ({ moisture }) => moisture.byRole[role],
              ),
            )}
          />
        ))}
    </>
  );
}
