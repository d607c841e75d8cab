import { useEffect, useRef, useState } from 'preact/hooks';
import type { Finding, Said } from '../../../core/judge/finding.ts';
import type { WashDayInput } from '../../../core/wash-day/add-up.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import {
  copyOf,
  keepRoutine,
  movedStep,
  withNewStep,
  withoutStep,
  withStep,
} from '../../../use/acts/matters/routines.ts';
import { carryOut } from '../../carry-out.ts';
import type { World } from '../../world.ts';
import { AddStep } from './add-step.tsx';
import { StepRow } from './step-row.tsx';

/**
 * The steps in order. A step is moved by its handle (drag, or arrow keys on it) or by its two buttons; each
 * move is said aloud and can be taken back.
 */
export function StepList(props: {
  world: World;
  routine: Routine;
  input: WashDayInput;
  findings: readonly Finding[];
  /** Steps that were changed just now. */
  changed?: readonly string[];
}) {
  const { world, routine } = props;
  const { t } = world;
  const list = useRef<HTMLOListElement>(null);
  const [open, setOpen] = useState<string | undefined>();
  const [drag, setDrag] = useState<{ id: string; to: number } | undefined>();
  const moved = useRef<{ id: string; by: string; to: number } | undefined>(undefined);
  const nameOf = (id: string) => {
    const step = routine.steps.find((one) => one.id === id);
    return step ? t(`routine.kind.${step.kind}`) : '';
  };

  const keep = (changed: Routine, say: Said) => carryOut(world, keepRoutine(world.remembered, changed, say));
  const said = (what: 'changed' | 'duplicated' | 'removed', id: string): Said => ({
    key: `routine.step.${what}`,
    values: { kind: nameOf(id) },
  });

  // A moved row loses the focus in the browser: it is given back to the control that moved it, once it has moved.
  useEffect(() => {
    const { id, by, to } = moved.current ?? {};
    if (id === undefined || routine.steps[to!]?.id !== id) return;
    moved.current = undefined;
    list.current?.querySelector<HTMLElement>(`[data-step="${CSS.escape(id)}"] .${by}`)?.focus();
  }, [routine]);

  const move = async (id: string, to: number, by: string) => {
    const from = routine.steps.findIndex((step) => step.id === id);
    const at = Math.max(0, Math.min(routine.steps.length - 1, to));
    if (at === from) return;
    moved.current = { id, by, to: at };
    const values = { kind: nameOf(id), place: at + 1, n: routine.steps.length };
    if (!(await keep(movedStep(routine, id, at), { key: 'routine.step.moved', values })))
      moved.current = undefined;
  };

  /** Place in the order that a height on the screen stands for, the dragged row left out. */
  const placeAt = (id: string, y: number) =>
    [...(list.current?.querySelectorAll<HTMLElement>(':scope > [data-step]') ?? [])].filter((row) => {
      const { top, height } = row.getBoundingClientRect();
      return row.dataset.step !== id && y > top + height / 2;
    }).length;

  const startDrag = (id: string, event: PointerEvent) => {
    if (event.button !== 0) return;
    const handle = event.currentTarget as HTMLElement;
    handle.setPointerCapture?.(event.pointerId);
    const ends = new AbortController();
    const { signal } = ends;
    let to = routine.steps.findIndex((step) => step.id === id);
    const stop = () => {
      ends.abort();
      setDrag(undefined);
    };
    handle.addEventListener(
      'pointermove',
      ({ clientY }) => {
        to = placeAt(id, clientY);
        setDrag({ id, to });
      },
      { signal },
    );
    handle.addEventListener('pointercancel', stop, { signal });
    handle.addEventListener('keydown', ({ key }) => key === 'Escape' && stop(), { signal });
    handle.addEventListener(
      'pointerup',
      () => {
        stop();
        void move(id, to, 'handle');
      },
      { signal },
    );
  };

  const from = drag ? routine.steps.findIndex(({ id }) => id === drag.id) : -1;
  const dropMark = (index: number) => {
    if (!drag || drag.to === from) return '';
    const at = drag.to > from ? drag.to + 1 : drag.to;
    return at === index
      ? ' drop-before'
      : at === routine.steps.length && index === at - 1
        ? ' drop-after'
        : '';
  };

  return (
    <section class="stack" aria-labelledby="routine-steps">
      <h3 id="routine-steps">{t('routine.steps')}</h3>
      {routine.steps.length === 0 && <p>{t('routine.steps.none')}</p>}
      <ol class="plain-list steps" ref={list}>
        {routine.steps.map((step, index) => (
          <StepRow
            key={step.id}
            {...props}
            step={step}
            place={index}
            marked={props.changed?.includes(step.id) ?? false}
            open={open === step.id}
            look={`${drag?.id === step.id ? ' dragged' : ''}${dropMark(index)}`}
            onToggle={() => setOpen(open === step.id ? undefined : step.id)}
            onMove={(to, by) => void move(step.id, to, by)}
            onDrag={(event) => startDrag(step.id, event)}
            onChange={(changed) => void keep(withStep(routine, changed), said('changed', step.id))}
            onDuplicate={() => {
              const copy = copyOf(world, { ...routine, steps: [step] }, '').steps[0]!;
              const steps = routine.steps.toSpliced(index + 1, 0, copy);
              void keep({ ...routine, steps }, said('duplicated', step.id));
            }}
            onRemove={() => void keep(withoutStep(routine, step.id), said('removed', step.id))}
          />
        ))}
      </ol>
      <AddStep
        t={t}
        onAdd={(kind) =>
          void keep(withNewStep(world, routine, kind), {
            key: 'routine.step.added',
            values: { kind: t(`routine.kind.${kind}`) },
          })
        }
      />
    </section>
  );
}
