import { useState } from 'preact/hooks';
import type { Head, StretchTest } from '../../core/hair/head.ts';
import { readStretch, type StretchReading } from '../../core/hair/stretch.ts';
import { newestStretch } from '../../core/hair/tolerance.ts';
import { daysBetween } from '../../core/wash-day/days.ts';
import { keepHead } from '../../use/acts/matters/heads.ts';
import { carryOut } from '../carry-out.ts';
import { WideDrawing } from '../charts/drawing.tsx';
import { StretchCurve } from '../charts/stretch-curve.tsx';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { CheckBox, Choice } from '../parts/controls/choice.tsx';
import { NumberField } from '../parts/controls/field.tsx';
import { Help } from '../parts/help.tsx';
import type { World } from '../world.ts';
import { StretchDrawing } from './drawings.tsx';

const mmPerInch = 25.4;
type Unit = 'mm' | 'in';
type Draft = { rest?: number; stretched?: number; after?: number; broke: boolean };

/** Guided stretch test, its reading on the published curve, and the tests so far. */
export function StretchTestCard({ world, head }: { world: World; head: Head }) {
  const { t } = world;
  const practice = world.practice.allowance.stretch;
  const [draft, setDraft] = useState<Draft | undefined>();
  const newest = newestStretch(head);
  const complete = draft && whole(draft);
  const reading = complete
    ? readStretch(complete, practice)
    : !draft && newest
      ? readStretch(newest, practice)
      : undefined;

  const keep = async () => {
    if (!complete) return;
    const test: StretchTest = { id: world.newId(), date: world.today, ...complete };
    const tested = { ...head, stretch: [...head.stretch, test] };
    if (await carryOut(world, keepHead(world.remembered, tested, { key: 'hair.stretch.kept' })))
      setDraft(undefined);
  };
  return (
    <Card
      title={
        <>
          {t('hair.stretch')}
          {'\u00a0'}
          <Help t={t} term="stretch-test" />
        </>
      }
    >
      {draft ? (
        <Guide world={world} draft={draft} onDraft={setDraft} />
      ) : (
        !newest && <p>{t('hair.stretch.intro')}</p>
      )}
      {(reading || draft) && (
        <figure class="stack">
          <WideDrawing label={t('hair.stretch')}>
            <StretchCurve
              t={t}
              practice={practice}
              {...(reading && { reading })}
              earlier={head.stretch
                .filter((test) => draft || test !== newest)
                .flatMap((test) => readStretch(test, practice).extension ?? [])}
            />
          </WideDrawing>
          <figcaption class="hint">{t('hair.stretch.curve.source')}</figcaption>
        </figure>
      )}
      {reading && <ReadingWords world={world} reading={reading} />}
      <div class="actions">
        {draft ? (
          <>
            <Button look="strong" disabled={!complete || reading?.why === 'lengths'} onClick={keep}>
              {t('hair.stretch.keep')}
            </Button>
            <Button onClick={() => setDraft(undefined)}>{t('hair.stretch.not-now')}</Button>
          </>
        ) : (
          <Button onClick={() => setDraft({ broke: false })}>
            {t(newest ? 'hair.stretch.again' : 'hair.stretch.start')}
          </Button>
        )}
      </div>
      {head.stretch.length > 0 && <History world={world} head={head} />}
    </Card>
  );
}

/** Draft lengths → a test's lengths, or undefined while one is missing. */
function whole({ rest, stretched, after, broke }: Draft) {
  if (rest === undefined || stretched === undefined || (!broke && after === undefined)) return undefined;
  return { rest, stretched, broke, ...(!broke && after !== undefined && { after }) };
}

