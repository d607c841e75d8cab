// @vitest-environment happy-dom
// What the picture says stands within it, in every language: letters at 5.8 units each, as a wide font has them.
import { readFileSync } from 'node:fs';
import { render } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { washDay } from '../../src/core/wash-day/add-up.ts';
import { WashDayChart } from '../../src/ui/charts/wash-day-chart.tsx';
import { translator } from '../../src/ui/words/index.ts';
import { butter, day, hand, silk, water, wheat } from '../core/hand-read.ts';

const words = (lang: string) =>
  JSON.parse(readFileSync(`${import.meta.dirname}/../../src/assets/words/${lang}.json`, 'utf8'));
const translators = [
  translator('en'),
  ...['de', 'es', 'fr', 'pt-BR'].map((lang) => translator(lang, words(lang))),
];
const rich = hand([water, { ...wheat, share: { min: 2, max: 10 } }, butter, silk]);
const input = day([
  { kind: 'protein-treatment', of: rich, cadence: { every: 'nth-wash', n: 4 } },
  { kind: 'cleanser', of: hand([]) },
  { kind: 'gel', of: hand([water]) },
]);
const names = new Map(
  input.routine.steps.map(({ product }) => [product ?? '', 'A name of a product '.repeat(6)]),
);

/** From where to where a text reaches across, groups moved as they are. */
function reach(text: SVGTextElement): [number, number] {
  let x = Number(text.getAttribute('x') ?? 0);
  for (let at = text.parentElement; at; at = at.parentElement)
    x += Number(/translate\((-?[\d.]+)/.exec(at.getAttribute('transform') ?? '')?.[1] ?? 0);
  const wide = Number(
    text.getAttribute('textlength') ?? text.getAttribute('textLength') ?? text.textContent!.length * 5.8,
  );
  const anchor = text.getAttribute('text-anchor');
  const from = anchor === 'end' ? x - wide : anchor === 'middle' ? x - wide / 2 : x;
  return [from, from + wide];
}

afterEach(() => render(null, document.body));
describe.each(translators.map((t) => [t.lang, t] as const))('%s', (_, t) => {
  it.each([true, false])('wide: %s', (wide) => {
    const { routine } = input;
    const made = (
      <WashDayChart t={t} routine={routine} day={washDay(input)} names={names} wide={wide} takes="some" />
    );
    render(made, document.body);
    const texts = [...document.querySelectorAll<SVGTextElement>('svg text')];
    expect(texts.length).toBeGreaterThan(20);
    const out = texts.filter((text) => reach(text)[0] < -0.5 || reach(text)[1] > (wide ? 760 : 288) + 0.5);
    expect(out.map((text) => `${text.textContent} ${reach(text)}`)).toEqual([]);
  });
});
