// What the page is told to draw. Names and sentences are invented.
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, DrawnElement } from '../../src/contract/paint-order.ts';
import { drawGlyph, sayOnce } from '../../src/ui/describe/drawn/draw.ts';
import { drawCard } from '../../src/ui/describe/drawn/draw-card.ts';
import { drawStrip } from '../../src/ui/describe/drawn/draw-strip.ts';
import type { CardWords } from '../../src/ui/describe/mark.ts';
import type { StripWords } from '../../src/ui/describe/strip.ts';
import { translator } from '../../src/ui/words/index.ts';

const t = translator('en');

/** All elements of a drawing, itself first. */
const elementsIn = (drawing: Drawing): DrawnElement[] => {
  if (!Array.isArray(drawing)) return [];
  const [, , ...children] = drawing;
  return [drawing, ...children.flatMap(elementsIn)];
};
const textOf = (drawing: Drawing): string => {
  if (!Array.isArray(drawing)) return String(drawing);
  const [, , ...children] = drawing;
  return children.map(textOf).join('');
};
const whole = (drawing: Drawing, shared: DrawnElement[]): Drawing => {
  if (typeof drawing === 'number') return whole(shared[drawing]!, shared);
  if (typeof drawing === 'string') return drawing;
  const [tag, attributes, ...children] = drawing;
  return [tag, attributes, ...children.map((each) => whole(each, shared))];
};

const card: CardWords = {
  title: 'Hydrolyzed Moss',
  kind: 'hydrolyzed protein, large',
  glyphs: ['large', 'draws'],
  lines: ['One sentence.', 'Another.'],
  share: { min: 0.1, max: 10 },
  shareWords: 'Place 3 of 9: 0.1 to 10 %.',
  source: 'Source: invented',
};
const strip: StripWords = {
  label: 'Ingredients of Foam',
  glyphs: ['large', 'small', 'free', 'draws'],
  parts: [
    { glyphs: ['large'], text: '1 protein' },
    { glyphs: [], text: '2 names not known' },
  ],
  short: '1 protein',
  verdicts: [
    { answer: 'suits', title: 'Fits Wren', why: ['Light.'], more: ['Never on the strip.'] },
    { answer: 'does-not-suit', title: 'Not in “Sunday” as it is', why: ['Too much.'], more: [] },
  ],
  actions: [
    { id: 'panel', word: 'Open' },
    { id: 'add', word: 'Add' },
    { id: 'keep', word: 'Keep' },
    { id: 'pause', word: 'Pause' },
  ],
};

describe('a card', () => {
  it('has the glyph and the name first, sentences in order, the share between its ends, the source last', () => {
    const drawn = drawCard(card, 'Share, %', 'en');
    const words = drawn.map(textOf);
    expect(words).toEqual([
      card.title,
      'Hydrolyzed protein, large',
      ...card.lines,
      'Share, %',
      '0.1110100',
      card.shareWords,
      card.source,
    ]);
    expect(elementsIn(drawn[0]!)).toContainEqual(drawGlyph('large'));
    const bar = drawn.flatMap(elementsIn).find(([, { class: name }]) => name === 'fill')!;
    // A quarter of the axis is a tenfold: 6 + 200/4 and 6 + 3·200/4.
    expect(bar[1].d).toMatch(/^M56 6\.5H156v5H56z/);
  });

  it('has no empty line where nothing is cited, and a bar where both ends meet', () => {
    const drawn = drawCard({ ...card, source: '', share: { min: 2, max: 2 } }, '', 'en');
    expect(drawn.length).toBe(drawCard(card, '', 'en').length - 1);
    const bar = drawn.flatMap(elementsIn).find(([, { class: name }]) => name === 'fill')!;
    const [, from, to] = /^M(\S+) 6\.5H([\d.]+)/.exec(String(bar[1].d))!;
    expect(Number(to) - Number(from)).toBe(1);
  });
});

describe('a strip', () => {
  const { open, folded } = drawStrip(strip, t);
  const does = (drawings: Drawing[]) =>
    drawings.flatMap(elementsIn).flatMap(([, { 'data-does': what }]) => what ?? []);

  it('open: the answer first, its reason, the routine, what it sums up to, and a button for all that can be done', () => {
    expect(open.map(textOf).join('|')).toMatch(
      /^Ingredients of Foam\|Fits WrenLight\.\|Not in “Sunday” as it isToo much\.\|1 protein2 names not known\|Open/,
    );
    expect(does(open)).toEqual(['next', 'move', 'fold', 'panel', 'add', 'more', 'keep', 'pause']);
  });

  it('has no “More” where two buttons are all there is', () => {
    expect(does(drawStrip({ ...strip, actions: strip.actions.slice(0, 2) }, t).open)).not.toContain('more');
  });

  it('folded: the answer with whom it is for, then the count', () => {
    expect(folded.map(textOf).join('')).toBe('Fits Wren1 protein');
    expect(does(folded)).toEqual(['fold']);
  });

  it('every button has a name', () => {
    for (const button of [...open, ...folded].flatMap(elementsIn).filter(([tag]) => tag === 'button'))
      expect(button[1]['aria-label'] ?? button[1].title ?? textOf(button)).not.toBe('');
  });
});

describe('what comes more than once is said once', () => {
  const drawings = fc.letrec<{ drawing: Drawing; element: DrawnElement }>((tie) => ({
    drawing: fc.oneof({ maxDepth: 4 }, fc.constantFrom('a', 'b'), tie('element')),
    element: fc
      .tuple(
        fc.constantFrom('p', 'g'),
        fc.constantFrom({}, { class: 'x' }),
        fc.array(tie('drawing'), { maxLength: 3 }),
      )
      .map(([tag, attributes, children]): DrawnElement => [tag, attributes, ...children]),
  }));

  it('and comes out whole again, no element of it twice', () => {
    fc.assert(
      fc.property(fc.array(drawings.drawing, { maxLength: 5 }), (trees) => {
        const { said, shared } = sayOnce((each) => trees.map(each));
        expect(said.map((each) => whole(each, shared))).toEqual(trees);
        const keys = [...said, ...shared].flatMap(elementsIn).map((each) => JSON.stringify(each));
        expect(new Set(keys).size).toBe(keys.length);
      }),
    );
  });

  it('a glyph by two names is one drawing', () => {
    const { said, shared } = sayOnce((each) => [drawGlyph('draws'), drawGlyph('draws'), 'words'].map(each));
    expect(said).toEqual([0, 0, 'words']);
    expect(shared).toEqual([drawGlyph('draws')]);
  });
});
