import { practice } from '../../dictionary/practice.ts';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import {
  ask,
  type MessageName,
  type Messages,
  type PanelGo,
  panelGoKey,
  type TabPage,
  tabPageKey,
} from '../../src/contract/messages.ts';
import { type Change, defaultSettings, type Remembered } from '../../src/store/remembered.ts';
import { pinsWith } from '../../src/ui/compare/pinned.ts';
import { addDetail, factsOfList } from '../../src/ui/page/facts.ts';
import type { Said } from '../../src/ui/parts/toast.tsx';
import { isPlace } from '../../src/ui/shell.tsx';
import { english, type Translate, translator } from '../../src/ui/words/index.ts';
import { bestLanguage, wordsFor } from '../../src/ui/words/languages.ts';
import type { PlaceName, Reach, World } from '../../src/ui/world.ts';
import { reachOf } from './reach.ts';
import { readingCache } from './reading-cache.ts';
import { createUndoStack, isUndoKey } from './undo-stack.ts';

/** Files and photos: read in this window, with the code for them loaded when it is first asked for. */
const openStore: NonNullable<World['store']> = async () => {
  const [{ openDoor }, { createKeeper }] = await Promise.all([
    import('../../src/store/panel-store.ts'),
    import('../../src/store/keeper.ts'),
  ]);
  return openDoor(createKeeper());
};

export type PanelState = { world: World; place: PlaceName; said: Said | undefined };

const nothingYet: Remembered = {
  heads: [],
  products: [],
  routines: [],
  log: [],
  sites: [],
  readAs: {},
  settings: defaultSettings,
};

/** A file of the extension itself: no network. */
const readWords = async (url: string) => (await fetch(url)).json();

/** Where the panel was left, at once and without asking anybody. */
const leftAt = 'place';

