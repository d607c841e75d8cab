import type { Brings, Brought, Together } from '../../core/amounts/brings.ts';
import type { Translate } from '../words/index.ts';

/** Parts that make up most of what is brought, the larger first: those that alone would be worth a word. */
function partsOf<K extends string>(parts: Record<K, Brought>, whole: Brought): K[] {
  const share = (key: K) => parts[key].mg.likely / Math.max(whole.mg.likely, Number.EPSILON);
  return (Object.keys(parts) as K[])
    .filter((key) => parts[key].mg.likely > 0 && share(key) >= told)
    .toSorted((a, b) => share(b) - share(a));
}

const told = 0.15; // of the whole

/** "some protein (small)": the step, and by size what makes it up. */
export function proteinBrought({ protein }: Together, t: Translate): string {
  const what = t(`page.brings.protein.${protein.step}`);
  if (protein.step === 'none') return what;
  const parts = partsOf(protein.bySize, protein).map((size) => t(`page.size.${size}`));
  return t('page.brings.of', { what, parts: parts.join(', ') });
}

/** "a lot of moisture (softens, draws water)". */
export function moistureBrought({ moisture }: Together, t: Translate): string {
  const what = t(`page.brings.moisture.${moisture.step}`);
  if (moisture.step === 'none') return what;
  const parts = partsOf(moisture.byRole, moisture).map((role) => t(`page.moisture.${role}`));
  return t('page.brings.of', { what, parts: parts.join(', ') });
}

/** The one line: "a little protein (small), some moisture (softens, draws water)"; of a cleanser, how it washes. */
export const bringsWords = (brings: Together & Pick<Brings, 'washes'>, t: Translate): string =>
  [
    ...(brings.washes ? [t(`page.brings.washes.${brings.washes}`)] : []),
    proteinBrought(brings, t),
    moistureBrought(brings, t),
  ].join(', ');

/** "some", or "some (a little to a lot)" where the range leaves the step. */
export function broughtWords({ step, least, most }: Brought, t: Translate): string {
  const what = t(`page.step.${step}`);
  if (least === step && most === step) return what;
  const parts = t('page.step.between', { least: t(`page.step.${least}`), most: t(`page.step.${most}`) });
  return t('page.brings.of', { what, parts });
}

/** The figures behind a step. */
export const milligramWords = (
  { grams, stays }: Pick<Brings, 'grams' | 'stays'>,
  { mg }: Brought,
  t: Translate,
): string =>
  t('page.mg', {
    grams,
    stays: stays * 100,
    likely: round(mg.likely),
    least: round(mg.least),
    most: round(mg.most),
  });

const round = (mg: number) => (mg < 10 ? Math.round(mg * 10) / 10 : Math.round(mg));
