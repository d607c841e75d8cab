// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { practice } from '../../dictionary/practice.ts';
import { exposureOf, stepOfDose } from '../../src/core/amounts/brings.ts';
import { SettingsPlace } from '../../src/ui/places/settings.tsx';
import type { World } from '../../src/ui/world.ts';
import { practiceOf } from '../../src/use/practice-of.ts';
import { madeHead } from '../keeping/made.ts';
import { fakeWorld, nothing } from './fake-world.ts';

const draw = async (over: Partial<World> = {}) => {
  const { world, told } = fakeWorld(over);
  await act(() => render(<SettingsPlace world={world} />, document.body));
  return told;
};
const press = (selector: string) => act(async () => document.querySelector<HTMLElement>(selector)!.click());
const button = (name: string) =>
  [...document.querySelectorAll('button')].find(
    (each) => (each.getAttribute('aria-label') ?? each.textContent) === name,
  )!;
afterEach(() => render(null, document.body));

const reach = {
  here: false,
  everywhere: false,
  origins: ['https://a.example'],
  allow: async () => true,
  withdraw: async () => true,
  readNow: async () => true,
  pickList: async () => true,
};

describe('sites', () => {
  it('all shops are asked for within the press, and remembered only when granted', async () => {
    const asked: string[] = [];
    const told = await draw({ reach: { ...reach, allow: async (what) => asked.push(what) > 0 } });
    document.querySelector<HTMLElement>('[value=everywhere]')!.click();
    expect(asked).toEqual(['everywhere']);
    await act(async () => {});
    expect(told.changes).toEqual([{ do: 'set', settings: { reach: 'everywhere' } }]);
  });
  it('a refusal changes nothing', async () => {
    const told = await draw({ reach: { ...reach, allow: async () => false } });
    await press('[value=everywhere]');
    expect(told.changes).toEqual([]);
  });
  it('an allowed shop is withdrawn by name', async () => {
    const gone: string[] = [];
    await draw({ reach: { ...reach, withdraw: async (what) => gone.push(what) > 0 } });
    await act(async () => button('Stop: a.example').click());
    expect(gone).toEqual(['https://a.example']);
  });
  it('a paused shop is taken up again; what it was taught stays', async () => {
    const site = { origin: 'https://b.example', paused: true, notLists: ['x'], listsAt: [] };
    const told = await draw({ reach, remembered: { ...nothing, sites: [site] } });
    await act(async () => button('Read this shop again: b.example').click());
    expect(told.changes).toEqual([{ do: 'put', thing: 'sites', value: { ...site, paused: false } }]);
    await act(async () => button('Forget that: b.example').click());
    expect(told.changes[1]).toEqual({
      do: 'put',
      thing: 'sites',
      value: { ...site, notLists: [], kinds: [] },
    });
  });
});

describe('choices', () => {
  it('units, underlines and glyph size are each one change', async () => {
    const told = await draw();
    await press('[value=imperial]');
    await press('[value=moisture]');
    await press('[value=large]');
    expect(told.changes).toEqual([
      { do: 'set', settings: { units: 'imperial' } },
      { do: 'set', settings: { underline: { protein: true, moisture: false } } },
      { do: 'set', settings: { glyphSize: 'large' } },
    ]);
  });
  it('the language of the browser is chosen by unsetting ours', async () => {
    const told = await draw({
      remembered: { ...nothing, settings: { ...nothing.settings, language: 'en' } },
    });
    const select = document.querySelector('select')!;
    await act(() => {
      select.value = '';
      select.dispatchEvent(new Event('change', { bubbles: true }));
    });
    expect(told.changes).toEqual([{ do: 'set', settings: {}, unset: ['language'] }]);
  });
  it('a name read as another has a way back', async () => {
    const told = await draw({ remembered: { ...nothing, readAs: { Glycerine: 'Glycerin' } } });
    await act(async () => button('Stop reading Glycerine that way').click());
    expect(told.changes).toEqual([{ do: 'read-as', printed: 'Glycerine', name: null }]);
  });
});

