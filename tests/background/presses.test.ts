// Presses that a driver cannot make: the browser's own menu. Its click is handed to the listener as the browser does.
import { beforeEach, expect, it, vi } from 'vitest';

type Click = (info: object, tab?: { id?: number }) => void;
const told = vi.hoisted(() => ({
  clicked: undefined as unknown,
  pressed: undefined as unknown,
  done: [] as unknown[],
}));
vi.mock('wxt/browser', () => {
  const event = { addListener: () => undefined };
  return {
    browser: {
      action: { onClicked: { addListener: (listener: unknown) => (told.pressed = listener) } },
      commands: { onCommand: event },
      contextMenus: { onClicked: { addListener: (listener: unknown) => (told.clicked = listener) } },
      permissions: { onAdded: event, onRemoved: event },
      runtime: { onInstalled: event, onStartup: event },
      sidePanel: { open: async (at: object) => void told.done.push(['open', at]) },
      storage: { session: { set: async (values: object) => void told.done.push(['set', values]) } },
      tabs: { onRemoved: event, onUpdated: event },
    },
  };
});
const { listenToBrowser } = await import('../../entrypoints/background/listen.ts');

const parts = (read: (tab: number) => Promise<void>) =>
  ({ reach: { read } }) as unknown as Parameters<typeof listenToBrowser>[0];

beforeEach(() => {
  told.done.length = 0;
  listenToBrowser(parts(async () => undefined));
});
const click: Click = (...args) => (told.clicked as Click)(...args);

it.each([
  ['of the page', { frameId: 0, srcUrl: 'https://shop.example/label.png' }],
  ['in a frame', { frameId: 31, srcUrl: 'https://shop.example/label.png' }],
  ['without an address', { frameId: 0 }],
])(
  'the menu on a picture %s opens the panel within the press and tells it which',
  (_, { frameId, ...info }) => {
    click({ menuItemId: 'picture', frameId, ...info }, { id: 7 });
    // At once: the browser opens a panel only within the press.
    expect(told.done).toEqual([
      ['open', { tabId: 7 }],
      [
        'set',
        {
          'panel-go': {
            tab: 7,
            place: 'page',
            nth: expect.any(Number),
            picture: { frame: frameId, ...('srcUrl' in info && { src: info.srcUrl }) },
          },
        },
      ],
    ]);
  },
);

it('a click that belongs to no tab does nothing', () => {
  click({ menuItemId: 'picture', frameId: 0 });
  expect(told.done).toEqual([]);
});

it.each([
  ['comes late', 3, 4],
  ['never comes', 99, 4],
])('a press whose right %s: the page is asked for again, a few times', async (_, refused, asked) => {
  vi.useFakeTimers();
  const tabs: number[] = [];
  listenToBrowser(
    parts(async (tab) => {
      if (tabs.push(tab) <= refused) throw new Error('Cannot access contents of the page.');
    }),
  );
  (told.pressed as (tab: { id: number }) => void)({ id: 7 });
  await vi.advanceTimersByTimeAsync(10_000);
  expect(tabs).toEqual(Array.from({ length: asked }, () => 7));
  vi.useRealTimers();
});
