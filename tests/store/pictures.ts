// The shop's pictures, drawn here: one vessel shape per kind of packing, one ornament per maker.
import type { Good, makers, Vessel } from './goods.ts';
import { plain } from './html.ts';

type Shape = {
  /** Outline of the body, and what closes it. */
  body: string;
  cap: string;
  /** Label box: x, y, width, height. */
  label: [number, number, number, number];
};

const cap = (d: string) => `<path d="${d}" fill="url(#cap)"/>`;

const shapes: Record<Vessel, Shape> = {
  bottle: {
    body: 'M110 150q0-24 26-28v-14h48v14q26 4 26 28v176q0 14-14 14h-72q-14 0-14-14z',
    cap: cap('M132 66h56v44h-56z'),
    label: [110, 176, 100, 126],
  },
  pump: {
    body: 'M104 160q0-24 28-28h56q28 4 28 28v166q0 14-14 14h-84q-14 0-14-14z',
    cap: cap('M144 112h32v20h-32zM154 78h12v36h-12zM106 66q0-8 8-8h56q10 0 10 10v10h-62q-6 0-6 8l-6-2z'),
    label: [104, 178, 112, 128],
  },
  jar: {
    body: 'M74 212q0-12 12-12h148q12 0 12 12v110q0 18-18 18h-136q-18 0-18-18z',
    cap: cap('M70 152q0-8 8-8h164q8 0 8 8v40q0 8-8 8h-164q-8 0-8-8z'),
    label: [74, 222, 172, 96],
  },
  tube: {
    body: 'M98 74h124l-14 226h-96z',
    cap: `${cap('M114 300h92v34q0 6-6 6h-80q-6 0-6-6z')}<path d="M98 64h124v14h-124z" fill="#0002"/>`,
    label: [112, 112, 96, 150],
  },
  dropper: {
    body: 'M112 188q0-22 30-26v-20h36v20q30 4 30 26v138q0 14-14 14h-68q-14 0-14-14z',
    cap: cap('M140 116h40v28h-40zM148 116q-8-48 12-52q20 4 12 52z'),
    label: [112, 204, 96, 108],
  },
  foamer: {
    body: 'M112 132q0-16 16-18h64q16 2 16 18v194q0 14-14 14h-68q-14 0-14-14z',
    cap: cap('M122 82q0-30 38-30t38 30v32h-76z'),
    label: [112, 158, 96, 150],
  },
  sprayer: {
    body: 'M114 168q0-30 32-38h28q32 8 32 38v158q0 14-14 14h-64q-14 0-14-14z',
    cap: cap('M142 108h36v22h-36zM128 74q0-14 14-14h44q10 0 16 18l-2 12h-20l-4 18h-28l-6-18h-22z'),
    label: [114, 188, 92, 120],
  },
  pouch: {
    body: 'M82 116h156q-4 16 2 40l6 160q0 24-22 24h-128q-22 0-22-24l6-160q6-24 2-40z',
    cap: '<path d="M82 104h156v14h-156z" fill="#0003"/><circle cx="160" cy="136" r="7" fill="#0002"/>',
    label: [98, 168, 124, 132],
  },
};

// Ornaments in a 40 × 40 box: a gull, an osier knot, a bramble leaf, a wave in a ring.
const ornaments: Record<(typeof makers)[number], string> = {
  'Ullet & Daw': '<path d="M4 22q8-12 16-2q8-10 16 2q-8-5-16 4q-8-9-16-4z"/><circle cx="20" cy="33" r="2"/>',
  'Quoin & Osier':
    '<g fill="none" stroke-width="2.4"><path d="M8 32q0-24 12-24t12 24"/><path d="M8 10q0 22 24 22M32 10q0 22-24 22"/></g>',
  Bracklemoor:
    '<path d="M20 4q12 12 0 32q-12-20 0-32z"/><path d="M20 36q-16-4-15-18q12 2 15 18zM20 36q16-4 15-18q-12 2-15 18z" opacity=".6"/>',
  'Tidewhit Bros.':
    '<g fill="none" stroke-width="2.4"><circle cx="20" cy="20" r="15"/><path d="M7 24q6.500-8 13 0t13 0M10 14q5-6 10 0t10 0"/></g>',
};

