import type { Acted } from '../../contract/messages.ts';
import type { Translate } from '../words/index.ts';

/** What came of an act, in the user's words, with the key that takes it back; undefined where nothing is said. */
export function cameOf(acted: Acted, t: Translate): { words: string; undo?: string } | undefined {
  if (!acted.ok) return { words: t('shell.not-kept', { reason: t(acted.reason) }) };
  const { say, undo } = acted;
  return say && { words: t(say.key, say.values), ...(undo && { undo }) };
}
