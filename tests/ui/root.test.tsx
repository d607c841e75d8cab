// @vitest-environment happy-dom
import { render } from 'preact';
import { useId } from 'preact/hooks';
import { act } from 'preact/test-utils';
import { expect, it } from 'vitest';
import { rootOf } from '../../src/ui/root.tsx';

function Labelled() {
  return <i id={useId()} />;
}
const ids = () => [...document.querySelectorAll('i')].map(({ id }) => id);

it('what is mounted later gets ids of its own', async () => {
  const draw = rootOf<{ n: number }>(document.body, ({ n }) => (
    <div>
      {[...Array(n).keys()].map((key) => (
        <Labelled key={key} />
      ))}
    </div>
  ));
  for (const n of [2, 4, 5]) await act(() => draw({ n }));
  expect(new Set(ids()).size).toBe(5);
  await act(() => render(null, document.body));
});
