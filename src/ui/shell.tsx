import { Component, type ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useKeptPlace } from './parts/focus/keep-place.ts';
import { PlaceIcon } from './parts/icon.tsx';
import { type Announcement, Toast } from './parts/toast.tsx';
import { Pending, Unread } from './parts/waiting/pending.tsx';
import type { Translate } from './words/index.ts';
import type { PlaceName, World } from './world.ts';

type View = (props: { world: World }) => ComponentChildren;

// Each place is a file of its own to load: the one in view comes first, the others while nobody waits.
const places: Record<PlaceName, { word: string; load: () => Promise<View> }> = {
  page: {
    word: 'shell.place.this-page',
    load: async () => (await import('./places/this-page.tsx')).ThisPagePlace,
  },
  compare: {
    word: 'shell.place.compare',
    load: async () => (await import('./places/compare.tsx')).ComparePlace,
  },
  routine: {
    word: 'shell.place.routine',
    load: async () => (await import('./places/routine.tsx')).RoutinePlace,
  },
  products: {
    word: 'shell.place.products',
    load: async () => (await import('./places/products.tsx')).ProductsPlace,
  },
  log: { word: 'shell.place.log', load: async () => (await import('./places/log.tsx')).LogPlace },
  hair: { word: 'shell.place.hair', load: async () => (await import('./places/hair.tsx')).HairPlace },
  settings: {
    word: 'shell.place.settings',
    load: async () => (await import('./places/settings.tsx')).SettingsPlace,
  },
};
const loaded: Partial<Record<PlaceName, View>> = {};

/** Loads a place; at once where it is there already. */
export async function loadPlace(name: PlaceName): Promise<void> {
  loaded[name] ??= await places[name].load();
}

/** Loads the places not looked at yet, one after another, whenever the browser is idle. */
export function loadOthers() {
  const next = placeNames.find((name) => !loaded[name]);
  if (next) requestIdleCallback(() => void loadPlace(next).then(loadOthers), { timeout: 3000 });
}

export const placeNames = Object.keys(places) as PlaceName[];
export const isPlace = (name: string | undefined): name is PlaceName =>
  name !== undefined && Object.hasOwn(places, name);

/** A view that throws says so and leaves the rest, and everything kept, alone. */
class Fence extends Component<{ t: Translate; children: ComponentChildren }, { problem?: string }> {
  override componentDidCatch(problem: unknown) {
    this.setState({ problem: String(problem) });
  }
  override render() {
    const { t, children } = this.props;
    if (this.state.problem === undefined) return children;
    return (
      <div class="note care" role="alert">
        <p>{t('shell.broken')}</p>
        <p class="hint">{this.state.problem}</p>
      </div>
    );
  }
}

function Tabs({ t, place, onGo }: { t: Translate; place: PlaceName; onGo: (to: PlaceName) => void }) {
  const move = (event: KeyboardEvent) => {
    const at = placeNames.indexOf(place);
    const forward = t.dir === 'rtl' ? 'ArrowLeft' : 'ArrowRight';
    const back = t.dir === 'rtl' ? 'ArrowRight' : 'ArrowLeft';
    const to =
      event.key === forward
        ? at + 1
        : event.key === back
          ? at - 1
          : event.key === 'Home'
            ? 0
            : event.key === 'End'
              ? -1
              : undefined;
    if (to === undefined) return;
    event.preventDefault();
    const next = placeNames.at(to % placeNames.length) ?? place;
    onGo(next);
    document.getElementById(`tab-${next}`)?.focus();
  };
  return (
    <div role="tablist" class="tabs" aria-label={t('shell.places')}>
      {placeNames.map((name) => (
        <button
          key={name}
          type="button"
          role="tab"
          id={`tab-${name}`}
          class={`tab to-${name}`}
          aria-selected={name === place}
          aria-controls="place"
          tabIndex={name === place ? 0 : -1}
          onClick={() => onGo(name)}
          onKeyDown={move}
        >
          <PlaceIcon place={name} />
          <span>{t(places[name].word)}</span>
        </button>
      ))}
    </div>
  );
}

/** The panel: masthead, places as tabs, the place in view, and what was said last. */
export function Shell(props: {
  world: World;
  place: PlaceName;
  said: Announcement | undefined;
  onDismiss: () => void;
}) {
  const { world, place } = props;
  const { t } = world;
  const view = useRef<HTMLElement>(null);
  const before = useRef(place);
  useEffect(() => {
    if (before.current === place) return;
    before.current = place;
    // Sent here by a button that is gone now: the focus goes to the place, so that it is read out.
    if (document.activeElement === document.body || !document.activeElement?.isConnected)
      view.current?.focus({ preventScroll: true });
  }, [place]);
  useKeptPlace(view, place, world.detail !== undefined);
  const [, arrived] = useState(0);
  const View = loaded[place];
  useEffect(() => {
    if (!View) void loadPlace(place).then(() => arrived((n) => n + 1));
  }, [place, View]);
  return (
    <div class="panel" lang={t.lang} dir={t.dir}>
      <header class="masthead">
        <h1>{t('shell.name')}</h1>
        <Tabs t={t} place={place} onGo={(to) => world.go(to)} />
      </header>
      <main>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a tab panel takes the focus when sent there, and scrolls by keyboard */}
        <section id="place" role="tabpanel" aria-labelledby={`tab-${place}`} tabIndex={0} ref={view}>
          <Unread world={world} />
          <Fence key={place} t={t}>
            {View ? <View world={world} /> : <Pending world={world} />}
          </Fence>
        </section>
      </main>
      <Toast world={world} said={props.said} onDismiss={props.onDismiss} />
    </div>
  );
}
