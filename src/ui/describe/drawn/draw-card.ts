import type { Drawing } from '../../../contract/paint-order.ts';
import type { CardWords } from '../mark.ts';
import { placeOf } from '../share.ts';
import { drawGlyph } from './draw.ts';

const wide = 200;
const ticks = [0.1, 1, 10, 100];
const x = (percent: number) => Math.round(6 + placeOf(percent) * wide);

const axis = (lang: string): Drawing => [
  'g',
  { 'text-anchor': 'middle' },
  ['path', { class: 'axis', d: `M${x(0.01)} 9H${x(100)}${ticks.map((at) => `M${x(at)} 6V13`).join('')}` }],
  ...ticks.map((at): Drawing => ['text', { x: x(at), y: 28 }, new Intl.NumberFormat(lang).format(at)]),
];

/** A share as a bar with two ends, outlined as the label allows it, solid as it is likely; words beside it say the same. */
function drawShare({ share: { min, max }, likely, glyphs }: CardWords, lang: string): Drawing {
  const hue = glyphs[0] && ['draws', 'softens', 'seals'].includes(glyphs[0]) ? 'teal' : 'plum';
  const from = x(min);
  const to = Math.max(x(max), from + 1);
  const solid = Math.max(x((likely ?? { max }).max), from + 1);
  const end = (at: number) => `M${at - 1} 3h2v12h-2z`;
  return [
    'svg',
    { class: `share ${hue}`, width: wide + 22, height: 31, 'aria-hidden': 'true' },
    axis(lang),
    ['path', { class: 'allowed', d: `M${from} 6.5H${to}v5H${from}z` }],
    ['path', { class: 'fill', d: `M${from} 6.5H${solid}v5H${from}z${end(from)}${end(to)}` }],
  ];
}

/** The card of a name: what it is, why, its share on an axis called `axisLabel` in this language, its source. */
export function drawCard(card: CardWords, axisLabel: string, lang: string): Drawing[] {
  const line = (text: string, name?: string): Drawing => ['p', name ? { class: name } : {}, text];
  return [
    ['h3', {}, ...card.glyphs.slice(0, 1).map(drawGlyph), card.title],
    line(card.kind.charAt(0).toUpperCase() + card.kind.slice(1), 'kind'),
    ...card.lines.map((each) => line(each)),
    line(axisLabel, 'axis-label'),
    drawShare(card, lang),
    line(card.shareWords),
    ...(card.source ? [line(card.source, 'source')] : []),
  ];
}
