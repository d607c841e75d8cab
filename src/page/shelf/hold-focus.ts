const keyOf = ({ tagName, dataset: { does = '', which = '' } }: HTMLElement) => `${tagName} ${does} ${which}`;

/**
 * Who stands in the bar by the keyboard, and what is unfolded there.
 * @returns puts both back once the bar is drawn anew; a button that is gone hands on to the one in its place
 */
export function heldIn(bar: HTMLElement): () => void {
  const { activeElement } = bar.getRootNode() as ShadowRoot;
  const held = bar.contains(activeElement) ? keyOf(activeElement as HTMLElement) : undefined;
  const isUnfolded = bar.querySelector('details')?.open ?? false;
  return () => {
    const details = bar.querySelector('details');
    if (details) details.open = isUnfolded;
    if (held === undefined) return;
    const all = [...bar.querySelectorAll<HTMLElement>('button,summary')];
    (
      all.find((each) => keyOf(each) === held) ??
      bar.querySelector<HTMLElement>('.actions button') ??
      bar
    ).focus();
  };
}
