import { type Finding, worstOf } from '../../../core/judge/finding.ts';
import type { WashDayInput } from '../../../core/wash-day/add-up.ts';
import type { Routine, Step } from '../../../core/wash-day/routine.ts';
import { productById } from '../../../use/acts/matters/products.ts';
import { dotted } from '../../describe/dotted.ts';
import { glyphsInOrder } from '../../describe/mark.ts';
import { Glyph } from '../../glyphs/glyph.tsx';
import { glyphOfAnswer } from '../../glyphs/shapes.ts';
import { Button } from '../../parts/controls/button.tsx';
import { Thumbnail } from '../../products/thumbnail.tsx';
import type { World } from '../../world.ts';
import { Findings, ofProduct } from '../findings.tsx';
import { cadenceWords, StepEditor } from './step-editor.tsx';

/** One step of the day: what it is, what its label holds, what the rules say beside it. */
export function StepRow(props: {
  world: World;
  routine: Routine;
  input: WashDayInput;
  findings: readonly Finding[];
  step: Step;
  place: number;
  open: boolean;
  look: string;
  marked: boolean;
  onToggle: () => void;
  onMove: (to: number, by: string) => void;
  onDrag: (event: PointerEvent) => void;
  onChange: (step: Step) => void;
  onDuplicate: () => void;
  onRemove: () => void;
}) {
  const { world, routine, step, place, input } = props;
  const { t } = world;
  const kind = t(`routine.kind.${step.kind}`);
  const product = productById(world.remembered, step.product);
  const reading = input.readings.get(step.id);
  const glyphs = glyphsInOrder(reading?.mentions ?? []);
  const mine = props.findings.filter(({ answer, steps }) => answer !== 'suits' && steps.includes(step.id));
  const own = mine.filter(({ rule }) => ofProduct.has(rule));
  const shared = [...new Set(mine.filter(({ rule }) => !ofProduct.has(rule)).map(({ rule }) => rule))];
  const meta = [
    ...(props.marked ? [t('plan.changed-now')] : []),
    ...(step.cadence.every === 'wash' ? [] : [cadenceWords(t, step.cadence)]),
    ...(step.optional ? [t('routine.step.is-optional')] : []),
    ...(step.grams === undefined ? [] : [t('routine.step.grams.of', { grams: step.grams })]),
  ];
  return (
    <li class={`step-row${props.look}${props.marked ? ' changed' : ''}`} data-step={step.id}>
      <button
        type="button"
        class="handle"
        aria-label={t('routine.step.handle', { kind, place: place + 1, n: routine.steps.length })}
        onPointerDown={props.onDrag}
        onKeyDown={(event) => {
          const by = { ArrowUp: -1, ArrowDown: 1 }[event.key];
          if (!by) return;
          event.preventDefault();
          props.onMove(place + by, 'handle');
        }}
      >
        <svg viewBox="0 0 10 16" width="10" height="16" aria-hidden="true">
          <path d="M3 2v12M7 2v12" />
        </svg>
      </button>
      <div class="step-words">
        <p class="step-head">
          <strong>{kind}</strong>
          <span class="glyph-row">
            {glyphs.map((name) => (
              <Glyph key={name} name={name} label={t(`routine.glyph.${name}`)} ground="var(--raised)" />
            ))}
          </span>
        </p>
        <p class={product ? 'with-picture' : 'hint'}>
          <Thumbnail world={world} product={product} />
          {product ? (
            <button
              type="button"
              class="product-name"
              onClick={() => world.go('products', { product: product.id })}
            >
              {product.name}
            </button>
          ) : (
            t(step.product ? 'routine.step.product-gone' : 'routine.step.no-product')
          )}
        </p>
        {meta.length > 0 && <p class="hint">{dotted(meta)}</p>}
        {shared.length > 0 && (
          <p class="margin-note">
            <Glyph name={glyphOfAnswer(worstOf(mine))} ground="var(--raised)" />{' '}
            {dotted(shared.map((rule) => t(`rules.short.${rule}`)))}
          </p>
        )}
        {own.length > 0 && <Findings t={t} findings={own} />}
      </div>
      <div class="step-buttons">
        <span class="up-down">
          <button
            type="button"
            class="button up"
            disabled={place === 0}
            aria-label={t('routine.step.up', { kind })}
            onClick={() => props.onMove(place - 1, 'up')}
          >
            ↑
          </button>
          <button
            type="button"
            class="button down"
            disabled={place === routine.steps.length - 1}
            aria-label={t('routine.step.down', { kind })}
            onClick={() => props.onMove(place + 1, 'down')}
          >
            ↓
          </button>
        </span>
        <Button
          look="quiet"
          expanded={props.open}
          label={t(props.open ? 'routine.step.close.what' : 'routine.step.edit.what', { kind })}
          onClick={props.onToggle}
        >
          {t(props.open ? 'routine.step.close' : 'routine.step.edit')}
        </Button>
      </div>
      {props.open && <StepEditor {...props} />}
    </li>
  );
}
