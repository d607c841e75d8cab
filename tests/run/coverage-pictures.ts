// How pictures of labels are read: invented labels, drawn by a browser, read in the built extension's panel.
import { ways } from '../browser/drawn-labels.ts';
import { findChromium } from './browsers.ts';
import { run } from './steps.ts';

const pictures = 200;

/** Prints one line a way of printing; says so where there is no browser. Takes minutes. */
export async function printPictures(): Promise<void> {
  if (!findChromium()) return console.log('pictures of labels: skipped, no Chromium was found');
  const built = run('wxt', ['build', '--mode', 'localhost'], { quiet: true });
  if (built.status !== 0) throw new Error(`the build failed:\n${built.stdout}${built.stderr}`);
  const { lines } = await import('../bench/pictures.ts');
  const each = Math.ceil(pictures / Object.keys(ways).length);
  for (const line of await lines([], each)) console.log(`pictures of labels, ${line}`);
}

if (import.meta.main) await printPictures();
