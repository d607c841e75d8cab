// Photos of bottles read in the panel, by what the photo is like: names right, proteins invented, and what cannot be
// read but is shown without a word. `npm run bench photos round` takes kinds with that in their name alone,
// `LABELS=3` more labels of each.
import { readEach, scoreRead } from '../browser/drawn-labels.ts';
import { openShop } from '../browser/harness.ts';
import { isAside, kinds } from '../browser/photos/kinds.ts';
import { photoOf } from '../browser/photos/photo-label.ts';
import { look } from '../browser/views.ts';

const patience = 180_000;
const nothing = () => ({ right: 0, wrong: 0, of: 0, invented: 0, unsaid: 0, photos: 0, ms: 0 });
type Sums = ReturnType<typeof nothing>;

export async function lines(parts: string[] = []): Promise<string[]> {
  const each = Number(process.env.LABELS ?? 1);
  const shop = await openShop();
  const panel = await shop.panelPage();
  const board = await shop.open('/');
  await board.goto('about:blank');
  await look(shop, panel, 'page');
  await panel.click('summary >> text=Read a picture of a list');
  const out: string[] = [];
  const all = { 'looked at': nothing(), 'kept aside': nothing() };
  for (const kind of Object.keys(kinds).filter(
    (name) => parts.length === 0 || parts.some((part) => name.includes(part)),
  )) {
    const sums = nothing();
    for (let seed = 1; seed <= each; seed++) {
      const photo = await photoOf(board, kind, seed);
      await panel.bringToFront();
      const started = performance.now();
      const file = { name: `${seed}.jpg`, mimeType: 'image/jpeg', buffer: photo.picture };
      const [{ text, said } = { text: '', said: '' }] = await readEach(panel, [file], patience);
      add(sums, photo, text, said, performance.now() - started);
    }
    const half = isAside(kind) ? 'kept aside' : 'looked at';
    for (const key of Object.keys(sums) as (keyof Sums)[]) all[half][key] += sums[key];
    out.push(`${kind} (${half}): ${told(sums)}`);
  }
  for (const [half, sums] of Object.entries(all)) out.push(`all ${half}: ${told(sums)}`);
  await shop.close();
  return out;
}

function add(sums: Sums, photo: Parameters<typeof scoreRead>[0], text: string, said: string, ms: number) {
  const { right, wrong, of, asked, invented } = scoreRead(photo, text);
  sums.right += right;
  sums.wrong += wrong;
  sums.of += of;
  sums.invented += invented.length;
  if (right < of / 2 || of === 0) sums.unsaid += !said && right + wrong + asked > 0 ? 1 : 0;
  sums.photos++;
  sums.ms += ms;
}

const told = ({ right, wrong, of, invented, unsaid, photos, ms }: Sums) =>
  `${right} of ${of} names right, ${wrong} wrong, ${invented} proteins invented, ${unsaid} of ${photos} not half right and shown without a word, ${(ms / 1000 / Math.max(1, photos)).toFixed(1)} s each`;
