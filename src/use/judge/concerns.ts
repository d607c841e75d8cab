import type { TabPage } from '../../contract/messages.ts';
import { isSameProduct } from '../../core/product/same-product.ts';
import { defaultSettings, type Remembered, type Settings } from '../../store/remembered.ts';
import { parsed } from '../../store/schema/contents.ts';
import { keyParts } from '../../store/schema/keys.ts';
import { schemaOf } from '../../store/schema/schemas.ts';
import { same } from '../../store/three-way.ts';
import { originOf } from '../acts/matters/sites.ts';
import { headInUse, routineInUse } from '../in-use.ts';
import { metOnPage } from './met-product.ts';
import { mayRead } from './read-page.ts';

/** What the browser tells of stored values, by key. */
export type Stored = Record<string, { oldValue?: unknown; newValue?: unknown }>;

/** Settings that a painted page shows something of. */
const painted: (keyof Settings)[] = [
  'language',
  'underline',
  'glyphSize',
  'headInUse',
  'routineInUse',
  'market',
  'rinseOffStays',
  'sizesBy',
];

/** Settings that only shelves show something of. */
const onShelves: (keyof Settings)[] = ['wishes', 'shelfPrice'];

const both = ({ oldValue, newValue }: Stored[string]) =>
  [oldValue, newValue].filter((each) => each !== undefined);
const setting = (value: unknown, name: keyof Settings) => field(value, name) ?? defaultSettings[name];
const field = (value: unknown, name: string) => (value as Record<string, unknown> | undefined)?.[name];

/** Whether what is painted on a page may read otherwise after these changes; `remembered` has them already. */
export function concerns(changes: Stored, remembered: Remembered, page: TabPage): boolean {
  const head = headInUse(remembered);
  const routine = routineInUse(remembered, head);
  return Object.entries(changes).some(([key, change]) => {
    const [kind, id] = keyParts(key);
    const gone = change.newValue === undefined;
    switch (kind) {
      case 'settings':
        return [...painted, ...(page.shelf ? onShelves : [])].some(
          (name) => !same(setting(change.oldValue, name), setting(change.newValue, name)),
        );
      case 'heads':
        return gone || id === head?.id;
      case 'routines':
        return gone || id === routine?.id;
      case 'log':
        return both(change).some((entry) => field(entry, 'head') === head?.id);
      case 'products':
        return (
          page.shelf || routine?.steps.some(({ product }) => product === id) || both(change).some(isOn(page))
        );
      case 'read-as':
        return page.lists.some(({ text }) => text.toLowerCase().includes(id.toLowerCase()));
      case 'shelf':
        return gone && page.shelf === true;
      case 'sites':
        return id === originOf(page.url);
      default:
        return false;
    }
  });
}

/** What our script in a tab is told after these changes: to stop, to read its page again, or nothing. */
export function toldOf(changes: Stored, remembered: Remembered, page: TabPage): 'stop' | 'again' | undefined {
  if (!mayRead({ remembered }, page.url)) return 'stop';
  return concerns(changes, remembered, page) ? 'again' : undefined;
}

/** Origins of the sites of which something was taught or forgotten. */
export const sitesIn = (changes: Stored): string[] =>
  Object.keys(changes).flatMap((key) => {
    const [kind, origin] = keyParts(key);
    return kind === 'sites' ? [origin] : [];
  });

/** Whether a product is one of those on a page. */
const isOn = (page: TabPage) => (value: unknown) => {
  const product = parsed(schemaOf.products, value);
  return product.ok && page.lists.some((list) => isSameProduct(product.value, metOnPage(list, page)));
};
