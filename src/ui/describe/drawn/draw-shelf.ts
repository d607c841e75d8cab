import type { Acted } from '../../../contract/messages.ts';
import type { Drawing, DrawnElement } from '../../../contract/paint-order.ts';
import type { BarState, CardState, ShelfMark, UnreadReason } from '../../../contract/shelf.ts';
import type { BringStep as Amount } from '../../../core/amounts/brings.ts';
import { worstOf } from '../../../core/judge/finding.ts';
import type { PriceLimit } from '../../../store/remembered.ts';
import { stepOfFilter } from '../../../use/shelf/filters.ts';
import { glyphOfAnswer } from '../../glyphs/shapes.ts';
import type { Translate } from '../../words/index.ts';
import { cameOf } from '../came-of.ts';
import { money } from '../money.ts';
import type { VerdictWords } from '../verdict.ts';
import { drawGlyph } from './draw.ts';
import { drawVerdict } from './draw-strip.ts';

/** What a shelf says of one product whose label is known. */
export type ShelfSays = {
  address: string;
  name: string;
  /** The answer for the person in use, whom it is for, and the reasons that decided it; absent where no hair is described. */
  verdicts: VerdictWords[];
  protein: Amount | 'unknown';
  moisture: Amount | 'unknown';
  /** ISO date-time of the label. */
  readOn: string;
  /** It is for another place than hair, so it is not judged. */
  notForHair: boolean;
  /** Price of 100 ml or g, ready to show. */
  price?: { price: string; unit: string } | undefined;
  passes: string[];
  kept: boolean;
  /** It is one of the things looked for. */
  granted: boolean;
};

const svg = (attributes: Record<string, string | number>, ...shapes: Drawing[]): DrawnElement => [
  'svg',
  { 'aria-hidden': 'true', ...attributes },
  ...shapes,
];
const levels: Record<Amount | 'unknown', number> = {
  none: 0,
  'a-little': 1,
  some: 2,
  'a-lot': 3,
  unknown: 0,
};

/** A thread for three beads, as many on it as there is protein, a knot for each that is not; broken where it cannot be told. */
function proteinBeads(amount: Amount | 'unknown'): DrawnElement {
  const full = levels[amount];
  const thread = amount === 'unknown' ? { 'stroke-dasharray': '2 2.4' } : {};
  return svg(
    { class: 'glyph plum', width: 25, height: 9, viewBox: '0 0 25 9' },
    ['path', { class: 'line', d: 'M4 4.5H21', 'stroke-width': 1.2, ...thread }],
    // No hollow rings: elsewhere they say that there may be protein.
    ...[4, 12.5, 21].map(
      (x, i): Drawing =>
        i < full
          ? ['path', { class: 'fill', d: `M${x - 3.2} 4.5a3.2 3.2 0 1 0 6.4 0a3.2 3.2 0 1 0 -6.4 0Z` }]
          : ['path', { class: 'line', d: `M${x} 2.4V6.6`, 'stroke-width': 1.2 }],
    ),
  );
}

const drop = 'M6 .6C3.9 4.2 1 6.6 1 9.6a5 5 0 0 0 10 0C11 6.6 8.1 4.2 6 .6Z';
const filled = [
  '',
  'M1.4 11.6A5 5 0 0 0 10.6 11.6Z',
  'M1.2 8.3C1.05 8.8 1 9.2 1 9.6a5 5 0 0 0 10 0C11 9.2 10.95 8.8 10.8 8.3Z',
  drop,
];

/** A drop, as full as there is moisture. */
function moistureDrop(amount: Amount | 'unknown'): DrawnElement {
  const level = levels[amount];
  const outline = amount === 'unknown' ? { 'stroke-dasharray': '1.6 2' } : {};
  return svg(
    { class: 'glyph teal', width: 12, height: 15, viewBox: '0 0 12 15' },
    ...(level > 0 ? [['path', { class: 'fill', d: filled[level]! }] as Drawing] : []),
    ['path', { class: 'line', d: drop, 'stroke-width': 1.2, ...outline }],
  );
}

