import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import {
  damageAges,
  damageKinds,
  damageLengths,
  type Head,
  porosities,
  thicknesses,
} from '../../core/hair/head.ts';
import { dotted } from '../describe/dotted.ts';
import { Button } from '../parts/controls/button.tsx';
import { CheckBoxes, Choice, type Option } from '../parts/controls/choice.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { Help } from '../parts/help.tsx';
import { Note } from '../parts/note.tsx';
import type { Translate } from '../words/index.ts';
import { DamageDrawing, LengthDrawing, PorosityDrawing, ThicknessDrawing } from './drawings.tsx';

type Answered = (head: Head) => void;
type Question = { head: Head; t: Translate; onAnswer: Answered };
type Tapped = Question & { onNotSure: (head: Head) => void };

/**
 * One answer by one tap, which also leads on to the next question. Buttons, not radios: with a keyboard a radio
 * is chosen by moving onto it, and the question would be gone before the wanted answer is reached.
 */
function Taps<T extends string>(props: {
  legend: string;
  help: ComponentChildren;
  hint: string;
  options: readonly Option<T>[];
  value: T | undefined;
  onTap: (value: T) => void;
  /** Leaves it unanswered and leads on. */
  notSure: string;
  onNotSure: () => void;
}) {
  return (
    <fieldset class="choice list">
      <legend>
        {props.legend} {props.help}
      </legend>
      <p class="hint">{props.hint}</p>
      <div class="options">
        {props.options.map(({ value, label, hint, drawing }) => (
          <button
            key={value}
            type="button"
            class="option tap"
            aria-pressed={props.value === value}
            onClick={() => props.onTap(value)}
          >
            {drawing}
            <span class="option-words">
              <span>{label}</span> <span class="hint">{hint}</span>
            </span>
          </button>
        ))}
      </div>
      <div class="actions">
        <Button look="quiet" onClick={props.onNotSure}>
          {props.notSure}
        </Button>
      </div>
    </fieldset>
  );
}

function ThicknessQuestion({ head, t, onAnswer, onNotSure }: Tapped) {
  const { thickness: _, ...rest } = head;
  return (
    <>
      <Taps
        legend={t('hair.thickness')}
        help={<Help t={t} term="thickness" />}
        hint={t('hair.thickness.test')}
        value={head.thickness}
        onTap={(thickness) => onAnswer({ ...head, thickness })}
        notSure={t('hair.not-sure')}
        onNotSure={() => onNotSure(rest)}
        options={thicknesses.map((value) => ({
          value,
          label: t(`hair.thickness.${value}`),
          hint: t(`hair.thickness.${value}.hint`),
          drawing: <ThicknessDrawing of={value} />,
        }))}
      />
      <Disclosure summary={t('hair.note')}>
        <p class="hint">{t('hair.thickness.note')}</p>
      </Disclosure>
    </>
  );
}

function PorosityQuestion({ head, t, onAnswer, onNotSure }: Tapped) {
  const { porosity: _, ...rest } = head;
  return (
    <>
      <Taps
        legend={t('hair.porosity')}
        help={<Help t={t} term="porosity" />}
        hint={t('hair.porosity.test')}
        value={head.porosity}
        onTap={(porosity) => onAnswer({ ...head, porosity })}
        notSure={t('hair.not-sure')}
        onNotSure={() => onNotSure(rest)}
        options={porosities.map((value) => ({
          value,
          label: t(`hair.porosity.${value}`),
          hint: t(`hair.porosity.${value}.hint`),
          drawing: <PorosityDrawing of={value} />,
        }))}
      />
      <Disclosure summary={t('hair.note')}>
        <p class="hint">{t('hair.porosity.note')}</p>
      </Disclosure>
    </>
  );
}

