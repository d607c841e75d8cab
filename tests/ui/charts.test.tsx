// @vitest-environment happy-dom
import { render } from 'preact';
import { afterEach, expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import { readStretch } from '../../src/core/hair/stretch.ts';
import { Matrix } from '../../src/ui/charts/matrix.tsx';
import { pictureFile } from '../../src/ui/charts/picture-file.ts';
import { StretchCurve } from '../../src/ui/charts/stretch-curve.tsx';
import { translator } from '../../src/ui/words/index.ts';

const t = translator('en');
afterEach(() => render(null, document.body));

it('the matrix tells every cell in words and in a number of marks', () => {
  const { base } = practice.allowance;
  render(<Matrix t={t} base={base} />, document.body);
  const cells = [...document.querySelectorAll('.cell')].map((cell) => [
    cell.querySelectorAll('.mark-on').length,
    cell.querySelector('.level')!.textContent,
  ]);
  // fine, medium, coarse × low, medium, high
  expect(cells).toEqual([
    [3, 'now and then'],
    [4, 'regularly'],
    [5, 'often'],
    [2, 'sparingly'],
    [3, 'now and then'],
    [4, 'regularly'],
    [1, 'rarely'],
    [2, 'sparingly'],
    [3, 'now and then'],
  ]);
  expect(document.querySelector('.mine')).toBeNull();
});

it('the matrix as a file stands alone', () => {
  render(
    <Matrix
      t={t}
      base={practice.allowance.base}
      head={{ name: 'Wren & <co>', thickness: 'coarse', porosity: 'low' }}
      allowance={{ level: 'some', byHand: false }}
    />,
    document.body,
  );
  const file = pictureFile(document.querySelector('svg')!);
  expect(file).toContain('Wren &amp; &lt;co&gt; is here. with damage and tests: now and then');
  expect(file).not.toContain('class=');
  expect(file).toMatch(/^<svg/);
});

it('the curve has its regions at the published edges and the strand at its extension', () => {
  const of = practice.allowance.stretch;
  render(
    <StretchCurve
      t={t}
      practice={of}
      reading={readStretch({ rest: 100, stretched: 140, after: 110, broke: false }, of)}
    />,
    document.body,
  );
  const x = (percent: number) => 22 + (278 * percent) / 80;
  const [gives, breaks] = [...document.querySelectorAll('.region')].map((region) => [
    Number(region.getAttribute('x')),
    Number(region.getAttribute('x')) + Number(region.getAttribute('width')),
  ]);
  // Pre-yield to about 2 % (published abstract); yield to 25–30 %, wet break 55–65 % (Robbins, from memory).
  expect(gives![0]).toBeCloseTo(x(2));
  expect(gives![1]).toBeCloseTo(x(30));
  expect(breaks).toEqual([x(55), x(65)].map((at) => expect.closeTo(at)));
  expect(Number(document.querySelector('.you circle')!.getAttribute('cx'))).toBeCloseTo(x(40));
  expect(document.querySelector('desc')!.textContent).toContain('This strand: 40 %. Came back to 10 %.');
});

// A letter of the picture's font is at most this wide on average at 11 px: measured in Chromium over the five languages.
const letter = 6.3;
it.each(
  Object.entries(
    import.meta.glob<Record<string, string>>('../../src/assets/words/*.json', {
      eager: true,
      import: 'default',
    }),
  ),
)('words of the wash-day picture have room in %s', (_, words) => {
  const room = (key: string, from: number) => {
    expect((words[key] ?? '').length * letter + from, `${key}: ${words[key]}`).toBeLessThanOrEqual(288);
  };
  for (const glyph of ['free', 'small', 'large', 'bearing', 'draws', 'softens', 'seals'])
    room(`routine.glyph.${glyph}`, 36);
  for (const key of ['page.likely.key', 'page.range.key', 'routine.chart.takes']) room(key, 36);
  // Two columns of two sides: a step has a quarter of the width, its column's title half.
  for (const step of ['none', 'a-little', 'some', 'a-lot']) room(`page.step.${step}`, 288 - 78);
  for (const key of ['routine.chart.each-wash', 'routine.chart.with-all']) room(key, 288 - 160);
});
