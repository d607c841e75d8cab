import type { GlyphName } from '../../contract/paint-order.ts';
import type { MoistureRole } from '../../core/names/entry.ts';
import type { Reading } from '../../core/reading/reading.ts';
import { Glyph } from '../glyphs/glyph.tsx';
import { Help } from '../parts/help.tsx';
import { Pending } from '../parts/pending.tsx';
import type { World } from '../world.ts';
import { moistOf, moistureRows, proteinRows, proteinsOf } from './align.ts';
import { SharesCell } from './shares-cell.tsx';
import { Row } from './table.tsx';

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

/** Protein by size and moisture by role, each product's share on the one scale. Rows nobody has are left out. */
export function AmountRows({
  world,
  readings,
}: {
  world: World;
  readings: readonly (Reading | undefined)[];
}) {
  const { t } = world;
  const cell = (
    reading: Reading | undefined,
    of: (reading: Reading) => Reading['mentions'],
    hue: 'plum' | 'teal',
  ) => (reading ? <SharesCell world={world} mentions={of(reading)} hue={hue} /> : <Pending t={t} />);
  const has = (of: (reading: Reading) => Reading['mentions']) =>
    readings.some((reading) => reading && of(reading).length > 0);
  const proteins = proteinRows.filter((size) => has((reading) => proteinsOf(reading, size)));
  return (
    <>
      {proteins.length === 0 ? (
        <Row head={t('compare.protein')} cells={readings.map(() => t('compare.none'))} />
      ) : (
        proteins.map((size) => (
          <Row
            key={size}
            head={<Head name={size}>{t(`compare.protein.${size}`)}</Head>}
            cells={readings.map((reading) => cell(reading, (each) => proteinsOf(each, size), 'plum'))}
          />
        ))
      )}
      {moistureRows.map((role: MoistureRole) => (
        <Row
          key={role}
          head={
            <Head name={role}>
              {t(`compare.moisture.${role}`)} <Help t={t} term={role} />
            </Head>
          }
          cells={readings.map((reading) => cell(reading, (each) => moistOf(each, role), 'teal'))}
        />
      ))}
    </>
  );
}
