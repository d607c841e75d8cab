// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import { draw, fill } from '../../src/page/paint/draw.ts';

it('draws elements with their attributes and children, shapes as SVG', () => {
  const made = draw(['p', { class: 'kind' }, 'large ', ['svg', { width: 3 }, ['path', { d: 'M0 0' }]]]);
  expect(made.outerHTML).toBe(
    '<p class="kind"><span data-t="large "></span><svg width="3"><path d="M0 0"></path></svg></p>',
  );
  expect(made.querySelector('path')!.namespaceURI).toBe('http://www.w3.org/2000/svg');
});

it('looks numbers up, in what is shared too', () => {
  const made = draw(
    ['p', {}, 1, 1],
    [
      ['b', {}, 'twice'],
      ['i', {}, 0],
    ],
  );
  expect(made.innerHTML).toBe('<i><b data-t="twice"></b></i><i><b data-t="twice"></b></i>');
});

it('what a page wrote stays text', () => {
  const made = document.createElement('div');
  made.textContent = 'before';
  fill(made, ['<img src=x onerror=alert(1)>', ['b', { 'aria-label': '"><script>' }]], []);
  expect(made.querySelector('img')).toBeNull();
  expect((made.firstElementChild as HTMLElement).dataset.t).toBe('<img src=x onerror=alert(1)>');
  expect(made.textContent).toBe(''); // nothing for a page's search to find
  expect(made.querySelector('b')!.getAttribute('aria-label')).toBe('"><script>');
});
