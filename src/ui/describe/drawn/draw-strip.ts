import type { Does, Drawing, GlyphName, PaintOrder } from '../../../contract/paint-order.ts';
import type { Answer } from '../../../core/judge/finding.ts';
import { glyphOfAnswer } from '../../glyphs/shapes.ts';
import type { Translate } from '../../words/index.ts';
import type { StripWords } from '../strip.ts';
import type { VerdictWords } from '../verdict.ts';
import { drawGlyph } from './draw.ts';

const button = (does: Does, attributes: Record<string, string>, ...children: Drawing[]): Drawing => [
  'button',
  { 'data-does': does, ...attributes },
  ...children,
];

/** A button that is a picture of what it does. Its title names it: with a label besides, it would be said twice. */
const icon = (does: Does, label: string, d: string, attributes = {}) =>
  button(does, { title: label, ...attributes }, [
    'svg',
    { width: 16, height: 16 },
    ['path', { class: 'line', d, 'stroke-width': 1.5 }],
  ]);

const span = (name: string, ...children: Drawing[]): Drawing => [
  'span',
  name ? { class: name } : {},
  ...children,
];
const glyphsIn = (names: GlyphName[]) => names.map(drawGlyph);

/** The ring of an answer, `size` times as large as beside a name. */
const ring = (answer: Answer, size: number): Drawing => {
  const [tag, attributes, ...shapes] = drawGlyph(glyphOfAnswer(answer));
  const { width, height } = attributes as { width: number; height: number };
  return [tag, { ...attributes, width: width * size, height: height * size }, ...shapes];
};

/** The strip of one list, open and folded to a tag: how it sits, why, what it sums up, what can be done. */
export function drawStrip(strip: StripWords, t: Translate): PaintOrder['strip'] {
  return { label: strip.label, open: drawOpen(strip, t), folded: [drawTag(strip, t)] };
}

function drawTag({ verdicts: [first], glyphs, short }: StripWords, t: Translate): Drawing {
  return [
    'div',
    { class: 'head tag' },
    ...(first ? [ring(first.answer, 1.25), span(`answer ${first.answer}`, first.title)] : []),
    ...glyphsIn(glyphs.slice(0, 3)),
    span('short', short),
    icon('fold', t('page.painter.unfold'), 'M4 10 8 6 12 10', { 'aria-expanded': 'false' }),
  ];
}

/** The first answer is the largest thing of the strip, those after it are lines. */
export function drawVerdict({ answer, title, why }: VerdictWords, at: number): Drawing {
  return [
    'div',
    { class: at === 0 ? 'verdict' : 'verdict after' },
    ring(answer, at === 0 ? 1.6 : 1),
    span(`answer ${answer}`, title),
    ...why.map((words): Drawing => ['p', {}, words]),
  ];
}

function drawOpen({ label, parts, verdicts, actions }: StripWords, t: Translate): Drawing[] {
  const asked = actions.map(({ id, word }) => button(id, {}, word));
  // Where there are several people, whom it is asked for is one of the first.
  const rest = asked.splice(actions.some(({ id }) => id === 'person') ? 3 : 2);
  const more = button('more', { class: 'more' }, t('page.painter.more'));
  const hidden: Drawing = ['span', { hidden: '' }, ...rest];
  return [
    [
      'div',
      { class: 'head' },
      ['b', {}, label],
      icon('next', t('page.painter.next'), 'M4 5 8 9 12 5M4 9.5 8 13.5 12 9.5'),
      icon('move', t('page.painter.move'), 'M2 8H14M5 4.5 1.8 8 5 11.5M11 4.5 14.2 8 11 11.5'),
      icon('fold', t('page.painter.fold'), 'M4 6 8 10 12 6', { 'aria-expanded': 'true' }),
    ],
    ...verdicts.map(drawVerdict),
    [
      'ul',
      { class: 'parts' },
      ...parts.map(
        ({ glyphs, text }): Drawing => ['li', {}, span('row', ...glyphsIn(glyphs)), span('', text)],
      ),
    ],
    ['div', { class: 'actions' }, ...asked, ...(rest.length > 0 ? [more, hidden] : [])],
  ];
}
