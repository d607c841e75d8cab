import { type Brought, exposureOf } from '../../../core/amounts/brings.ts';
import { plainCell, wantsQuotes } from '../../../core/spreadsheet-cell.ts';
import type { WashDay } from '../../../core/wash-day/add-up.ts';
import type { Routine } from '../../../core/wash-day/routine.ts';
import { productById } from '../../../use/acts/matters/products.ts';
import { chartRows, totalWords } from '../../charts/wash-day-rows.ts';
import { bringsWords } from '../../describe/brings.ts';
import type { World } from '../../world.ts';
import { sheetOf } from './sheet-words.ts';

/** File name from what the user called it. */
export const fileName = (name: string, ending: string) =>
  `${
    name
      .normalize('NFKD')
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '')
      .toLowerCase() || 'routine'
  }.${ending}`;

export const productNames = (world: World, routine: Routine) =>
  new Map(
    routine.steps.flatMap(({ product }) =>
      product ? [[product, productById(world.remembered, product)?.name ?? ''] as const] : [],
    ),
  );

const sizes = ['free', 'small', 'large', 'unknown'] as const;
const roles = ['humectant', 'emollient', 'occlusive'] as const;

/** A row for each step: what it is, how much is used, what it brings in steps and in milligrams. */
export async function routineCsv(world: World, routine: Routine, day: WashDay): Promise<string> {
  const { default: Papa } = await import('papaparse');
  const names = productNames(world, routine);
  const rows = routine.steps.map((step, index) => {
    const stays = day.stays.steps.find((one) => one.step === step.id);
    const exposure = exposureOf(step, world.practice.washDay);
    const told = stays && !stays.unread ? stays : undefined;
    const milligrams = (what: string, brought?: Brought) =>
      (['least', 'likely', 'most'] as const).map((end) => [
        `${what}_${end}_mg`,
        brought ? Math.round(brought.mg[end] * 100) / 100 : '',
      ]);
    return {
      order: index + 1,
      kind: step.kind,
      product: step.product ? (names.get(step.product) ?? '') : '',
      use: step.use,
      every: step.cadence.every,
      n: step.cadence.every === 'wash' ? '' : step.cadence.n,
      turn: step.cadence.every === 'nth-wash' ? (step.cadence.from ?? '') : '',
      optional: step.optional ? 'yes' : 'no',
      grams: exposure.grams,
      retention: exposure.retention,
      protein: told?.protein.step ?? '',
      moisture: told?.moisture.step ?? '',
      washes: told?.washes ?? '',
      ...Object.fromEntries([
        ...milligrams('protein', told?.protein),
        ...sizes.flatMap((size) => milligrams(`protein_${size}`, told?.protein.bySize[size])),
        ...milligrams('moisture', told?.moisture),
        ...roles.flatMap((role) => milligrams(`moisture_${role}`, told?.moisture.byRole[role])),
      ]),
      findings: day.findings
        .filter(({ answer, steps }) => answer !== 'suits' && steps.includes(step.id))
        .map(
          ({ answer, reason }) =>
            `${world.t(`shell.answer.${answer}`)}: ${world.t(reason.key, reason.values)}`,
        )
        .join(' | '),
    };
  });
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return Papa.unparse(
    {
      fields: columns,
      data: rows.map((row) =>
        columns.map((one) => {
          const cell = (row as Record<string, unknown>)[one] ?? '';
          return typeof cell === 'string' ? plainCell(cell) : cell;
        }),
      ),
    },
    { quotes: wantsQuotes },
  );
}

/** The routine as plain text, to paste under a post or into a message. */
export function routineText(world: World, routine: Routine, day: WashDay): string {
  const { t } = world;
  const rows = chartRows(t, routine, day, productNames(world, routine));
  const { products } = day.protein;
  const sheet = sheetOf(world, routine, day);
  const lines = sheet.steps.flatMap(({ kind, facts, why }, index) => {
    const { product, notes, stays, unread } = rows[index]!;
    return [
      `${index + 1}. ${kind}: ${product}`,
      ...(stays && !unread ? [`   ${bringsWords(stays, t)}`] : []),
      ...notes.map(({ words, answer }) => `   ${t(`shell.answer.${answer}`)}: ${words}`),
      `   ${facts.join(' · ')}. ${why}`,
    ];
  });
  return [
    sheet.name,
    sheet.about.join(' · '),
    ...(sheet.hair.length > 0 ? [sheet.hair.join(' · ')] : []),
    ...(sheet.note ? ['', sheet.note] : []),
    '',
    ...lines,
    '',
    sheet.protein,
    products.allowed === undefined
      ? t('routine.sum.hair-unknown')
      : t('routine.sum.allowed', { n: products.allowed }),
    totalWords(t, day.stays.day),
    '',
    t('plan.watch'),
    ...sheet.watch.map((words) => `- ${words}`),
    '',
    t('routine.caution'),
    '',
  ].join('\n');
}

/** A drawn picture as a PNG of its own size (pictureFile draws at twice the picture's units). */
export async function pngOf(svg: string): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth;
  canvas.height = image.naturalHeight;
  canvas.getContext('2d')!.drawImage(image, 0, 0);
  return new Promise((done, fail) =>
    canvas.toBlob((blob) => (blob ? done(blob) : fail(new Error('no picture'))), 'image/png'),
  );
}
