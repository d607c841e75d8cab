import type { MessageName, Messages } from '../../src/contract/messages.ts';

/** Asks the background. */
export type Ask = <N extends MessageName>(
  name: N,
  request: Messages[N]['request'],
) => Promise<Messages[N]['reply']>;
