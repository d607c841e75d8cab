import { useMemo } from 'preact/hooks';
import type { Head } from '../../core/hair/head.ts';
import { type Tallied, tallyOf } from '../../core/hair/tally.ts';
import { allowanceOf } from '../../core/hair/tolerance.ts';
import type { Reading } from '../../core/reading/reading.ts';
import type { LogEntry } from '../../core/wash-day/routine.ts';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Note } from '../parts/note.tsx';
import type { Translate } from '../words/index.ts';
import type { World } from '../world.ts';

/** What the days that felt balanced share, in plain counts, and how the feel moved the allowance. */
export function TallyCard({
  world,
  head,
  entries,
}: {
  world: World;
  head: Head;
  entries: readonly LogEntry[];
}) {
  const { t, practice } = world;
  // The same few labels come back through the whole log: each is looked up once a drawing.
  const known = new Map<string, Reading | undefined>();
  const tally = tallyOf(
    entries,
    (label, { use, kind }) => {
      const key = use + kind + label;
      if (!known.has(key)) known.set(key, world.reading(label, { kind, use }));
      return known.get(key);
    },
    practice,
  );
  const bad = tally ? tally.days - tally.good : 0;
  // What all days have in the same share tells them apart in nothing.
  const differing =
    tally && tally.good > 0
      ? tally.rows.filter(({ good, others }) => good * bad !== others * tally.good || (bad === 0 && good > 0))
      : [];
  const moved = useMemo(
    () =>
      allowanceOf(head, practice.allowance, { today: world.today, log: entries }).reasons.find(
        ({ id }) => id === 'feel',
      ),
    [head, entries, practice, world.today],
  );
  const from = practice.washDay.thresholds.tallyFrom;
  if (!tally && !moved)
    return entries.length === 0 ? null : <p class="hint">{t('log.tally.later', { n: from })}</p>;
  const toggle = () =>
    void world.change({
      do: 'put',
      thing: 'heads',
      value: {
        ...head,
        setAside: moved?.setAside ? head.setAside.filter((id) => id !== 'feel') : [...head.setAside, 'feel'],
      },
    });
  return (
    <Card title={t('log.tally')}>
      {moved && (
        <Note t={t}>
          <p>
            {t(moved.said.key, moved.said.values)}.{' '}
            {t(
              moved.setAside
                ? 'log.moved.set-aside'
                : moved.steps === 0
                  ? 'log.moved.none'
                  : moved.steps > 0
                    ? 'log.moved.up'
                    : 'log.moved.down',
            )}
          </p>
          {moved.steps !== 0 && (
            <div class="actions">
              <Button look="quiet" onClick={toggle}>
                {t(moved.setAside ? 'log.moved.count' : 'log.moved.undo')}
              </Button>
            </div>
          )}
        </Note>
      )}
      {tally && (
        <>
          <p>{t('log.tally.days', { n: tally.days, good: tally.good })}</p>
          {tally.good > 0 && differing.length === 0 && <p>{t('log.tally.same')}</p>}
          {differing.length > 0 && (
            <table class="tally">
              <thead>
                <tr>
                  <th scope="col">{t('log.tally.what')}</th>
                  <th scope="col">{t('log.tally.good')}</th>
                  <th scope="col">{t('log.tally.others')}</th>
                </tr>
              </thead>
              <tbody>
                {differing.map(({ what, good, others }) => (
                  <tr key={what}>
                    <th scope="row">{tallyWords(what, t)}</th>
                    <td>{t('log.tally.of', { n: good, of: tally.good })}</td>
                    <td>{t('log.tally.of', { n: others, of: tally.days - tally.good })}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
          <p class="hint">{t('log.tally.never-proof')}</p>
        </>
      )}
    </Card>
  );
}

/** How much a day brings is said as everywhere. */
const tallyWords = (what: Tallied, t: Translate) =>
  what.startsWith('protein.') || what.startsWith('moisture.')
    ? t(`page.brings.${what}`)
    : t(`log.tally.${what}`);
