// A kept picture is pixels: nothing in it can be run, wherever it comes from (the log's form, an imported file, an
// older store). Cases written from memory of what a data URL may hold.
import { expect, it } from 'vitest';
import { readFile } from '../../src/store/files/read-file.ts';
import { createKeeper } from '../../src/store/keeper.ts';
import { photoKey } from '../../src/store/schema/keys.ts';
import { slowArea } from './area.ts';
import { madeLog } from './made.ts';

const svg = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>';
const refused = [
  `data:image/svg+xml,${encodeURIComponent(svg)}`,
  `data:image/svg+xml;base64,${btoa(svg)}`,
  `data:IMAGE/SVG+XML;base64,${btoa(svg)}`,
  `data:image/png,${svg}`,
  `data:image/png;base64,AAAA"onerror="alert(1)`,
  `data:image/png;base64,AAAA\n<script>`,
  `data:image/png;charset=x;base64,AAAA`,
  'data:image/x-icon;base64,AAAA',
  'data:image/;base64,AAAA',
  'data:text/html;base64,AAAA',
  'https://shop.example/photo.png',
  'javascript:alert(1)',
  '',
];
const taken = ['png', 'jpeg', 'webp', 'gif', 'avif'].map((kind) => `data:image/${kind};base64,iVBORw0KGgo=`);

it.each(refused)('refuses %s, and shows none that was kept', async (data) => {
  const { area } = slowArea();
  const keeper = createKeeper(area);
  expect(await keeper.change([{ do: 'photo', key: 'p', data }])).toEqual({
    ok: false,
    reason: 'keeping.unfit',
  });
  await area.set({ [photoKey('old')]: data });
  expect(await keeper.photo('old')).toBeUndefined();
});

it.each(taken)('keeps %s', async (data) => {
  const keeper = createKeeper(slowArea().area);
  expect(await keeper.change([{ do: 'photo', key: 'p', data }])).toMatchObject({ ok: true });
  expect(await keeper.photo('p')).toBe(data);
});

it('a file that brings such a picture is told where it stands', async () => {
  const { area } = slowArea();
  const keeper = createKeeper(area);
  await keeper.change([{ do: 'put', thing: 'log', value: madeLog({ photo: 'p' }) }]);
  const file = { ...(await keeper.everything()), photos: { p: refused[0], q: taken[0] } };
  const read = readFile(JSON.stringify(file));
  expect(JSON.stringify(read)).not.toContain('svg');
  expect(read).toMatchObject({ ok: false, issues: [{ path: expect.stringContaining('photos') }] });
});