const worst = ({ verdicts }: ShelfSays) => {
  const answer = worstOf(verdicts);
  return verdicts.find((each) => each.answer === answer);
};
const button = (does: string, which: string, words: string, more: Record<string, string> = {}): Drawing => [
  'button',
  { 'data-does': does, ...(which && { 'data-which': which }), ...more },
  words,
];

/** The mark of a product that is known: the answer's ring, beads, drop; its card has the reasons. */
export function drawShelfMark(says: ShelfSays, t: Translate): ShelfMark {
  const verdict = worst(says);
  const { address, name, passes } = says;
  const answer = says.notForHair ? t('page.verdict.not-hair') : verdict?.title;
  const amounts = {
    protein: t(`shelf.amount.${says.protein}`),
    moisture: t(`shelf.amount.${says.moisture}`),
  };
  const date = new Intl.DateTimeFormat(t.lang, { dateStyle: 'medium' }).format(new Date(says.readOn));
  return {
    address,
    read: true,
    passes,
    mark: [
      'span',
      { class: says.granted ? 'read granted' : 'read' },
      ...(verdict || says.notForHair ? [drawGlyph(glyphOfAnswer(verdict?.answer ?? 'cannot-tell'))] : []),
      proteinBeads(says.protein),
      moistureDrop(says.moisture),
    ],
    label: answer
      ? t('shelf.mark', { name, answer, ...amounts })
      : t('shelf.mark.no-head', { name, ...amounts }),
    card: [
      ['p', { class: 'name' }, name],
      ...(says.granted ? [['p', { class: 'found' }, t('shelf.granted')] as Drawing] : []),
      ...(says.notForHair ? [['p', { class: 'found' }, t('page.verdict.not-hair')] as Drawing] : []),
      ...says.verdicts.map(drawVerdict),
      [
        'div',
        { class: 'amount' },
        proteinBeads(says.protein),
        t('shelf.card.protein', { amount: amounts.protein }),
      ],
      [
        'div',
        { class: 'amount' },
        moistureDrop(says.moisture),
        t('shelf.card.moisture', { amount: amounts.moisture }),
      ],
      ...(says.price ? [['p', {}, t('shelf.card.price', says.price)] as Drawing] : []),
      [
        'div',
        { class: 'actions' },
        button('act', 'open', t('shelf.act.open')),
        ...(says.kept ? [] : [button('act', 'keep', t('shelf.act.keep'))]),
        button('act', 'add', t('shelf.act.add')),
        button('act', 'pin', t('shelf.act.pin')),
      ],
      ['p', { class: 'source' }, t('shelf.card.read-on', { date })],
    ],
  };
}

/** The mark of a product that is not read: not yet, just now, or why not. */
export function drawUnread({ address, name, state, why }: CardState, t: Translate): ShelfMark {
  const words = why ? t(`shelf.why.${why}`) : '';
  const label = why
    ? t('shelf.mark.failed', { name, why: words })
    : t(`shelf.mark.${state === 'reading' ? 'reading' : 'met'}`, { name });
  return {
    address,
    read: false,
    passes: [],
    mark: [
      'span',
      { class: state === 'reading' ? 'reading' : state === 'failed' ? 'failed' : 'unread' },
      drawGlyph('unsure'),
    ],
    label,
    card: [
      ['p', { class: 'name' }, name],
      ['p', {}, why ? words : label],
      ['div', { class: 'actions' }, button('act', 'open', t('shelf.act.open'))],
    ],
  };
}

const icon = (label: string, d: string, expanded: boolean): Drawing => [
  'button',
  { 'data-does': 'fold', title: label, 'aria-expanded': String(expanded) },
  ['svg', { width: 16, height: 16 }, ['path', { class: 'line', d, 'stroke-width': 1.5 }]],
];

/** What came of an act, with what takes it back. */
export function drawAct(acted: Acted, t: Translate): Drawing[] {
  const came = cameOf(acted, t);
  if (!came) return [];
  const undo = came.undo && [' ', button('act', `undo:${came.undo}`, t('shelf.act.undo'))];
  return [came.words, ...(undo || [])];
}

