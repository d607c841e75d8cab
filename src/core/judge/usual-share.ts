import type { Mention } from '../reading/reading.ts';

/**
 * The share to reckon with, in percent: what is usual, where practice tells it; else the middle of what the
 * label allows, on a scale of factors, not lower than a twentieth of its upper end.
 */
export function usualShare(
  mention: Pick<Mention, 'share'> & { likely?: Mention['share']; usual?: number },
): number {
  if (mention.usual !== undefined) return mention.usual;
  const { min, max } = mention.likely ?? mention.share;
  return Math.sqrt(Math.max(min, max / 20) * max);
}