/** Words broken into lines of at most `most` letters. */
const lines = (text: string, most: number) =>
  text.split(' ').reduce<string[]>((out, word) => {
    const last = out.at(-1);
    if (last !== undefined && last.length + word.length < most) out[out.length - 1] = `${last} ${word}`;
    else out.push(word);
    return out;
  }, []);

const frame = (inside: string, tile: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 400" width="320" height="400"><rect width="320" height="400" fill="${tile}"/>${inside}</svg>`;

/** The picture of a good, as SVG text. */
export function pictureOf(good: Good): string {
  const { body, cap: top, label } = shapes[good.vessel];
  const [x, y, width, height] = label;
  const ink = `hsl(${good.hue} 55% 24%)`;
  const middle = x + width / 2;
  const name = lines(good.name, width < 110 ? 12 : width < 140 ? 14 : 18);
  const size = width < 110 ? 11.5 : 13;
  const firstLine = y + 58 - (good.vessel === 'jar' ? 8 : 0);
  const words = name
    .map(
      (line, at) =>
        `<text x="${middle}" y="${firstLine + at * (size + 3)}" font-size="${size}" font-weight="bold">${plain(line)}</text>`,
    )
    .join('');
  return frame(
    `<defs>
    <linearGradient id="body"><stop offset="0" stop-color="hsl(${good.hue} 42% 46%)"/><stop offset=".22" stop-color="hsl(${good.hue} 52% 72%)"/><stop offset=".6" stop-color="hsl(${good.hue} 44% 58%)"/><stop offset="1" stop-color="hsl(${good.hue} 46% 36%)"/></linearGradient>
    <linearGradient id="cap"><stop offset="0" stop-color="#20303f"/><stop offset=".3" stop-color="#5d7488"/><stop offset="1" stop-color="#1b2833"/></linearGradient>
    <radialGradient id="glow"><stop offset="0" stop-color="#fff"/><stop offset="1" stop-color="#fff" stop-opacity="0"/></radialGradient><clipPath id="cut"><path d="${body}"/></clipPath></defs>
    <path d="M0 300h320v100H0z" fill="hsl(${good.hue} 22% 80%)"/><circle cx="160" cy="180" r="170" fill="url(#glow)" opacity=".75"/>
    <ellipse cx="166" cy="342" rx="104" ry="11" fill="#0003"/>${top}<path d="${body}" fill="url(#body)"/>
    <g clip-path="url(#cut)"><rect x="${x - 10}" y="${y}" width="${width + 20}" height="${height}" fill="#fdfdf8"/><path d="M${x - 10} ${y + 4}h${width + 20}M${x - 10} ${y + height - 4}h${width + 20}" stroke="${ink}" stroke-width="1.500"/>
    <path d="M${x} 0h${width * 0.14}v400h-${width * 0.14}z" fill="#fff" opacity=".35"/><path d="M${x + width * 0.84} 0h${width * 0.2}v400h-${width * 0.2}z" fill="#000" opacity=".1"/></g>
    <g transform="translate(${middle - 15} ${y + 9}) scale(.75)" fill="${ink}" stroke="${ink}" stroke-width="0">${ornaments[good.maker].replace('fill="none"', `fill="none" stroke="${ink}"`)}</g>
    <g fill="${ink}" text-anchor="middle" font-family="Liberation Sans, DejaVu Sans, sans-serif">${words}
    <text x="${middle}" y="${y + height - 12}" font-size="8.500">${plain(good.maker)} · ${good.size} ${good.unit}</text></g>`,
    `hsl(${good.hue} 34% 90%)`,
  );
}

/** The shop's sign: an enamel plate with a mortar. */
export const sign = (): string =>
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32" width="32" height="32"><rect width="32" height="32" rx="4" fill="#173f8a"/><path d="M6 14h20q-1 9-7 10v2h-6v-2q-6-1-7-10z" fill="#fff"/><path d="M19 13l6-9" stroke="#fff" stroke-width="3"/></svg>';
