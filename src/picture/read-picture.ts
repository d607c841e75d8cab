import { createWorker, type Page, PSM } from 'tesseract.js';
import type { PictureProblem, PictureRead } from '../core/picture/check-names.ts';
import { type Box, joinLines, type PrintedLine, type PrintedWord } from '../core/picture/join-lines.ts';
import { printedWord } from '../core/picture/misread-letters.ts';
import { prepare } from './prepare.ts';

export type HowToRead = {
  signal: AbortSignal;
  /** Told again and again how much is done, 0…1. */
  onProgress(done: number): void;
  /** The part of the picture to read. */
  part?: Box;
};

const quality = 0.85;
const surely = 70; // of 100, by the reader of print
const enough = 0.4; // of all letters

/**
 * Print of a picture, read in a worker of our own files (`folder` in the extension); nothing is asked of anybody
 * else. Stopped by the signal, it throws the signal's reason.
 */
export async function readPicture(
  file: Blob,
  folder: string,
  how: HowToRead,
): Promise<(PictureRead & { file: Blob }) | PictureProblem> {
  const first = await readAs(file, folder, how, false);
  if (typeof first === 'string') return first;
  // Print that is upside down is read as rubbish.
  const second = wellRead(first.blocks) < enough ? await readAs(file, folder, how, true) : first;
  const better =
    typeof second !== 'string' && letters(second.blocks) > letters(first.blocks) ? second : first;
  const { blocks, seen, lineHeight, edge } = better;
  const kept = await new Promise<Blob | null>((done) => seen.toBlob(done, 'image/jpeg', quality));
  how.signal.throwIfAborted();
  if (!kept) return 'not-read';
  const joined = joinLines(blocks);
  const { width, height } = seen;
  return {
    ...joined,
    file: kept,
    shown: URL.createObjectURL(kept),
    width,
    height,
    print: { lineHeight, edge },
  };
}

async function readAs(file: Blob, folder: string, how: HowToRead, over: boolean) {
  const prepared = await prepare(file, how.part, over).catch(() => undefined);
  how.signal.throwIfAborted();
  if (!prepared) return 'no-picture';
  const pages = await read(prepared.print, prepared.columns, folder, how);
  return pages ? { ...prepared, blocks: pages.flatMap(linesOf) } : 'not-read';
}

/** Letters of the words that are surely read. */
const letters = (blocks: readonly PrintedLine[][]) =>
  lettersOf(blocks.flat(2).filter(({ sure }) => sure >= surely));

const lettersOf = (words: readonly PrintedWord[]) => words.reduce((sum, { text }) => sum + text.length, 0);

/** Their share of all letters. */
const wellRead = (blocks: readonly PrintedLine[][]) =>
  letters(blocks) / Math.max(1, lettersOf(blocks.flat(2)));

/** The whole print, or each of its columns in turn. */
async function read(
  print: HTMLCanvasElement,
  columns: readonly Box[],
  folder: string,
  { signal, onProgress }: HowToRead,
) {
  const pages: Page[] = [];
  let fail = (_: unknown) => {};
  const stopped = new Promise<never>((_, reject) => {
    fail = reject;
    signal.addEventListener('abort', () => reject(signal.reason), { once: true });
  });
  stopped.catch(() => undefined);
  const starting = createWorker('eng', 1, {
    workerPath: `${folder}worker.min.js`,
    corePath: `${folder}tesseract-core-simd-lstm.js`,
    langPath: folder.replace(/\/$/, ''),
    workerBlobURL: false,
    gzip: true,
    cacheMethod: 'none',
    logger: ({ status, progress }) =>
      status === 'recognizing text' && onProgress((pages.length + progress) / Math.max(1, columns.length)),
    errorHandler: (problem: unknown) => fail(problem),
  });
  try {
    const worker = await Promise.race([starting, stopped]);
    await worker.setParameters({ tessedit_pageseg_mode: PSM.AUTO, user_defined_dpi: '300' });
    const parts = columns.map(({ left, top, right, bottom }) => ({
      rectangle: { left, top, width: right - left, height: bottom - top },
    }));
    for (const part of parts.length > 0 ? parts : [{}]) {
      const asked = worker.recognize(print, part, { blocks: true, text: false });
      pages.push((await Promise.race([asked, stopped])).data);
    }
    return pages;
  } catch {
    signal.throwIfAborted();
    return undefined;
  } finally {
    void starting.then((worker) => worker.terminate()).catch(() => undefined);
  }
}

/** Paragraphs as lines of words. */
const linesOf = ({ blocks }: Page) =>
  (blocks ?? []).flatMap(({ paragraphs }) =>
    paragraphs.map(({ lines }) =>
      lines.map(({ words }) =>
        words
          .map(({ text, confidence, bbox }) => ({
            text: printedWord(text.trim()),
            sure: confidence,
            box: { left: bbox.x0, top: bbox.y0, right: bbox.x1, bottom: bbox.y1 },
          }))
          .filter(({ text }) => text !== ''),
      ),
    ),
  );
