import type { Answer } from '../../core/finding.ts';
import type { PaintOrder, StripAction } from '../../ui/paint-order.ts';
import { drawGlyph, element, svgElement } from './element.ts';

export type StripAsk = { act(action: StripAction): void; fold(): void; move(): void; next(): void };

function icon(doc: Document, d: string) {
  return svgElement(
    doc,
    'svg',
    { width: 16, height: 16, viewBox: '0 0 16 16', 'aria-hidden': 'true' },
    svgElement(doc, 'path', { class: 'line', d, 'stroke-width': 1.5 }),
  );
}

const answerGlyph = (doc: Document, answer: Answer) =>
  drawGlyph(doc, answer === 'cannot-tell' ? 'unsure' : answer);

/** Fills the strip for one list: what it sums up, how it sits, what can be done. Folded, it is a tag. */
export function fillStrip(
  doc: Document,
  node: HTMLElement,
  { strip, words }: Pick<PaintOrder, 'strip' | 'words'>,
  { folded, several }: { folded: boolean; several: boolean },
  ask: StripAsk,
): void {
  const button = (label: string, does: () => void, d?: string, cls?: string) => {
    const made = element(doc, 'button', { type: 'button', class: cls });
    if (d) {
      made.setAttribute('aria-label', label);
      made.title = label;
      made.append(icon(doc, d));
    } else made.append(label);
    made.addEventListener('click', (event) => {
      event.stopPropagation();
      does();
    });
    return made;
  };
  node.setAttribute('aria-label', strip.label);
  node.classList.toggle('folded', folded);

  if (folded) {
    const unfold = button(words.unfold, ask.fold, 'M4 10 8 6 12 10');
    unfold.setAttribute('aria-expanded', 'false');
    const worst = strip.verdicts.find(({ answer }) => answer !== 'suits') ?? strip.verdicts[0];
    node.replaceChildren(
      element(
        doc,
        'div',
        { class: 'head tag' },
        ...strip.glyphs.slice(0, 3).map((name) => drawGlyph(doc, name)),
        element(doc, 'span', {}, strip.short),
        ...(worst
          ? [
              answerGlyph(doc, worst.answer),
              element(doc, 'span', { class: `answer ${worst.answer}` }, worst.answerWord),
            ]
          : []),
        unfold,
      ),
    );
    return;
  }

  const fold = button(words.fold, ask.fold, 'M4 6 8 10 12 6');
  fold.setAttribute('aria-expanded', 'true');
  const [main, rest] = [strip.actions.slice(0, 2), strip.actions.slice(2)];
  const act = ({ id, word }: { id: StripAction; word: string }) => button(word, () => ask.act(id));
  const others = rest.map(act);
  for (const each of others) each.hidden = true;
  const more = button(
    words.more,
    () => {
      more.hidden = true;
      for (const each of others) each.hidden = false;
      others[0]?.focus();
    },
    undefined,
    'more',
  );
  node.replaceChildren(
    element(
      doc,
      'div',
      { class: 'head' },
      element(doc, 'b', {}, strip.label),
      ...(several ? [button(words.next, ask.next, 'M4 5 8 9 12 5M4 9.5 8 13.5 12 9.5')] : []),
      button(words.move, ask.move, 'M2 8H14M5 4.5 1.8 8 5 11.500M11 4.5 14.2 8 11 11.5'),
      fold,
    ),
    element(
      doc,
      'ul',
      { class: 'parts' },
      ...strip.parts.map(({ glyphs, text }) =>
        element(
          doc,
          'li',
          {},
          element(doc, 'span', { class: 'row' }, ...glyphs.map((name) => drawGlyph(doc, name))),
          element(doc, 'span', {}, text),
        ),
      ),
    ),
    element(
      doc,
      'ul',
      { class: 'verdicts' },
      ...strip.verdicts.map(({ who, answer, answerWord, text }) =>
        element(
          doc,
          'li',
          {},
          answerGlyph(doc, answer),
          element(
            doc,
            'span',
            {},
            `${who} `,
            element(doc, 'span', { class: `answer ${answer}` }, answerWord),
            text ? `. ${text}` : '.',
          ),
        ),
      ),
    ),
    element(doc, 'div', { class: 'actions' }, ...main.map(act), ...(others.length ? [more] : []), ...others),
  );
}
