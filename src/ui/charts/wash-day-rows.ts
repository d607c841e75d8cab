import { type Answer, speaksAgainst } from '../../core/judge/finding.ts';
import type { Range } from '../../core/names/entry.ts';
import type { WashDay } from '../../core/wash-day/add-up.ts';
import type { StepStays } from '../../core/wash-day/retained.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import type { Translate } from '../words/index.ts';

export type ChartRow = {
  id: string;
  kind: string;
  product: string;
  stays: StepStays | undefined;
  /** Which product with protein it is, where it surely holds some, and whether that is one too many. */
  nth: { n: number; over: boolean } | undefined;
  notes: { words: string; answer: Exclude<Answer, 'suits'> }[];
  unread: string | undefined;
  /** The whole row in words. */
  words: string;
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
    const holds = stays && Object.values(stays.protein).some(({ max }) => max > 0.05);
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
      nth: carries ? { n: counted.size, over: tooMuch && protein.steps.includes(step.id) } : undefined,
      notes: once,
      unread,
      words: [
        t('routine.words.step', { kind, product }),
        unread ?? (stays ? staysWords(t, stays) : ''),
        ...once.map(({ words, answer }) => `${t(`shell.answer.${answer}`)}: ${words}.`),
      ]
        .filter(Boolean)
        .join(' '),
    };
  });
}

/** "Stays on the hair: 0 to 4 mg small protein; 4 to 120 mg humectant." */
export function staysWords(
  t: Translate,
  { protein, bearing, moisture }: Omit<StepStays, 'moistureAll'>,
): string {
  const parts: [Range, string][] = [
    [protein.free, 'free'],
    [protein.small, 'small'],
    [protein.large, 'large'],
    [{ min: bearing.min + protein.unknown.min, max: bearing.max + protein.unknown.max }, 'bearing'],
    [moisture.humectant, 'draws'],
    [moisture.emollient, 'softens'],
    [moisture.occlusive, 'seals'],
  ];
  const said = parts
    .filter(([{ max }]) => max > 0)
    .map(([range, what]) =>
      t('routine.words.amount', { ...rounded(range), what: t(`routine.glyph.${what}`) }),
    );
  return said.length > 0
    ? t('routine.words.stays', { what: said.join('; ') })
    : t('routine.words.nothing-stays');
}

const rounded = ({ min, max }: Range) => ({ min: round(min), max: round(max) });
const round = (mg: number) => (mg < 10 ? Math.round(mg * 10) / 10 : Math.round(mg));
