// Photos of labels: names of the dictionary on a label of its own paper, on a bottle, before a camera.
import type { Page } from 'playwright-core';
import { seeded } from '../../core/random-day.ts';
import { printable } from '../drawn-labels.ts';
import { photographed } from './camera.ts';
import { kinds } from './kinds.ts';

export type Photo = { kind: string; text: string; picture: Buffer };

/** A photo of a kind; `text` is its list as printed, empty where it has none. */
export async function photoOf(page: Page, kind: string, seed: number): Promise<Photo> {
  const { paper, before, behind, camera, listless } = kinds[kind]!;
  const draw = seeded(seed * 6007 + Object.keys(kinds).indexOf(kind));
  const names = Array.from({ length: 18 }, () => printable[Math.floor(draw() * printable.length)]!);
  const text = listless ? '' : `Ingredients: ${[...new Set(names)].join(', ')}.`;
  await page.setViewportSize({ width: 1300, height: 1500 });
  await page.setContent(
    `<body style="margin:0"><div id="sheet" style="width:1000px; padding:60px 60px; font:30px/1.35 'Liberation Sans',sans-serif; background:#fbfaf6; color:#262626; ${paper}" lang="en">
      ${before}<p id="list"></p>${behind}</div></body>`,
  );
  await page.locator('#list').evaluate((list, words) => {
    list.textContent = words;
  }, text);
  const sheet = await page.locator('#sheet').screenshot();
  const url = await page.evaluate(photographed, [
    `data:image/png;base64,${sheet.toString('base64')}`,
    camera,
  ] as const);
  return { kind, text, picture: Buffer.from(url.split(',')[1]!, 'base64') };
}
