// @vitest-environment happy-dom
import { render } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import { useKeptPlace } from '../../src/ui/parts/focus/keep-place.ts';

let go: (place: string, sent?: boolean) => void;
function View() {
  const view = useRef<HTMLElement>(null);
  const [at, setAt] = useState({ place: 'a', sent: false });
  const [rows, setRows] = useState([1, 2]);
  go = (place, sent = false) => setAt({ place, sent });
  useKeptPlace(view, at.place, at.sent);
  return (
    <section ref={view}>
      <h2>{at.place}</h2>
      {rows.map((row) => (
        <button key={row} type="button" onClick={() => setRows(rows.filter((each) => each !== row))}>
          {row}
        </button>
      ))}
    </section>
  );
}
const draw = () => act(() => render(<View />, document.body));
/** A browser tells of it in its next frame, which may be after the press that leads elsewhere. */
const scroll = (to: number) => window.scrollTo(0, to);
afterEach(() => render(null, document.body));

it('each place keeps how far it was scrolled; one opened for something begins at its top', async () => {
  await draw();
  scroll(300);
  await act(() => go('b'));
  expect(window.scrollY).toBe(0);
  scroll(120);
  await act(() => go('a'));
  expect(window.scrollY).toBe(300);
  await act(() => go('b'));
  expect(window.scrollY).toBe(120);
  await act(() => go('a', true));
  expect(window.scrollY).toBe(0);
});

it('what is taken away with the focus in it gives the focus to the heading', async () => {
  await draw();
  const [first] = document.querySelectorAll('button');
  await act(async () => {
    first!.focus();
    first!.click();
  });
  await expect.poll(() => document.activeElement?.tagName).toBe('H2');
});
