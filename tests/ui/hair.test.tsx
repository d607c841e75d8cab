// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import type { Change } from '../../src/store/remembered.ts';
import { byName, called } from '../../src/ui/people/by-name.ts';
import { HairPlace } from '../../src/ui/places/hair.tsx';
import { translator } from '../../src/ui/words/index.ts';
import { keptWorld } from '../keeping/kept-world.ts';
import { madeHead, madeLog, madeRoutine } from '../keeping/made.ts';
import { choose, press, settle, type, withWords } from './pressing.ts';

async function open(start: Change[] = []) {
  const kept = await keptWorld({}, start);
  await act(() => kept.onDraw((world) => render(<HairPlace world={world} />, document.body)));
  return kept;
}
const put = (value = madeHead()): Change => ({ do: 'put', thing: 'heads', value });
const text = () => document.body.textContent ?? '';
afterEach(() => render(null, document.body));

describe('how much a person uses', () => {
  const gel = {
    id: 's1',
    kind: 'gel',
    use: 'leave-on',
    optional: false,
    cadence: { every: 'wash' },
  } as const;
  const { uses: _, ...plain } = madeHead();
  const start: Change[] = [
    put(plain),
    { do: 'put', thing: 'routines', value: madeRoutine({ head: plain.id, steps: [gel] }) },
  ];
  it('is asked for the kinds of the routine, kept once, and emptied again', async () => {
    const { remembered } = await open(start);
    expect(text()).toContain('Left empty: 6 g, by common practice');
    expect(text()).toMatch(/In the hand that is about a teaspoon .common practice./);
    await type(/^gel$/, '3,5');
    expect(remembered().heads[0]!.uses).toEqual({ gel: 3.5 });
    await type(/^gel$/, 'a coin');
    expect(text()).toContain('Grams, from 0 to 500.');
    expect(remembered().heads[0]!.uses).toEqual({ gel: 3.5 });
    await type(/^gel$/, '');
    expect(remembered().heads[0]!.uses).toBeUndefined();
  });
});

describe('a first profile', () => {
  it('takes three taps to the allowance, its reasons and the matrix', async () => {
    const { remembered } = await open();
    expect(text()).toContain('Three questions');
    let taps = 0;
    for (const words of ['Coarse', 'Low', 'None of these']) {
      await press('.question button', words);
      taps++;
    }
    expect(taps).toBeLessThanOrEqual(4);
    expect(remembered().heads).toMatchObject([
      { name: 'My hair', thickness: 'coarse', porosity: 'low', damage: { kinds: [] } },
    ]);
    expect(remembered().settings.headInUse).toBe(remembered().heads[0]!.id);
    expect(text()).toContain('Protein suits My hair');
    expect(withWords('.allowance-level', 'rarely')).toBeDefined();
    expect(text()).toContain('the most careful case');
    const matrix = document.querySelector('.matrix')!;
    expect(matrix.querySelectorAll('.cell')).toHaveLength(9);
    expect(matrix.querySelectorAll('.mine')).toHaveLength(1);
    expect(matrix.querySelector('desc')!.textContent).toContain('Coarse strand, Low porosity: rarely');
    expect(matrix.textContent).toContain('My hair is here');
  });

  it('says what it cannot tell', async () => {
    await open([
      put({
        id: 'x',
        name: 'Ash',
        thickness: 'fine',
        avoid: [],
        stretch: [],
        setAside: [],
        added: '2026-01-01',
        damage: { kinds: ['heat'] },
      }),
    ]);
    expect(text()).toContain('Cannot tell yet');
    expect(text()).toContain('how readily it takes in water');
    expect(document.querySelector('.matrix')).toBeNull();
  });
});

describe('what is not known', () => {
  it('"not sure" leads on and leaves it open; the range is told', async () => {
    const { remembered } = await open();
    await press('.question button', 'Coarse');
    await press('.question button', 'Not sure');
    await press('.question button', 'None of these');
    expect(remembered().heads[0]).not.toHaveProperty('porosity');
    expect(text()).toContain('Somewhere from “rarely” to “now and then”');
    expect(document.querySelector('.question')).toBeNull();
  });

  it('takes an answer back', async () => {
    const { remembered } = await open([put()]);
    await press('.answered button[aria-label="Change Porosity"]', 'Change');
    await press('.question button', 'Not sure');
    expect(remembered().heads[0]).not.toHaveProperty('porosity');
  });
});

