import type { Head } from '../../core/hair/head.ts';
import { type AllowanceReading, type AllowanceReason, allowances } from '../../core/hair/tolerance.ts';
import type { AllowancePractice } from '../../core/judge/practice.ts';
import { AllowanceMarks } from '../charts/allowance-marks.tsx';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { Select } from '../parts/controls/select.tsx';
import { Help } from '../parts/help.tsx';
import { Note } from '../parts/note.tsx';
import type { Translate } from '../words/index.ts';

type Props = {
  t: Translate;
  head: Head;
  allowance: AllowanceReading;
  practice: AllowancePractice;
  onChange: (head: Head) => void;
};

/** How much protein this head welcomes, why line by line, and a way to overrule each line or the whole. */
export function AllowanceCard({ t, head, allowance, practice, onChange }: Props) {
  const { level, numbers, reasons, unknown, byReasons, between, byHand } = allowance;
  const word = (of: NonNullable<typeof level>) => t(`hair.allowance.level.${of}`);
  const setByHand = (chosen: typeof level) => {
    const { allowanceByHand: _, ...rest } = head;
    onChange(chosen ? { ...rest, allowanceByHand: chosen } : rest);
  };
  return (
    <Card
      over={
        <>
          {t('hair.allowance')}
          {'\u00a0'}
          <Help t={t} term="allowance" />
        </>
      }
      title={level ? t('hair.allowance.for', { name: head.name }) : t('hair.allowance.unknown')}
    >
      {level && numbers && (
        <>
          <p class="allowance-level">
            <svg viewBox="0 0 34 14" width="51" height="21" aria-hidden="true">
              <AllowanceMarks level={level} />
            </svg>
            <strong>{word(level)}</strong>
            <span class="sr">
              {t('hair.allowance.scale', { level: word(level), levels: allowances.map(word).join(', ') })}
            </span>
          </p>
          <ul class="plain-list numbers">
            <li>
              {t('hair.allowance.products', { n: numbers.products })},{' '}
              {numbers.leaveOns > 0
                ? t('hair.allowance.leave-ons', { n: numbers.leaveOns })
                : t('hair.allowance.leave-ons.none')}
            </li>
            <li>{t(`hair.allowance.large.${numbers.large}`)}</li>
            <li>{t('hair.allowance.treatments', { n: numbers.daysBetweenTreatments })}</li>
          </ul>
        </>
      )}
      {!level && between && (
        <p>
          {between.least === between.most
            ? t('hair.allowance.all-ways', { level: word(between.least) })
            : t('hair.allowance.between', { least: word(between.least), most: word(between.most) })}
        </p>
      )}
      {byHand && (
        <Note t={t}>
          <p>
            {byReasons
              ? t('hair.allowance.is-by-hand', { level: word(byReasons) })
              : t('hair.allowance.is-by-hand-unknown')}
          </p>
        </Note>
      )}
      {reasons.length > 0 && (
        <section class="stack">
          <h4>{t('hair.allowance.reasons')}</h4>
          <ul class="plain-list reasons">
            {reasons.map((reason) => (
              <Reason key={reason.id} t={t} head={head} reason={reason} onChange={onChange} />
            ))}
          </ul>
          {reasons.some(({ id }) => id.startsWith('damage-')) && (
            <p class="hint">{t('hair.steps.cap', { n: practice.damageAtMost })}</p>
          )}
        </section>
      )}
      {unknown.length > 0 && (
        <p class="unknown">
          <em>{t('hair.allowance.not-known')}:</em>{' '}
          {unknown.map((said) => t(said.key, said.values)).join('; ')}.
        </p>
      )}
      <Select
        label={t('hair.allowance.by-hand')}
        empty={
          byReasons
            ? t('hair.allowance.by-reasons', { level: word(byReasons) })
            : t('hair.allowance.by-reasons-unknown')
        }
        value={head.allowanceByHand}
        onChange={setByHand}
        options={allowances.map((value) => ({ value, label: word(value) }))}
      />
      <p class="hint">{t('hair.allowance.practice')}</p>
    </Card>
  );
}

function Reason(props: { t: Translate; head: Head; reason: AllowanceReason; onChange: Props['onChange'] }) {
  const { t, head, reason, onChange } = props;
  const words = t(reason.said.key, { n: 1, ...reason.said.values });
  const toggle = () =>
    onChange({
      ...head,
      setAside: reason.setAside
        ? head.setAside.filter((id) => id !== reason.id)
        : [...head.setAside, reason.id],
    });
  return (
    <li class={reason.setAside ? 'reason is-aside' : 'reason'}>
      <span class="step" aria-hidden="true">
        {arrow(reason.steps)}
      </span>
      <span>
        <span class="reason-words">{words}</span>
        <span class="hint"> {reason.setAside ? t('hair.allowance.is-set-aside') : effect(t, reason)}</span>
      </span>
      <Button
        look="quiet"
        label={t(reason.setAside ? 'hair.allowance.count-what' : 'hair.allowance.set-aside-what', {
          reason: words,
        })}
        onClick={toggle}
      >
        {t(reason.setAside ? 'hair.allowance.count' : 'hair.allowance.set-aside')}
      </Button>
    </li>
  );
}

const arrow = (steps: number) => (steps > 0 ? '↑' : steps < 0 ? '↓' : '·');

function effect(t: Translate, { id, steps }: AllowanceReason): string {
  if (id === 'hair') {
    const level = allowances[allowances.indexOf('some') + steps]!;
    return t('hair.steps.start', { level: t(`hair.allowance.level.${level}`) });
  }
  if (steps === 0) return t('hair.steps.none');
  if (!Number.isInteger(steps)) return t('hair.steps.part');
  return t(steps > 0 ? 'hair.steps.up' : 'hair.steps.down', { n: Math.abs(steps) });
}
