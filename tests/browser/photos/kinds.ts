// What photos of labels are like: paper, what stands around the list, where the bottle stands and how it is lit.
import { type Camera, plain } from './camera.ts';

export type Kind = {
  /** CSS of the label's paper and print. */
  paper: string;
  /** What is printed before and behind the list, as HTML. */
  before: string;
  behind: string;
  camera: Camera;
  /** Nothing on it can be read as a list: it has to be said. */
  unreadable?: true;
  /** There is no list. */
  listless?: true;
};

const directions =
  '<p><b>How to use</b> Smooth through damp hair from the middle to the ends. Leave in or rinse after two minutes. Keep away from eyes and out of the reach of children.</p>';
const address =
  '<p>Made for Brackwater &amp; Fenn, 14 Lantern Quay, Oversea. Best used within 12 months of opening. 250 ml</p>';
const bars = `<svg width="230" height="90">${Array.from({ length: 46 }, (_, n) => `<rect x="${n * 5}" width="${1 + ((n * 7) % 4)}" height="90"/>`).join('')}</svg>`;
const second =
  '<p><b>Anwendung</b> In das feuchte Haar geben, kurz einwirken lassen und gut ausspülen. Nicht in die Augen bringen. <b>Utilisation</b> Appliquer sur cheveux humides, laisser poser deux minutes, puis rincer.</p>';

const kind = (camera: Partial<Camera>, paper = '', around: Partial<Kind> = {}): Kind => ({
  paper,
  before: '',
  behind: '',
  ...around,
  camera: { ...plain, ...camera },
});

const dots = 'background:#f3eee2 radial-gradient(#d9cba9 22%, transparent 24%) 0 0/18px 18px';
const stripes = 'background:repeating-linear-gradient(60deg, #dfe9e6 0 14px, #eef4f1 14px 30px)';
const clear = 'background:linear-gradient(100deg, #5d7f86, #8fa79b 40%, #4f6d70 75%, #6c8790); color:#fff';

/** Every second one is kept aside: only counted. */
export const kinds: Record<string, Kind> = {
  'held straight': kind({}),
  'held by hand': kind({ roll: 2.5, yaw: 6, pitch: 4 }),
  'seen from the side': kind({ yaw: 24 }),
  'seen from above': kind({ pitch: 24 }),
  'seen from a corner': kind({ yaw: -16, pitch: 14, roll: 3 }),
  'round bottle': kind({ radius: 560 }),
  'round bottle, seen from above': kind({ radius: 560, pitch: 14 }),
  'round bottle, leaning': kind({ radius: 620, pitch: 10, roll: 5 }),
  'narrow bottle, small print': kind({ radius: 430, pitch: -8, zoom: 0.85 }),
  'light from one side': kind({ light: [1.05, 0.35] }),
  'light from above': kind({ light: [1, 1], dusk: 0.6 }),
  'a spot of glare': kind({ glare: 0.5 }),
  'a lamp in the gloss': kind({ glare: 0.75, radius: 700 }),
  'edge of a shadow': kind({ shadow: 0.45 }),
  'shadow of a hand': kind({ shadow: 0.3, roll: -3 }),
  'coloured paper': kind({}, 'background:#c98f6b; color:#3b1d12'),
  'dark paper, gold print': kind({}, 'background:#23302c; color:#d8b565'),
  'paper with dots': kind({}, dots),
  'paper with stripes': kind({}, `${stripes}; color:#33524a`),
  'white on a clear bottle': kind({}, clear),
  'white on a clear round bottle': kind({ radius: 620 }, clear),
  'noise of a dim room': kind({ noise: 26, light: [0.6, 0.5] }),
  'noise at night': kind({ noise: 40, light: [0.5, 0.45] }),
  'saved small, JPEG 60': kind({ quality: 0.6, zoom: 0.75 }),
  'sent by a messenger, JPEG 40': kind({ quality: 0.4, roll: 2 }),
  'directions, bars and address around': kind({}, 'font-size:26px', {
    before: directions,
    behind: address + bars,
  }),
  'a second language around': kind({ roll: -2 }, 'font-size:26px', { before: second, behind: address }),
  'turned by 8°': kind({ roll: 8 }),
  'turned by −6°': kind({ roll: -6 }),
  'a quarter turn': kind({ quarters: 1 }),
  'the other quarter turn': kind({ quarters: 3, roll: 2 }),
  'upside down': kind({ quarters: 2 }),
  'upside down, on a round bottle': kind({ quarters: 2, radius: 620 }),
  'a little out of focus': kind({ blur: 1.8 }),
  'out of focus': kind({ blur: 2.6 }),
  shaken: kind({ shake: 6 }),
  'shaken, small': kind({ shake: 5, zoom: 0.85 }),
  'small in the picture': kind({ zoom: 0.5 }),
  'small, on a round bottle': kind({ zoom: 0.55, radius: 600 }),
  'bathroom in the evening': kind({ radius: 640, roll: 3, noise: 14, light: [0.9, 0.55], quality: 0.6 }),
  'bathroom in the morning': kind({ radius: 600, pitch: 8, yaw: 8, glare: 0.4, quality: 0.6 }),
  'no list, from near': kind({}, '', { before: directions, behind: address + bars, listless: true }),
  'no list, two languages': kind({ radius: 640 }, '', { before: directions, behind: second, listless: true }),
  'far away': kind({ zoom: 0.2 }, '', { unreadable: true }),
  'far away, round': kind({ zoom: 0.22, radius: 600 }, '', { unreadable: true }),
  'much out of focus': kind({ blur: 7 }, '', { unreadable: true }),
  'much shaken': kind({ shake: 26 }, '', { unreadable: true }),
};

/** Whether a kind is only counted. */
export const isAside = (name: string) => Object.keys(kinds).indexOf(name) % 2 === 1;