function DamageQuestion({ head, t, onAnswer, onDone }: Question & { onDone: () => void }) {
  const { damage } = head;
  return (
    <>
      <CheckBoxes
        legend={t('hair.damage')}
        hint={t('hair.damage.test')}
        value={damage?.kinds ?? []}
        onChange={(kinds) => onAnswer({ ...head, damage: { ...damage, kinds } })}
        options={damageKinds.map((value) => ({
          value,
          label: t(`hair.damage.${value}`),
          drawing: <DamageDrawing of={value} />,
        }))}
        layout="list"
      />
      {damage && damage.kinds.length > 0 ? (
        <>
          <Choice
            legend={t('hair.damage.length')}
            value={damage.length}
            onChange={(length) => onAnswer({ ...head, damage: { ...damage, length } })}
            options={damageLengths.map((value) => ({
              value,
              label: t(`hair.damage.length.${value}`),
              drawing: <LengthDrawing of={value} />,
            }))}
          />
          <Choice
            legend={t('hair.damage.recent')}
            value={damage.recent}
            onChange={(recent) => onAnswer({ ...head, damage: { ...damage, recent } })}
            options={damageAges.map((value) => ({ value, label: t(`hair.damage.recent.${value}`) }))}
          />
          <div class="actions">
            <Button look="strong" onClick={onDone}>
              {t('hair.done')}
            </Button>
          </div>
          <Note t={t} care>
            <p>{t('hair.damage.care')}</p>
          </Note>
        </>
      ) : (
        <div class="actions">
          <Button
            onClick={() => {
              onAnswer({ ...head, damage: { kinds: [] } });
              onDone();
            }}
          >
            {t('hair.damage.none')}
          </Button>
        </div>
      )}
    </>
  );
}

const names = ['thickness', 'porosity', 'damage'] as const;
type Name = (typeof names)[number];

/** What was answered, in a few words; undefined when it was not. */
function answered(head: Head, name: Name, t: Translate): string | undefined {
  if (name !== 'damage') return head[name] && t(`hair.${name}.${head[name]}`);
  if (!head.damage) return undefined;
  const { kinds, length, recent } = head.damage;
  if (kinds.length === 0) return t('hair.damage.summary.none');
  return dotted([
    ...kinds.map((kind) => t(`hair.damage.${kind}`)),
    ...(length ? [t(`hair.damage.length.${length}`)] : []),
    ...(recent ? [t(`hair.damage.recent.${recent}`)] : []),
  ]);
}

/**
 * The three questions. One is open at a time: the first that has no answer, or the one the user wants to
 * change; the others are a line each. So a first profile is three taps.
 */
export function Questions({ head, t, onAnswer }: Question) {
  const [asked, setAsked] = useState<Name | undefined>();
  const told = (name: Name) => answered(head, name, t);
  const [skipped, setSkipped] = useState<Name[]>([]);
  const open = asked ?? names.find((name) => told(name) === undefined && !skipped.includes(name));
  const next = () => setAsked(undefined);
  const list = useRef<HTMLOListElement>(null);
  const before = useRef(open);
  useEffect(() => {
    if (before.current === open) return;
    before.current = open;
    // The tapped button is gone: the focus goes on to the next question, or to the first line to change.
    if (document.activeElement === document.body || !document.activeElement?.isConnected)
      list.current
        ?.querySelector<HTMLElement>('.question button, .question input, .answered button')
        ?.focus();
  }, [open]);
  const question = (name: Name): ComponentChildren => {
    const props = {
      head,
      t,
      onAnswer: (changed: Head) => {
        onAnswer(changed);
        // Ticks may follow one another; the others are answered by one tap.
        if (name === 'damage') setAsked('damage');
        else next();
      },
    };
    const onNotSure = (changed: Head) => {
      if (told(name) !== undefined) onAnswer(changed);
      setSkipped([...skipped, name]);
      next();
    };
    if (name === 'thickness') return <ThicknessQuestion {...props} onNotSure={onNotSure} />;
    if (name === 'porosity') return <PorosityQuestion {...props} onNotSure={onNotSure} />;
    return <DamageQuestion {...props} onDone={next} />;
  };
  return (
    <ol class="plain-list questions" ref={list}>
      {names.map((name) =>
        name === open ? (
          <li key={name} class="card question">
            {question(name)}
          </li>
        ) : (
          <li key={name} class="answered">
            <span class="answered-what">{t(`hair.${name}.short`)}</span>
            <span class="answered-value">{told(name) ?? <em>{t('hair.not-told')}</em>}</span>
            <Button
              look="quiet"
              label={t(`hair.${told(name) ? 'change' : 'answer'}-what`, { what: t(`hair.${name}.short`) })}
              onClick={() => setAsked(name)}
            >
              {t(told(name) ? 'hair.change' : 'hair.answer')}
            </Button>
          </li>
        ),
      )}
    </ol>
  );
}
