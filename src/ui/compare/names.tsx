import type { Reading } from '../../core/reading.ts';
import { rangeWords, ShareBar } from '../charts/share-bar.tsx';
import { Glyphs, hueOf } from '../page/mention-row.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import type { World } from '../world.ts';
import { type Aligned, align, split } from './align.ts';
import { Row, Rows } from './table.tsx';

/** Names aligned by what they are: what only one has, what some have, what all have. */
export function AlignedNames(props: {
  world: World;
  names: readonly string[];
  readings: readonly (Reading | undefined)[];
}) {
  const { world, names, readings } = props;
  const { t } = world;
  const groups = split(align(readings), names.length);
  const Names = ({ rows, columns }: { rows: readonly Aligned[]; columns: readonly number[] }) => (
    <Rows columns={columns.map((column) => names[column] ?? '')}>
      {rows.map((row) => {
        const first = row.at.findIndex((place) => place !== undefined);
        const mention = readings[first]?.mentions[row.at[first] ?? 0];
        return (
          <Row
            key={row.name}
            head={
              <>
                {row.name} {mention && <Glyphs mention={mention} />}
              </>
            }
            cells={columns.map((column) => {
              const index = row.at[column];
              const here = index === undefined ? undefined : readings[column]?.mentions[index];
              if (!here || index === undefined) return <span class="none">{t('compare.not-on-it')}</span>;
              return (
                <>
                  <ShareBar t={t} share={here.share} hue={hueOf(here)} silent />
                  <span class="hint">
                    {t('compare.place', { place: index + 1, share: rangeWords(here.share, t) })}
                  </span>
                </>
              );
            })}
          />
        );
      })}
    </Rows>
  );
  const everyColumn = names.map((_, column) => column);
  return (
    <section class="stack">
      <h3>{t('compare.names.title')}</h3>
      {groups.only.map((rows, column) =>
        rows.length === 0 ? null : (
          <Disclosure
            key={names[column]}
            open
            summary={t('compare.only', { name: names[column] ?? '', n: rows.length })}
          >
            <Names rows={rows} columns={[column]} />
          </Disclosure>
        ),
      )}
      {groups.some.length > 0 && (
        <Disclosure open summary={t('compare.some', { n: groups.some.length })}>
          <Names rows={groups.some} columns={everyColumn} />
        </Disclosure>
      )}
      {groups.all.length > 0 && (
        <Disclosure
          open
          summary={
            names.length === 2
              ? t('compare.both', { n: groups.all.length })
              : t('compare.all', { n: groups.all.length })
          }
        >
          <Names rows={groups.all} columns={everyColumn} />
        </Disclosure>
      )}
    </section>
  );
}
