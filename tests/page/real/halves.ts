export type Half = 'seen' | 'kept';

/** Which half a page is of, by its name alone: pages of the kept half are counted and never looked at. */
export const halfOf = (name: string): Half =>
  [...name].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) >>> 0, 7) % 2 === 0 ? 'seen' : 'kept';
