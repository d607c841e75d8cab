// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { dockBar } from '../../../src/page/shelf/dock-bar.ts';

const view = { innerWidth: 800, innerHeight: 600 };
let bar: HTMLElement;
let fixed: { left: number; top: number; right: number; bottom: number; element: Element }[] = [];

/** Something the page keeps in place, over these pixels of the view. */
function keep(left: number, top: number, right: number, bottom: number, position = 'fixed') {
  const element = document.createElement('div');
  element.style.position = position;
  element.getBoundingClientRect = () => ({ top }) as DOMRect;
  document.body.append(element);
  fixed.push({ left, top, right, bottom, element });
}

beforeEach(() => {
  fixed = [];
  document.body.innerHTML = '';
  bar = document.createElement('section');
  bar.getBoundingClientRect = () => ({ width: 200, height: 40 }) as DOMRect;
  Object.getPrototypeOf(document).elementsFromPoint = (x: number, y: number) =>
    fixed
      .filter(({ left, top, right, bottom }) => x >= left && x <= right && y >= top && y <= bottom)
      .map(({ element }) => element);
});
afterEach(() => {
  document.body.innerHTML = '';
});

const docked = (dir: 'ltr' | 'rtl' = 'ltr') => {
  bar.dir = dir;
  dockBar(bar, view);
  const at = bar.style.getPropertyValue('inset').split(' ');
  return ['top', 'right', 'bottom', 'left'].filter((_, i) => at[i] === '12px').join(' ');
};

describe('the bar of a shelf', () => {
  it('stands at the foot, where reading starts', () => {
    expect(docked()).toBe('bottom left');
    expect(docked('rtl')).toBe('right bottom');
  });
  it('goes to the other side where the page keeps a chat button', () => {
    keep(10, 540, 70, 590);
    expect(docked()).toBe('right bottom');
    expect(docked('rtl')).toBe('right bottom');
  });
  it('goes to the top where the whole foot is taken, of whatever sort of fixed', () => {
    keep(0, 550, 800, 600, 'sticky');
    expect(docked()).toBe('top left');
    expect(docked('rtl')).toBe('top right');
  });
  it('what scrolls with the page is no hindrance', () => {
    keep(0, 0, 800, 600, 'absolute');
    expect(docked()).toBe('bottom left');
  });
  it('stands above what the page keeps at its foot where its head is taken too', () => {
    keep(0, 0, 800, 60, 'sticky');
    keep(0, 550, 800, 600);
    docked();
    expect(bar.style.getPropertyValue('inset')).toBe('auto auto 62px 12px');
  });
  it('stays at its best place where everything is taken', () => {
    keep(0, 0, 800, 600);
    expect(docked()).toBe('bottom left');
  });
});
