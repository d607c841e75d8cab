// Pictures of labels read in the panel: names right, wrong and asked about, by how they are printed. `LABELS=20` draws
// more of each, `WAY=bent` only ways of that name. `npm run coverage` prints the same of 200.
import { drawnLabel, readInPanel, scoreRead, type Way, ways } from '../browser/drawn-labels.ts';
import { openShop } from '../browser/harness.ts';
import { look } from '../browser/views.ts';

export async function lines(_: string[] = [], each = Number(process.env.LABELS ?? 4)): Promise<string[]> {
  const shop = await openShop();
  const panel = await shop.panelPage();
  const board = await shop.open('/');
  await board.goto('about:blank');
  await look(shop, panel, 'page');
  await panel.click('summary >> text=Read a picture of a list');
  const out: string[] = [];
  const all = { right: 0, wrong: 0, asked: 0, of: 0, invented: [] as string[] };
  const started = performance.now();
  const wanted = (Object.keys(ways) as Way[]).filter((way) => way.includes(process.env.WAY ?? ''));
  for (const way of wanted) {
    const sum = { right: 0, wrong: 0, asked: 0, of: 0 };
    const missed: string[] = [];
    for (let seed = 1; seed <= each; seed++) {
      const drawn = await drawnLabel(board, way, seed);
      const type = way === 'JPEG' ? 'jpeg' : 'png';
      const [text = ''] = await readInPanel(panel, [
        { name: `${way}.${type}`, mimeType: `image/${type}`, buffer: drawn.picture },
      ]);
      if (process.env.SHOW) console.log(`--- ${way} ${seed}\n${drawn.text}\n=> ${text}`);
      const { invented, missed: lost, ...scored } = scoreRead(drawn, text);
      for (const key of ['right', 'wrong', 'asked', 'of'] as const) {
        sum[key] += scored[key];
        all[key] += scored[key];
      }
      all.invented.push(...invented);
      missed.push(...lost);
    }
    out.push(
      `${way}: ${sum.right} of ${sum.of} names right (${((100 * sum.right) / sum.of).toFixed(1)} %), ${sum.wrong} wrong, ${sum.asked} asked about`,
    );
    if (process.env.SHOW) console.log(out.at(-1), missed);
  }
  const ms = (performance.now() - started) / (each * wanted.length);
  out.push(
    `all: ${all.right} of ${all.of} (${((100 * all.right) / all.of).toFixed(1)} %), ${all.wrong} wrong, ${all.asked} asked about, ${all.invented.length} proteins invented${all.invented.length ? ` (${all.invented.join(', ')})` : ''}; ${(ms / 1000).toFixed(1)} s a picture, drawing included`,
  );
  await shop.close();
  return out;
}
