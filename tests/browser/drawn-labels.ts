// Pictures of labels, drawn by a browser: names of the dictionary in any font, size and light. Knows nothing of how
// pictures are read.
import type { Page } from 'playwright-core';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { isProtein, readLabel } from '../../src/core/reading/reading.ts';
import { seeded } from '../core/random-day.ts';

const lookup = createLookup(entries, patterns, limits);
/** Names that any font prints. */
export const printable = entries.map(({ name }) => name).filter((name) => /^[\x20-\x7e]{3,60}$/.test(name));

/** How labels are printed and photographed: CSS of the label, and what stands out of the ordinary. */
export const ways = {
  'sans, 12 px': 'font-size:12px',
  'serif, 13 px': 'font-size:13px; font-family:DejaVu Serif,serif',
  'condensed, 14 px': 'font-size:14px; font-stretch:condensed',
  'capitals, 11 px': 'font-size:11px; text-transform:uppercase',
  'bold, 16 px': 'font-size:16px; font-weight:700',
  '9 px': 'font-size:9px',
  'light on dark': 'font-size:12px; background:#3a2a3f; color:#f4e9d8',
  'grey on beige': 'font-size:12px; background:#e9dcc4; color:#7a6a58',
  'turned by 4°': 'font-size:13px; transform:rotate(4deg)',
  'turned by −3°': 'font-size:13px; transform:rotate(-3deg)',
  'blurred by 0.8 px': 'font-size:14px; filter:blur(0.8px)',
  'two columns': 'font-size:12px; columns:2; column-gap:24px; width:720px',
  'hyphens, narrow': 'font-size:13px; width:210px; hyphens:auto; text-align:justify',
  'a name a line': 'font-size:12px; white-space:pre',
  JPEG: 'font-size:12px',
  'bent, its ends 8 px lower': 'font-size:14px',
  'bent, its ends 24 px lower': 'font-size:14px',
  'noise of a dark room': 'font-size:13px',
} as const;
export type Way = keyof typeof ways;

export type Drawn = { way: Way; names: string[]; text: string; picture: Buffer };

export async function drawnLabel(page: Page, way: Way, seed: number): Promise<Drawn> {
  const draw = seeded(seed * 7919 + way.length);
  const names = [
    ...new Set(Array.from({ length: 16 }, () => printable[Math.floor(draw() * printable.length)]!)),
  ];
  const text = way === 'a name a line' ? names.join('\n') : `Ingredients: ${names.join(', ')}.`;
  await page.setViewportSize({ width: 860, height: 560 });
  const ground = /background:(#\w+)/.exec(ways[way])?.[1] ?? '#fff';
  await page.setContent(
    `<body style="margin:0; background:${ground}; font-family:'DejaVu Sans',sans-serif; color:#222">
      <div id="label" style="width:520px; margin:60px; line-height:1.35; ${ways[way]}" lang="en"></div></body>`,
  );
  await page.locator('#label').evaluate((label, words) => {
    label.textContent = words;
  }, text);
  const picture = await page.screenshot(way === 'JPEG' ? { type: 'jpeg', quality: 35 } : { type: 'png' });
  const worse = worsened[way];
  return { way, names, text, picture: worse ? await redrawn(page, picture, worse) : picture };
}

/** What a camera does to a picture: pixels the ends of lines are lower, and how many greys a pixel is off at random. */
type Camera = { sag: number; noise: number };
const worsened: Partial<Record<Way, Camera>> = {
  'bent, its ends 8 px lower': { sag: 8, noise: 0 },
  'bent, its ends 24 px lower': { sag: 24, noise: 0 },
  'noise of a dark room': { sag: 0, noise: 45 },
};

/** Drawn again as a round bottle shows it: towards its sides print sinks and is narrower; and with noise. */
async function redrawn(page: Page, picture: Buffer, camera: Camera): Promise<Buffer> {
  const url = await page.evaluate(
    async ([data, { sag, noise }]) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      const { width, height } = image;
      const canvas = Object.assign(document.createElement('canvas'), { width, height });
      const pen = canvas.getContext('2d')!;
      pen.drawImage(image, 0, 0);
      const round = sag / 60; // of a quarter turn
      const [middle, half] = [width * 0.37, width * 0.31];
      for (let x = 0; sag > 0 && x < width; x++) {
        const u = (x - middle) / half;
        const from = middle + (half * Math.asin(Math.max(-1, Math.min(1, u * Math.sin(round))))) / round;
        pen.drawImage(image, from, 0, 1, height, x, sag * u * u, 1, height);
      }
      const pixels = pen.getImageData(0, 0, width, height);
      let state = 12345;
      for (let at = 0; noise > 0 && at < pixels.data.length; at++) {
        state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
        if (at % 4 < 3) pixels.data[at]! += (state / 2 ** 32 - 0.5) * 2 * noise;
      }
      pen.putImageData(pixels, 0, 0);
      return canvas.toDataURL('image/png');
    },
    [picture.toString('base64'), camera] as const,
  );
  return Buffer.from(url.split(',')[1]!, 'base64');
}

const said = (text: string) =>
  readLabel(text, lookup).mentions.map(({ found, protein }) => ({
    name: found.how === 'none' ? '' : found.name,
    protein: isProtein({ ...(protein && { protein }) }) && found.how !== 'none',
  }));

/** Names of the label that were read as what they are, how many as another, how many are asked about; and proteins that stand nowhere on it. */
export function scoreRead({ text }: { text: string }, read: string) {
  const truth = said(text);
  const got = said(read);
  const left = truth.map(({ name }) => name);
  let [right, wrong, asked] = [0, 0, 0];
  const invented: string[] = [];
  for (const { name, protein } of got) {
    const at = left.indexOf(name);
    if (name && at >= 0) {
      left.splice(at, 1);
      right++;
    } else if (!name) asked++;
    else {
      wrong++;
      if (protein && !truth.some((each) => each.name === name)) invented.push(name);
    }
  }
  return { right, wrong, asked, of: truth.length, invented, missed: left };
}

type PictureFile = { name: string; mimeType: string; buffer: Buffer };

/** Hands pictures to the open panel as a reader would; the text it takes from each, or what it says instead. */
export const readInPanel = async (panel: Page, pictures: readonly PictureFile[]) =>
  (await readEach(panel, pictures)).map(({ text, said }) => text || `! ${said}`);

/** The text that the panel takes from each picture, and what it says with care beside it or instead. */
export async function readEach(panel: Page, pictures: readonly PictureFile[], patience = 30_000) {
  await panel.setInputFiles('input[type=file][multiple]', [...pictures]);
  const read: { text: string; said: string }[] = [];
  for (const _ of pictures) {
    const card = panel.locator('.picture-check, .disclosed .note.care').first();
    await card.waitFor({ timeout: patience });
    const notes = await panel.locator('.disclosed .note.care').allTextContents();
    const said = notes[0] ?? '';
    if (await panel.locator('.picture-check').count()) {
      await panel.click('text=Use this list');
      read.push({ text: await panel.inputValue('textarea'), said });
      await panel.fill('textarea', '');
    } else {
      read.push({ text: '', said });
      await panel.click('text=Remove the picture');
    }
  }
  return read;
}