/** Hands the reader a file: a link that is pressed for them. */
function save(name: string, type: string, content: string | Blob) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content instanceof Blob ? content : new Blob([content], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** ISO date of the reader's own day. */
const dayOf = (now: Date) =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-');

/**
 * The real world of the panel: follows the tab in view and the store, and draws at most once a frame's turn.
 * `?tab=ID` holds it to one tab (the panel as a whole page).
 */
export function openPanel(
  browser: typeof chrome,
  draw: (state: PanelState) => void,
  opening: (place: PlaceName) => void = () => {},
) {
  const query = new URLSearchParams(location.search);
  const held = query.has('tab') ? Number(query.get('tab')) || 0 : undefined;
  const wanted = location.hash.slice(1) || (localStorage.getItem(leftAt) ?? undefined);
  let place: PlaceName = isPlace(wanted) ? wanted : 'page';
  opening(place);
  let detail: string | undefined;
  let remembered = nothingYet;
  let loaded = false;
  let page: TabPage | null = null;
  let tab: { id: number; url?: string } | undefined;
  let reach: Reach | undefined;
  let t: Translate = translator('en', english);
  let said: Said | undefined;
  let nth = 0;
  // A panel that opens acts on a press of just now, and on no older one.
  let lastSent = Date.now() - 5000;
  const undos = createUndoStack(browser.storage.session);
  void undos.loaded.then(drawSoon);
  let toldFull = false;

  const asked = <N extends MessageName>(name: N, request: Messages[N]['request']) =>
    ask(browser.runtime as never, name, request);
  const failed = () => say(t('shell.no-background'));
  const reading = readingCache((texts) => asked('read', texts), drawSoon, failed);

  let due = false;
  function drawSoon() {
    if (due) return;
    due = true;
    queueMicrotask(() => {
      due = false;
      if (loaded) draw({ world: world(), place, said });
    });
  }

  function say(words: string, canUndo = false) {
    said = { words, canUndo, nth: ++nth };
    drawSoon();
  }

  async function change(...changes: Change[]) {
    const outcome = await asked('change', changes).catch(
      () => ({ ok: false, reason: 'shell.no-background' }) as const,
    );
    if (!outcome.ok) say(t('shell.not-kept', { reason: t(outcome.reason) }));
    else if (outcome.undo) await undos.push(outcome.undo);
    if (outcome.ok) await recall();
    if (outcome.ok && outcome.nearlyFull && !toldFull) {
      toldFull = true;
      say(t('keeping.room.nearly'));
    }
    return outcome;
  }

  async function undo() {
    const changes = await undos.pop();
    if (!changes) return false;
    const outcome = await asked('change', changes);
    if (outcome.ok) say(t('shell.undone'));
    else await undos.push(changes);
    await recall();
    return outcome.ok;
  }

  async function forget() {
    const done = await asked('forget', null).then(
      () => true,
      () => false,
    );
    if (done) {
      localStorage.clear();
      await undos.clear();
      await recall();
    }
    return done;
  }

  function go(to: PlaceName, what?: string) {
    place = to;
    detail = what;
    localStorage.setItem(leftAt, to);
    drawSoon();
  }

  const world = (): World => ({
    t,
    practice,
    sources,
    today: dayOf(new Date()),
    now: () => new Date().toISOString(),
    remembered,
    page,
    reading: (text, use, readAs = remembered.readAs) =>
      reading(text, use, Object.keys(readAs).length ? readAs : undefined),
    close: (names) => asked('close', names).catch(() => names.map(() => [])),
    lookUp: (typed) => asked('look-up', typed).catch(() => []),
    change,
    undo,
    say,
    go,
    ...(detail !== undefined && { detail }),
    save,
    newId: () => crypto.randomUUID(),
    forget,
    removed: undos.removed(remembered),
    store: openStore,
    ...(reach && { reach }),
    ...(held === undefined && {
      openWide: () => {
        const url = browser.runtime.getURL(`/sidepanel.html?tab=${tab?.id ?? ''}#${place}`);
        void browser.tabs.create({ url });
      },
    }),
  });

  let recalling: Promise<void> | undefined;
  let again = false;
  /** What is remembered, anew; asked again once when it changed meanwhile. */
  function recall(): Promise<void> {
    if (recalling) {
      again = true;
      return recalling;
    }
    recalling = recallOnce().finally(() => {
      recalling = undefined;
      if (again) {
        again = false;
        void recall();
      }
    });
    return recalling;
  }

  async function recallOnce() {
    try {
      remembered = await asked('remembered', null);
    } catch {
      failed();
    }
    const language = bestLanguage([remembered.settings.language, browser.i18n.getUILanguage()]);
    if (t.lang !== language)
      t = await wordsFor(language, (of) => readWords(browser.runtime.getURL(`/words/${of}.json`)));
    loaded = true;
    drawSoon();
  }

  let look = 0;
  async function lookAtTab() {
    const turn = ++look;
    const [active] =
      held === undefined
        ? await browser.tabs.query({ active: true, currentWindow: true })
        : held > 0
          ? [await browser.tabs.get(held).catch(() => undefined)]
          : [];
    const id = active?.id ?? -1;
    // Straight from where the background keeps it: a sleeping worker need not wake for this.
    const key = tabPageKey(id);
    const seen = ((await browser.storage.session.get(key))[key] as TabPage | undefined) ?? null;
    const may = await reachOf(browser.permissions, seen?.url ?? active?.url, (name) =>
      asked(name, { tab: id }),
    ).catch(() => undefined);
    // The reader may have turned to another tab meanwhile; the newest look counts.
    if (turn !== look) return;
    tab = id < 0 ? undefined : { id, ...(active?.url && { url: active.url }) };
    page = seen;
    reach = may;
    await goWhereSent();
    drawSoon();
  }

  /** The strip or the toolbar opened the panel for something: go there once. */
  async function goWhereSent() {
    const { [panelGoKey]: sent } = (await browser.storage.session.get(panelGoKey)) as {
      [panelGoKey]?: PanelGo;
    };
    if (!sent || sent.tab !== tab?.id || sent.nth <= lastSent || !isPlace(sent.place)) return;
    lastSent = sent.nth;
    const list = page?.lists.find(({ id }) => id === sent.list);
    if (sent.place === 'routine' && list) go('routine', addDetail(list.text, factsOfList(list, page)));
    else if (sent.place === 'compare' && list) {
      await recall();
      const pinned = pinsWith(remembered, list.text, factsOfList(list, page));
      await change({ do: 'set', settings: { pinned } });
      go('compare');
    } else go(sent.place, sent.list === undefined ? undefined : String(sent.list));
  }

  browser.storage.local.onChanged.addListener(() => void recall());
  browser.storage.session.onChanged.addListener((changes) => {
    if (Object.keys(changes).some((key) => !isUndoKey(key))) void lookAtTab();
  });
  browser.tabs.onActivated.addListener(() => void lookAtTab());
  browser.tabs.onUpdated.addListener((id, what) => {
    if (id === tab?.id && (what.status || what.url)) void lookAtTab();
  });
  browser.windows.onFocusChanged?.addListener(() => void lookAtTab());
  browser.permissions.onAdded.addListener(() => void lookAtTab());
  browser.permissions.onRemoved.addListener(() => void lookAtTab());
  void recall();
  void lookAtTab();

  return {
    dismiss() {
      said = undefined;
      drawSoon();
    },
  };
}
