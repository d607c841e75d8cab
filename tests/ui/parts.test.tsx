// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { placeOf, rangeWords } from '../../src/ui/describe/share.ts';
import { CheckBoxes, Choice } from '../../src/ui/parts/controls/choice.tsx';
import { NumberField, parseNumber } from '../../src/ui/parts/controls/field.tsx';
import { Help } from '../../src/ui/parts/help.tsx';
import { Note } from '../../src/ui/parts/note.tsx';
import { Toast } from '../../src/ui/parts/toast.tsx';
import { Pending, Unread } from '../../src/ui/parts/waiting/pending.tsx';
import { translator } from '../../src/ui/words/index.ts';

const t = translator('en');
const draw = (view: preact.ComponentChild) => {
  render(null, document.body);
  render(view, document.body);
};
const press = (element: Element | null) => act(() => (element as HTMLElement).click());
afterEach(() => render(null, document.body));

describe('numbers as people write them', () => {
  it.each([
    ['3.5', 3.5],
    ['3,5', 3.5],
    [' 12 ', 12],
    ['−4', -4],
    ['.5', 0.5],
    ['', undefined],
    ['3,5,1', undefined],
    ['abc', undefined],
    ['1e3', undefined],
  ])('%j is %j', (text, value) => expect(parseNumber(text)).toBe(value));

  it('says what is wrong and changes nothing', () => {
    const got: (number | undefined)[] = [];
    draw(
      <NumberField
        lang="en"
        label="Size"
        value={50}
        onNumber={(n) => got.push(n)}
        wrong="No number"
        max={100}
      />,
    );
    const input = document.querySelector('input')!;
    const type = (text: string) =>
      act(() => {
        input.value = text;
        input.dispatchEvent(new Event('input', { bubbles: true }));
      });
    type('many');
    expect(got).toEqual([]);
    expect(document.querySelector('[role=alert]')?.textContent).toBe('No number');
    expect(input.getAttribute('aria-invalid')).toBe('true');
    type('250');
    expect(got).toEqual([]);
    type('75,5');
    expect(got).toEqual([75.5]);
    expect(document.querySelector('[role=alert]')).toBeNull();
    type('');
    expect(got).toEqual([75.5, undefined]);
  });
});

describe('choices', () => {
  const options = [
    { value: 'fine', label: 'Fine' },
    { value: 'coarse', label: 'Coarse' },
  ] as const;
  it('one of several is a radio group with its legend', () => {
    let got = '';
    draw(<Choice legend="Thickness" options={options} value="fine" onChange={(value) => (got = value)} />);
    expect(document.querySelector('fieldset legend')?.textContent?.trim()).toBe('Thickness');
    expect(document.querySelector<HTMLInputElement>(':checked')?.value).toBe('fine');
    press(document.querySelector('[value=coarse]'));
    expect(got).toBe('coarse');
  });
  it('any of several keeps the order of the options', () => {
    let got: string[] = [];
    draw(
      <CheckBoxes legend="Any" options={options} value={['coarse']} onChange={(value) => (got = value)} />,
    );
    press(document.querySelector('[value=fine]'));
    expect(got).toEqual(['fine', 'coarse']);
  });
});

it('a term is explained where it stands', () => {
  draw(<Help t={t} term="porosity" word />);
  const mark = document.querySelector('button')!;
  const words = document.getElementById(mark.getAttribute('aria-controls')!)!;
  expect(words.hidden).toBe(true);
  press(mark);
  expect(words.hidden).toBe(false);
  expect(mark.getAttribute('aria-expanded')).toBe('true');
  expect(words.textContent).toMatch(/water/);
});

it('an answer is said in words', () => {
  for (const answer of ['suits', 'with-care', 'does-not-suit', 'cannot-tell'] as const) {
    draw(<Note t={t} answer={answer} />);
    expect(document.querySelector('.answer')?.textContent).toBe(t(`shell.answer.${answer}`));
    expect(document.querySelector('.note')?.classList.contains(answer)).toBe(true);
  }
});

describe('shares', () => {
  it('stand on one log scale from 0.01 to 100 %', () => {
    expect([0, 0.01, 0.1, 1, 10, 100, 120].map(placeOf)).toEqual([0, 0, 0.25, 0.5, 0.75, 1, 1]);
  });
  it('are said as ranges', () => {
    expect(rangeWords({ min: 0, max: 1 }, t)).toBe('up to 1\u00a0%');
    expect(rangeWords({ min: 2, max: 20 }, t)).toBe('2 to 20\u00a0%');
    expect(rangeWords({ min: 3, max: 3 }, t)).toBe('3\u00a0%');
    expect(rangeWords({ min: 0, max: 0.5 }, translator('de'))).toContain('0,5');
  });
});

describe('a label on its way', () => {
  it('says that it is being read', () => {
    draw(<Pending world={{ t }} />);
    expect(document.body.textContent).toBe('Reading…');
    expect(document.querySelector('.pending')).not.toBeNull();
  });
  it('says where it could not be read, and asks once more on a press', () => {
    let asked = 0;
    const unread = { again: () => asked++ };
    draw(
      <>
        <Unread world={{ t, unread }} />
        <Pending world={{ t, unread }} />
      </>,
    );
    expect(document.querySelector('.pending')).toBeNull();
    expect(document.body.textContent).toContain('Not read.');
    press(document.querySelector('button'));
    expect(asked).toBe(1);
  });
});

it('what is to be known besides stands below what an act says, with its undo', () => {
  const undone: string[] = [];
  const world = { t, undo: async (key: string) => undone.push(key) > 0 };
  const said = { words: 'Removed.', also: 'Storage is nearly full.', undo: 'undo:1', nth: 1 };
  draw(<Toast world={world} said={said} onDismiss={() => {}} />);
  const told = [...document.querySelectorAll('[role=status] p')].map((each) => each.textContent);
  expect(told).toEqual(['Removed.', 'Storage is nearly full.']);
  press(document.querySelector('.toast-actions button'));
  expect(undone).toEqual(['undo:1']);
});
