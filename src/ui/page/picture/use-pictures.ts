import { useEffect, useRef, useState } from 'preact/hooks';
import type { PictureProblem } from '../../../core/picture/check-names.ts';
import type { PictureShown, PictureSource, World } from '../../world.ts';

/** A picture on its way to a list; read one after another, and gone when the place is left. */
export type PictureItem = {
  id: number;
  name: string;
  /** 0…1 while it is read; absent while it waits. */
  done?: number;
  read?: PictureShown | PictureProblem;
};
export type Named = { name: string; source: PictureSource };

const putAway = ({ read }: PictureItem) => {
  if (typeof read === 'object') URL.revokeObjectURL(read.shown);
};

export function usePictures({ pictures }: World) {
  const [items, setItems] = useState<PictureItem[]>([]);
  const all = useRef<PictureItem[]>([]);
  const stop = useRef(new AbortController());
  const turn = useRef(Promise.resolve());
  const nth = useRef(0);
  const set = (next: PictureItem[]) => {
    all.current = next;
    setItems(next);
  };
  const change = (id: number, what: Partial<PictureItem>) =>
    set(all.current.map((each) => (each.id === id ? { ...each, ...what } : each)));

  async function read(id: number, source: PictureSource, signal: AbortSignal) {
    if (signal.aborted || !pictures) return;
    change(id, { done: 0 });
    const how = { signal, onProgress: (done: number) => change(id, { done }) };
    const found = await pictures.read(source, how).catch(() => 'not-read' as const);
    if (!signal.aborted) change(id, { read: found });
    else putAway({ id, name: '', read: found });
  }

  function cancel() {
    stop.current.abort();
    stop.current = new AbortController();
    set(all.current.filter((each) => each.read !== undefined));
  }

  useEffect(
    () => () => {
      stop.current.abort();
      for (const each of all.current) putAway(each);
    },
    [],
  );

  return {
    items,
    add(sources: readonly Named[]) {
      const { signal } = stop.current;
      for (const { name, source } of sources) {
        const id = ++nth.current;
        set([...all.current, { id, name }]);
        turn.current = turn.current.then(() => read(id, source, signal));
      }
    },
    cancel,
    drop(id: number) {
      for (const each of all.current) if (each.id === id) putAway(each);
      set(all.current.filter((each) => each.id !== id));
    },
  };
}

export type PicturesInHand = ReturnType<typeof usePictures>;
