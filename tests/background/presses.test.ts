// Presses that a driver cannot make: the browser's own menu. Its click is handed to the listener as the browser does.
import { beforeEach, expect, it, vi } from 'vitest';

type Click = (info: object, tab?: { id?: number }) => void;
const told = vi.hoisted(() => ({ clicked: undefined as unknown, done: [] as unknown[] }));
vi.mock('wxt/browser', () => {
  const event = { addListener: () => undefined };
  return {
    browser: {
      action: { onClicked: event },
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

beforeEach(() => {
  told.done.length = 0;
  listenToBrowser({} as Parameters<typeof listenToBrowser>[0]);
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