function filterWords(id: string, price: string, t: Translate): string {
  const kind = stepOfFilter(id);
  if (kind) return t('shelf.filter.as', { kind });
  return id === 'price'
    ? t('shelf.filter.price', { price })
    : t(`shelf.filter.${id}` as 'shelf.filter.suits');
}

/** The bar of a shelf: how far it is read, the press that reads it, what to show. */
export function drawShelfBar(
  bar: BarState,
  filters: readonly string[],
  t: Translate,
  limit?: PriceLimit,
): Drawing[] {
  const price = limit ? money(limit.most, limit.currency, t.lang) : '';
  const { read, products: n, left, running, ended, again } = bar;
  const short = t('shelf.tab', { read, n });
  if (!bar.open)
    return [
      [
        'div',
        { class: 'head' },
        ['b', { id: 'shelf-bar' }, short],
        icon(t('shelf.unfold'), 'M4 10 8 6 12 10', false),
      ],
    ];
  // A step that nothing here fits is not offered: a wash day has many.
  const offered = filters.filter((id) => !stepOfFilter(id) || bar.passing[id] || bar.filters.includes(id));
  const failed = Object.entries(bar.failed) as [UnreadReason, number][];
  const sum = failed.reduce((all, [, count]) => all + count, 0);
  const time =
    again === undefined ? '' : new Intl.DateTimeFormat(t.lang, { timeStyle: 'short' }).format(again);
  const p = (words: string, attributes: Record<string, string> = {}): Drawing => ['p', attributes, words];
  return [
    [
      'div',
      { class: 'head' },
      ['b', { id: 'shelf-bar' }, t('shelf.title')],
      icon(t('shelf.fold'), 'M4 6 8 10 12 6', true),
    ],
    [
      'div',
      { role: 'status' },
      p(t('shelf.count', { n, read })),
      ...(ended
        ? [p(ended === 'shop-busy' ? t('shelf.ended.shop-busy', { time }) : t(`shelf.ended.${ended}`))]
        : []),
      ...(left === 0 && !running && read > 0 ? [p(t('shelf.all-read'))] : []),
    ],
    ...(running
      ? ([
          ['progress', { max: running.of, value: running.done, 'aria-label': t('shelf.running', running) }],
          [
            'div',
            { class: 'actions' },
            ['span', {}, t('shelf.running', running)],
            button('cancel', '', t('shelf.stop')),
          ],
        ] as Drawing[])
      : left > 0
        ? ([
            ...(bar.told ? [] : [p(t('shelf.first'))]),
            [
              'div',
              { class: 'actions' },
              button('read', '', t(ended ? 'shelf.go-on' : 'shelf.read', { n: left }), { class: 'main' }),
            ],
          ] as Drawing[])
        : []),
    ...(sum > 0
      ? ([
          [
            'details',
            {},
            ['summary', {}, t('shelf.not-read', { n: sum })],
            [
              'ul',
              {},
              ...failed.map(([why, count]): Drawing => ['li', {}, `${count} · ${t(`shelf.why.${why}`)}`]),
            ],
          ],
        ] as Drawing[])
      : []),
    ...(read > 0
      ? ([
          ['div', { class: 'find' }, t('shelf.find')],
          [
            'div',
            { class: 'filters', role: 'group', 'aria-label': t('shelf.find') },
            ...offered.map((id) =>
              button(
                'filter',
                id,
                t('shelf.filter.with-count', {
                  filter: filterWords(id, price, t),
                  n: bar.passing[id] ?? 0,
                }),
                {
                  'aria-pressed': String(bar.filters.includes(id)),
                },
              ),
            ),
          ],
          [
            'div',
            { class: 'actions' },
            ...(bar.filters.length > 0
              ? [button('hide', '', t('shelf.hide'), { 'aria-pressed': String(bar.hides) })]
              : []),
            button('act', 'table', t('shelf.table')),
          ],
        ] as Drawing[])
      : []),
  ];
}