describe('forgetting', () => {
  it('needs a second yes and says what goes', async () => {
    let forgotten = 0;
    const told = await draw({ forget: async () => ++forgotten > 0 });
    expect(document.body.textContent).toContain('0 products');
    expect(button('Delete everything').disabled).toBe(true);
    await press('.card:last-of-type .check input');
    await act(async () => button('Delete everything').click());
    expect(forgotten).toBe(1);
    expect(told.said).toEqual(['Everything is deleted.']);
  });
  it('says so when it could not', async () => {
    const told = await draw({ forget: async () => false });
    await press('.card:last-of-type .check input');
    await act(async () => button('Delete everything').click());
    expect(told.said).toEqual([expect.stringMatching('did not answer')]);
  });
});

describe('amounts', () => {
  it('whose ceilings hold is the page’s word, or the reader’s', async () => {
    const told = await draw();
    expect(document.querySelector<HTMLInputElement>('[value=page]')!.checked).toBe(true);
    await press('[value=eu]');
    expect(told.changes).toEqual([{ do: 'set', settings: { market: 'eu' } }]);
  });
  it('what stays of a rinse-off can be changed, and cleansers keep their ratio to it', async () => {
    const told = await draw();
    await press('[value="20"]');
    expect(told.changes).toEqual([{ do: 'set', settings: { rinseOffStays: 0.2 } }]);
    const changed = { settings: { ...nothing.settings, rinseOffStays: 0.2 } };
    const { exposure } = practiceOf(practice, changed).washDay;
    const usual = practice.washDay.exposure;
    expect(exposure.conditioner.retention).toBeCloseTo(0.2, 9);
    expect(exposure.cleanser.retention).toBeCloseTo(usual.cleanser.retention * 2, 9);
    expect(exposure.gel).toEqual(usual.gel);
  });
  it('what the head in use takes of a kind counts before the usual amount, and a step’s own before both', () => {
    const mine = { ...madeHead({ uses: { gel: 3 } }), id: 'mine' };
    const heads = [madeHead({ id: 'other', uses: { gel: 9 } }), mine];
    const of = { heads, settings: { ...nothing.settings, headInUse: 'mine' } };
    const { washDay } = practiceOf(practice, of);
    expect(exposureOf({ kind: 'gel' }, washDay).grams).toBe(3);
    expect(exposureOf({ kind: 'gel', grams: 5 }, washDay).grams).toBe(5);
    expect(exposureOf({ kind: 'cream' }, washDay)).toEqual(exposureOf({ kind: 'cream' }, practice.washDay));
    // The scale of a dose is no person's habit.
    const creamy = practiceOf(practice, { ...of, heads: [{ ...mine, uses: { cream: 40 } }] }).washDay;
    expect(stepOfDose(0.2, creamy)).toBe(stepOfDose(0.2, practice.washDay));
  });
  it('which size counts where trade and measurement disagree is the reader’s to say', async () => {
    const told = await draw();
    expect(document.querySelector<HTMLInputElement>('[value=between]')!.checked).toBe(true);
    await press('[value=measured]');
    expect(told.changes).toEqual([{ do: 'set', settings: { sizesBy: 'measured' } }]);
    const changed = practiceOf(practice, { settings: { ...nothing.settings, sizesBy: 'measured' } });
    expect(changed.judge.dose.sizesBy).toBe('measured');
    expect(changed.washDay).toEqual(practice.washDay);
  });
});

describe('labels met while browsing', () => {
  it('are counted, and forgotten on a press', async () => {
    let n = 12;
    await draw({
      labelsMet: {
        count: async () => n,
        forget: async () => {
          n = 0;
        },
      },
    });
    await act(async () => {});
    expect(document.body.textContent).toContain('12 labels are remembered.');
    await act(async () => button('Forget these labels').click());
    await expect.poll(() => document.body.textContent).toContain('No label is remembered.');
    expect(button('Forget these labels').hasAttribute('disabled')).toBe(true);
  });
  it('nothing is shown where there is nobody to ask', async () => {
    await draw({});
    expect(document.body.textContent).not.toContain('Labels read while browsing');
  });
});
