import { exposureOf } from '../../../core/amounts/brings.ts';
import { inHand } from '../../../core/amounts/in-hand.ts';
import type { Head } from '../../../core/hair/head.ts';
import type { ProductKind } from '../../../core/product/product.ts';
import type { WashDay } from '../../../core/wash-day/add-up.ts';
import type { Routine, Step } from '../../../core/wash-day/routine.ts';
import { productById } from '../../../use/acts/matters/products.ts';
import { avoidWord } from '../../hair/avoid-list.tsx';
import type { Translate } from '../../words/index.ts';
import type { World } from '../../world.ts';
import { cadenceWords } from '../steps/step-editor.tsx';

/** What a step is for: words under `plan.why.`. */
const purposes: Record<ProductKind, string> = {
  'pre-wash': 'shield',
  'bond-treatment': 'strengthen',
  'protein-treatment': 'strengthen',
  cleanser: 'clean',
  rinse: 'soften',
  conditioner: 'soften',
  'deep-conditioner': 'deepen',
  'scalp-treatment': 'scalp',
  'leave-in': 'keep-soft',
  cream: 'keep-soft',
  foam: 'hold',
  gel: 'hold',
  serum: 'seal',
  oil: 'seal',
  hairspray: 'fix',
  'refresh-spray': 'refresh',
  'dry-shampoo': 'between',
};

export type SheetStep = {
  id: string;
  kind: string;
  product: string;
  /** How much, how often, whether it may be left out. */
  facts: string[];
  /** When in the wash day it comes and what for. */
  why: string;
  carries: boolean;
};

export type Sheet = {
  name: string;
  /** For whom, made when, washed how often. */
  about: string[];
  /** The hair in words; empty where nothing is told. */
  hair: string[];
  steps: SheetStep[];
  protein: string;
  watch: string[];
  note: string | undefined;
};

/** What is handed to somebody, in words: screen, paper and text draw the same. */
export function sheetOf(world: World, routine: Routine, day: WashDay): Sheet {
  const { t, remembered } = world;
  const head = remembered.heads.find(({ id }) => id === routine.head);
  const carrying = new Set(
    day.stays.steps
      .filter(({ protein, unread }) => !unread && protein.step !== 'none')
      .map(({ step }) => step),
  );
  const steps = routine.steps.map((step): SheetStep => {
    const product = productById(remembered, step.product);
    return {
      id: step.id,
      kind: t(`routine.kind.${step.kind}`),
      product: product?.name ?? t('routine.step.no-product'),
      facts: factsOf(world, step),
      why: t(`plan.why.${purposes[step.kind]}`),
      carries: carrying.has(step.id),
    };
  });
  const list = new Intl.ListFormat(t.lang, { type: 'conjunction' });
  const carriers = steps.filter(({ carries }) => carries).map(({ kind, product }) => `${kind} (${product})`);
  const made = new Intl.DateTimeFormat(t.lang, { dateStyle: 'long', timeZone: 'UTC' });
  const watch = ['limp', 'coated', 'puffy'].map((what) => t(`plan.watch.${what}`));
  return {
    name: routine.name,
    about: [
      ...(head ? [head.name] : []),
      made.format(new Date(world.today)),
      t('routine.wash-every.words', { n: routine.washEvery }),
    ],
    hair: head ? hairWords(t, head) : [],
    steps,
    protein:
      carriers.length > 0
        ? t('plan.sheet.protein', { names: list.format(carriers) })
        : t('routine.sum.products.none'),
    watch: carriers.length > 0 ? [t('plan.watch.stiff'), ...watch] : watch,
    note: routine.note,
  };
}

function factsOf({ t, practice }: World, step: Step): string[] {
  const { grams } = exposureOf(step, practice.washDay);
  const written = new Intl.NumberFormat(t.lang, { maximumFractionDigits: 1 }).format(grams);
  const measure = inHand(step.kind, grams, practice.washDay);
  return [
    t('plan.sheet.about', { amount: t('routine.step.grams.of', { grams: written }) }),
    ...(measure ? [t('plan.sheet.in-hand', { measure })] : []),
    cadenceWords(t, step.cadence),
    ...(step.optional ? [t('routine.step.is-optional')] : []),
  ];
}

/** A head in words, what is told of it and no more. */
export function hairWords(t: Translate, head: Head): string[] {
  const told = (what: 'thickness' | 'porosity' | 'shape' | 'density') => {
    const value = head[what];
    return value
      ? [t('plan.sheet.is', { what: t(`plan.hair.${what}`), is: t(`hair.${what}.${value}`) })]
      : [];
  };
  const list = new Intl.ListFormat(t.lang, { type: 'unit' });
  const been = head.damage?.kinds.map((kind) => t(`hair.damage.${kind}`));
  const is = (what: string, words: readonly string[]) => t('plan.sheet.is', { what, is: list.format(words) });
  return [
    ...(['shape', 'thickness', 'porosity', 'density'] as const).flatMap(told),
    ...(been ? [is(t('hair.damage.short'), been.length > 0 ? been : [t('hair.damage.summary.none')])] : []),
    ...(head.avoid.length > 0
      ? [
          is(
            t('hair.avoid'),
            head.avoid.map((avoid) => avoidWord(t, avoid)),
          ),
        ]
      : []),
  ];
}
