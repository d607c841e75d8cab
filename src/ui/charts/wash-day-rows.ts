import type { Brings, Together } from '../../core/amounts/brings.ts';
import { type Answer, speaksAgainst } from '../../core/judge/finding.ts';
import type { WashDay } from '../../core/wash-day/add-up.ts';
import type { StepStays } from '../../core/wash-day/retained.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { bringsWords, milligramWords } from '../describe/brings.ts';
import type { Translate } from '../words/index.ts';

export type ChartRow = {
  id: string;
  kind: string;
  product: string;
  stays: StepStays | undefined;
  /** Done at every wash. */
  always: boolean;
  /** Which product with protein it is, where it surely holds some, and whether that is one too many. */
  nth: { n: number; over: boolean } | undefined;
  notes: { words: string; answer: Exclude<Answer, 'suits'> }[];
  unread: string | undefined;
  /** The whole row in words. */
  words: string;
  /** The figures behind it. */
  figures: string[];
};

/** What the picture and the words beside it say of each step. `names` are product names by id. */
export function chartRows(
  t: Translate,
  routine: Routine,
  day: WashDay,
  names: ReadonlyMap<string, string>,
): ChartRow[] {
  const protein = day.findings.find(({ rule }) => rule === 'too-much-protein');
  const carriers = protein?.steps ?? [];
  const tooMuch = protein !== undefined && speaksAgainst(protein);
  const counted = new Set<string>();
  return routine.steps.map((step) => {
    const stays = day.stays.steps.find((one) => one.step === step.id);
    const holds = stays && stays.protein.step !== 'none';
    const first = step.product !== undefined && !counted.has(step.product);
    const carries = first && holds && (carriers.length === 0 || carriers.includes(step.id));
    if (carries) counted.add(step.product!);
    const notes = day.findings
      .filter(({ answer, steps }) => answer !== 'suits' && steps.includes(step.id))
      .map(({ rule, answer }) => ({
        words: t(`rules.short.${rule}`),
        answer: answer as Exclude<Answer, 'suits'>,
      }));
    const kind = t(`routine.kind.${step.kind}`);
    const product =
      step.product === undefined ? t('routine.step.no-product') : (names.get(step.product) ?? '');
    const unread = stays?.unread ? t('routine.chart.unread') : undefined;
    const once = notes.filter(
      ({ words }, index) => notes.findIndex((note) => note.words === words) === index,
    );
    return {
      id: step.id,
      kind,
      product,
      stays,
      always: step.cadence.every === 'wash',
      nth: carries ? { n: counted.size, over: tooMuch && protein.steps.includes(step.id) } : undefined,
      notes: once,
      unread,
      words: [
        t('routine.words.step', { kind, product }),
        unread ?? (stays ? t('routine.words.brings', { what: bringsWords(stays, t) }) : ''),
        ...once.map(({ words, answer }) => `${t(`shell.answer.${answer}`)}: ${words}.`),
      ]
        .filter(Boolean)
        .join(' '),
      figures: stays && !stays.unread ? figuresOf(stays, t) : [],
    };
  });
}

/** "Protein: about 4 mg …", for protein and for moisture. */
const figuresOf = (brings: Brings, t: Translate): string[] =>
  (['protein', 'moisture'] as const)
    .filter((what) => brings[what].mg.most > 0)
    .map((what) => `${t(`routine.chart.${what}`)}: ${milligramWords(brings, brings[what], t)}`);

/** What the whole day comes to, in one sentence. */
export const totalWords = (t: Translate, total: Together): string =>
  t('routine.words.total', { what: bringsWords(total, t) });
