// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { joinLines } from '../../src/core/picture/join-lines.ts';
import { ThisPagePlace } from '../../src/ui/places/this-page.tsx';
import type { PictureReader, World } from '../../src/ui/world.ts';
import { fakeWorld } from './fake-world.ts';
import { press, settle, withWords } from './pressing.ts';

/** A picture with these lines, ten pixels a letter, twenty a line. */
const picture = (...lines: string[]) => ({
  ...joinLines([
    lines.map((line, row) => {
      let left = 0;
      return line.split(' ').map((text) => {
        const box = { left, top: row * 20, right: left + text.length * 10, bottom: row * 20 + 14 };
        left = box.right + 10;
        return { text, box, sure: 90 };
      });
    }),
  ]),
  file: new Blob(),
  shown: 'blob:none',
  width: 800,
  height: 100,
  print: { lineHeight: 14, edge: 2 },
});
const list = picture('Ingredients: Aqua, Glycerin,', 'Flumberol, Hydrolyzed Silk, Parfum');

const draw = async (read: PictureReader['read'], more: Partial<World> = {}) => {
  const { world, told } = fakeWorld({ pictures: { read }, ...more });
  await act(() => render(<ThisPagePlace world={world} />, document.body));
  return told;
};
const choose = async (...names: string[]) => {
  const input = document.querySelector<HTMLInputElement>('input[type=file]')!;
  const files = names.map((name) => new File(['x'], name, { type: 'image/png' }));
  Object.defineProperty(input, 'files', { value: files, configurable: true });
  await act(() => void input.dispatchEvent(new Event('change', { bubbles: true })));
  await settle();
};
const shown = () => [...document.querySelectorAll<HTMLInputElement>('.picture-names input')];
const words = () => document.body.textContent ?? '';
afterEach(() => render(null, document.body));

describe('a picture of a list', () => {
  it('is offered to be read where the page shows no list, in one press', async () => {
    const asked: unknown[] = [];
    const read: PictureReader['read'] = async (source) => {
      asked.push(source);
      return list;
    };
    await draw(read, {
      page: null,
      reach: { ...fakeWorld({}).world.reach!, origin: 'https://shop.example' },
    });
    await press('.empty button', 'Read the picture in view');
    await settle();
    expect(asked).toEqual([{ onPage: { frame: 0 } }]);
    expect(shown().length).toBe(5);
  });

  it('is shown with doubtful names first, is put right, and goes on like a pasted text', async () => {
    await draw(async () => list);
    await choose('bottle.png');
    expect(shown().map(({ value }) => value)).toEqual([
      'Flumberol',
      'Aqua',
      'Glycerin',
      'Hydrolyzed Silk',
      'Parfum',
    ]);
    expect(words()).toContain('One name is doubtful');
    const lit = () => document.querySelector('.picture-view rect.lit')?.getAttribute('y');
    expect(lit()).toBe('17');
    await act(() => shown()[1]!.focus());
    expect(lit()).toBe('-3');
    await act(() => {
      shown()[0]!.value = 'Panthenol';
      shown()[0]!.dispatchEvent(new Event('input', { bubbles: true }));
    });
    await press('button', 'Use this list');
    expect(document.querySelector('textarea')?.value).toBe(
      'Ingredients: Aqua, Glycerin, Panthenol, Hydrolyzed Silk, Parfum',
    );
    expect(document.querySelector('.picture-check')).toBeNull();
    await press('button', 'Read this list');
    expect(words()).toContain('1 protein');
  });

  it('two of one label stand one after the other', async () => {
    const parts = [picture('Aqua, Glycerin,', 'Panthenol'), picture('Hydrolyzed Silk,', 'Parfum, Linalool')];
    await draw(async () => parts.shift()!);
    await choose('front.png', 'back.png');
    await press('button', 'Use this list');
    await press('button', 'Use this list');
    expect(document.querySelector('textarea')?.value).toBe(
      'Aqua, Glycerin, Panthenol,\nHydrolyzed Silk, Parfum, Linalool',
    );
  });

  it.each([
    ['no-picture', 'cannot be opened as a picture'],
    ['not-let', 'toolbar first'],
    ['not-in-view', 'Scroll to it'],
  ] as const)('%s is said', async (problem, sentence) => {
    await draw(async () => problem);
    await choose('bottle.png');
    expect(words()).toContain(sentence);
    await press('button', 'Remove the picture');
    expect(words()).not.toContain(sentence);
  });

  it('without a list, or read by something that fails, says so', async () => {
    const answers = [() => picture('Open Monday'), () => Promise.reject(new Error('gone'))];
    await draw(async () => answers.shift()!());
    await choose('door.png', 'window.png');
    expect(words()).toContain('No ingredient list was seen');
    expect(words()).toContain('could not be read');
  });

  it('is stopped: what waits is never begun', async () => {
    let begun = 0;
    let stopped: AbortSignal | undefined;
    await draw((_, { signal }) => {
      begun++;
      stopped = signal;
      return new Promise((_resolve, reject) => signal.addEventListener('abort', () => reject(signal.reason)));
    });
    await choose('one.png', 'two.png', 'three.png');
    expect(words()).toContain('2 more wait');
    await press('button', 'Stop reading');
    expect([begun, stopped?.aborted]).toEqual([1, true]);
    expect(document.querySelector('progress')).toBeNull();
  });

  it('of the page is read once when the panel is sent for it', async () => {
    const asked: unknown[] = [];
    const onPage = { frame: 0, src: 'https://shop.example/label.png' };
    const read: PictureReader['read'] = async (source) => {
      asked.push(source);
      return list;
    };
    await draw(read, { detail: { picture: onPage } });
    await settle();
    expect(asked).toEqual([{ onPage }]);
    expect(withWords('.card', 'Picture on this page')).toBeDefined();
  });
});
