import * as z from 'zod/mini';
import type { Said } from '../../core/judge/finding.ts';
import { type PlanFile, planFileVersion } from '../../core/plan/plan-file.ts';
import { cadenceOf, kind, use } from '../schema/schemas.ts';
import { pathWords } from './path-words.ts';

export type PlanReading = { ok: true; plan: PlanFile } | { ok: false; said: Said };

/** A plan of sixty steps with the longest labels is smaller. */
export const planFileAtMost = 1_000_000;
const most = { steps: 60, products: 60, words: 200, note: 4000, label: 12_000 };

// Controls and marks that turn the direction of writing have no place in a name, and could make one look like another.
const clean = (value: string) =>
  value.replace(/\p{Surrogate}|(?![\n\t])\p{Cc}|[\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu, '');
const text = (atMost: number) => z.string().check(z.maxLength(atMost), z.overwrite(clean));
const name = z.string().check(
  z.maxLength(most.words),
  z.overwrite((value) => clean(value).replace(/\s+/g, ' ').trim()),
  z.minLength(1),
);

const plan = z.object({
  strandline: z.literal('wash-day-plan'),
  version: z.literal([1, planFileVersion]),
  made: z.iso.date(),
  name,
  washEvery: z.number().check(z.positive(), z.lte(60)),
  note: z.exactOptional(text(most.note)),
  products: z
    .array(
      z.object({
        ref: name,
        name,
        maker: z.exactOptional(name),
        kind: z.exactOptional(kind),
        use: z.exactOptional(use),
        label: text(most.label),
      }),
    )
    .check(z.maxLength(most.products)),
  steps: z
    .array(
      z.object({
        kind,
        use,
        product: z.exactOptional(name),
        optional: z.boolean(),
        cadence: cadenceOf(365),
        grams: z.exactOptional(z.number().check(z.nonnegative(), z.lte(1000))),
      }),
    )
    .check(z.maxLength(most.steps)),
});

/** Reads a plan that somebody sent. Never throws; a bad file is told in a sentence and gives nothing. */
export function readPlanFile(content: string): PlanReading {
  const no = (why: string, values?: Record<string, string | number>): PlanReading => ({
    ok: false,
    said: { key: `plan.file.${why}`, ...(values && { values }) },
  });
  if (content.length > planFileAtMost) return no('too-big');
  let value: unknown;
  try {
    value = JSON.parse(content.replace(/^\uFEFF/, ''));
  } catch {
    return no('not-json');
  }
  if (typeof value !== 'object' || value === null) return no('not-ours');
  const { strandline, version } = value as { strandline?: unknown; version?: unknown };
  if (strandline !== 'wash-day-plan') return no(strandline === 'everything' ? 'everything' : 'not-ours');
  if (typeof version === 'number' && version > planFileVersion) return no('newer');
  const result = plan.safeParse(value);
  if (!result.success) return no('wrong', { where: pathWords(result.error.issues[0]!.path) });
  const refs = result.data.products.map(({ ref }) => ref);
  const twice = refs.find((ref, at) => refs.indexOf(ref) !== at);
  if (twice !== undefined) return no('wrong', { where: `products ${twice}` });
  const lost = result.data.steps.find(({ product }) => product !== undefined && !refs.includes(product));
  if (lost) return no('wrong', { where: `steps ${lost.product}` });
  return { ok: true, plan: result.data };
}