describe('overruling', () => {
  it('a reason is set aside and counted again', async () => {
    const { remembered } = await open([
      put(madeHead({ damage: { kinds: ['bleach'], length: 'most', recent: 'weeks' } })),
    ]);
    expect(withWords('.allowance-level', 'sparingly')).toBeDefined();
    const bleach = () => withWords('.reason', 'Bleached')!;
    await act(() => bleach().querySelector('button')!.click());
    await settle();
    expect(remembered().heads[0]!.setAside).toEqual(['damage-bleach']);
    expect(withWords('.allowance-level', 'rarely')).toBeDefined();
    expect(bleach().textContent).toContain('ignored');
    await act(() => bleach().querySelector('button')!.click());
    await settle();
    expect(remembered().heads[0]!.setAside).toEqual([]);
  });

  it('the level is set by hand, with what the reasons say beside it', async () => {
    const { remembered } = await open([put()]);
    const select = document.querySelector<HTMLSelectElement>('.card select')!;
    await act(() => {
      select.value = 'often';
      select.dispatchEvent(new Event('change', { bubbles: true }));
    });
    await settle();
    expect(remembered().heads[0]!.allowanceByHand).toBe('often');
    expect(text()).toContain('The reasons come to: rarely');
    expect(document.querySelector('.matrix')!.textContent).toContain('set by hand: often');
  });
});

describe('the stretch test', () => {
  it('is guided, read and kept, in inches too', async () => {
    const { remembered } = await open([put(madeHead({ stretch: [] }))]);
    await press('button', 'Do a stretch test');
    const inches = withWords('.option', 'inches')!.querySelector('input')!;
    await act(() => inches.click());
    await settle();
    await type('Length at rest', '4');
    await type('Length when stretched', '5');
    await type('Length after letting go', '4,05');
    expect(text()).toContain('Springs back');
    expect(document.querySelector('.curve .you')).not.toBeNull();
    await press('button', 'Keep this test');
    const [test] = remembered().heads[0]!.stretch;
    expect(test!.rest).toBeCloseTo(101.6, 6);
    expect(test).toMatchObject({ date: '2026-03-01', broke: false });
    expect(text()).toContain('counts now');
    await press('button[aria-label^="Remove the test"]', '×');
    expect(remembered().heads[0]!.stretch).toEqual([]);
  });

  it('lengths that cannot be are told, not kept', async () => {
    await open([put(madeHead({ stretch: [] }))]);
    await press('button', 'Do a stretch test');
    await type('Length at rest', '100');
    await type('Length when stretched', '90');
    await type('Length after letting go', '95');
    expect(text()).toContain('do not fit together');
    expect((withWords('button', 'Keep this test') as HTMLButtonElement).disabled).toBe(true);
  });
});

describe('the avoid list', () => {
  it('takes names and families, remembers reactions with their caution, and not twice', async () => {
    const { remembered, said, takeBack } = await open([put(madeHead({ avoid: [] }))]);
    await press('button', /^Add$/);
    expect(text()).toContain('Write a name or choose a family first');
    await type('Name on the label', 'Isopropyl Alcohol');
    await act(() => withWords('.check', 'I reacted')!.querySelector('input')!.click());
    await press('button', /^Add$/);
    expect(remembered().heads[0]!.avoid).toMatchObject([{ name: 'Isopropyl Alcohol', reacted: true }]);
    expect(text()).toContain('show a doctor');
    await type('Name on the label', 'isopropyl alcohol');
    await press('button', /^Add$/);
    expect(text()).toContain('on the list already');
    await type('Name on the label', '');
    await choose('or a family', 'drying-alcohol');
    await press('button', /^Add$/);
    expect(remembered().heads[0]!.avoid[1]).toMatchObject({ role: 'drying-alcohol', reacted: false });
    await press('button[aria-label="Remove Isopropyl Alcohol"]', '×');
    expect(remembered().heads[0]!.avoid).toHaveLength(1);
    expect(said.at(-1)).toContain('off the list');
    await act(async () => void (await takeBack()));
    expect(remembered().heads[0]!.avoid).toHaveLength(2);
  });
});

