import type { TabPage } from '../../contract/messages.ts';
import type { Remembered } from '../../store/remembered.ts';
import type { Undo } from '../../store/undo-stack.ts';
import type { Announcement } from '../parts/toast.tsx';
import { english, type Translate, translator } from '../words/index.ts';
import type { Detail, PlaceName, Reach, World } from '../world.ts';

/** What the panel knows at this moment; whoever changes it asks for a drawing. */
export type State = {
  place: PlaceName;
  detail: Detail | undefined;
  /** The place from which a product was opened. */
  from: PlaceName | undefined;
  said: Announcement | undefined;
  remembered: Remembered;
  /** What is remembered has come once. */
  loaded: boolean;
  undos: Undo[];
  t: Translate;
  page: TabPage | null;
  tab: { id: number; url?: string } | undefined;
  reach: Reach | undefined;
};

/** All that is drawn. */
export type PanelState = { world: World; place: PlaceName; said: Announcement | undefined };

/** As it begins at a place, before anything has come. */
export const stateAt = (place: PlaceName, remembered: Remembered): State => ({
  place,
  detail: undefined,
  from: undefined,
  said: undefined,
  remembered,
  loaded: false,
  undos: [],
  t: translator('en', english),
  page: null,
  tab: undefined,
  reach: undefined,
});
