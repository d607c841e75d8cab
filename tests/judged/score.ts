// One scorer a table: each row is asked, and each thing it asks for counts as right or wrong.
import * as ask from './ask.ts';
import { eitherOf, type Row, type Rows, readRows, rowOf, wordsOf } from './rows.ts';

/** One thing asked of one row. */
type Mark = { of: string; right: boolean; row: string; why: string };

/** The marks of one table by its file, or `undefined` where the folder has no such file. */
export type Score = { table: string; rows: number; marks: Mark[] };

type World = { heads: Rows; labels: Rows };
type Scorer = (row: Row, world: World) => Mark[];

/** Families the first half of the rows names as known; the rest are scored apart. */
const knownFamilies = new Set(
  'wheat nut peanut milk egg soy oat sesame fish fragrance sensitizer'.split(' '),
);

const named = (row: Row, ...columns: string[]) => columns.map((column) => row[column]).join(' · ');

const scorers: Record<string, Scorer> = {
  kinds(row) {
    const { kind, use } = ask.askKind(row.title!, row.breadcrumb ?? '');
    const at = { row: named(row, 'title', 'breadcrumb') };
    return [
      { ...at, of: 'kind', ...oneOf(row.kind, kind) },
      { ...at, of: 'use', ...oneOf(row.use, use) },
    ];
  },
  allergens(row) {
    const { said, maybe } = ask.askAllergens(row.printed!);
    const must = wordsOf(row.must_say);
    const may = wordsOf(row.may_be_present);
    const at = { row: row.printed! };
    const extra = [...said, ...maybe].filter((family) => !must.includes(family) && !may.includes(family));
    return [
      ...must.map((family) => ({
        ...at,
        of: knownFamilies.has(family) ? 'said' : 'newer families said',
        right: said.includes(family),
        why: `${family} is not said (${[...said, ...maybe.map((one) => `${one}?`)].join(', ') || 'nothing'})`,
      })),
      { ...at, of: 'no false alarm', right: extra.length === 0, why: `${extra.join(', ')} is said` },
    ];
  },
  fits(row, { heads, labels }) {
    const answer = ask.askFit(must(heads, row.head), must(labels, row.label), row.aspect!);
    return [
      { of: row.aspect!, row: named(row, 'head', 'label', 'reason'), ...oneOf(row.acceptable, answer) },
    ];
  },
  'moisture-order'(row, { labels }) {
    const more = ask.askOrder(must(labels, row.label_a), must(labels, row.label_b));
    const at = { row: named(row, 'label_a', 'label_b') };
    return [
      ...(row.more_moisture === 'not-judged'
        ? []
        : [{ ...at, of: 'moisture', ...oneOf(row.more_moisture, more.moisture) }]),
      ...(row.more_protein === 'not-judged'
        ? []
        : [{ ...at, of: 'protein', ...oneOf(row.more_protein, more.protein) }]),
    ];
  },
  days(row, { heads, labels }) {
    const { overall, says } = ask.askDay(must(heads, row.head), row.steps!, labels);
    const at = { row: named(row, 'head', 'steps') };
    const preferred = eitherOf(row.overall)[0]!;
    return [
      { ...at, of: preferred, ...oneOf(row.overall, overall), why: `${overall}: ${says.join(', ')}` },
      ...wordsOf(row.must_say).map((word) => ({
        ...at,
        of: 'must say',
        right: eitherOf(word).some((one) => says.includes(one)),
        why: `${word} is not said (${says.join(', ')})`,
      })),
      ...barred(row, says).map(({ words }) => ({
        ...at,
        of: 'barred not said',
        right: words.length === 0,
        why: `${words.join(', ')} is said`,
      })),
    ];
  },
  adds(row, { heads, labels }) {
    const { answer, says } = ask.askAdd(must(heads, row.head), row.routine!, row.added!, labels);
    const at = { row: named(row, 'head', 'routine', 'added') };
    const words = wordsOf(row.must_say).flatMap(eitherOf);
    return [
      { ...at, of: 'answer', ...oneOf(row.answer, answer), why: `${answer}: ${says.join(', ')}` },
      ...(words.length > 0
        ? [
            {
              ...at,
              of: 'must say',
              right: words.some((word) => says.includes(word)),
              why: `${words.join(' or ')} is not said (${says.join(', ')})`,
            },
          ]
        : []),
    ];
  },
  builds(row, { heads, labels }) {
    const built = ask.askBuild(must(heads, row.head), row.on_hand!, labels);
    const at = { row: named(row, 'head', 'on_hand') };
    const allowed = new Map(
      wordsOf(row.allowed_per_step).map((step) => {
        const [kind = '', which = ''] = step.split('=');
        return [kind, eitherOf(which).map((label) => label.replace(/\(.*\)/, '').trim())];
      }),
    );
    const wrong = [...allowed].filter(([kind, which]) => !which.includes(built.steps[kind] ?? 'none'));
    const more = Object.keys(built.steps).filter((kind) => !allowed.has(kind));
    return [
      {
        ...at,
        of: 'steps',
        right: wrong.length + more.length === 0,
        why: [...wrong.map(([kind]) => `${kind}=${built.steps[kind] ?? 'none'}`), ...more].join(', '),
      },
      { ...at, of: 'protein step', ...oneOf(row.protein_step, built.proteinStep ?? 'none') },
      {
        ...at,
        of: 'missing',
        right: wordsOf(row.missing_to_buy).length > 0 === built.missing.length > 0,
        why: built.missing.join(', '),
      },
    ];
  },
  estimates(row, { labels }) {
    const { low, high } = ask.askEstimate(must(labels, row.label), row.ingredient!);
    const [least, most] = [Number(row.low_percent), Number(row.high_percent)];
    const middle = Math.sqrt(Math.max(least, 1e-6) * Math.max(most, 1e-6));
    const at = { row: named(row, 'label', 'ingredient'), why: `${low}–${high} for ${least}–${most}` };
    return [
      { ...at, of: 'bands meet', right: low <= most && high >= least },
      { ...at, of: 'upper end within three times', right: high <= 3 * most && high >= most / 3 },
      { ...at, of: 'middle inside', right: low <= middle && middle <= high },
    ];
  },
};

export const tables = Object.keys(scorers);

export function scoreTable(table: string, folder?: string): Score | undefined {
  const rows = readRows(table, folder);
  if (!rows) return undefined;
  const world = { heads: readRows('heads', folder) ?? [], labels: readRows('labels', folder) ?? [] };
  const marks = rows.flatMap((row): Mark[] => {
    try {
      return scorers[table]!(row, world);
    } catch (error) {
      return [{ of: 'answered', right: false, row: Object.values(row).join(' · '), why: String(error) }];
    }
  });
  return { table, rows: rows.length, marks };
}

function must(rows: Rows, id: string | undefined): Row {
  const row = rowOf(rows, id ?? '');
  if (!row) throw new Error(`no row ${id}`);
  return row;
}

function oneOf(acceptable: string | undefined, answer: string) {
  const right = eitherOf(acceptable).includes(answer);
  return { right, why: `${answer}, not ${acceptable}` };
}

/** One mark a row: nothing that is barred is said. */
function barred(row: Row, says: readonly string[]) {
  const list = wordsOf(row.must_not_say);
  return list.length > 0 ? [{ words: list.filter((word) => says.includes(word)) }] : [];
}
