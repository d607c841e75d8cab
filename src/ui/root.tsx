import { type ComponentChildren, render } from 'preact';
import { useState } from 'preact/hooks';

/**
 * Draws a view once and hands it each new state. Preact counts its ids (`useId`) anew with every call of
 * `render`, so that labels of what is mounted later would point at controls that are there already.
 */
export function rootOf<S extends object>(element: Element, view: (state: S) => ComponentChildren) {
  let put: ((state: S) => void) | undefined;
  function Root({ first }: { first: S }) {
    const [state, setState] = useState(first);
    put = setState;
    return <>{view(state)}</>;
  }
  return (state: S): void => {
    if (put) put(state);
    else render(<Root first={state} />, element);
  };
}
