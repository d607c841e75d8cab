import type { Reading } from '../../core/reading/reading.ts';
import { ShareBar } from '../charts/share-bar.tsx';
import { amountWords } from '../describe/share.ts';
import { Glyphs, hueOf } from '../page/mention-row.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import type { World } from '../world.ts';
import { type Aligned, align, split } from './align.ts';
import { ComparedRow, Rows } from './table.tsx';

type Sides = { world: World; names: readonly string[]; readings: readonly (Reading | undefined)[] };

/** A name that only one product has: what it is and how much of it there may be. */
function OnlyHere({ world, reading, index }: { world: World; reading: Reading | undefined; index: number }) {
  const { t } = world;
  const mention = reading?.mentions[index];
  if (!mention) return null;
  return (
    <li>
      <span class="mention-place">{index + 1}</span>
      <span class="mention-name">
        {mention.found.how === 'none' ? mention.raw : mention.found.name} <Glyphs mention={mention} />
      </span>
      <span class="mention-share">
        <ShareBar t={t} share={mention.share} likely={mention.likely} hue={hueOf(mention)} silent />
        <span>{amountWords(mention, t)}</span>
      </span>
    </li>
  );
}

/** Names that several have, each product's place and share side by side. */
function Shared({ world, names, readings, rows }: Sides & { rows: readonly Aligned[] }) {
  const { t } = world;
  return (
    <Rows columns={names}>
      {rows.map((row) => {
        const first = row.at.findIndex((place) => place !== undefined);
        const mention = readings[first]?.mentions[row.at[first] ?? 0];
        return (
          <ComparedRow
            key={row.name}
            head={
              <>
                {row.name} {mention && <Glyphs mention={mention} />}
              </>
            }
            cells={row.at.map((index, column) => {
              const here = index === undefined ? undefined : readings[column]?.mentions[index];
              if (!here || index === undefined) return <span class="none">{t('compare.not-on-it')}</span>;
              return (
                <>
                  <ShareBar t={t} share={here.share} likely={here.likely} hue={hueOf(here)} silent />
                  <span class="hint">
                    {t('compare.place', { place: index + 1, share: amountWords(here, t) })}
                  </span>
                </>
              );
            })}
          />
        );
      })}
    </Rows>
  );
}

/** Names aligned by what they are: what only one has, what some have, what all have. */
export function AlignedNames(props: Sides) {
  const { world, names, readings } = props;
  const { t } = world;
  const groups = split(align(readings), names.length);
  return (
    <section class="stack">
      <h3>{t('compare.names.title')}</h3>
      <div class="only-lists">
        {groups.only.map((rows, column) =>
          rows.length === 0 ? null : (
            <Disclosure
              key={names[column]}
              open
              summary={t('compare.only', { name: names[column] ?? '', n: rows.length })}
            >
              <ul class="plain-list only">
                {rows.map((row) => (
                  <OnlyHere
                    key={row.name}
                    world={world}
                    reading={readings[column]}
                    index={row.at[column] ?? 0}
                  />
                ))}
              </ul>
            </Disclosure>
          ),
        )}
      </div>
      {groups.some.length > 0 && (
        <Disclosure open summary={t('compare.some', { n: groups.some.length })}>
          <Shared {...props} rows={groups.some} />
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
          <Shared {...props} rows={groups.all} />
        </Disclosure>
      )}
    </section>
  );
}
