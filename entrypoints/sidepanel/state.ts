import type { TabPage } from '../../src/contract/messages.ts';
import { defaultSettings, type Remembered } from '../../src/store/remembered.ts';
import type { Undo } from '../../src/store/undo-stack.ts';
import type { Said } from '../../src/ui/parts/toast.tsx';
import { english, type Translate, translator } from '../../src/ui/words/index.ts';
import type { Detail, PlaceName, Reach } from '../../src/ui/world.ts';

/** What the panel knows at this moment; whoever changes it asks for a drawing. */
export type State = {
  place: PlaceName;
  detail: Detail | undefined;
  /** The place from which a product was opened. */
  from: PlaceName | undefined;
  said: Said | undefined;
  remembered: Remembered;
  /** What is remembered has come once. */
  loaded: boolean;
  undos: Undo[];
  t: Translate;
  page: TabPage | null;
  tab: { id: number; url?: string } | undefined;
  reach: Reach | undefined;
};

export const stateAt = (place: PlaceName): State => ({
  place,
  detail: undefined,
  from: undefined,
  said: undefined,
  remembered: {
    heads: [],
    products: [],
    routines: [],
    log: [],
    sites: [],
    readAs: {},
    settings: defaultSettings,
  },
  loaded: false,
  undos: [],
  t: translator('en', english),
  page: null,
  tab: undefined,
  reach: undefined,
});
