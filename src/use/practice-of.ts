import { withStays } from '../core/amounts/brings.ts';
import type { Practice } from '../core/judge/practice.ts';
import type { MarketBy } from '../core/product/read-as.ts';
import type { Remembered } from '../store/remembered.ts';

type Told = Pick<Remembered, 'settings'>;

/** The numbers of practice with what the reader changed of them. */
export const practiceOf = (practice: Practice, { settings }: Told): Practice =>
  settings.rinseOffStays === undefined
    ? practice
    : { ...practice, washDay: withStays(practice.washDay, settings.rinseOffStays) };

/** How the market of a label is told. */
export const marketBy = ({ markets }: Practice, { settings }: Told): MarketBy => ({
  markets,
  told: settings.market,
});