describe('names to avoid', () => {
  it('are kept under the name labels are read as', async () => {
    const { remembered } = await open([put(madeHead({ avoid: [] }))]);
    await type('Name on the label', 'Fragrance');
    expect(text()).toContain('Read on labels as Parfum');
    await press('button', /^Add$/);
    expect(remembered().heads[0]!.avoid).toMatchObject([{ name: 'Parfum' }]);
  });

  it('unknown ones are said to be, with close spellings that are offered, never used', async () => {
    const kept = await keptWorld({ close: async () => [['Isopropyl Alcohol']] }, [
      put(madeHead({ avoid: [] })),
    ]);
    await act(() => kept.onDraw((world) => render(<HairPlace world={world} />, document.body)));
    await type('Name on the label', 'Isopropyl Alchol');
    expect(text()).toContain('looked for exactly as you write it');
    await expect.poll(() => withWords('button', /^Isopropyl Alcohol$/)).toBeDefined();
    await press('button', /^Isopropyl Alcohol$/);
    expect(text()).not.toContain('looked for exactly');
    await press('button', /^Add$/);
    expect(kept.remembered().heads[0]!.avoid).toMatchObject([{ name: 'Isopropyl Alcohol' }]);
  });
});

describe('several heads', () => {
  it('are switched, added and removed with all that is theirs, and come back by one undo', async () => {
    const start: Change[] = [
      put(),
      put(
        madeHead({
          id: 'ash',
          name: 'Ash',
          added: '2026-01-02T10:00:00.000Z',
          thickness: 'fine',
          porosity: 'high',
        }),
      ),
      { do: 'put', thing: 'routines', value: madeRoutine({ head: 'ash' }) },
      { do: 'put', thing: 'log', value: madeLog({ head: 'ash' }) },
    ];
    const { remembered, takeBack } = await open(start);
    expect(text()).toContain('Protein suits Wren');
    await press('.heads button', 'Ash');
    expect(remembered().settings.headInUse).toBe('ash');
    expect(text()).toContain('Protein suits Ash');
    await press('button', 'Remove Ash');
    await press('button', 'Yes, remove');
    expect(remembered()).toMatchObject({ heads: [{ id: 'wren' }], routines: [], log: [] });
    await act(async () => void (await takeBack()));
    expect(remembered().heads).toHaveLength(2);
    expect(remembered().routines).toHaveLength(1);
    expect(remembered().log).toHaveLength(1);
    await press('.heads button', 'Add a person');
    expect(remembered().heads).toHaveLength(2);
    await type('Name of the person', 'Lark');
    await press('.heads button', /^Add$/);
    expect(remembered().heads.map(({ name }) => name)).toContain('Lark');
    expect(remembered().heads).toHaveLength(3);
    // Nobody asked for the answers of someone else.
    const lark = remembered().heads.find(({ name }) => name === 'Lark')!;
    expect(remembered().settings.headInUse).not.toBe(lark.id);
    expect(document.querySelector('.heads')!.textContent).toMatch(
      /Lark is added\. The answers are still for \S/,
    );
    await press('.heads button', 'Describe Lark');
    expect(remembered().settings.headInUse).toBe(lark.id);
    expect(document.querySelector('.question')!.textContent).toContain('How thick is one strand?');
  });
  it('many are found by the beginning of any of their names', () => {
    const people = ['Ágnes Kovač', 'Wren', 'Ann-Marie', 'Robin'].map((name) => ({
      ...madeHead(),
      id: name,
      name,
    }));
    const names = (typed: string) => called(byName(translator('en'), people), typed).map(({ name }) => name);
    expect(names('')).toEqual(['Ágnes Kovač', 'Ann-Marie', 'Robin', 'Wren']);
    expect(names('kov')).toEqual(['Ágnes Kovač']);
    expect(names('a')).toEqual(['Ágnes Kovač', 'Ann-Marie']);
    expect(names('MAR')).toEqual(['Ann-Marie']);
    expect(names('bin')).toEqual([]);
  });
});