function Guide(props: { world: World; draft: Draft; onDraft: (draft: Draft) => void }) {
  const { world, draft, onDraft } = props;
  const { t } = world;
  const unit: Unit = world.remembered.settings.units === 'imperial' ? 'in' : 'mm';
  const [min, max] = unit === 'in' ? [0.1, 40] : [2, 1000];
  const length = (name: 'rest' | 'stretched' | 'after') => (
    <NumberField
      key={unit + name}
      lang={t.lang}
      label={t(`hair.stretch.${name}`)}
      unit={unit}
      min={min}
      max={max}
      wrong={t('hair.stretch.wrong', { min, max, unit })}
      value={draft[name] === undefined ? undefined : inUnit(draft[name], unit)}
      onNumber={(value) => {
        const { [name]: _, ...rest } = draft;
        onDraft(value === undefined ? rest : { ...rest, [name]: fromUnit(value, unit) });
      }}
    />
  );
  return (
    <>
      <p>{t('hair.stretch.intro')}</p>
      <Choice
        legend={t('hair.stretch.units')}
        value={unit}
        onChange={(chosen) =>
          void world.change({ do: 'set', settings: { units: chosen === 'in' ? 'imperial' : 'metric' } })
        }
        options={(['mm', 'in'] as const).map((value) => ({ value, label: t(`hair.stretch.units.${value}`) }))}
      />
      <ol class="plain-list guide">
        <li>
          <StretchDrawing step="rest" />
          <div class="stack">
            <p>{t('hair.stretch.step.rest')}</p>
            {length('rest')}
          </div>
        </li>
        <li>
          <StretchDrawing step="stretch" />
          <div class="stack">
            <p>{t('hair.stretch.step.stretch')}</p>
            {length('stretched')}
            <CheckBox
              label={t('hair.stretch.broke')}
              checked={draft.broke}
              onChange={(broke) => onDraft({ ...draft, broke })}
            />
          </div>
        </li>
        {!draft.broke && (
          <li>
            <StretchDrawing step="after" />
            <div class="stack">
              <p>{t('hair.stretch.step.after')}</p>
              {length('after')}
            </div>
          </li>
        )}
      </ol>
    </>
  );
}

const inUnit = (mm: number, unit: Unit) =>
  unit === 'in' ? Math.round((mm / mmPerInch) * 100) / 100 : Math.round(mm * 10) / 10;
const fromUnit = (value: number, unit: Unit) => (unit === 'in' ? value * mmPerInch : value);

function ReadingWords({ world: { t }, reading }: { world: World; reading: StretchReading }) {
  const { kind, why, extension, extensionRange, recovery } = reading;
  return (
    <div class="stack" aria-live="polite">
      <h4>{t(`hair.stretch.kind.${kind}`)}</h4>
      <p>{t(kind === 'cannot-tell' ? `hair.stretch.why.${why}` : `hair.stretch.kind.${kind}.means`)}</p>
      {extension !== undefined && extensionRange && (
        <p class="hint">
          {t('hair.stretch.extension', {
            percent: Math.round(extension),
            min: Math.round(extensionRange.min),
            max: Math.round(extensionRange.max),
          })}
          {recovery !== undefined &&
            `\u00a0· ${t('hair.stretch.recovery', { percent: Math.round(Math.max(0, recovery)) })}`}
        </p>
      )}
    </div>
  );
}

function History({ world, head }: { world: World; head: Head }) {
  const { t, today } = world;
  const practice = world.practice.allowance.stretch;
  const date = new Intl.DateTimeFormat(t.lang, { dateStyle: 'medium', timeZone: 'UTC' });
  const newest = newestStretch(head);
  const remove = (test: StretchTest) => {
    const stretch = head.stretch.filter(({ id }) => id !== test.id);
    void carryOut(world, keepHead(world.remembered, { ...head, stretch }, { key: 'hair.stretch.removed' }));
  };
  return (
    <section class="stack">
      <h4>{t('hair.stretch.history')}</h4>
      <ul class="plain-list history">
        {head.stretch
          .toSorted((a, b) => b.date.localeCompare(a.date))
          .map((test) => {
            const { kind, extension } = readStretch(test, practice);
            const counts = test === newest && daysBetween(test.date, today) <= practice.countsForDays;
            const day = date.format(new Date(test.date));
            return (
              <li key={test.id}>
                <span>{day}</span>
                <span>
                  {t(`hair.stretch.kind.${kind}`)}
                  {extension !== undefined && `\u00a0· ${Math.round(extension)} %`}
                  {counts && (
                    <span class="hint">
                      {'\u00a0· '}
                      {t('hair.stretch.counts')}
                    </span>
                  )}
                </span>
                <Button
                  look="quiet"
                  label={t('hair.stretch.remove', { date: day })}
                  onClick={() => remove(test)}
                >
                  ×
                </Button>
              </li>
            );
          })}
      </ul>
    </section>
  );
}
