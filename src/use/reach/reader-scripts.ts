import type { Site } from '../../store/remembered.ts';

/** Ids of the content scripts that may be registered. */
export const scriptIds = ['reader', 'reader-taught'];

/** The files a page is read with, in the order they run; a taught site has a word that says so first. */
export const filesFor = (taught: boolean): string[] => [
  ...(taught ? ['taught.js'] : []),
  'content-scripts/reader.js',
];

/** Match pattern of an origin, whatever its port: not every browser knows ports here. */
const patternOf = (origin: string) => {
  const { protocol, hostname } = new URL(origin);
  return `${protocol}//${hostname}/*`;
};
const patternsOf = (sites: readonly Site[]) => [...new Set(sites.map(({ origin }) => patternOf(origin)))];

const hasPort = ({ origin }: Site) => new URL(origin).port !== '';

/** Paused, and told from every other site by its pattern: no script of ours stands there. */
const isQuiet = (site: Site) => site.paused && !hasPort(site);

/** Whether the reader has to ask before it reads: a site paused by its port, or with lists at known places. */
export const isTaught = (site: Site) => !isQuiet(site) && (site.paused || site.listsAt.length > 0);

/** A content script as the browser is asked to register it: match patterns, files in the order they run. */
export type ReaderScript = {
  id: string;
  js: string[];
  matches: string[];
  excludeMatches: string[];
  allFrames: true;
  runAt: 'document_idle';
};

/**
 * The content scripts that should stand.
 *
 * @param granted match patterns of pages that may be read
 * @param sites what is remembered of sites
 */
export function scriptsFor(granted: string[], sites: readonly Site[]): ReaderScript[] {
  const [quiet, taught] = [patternsOf(sites.filter(isQuiet)), patternsOf(sites.filter(isTaught))];
  const script = (id: string, matches: string[], excludeMatches: string[]): ReaderScript => {
    const js = filesFor(id === 'reader-taught');
    return { id, js, matches, excludeMatches, allFrames: true, runAt: 'document_idle' };
  };
  return [script('reader', granted, [...quiet, ...taught]), script('reader-taught', taught, quiet)].filter(
    ({ matches }) => granted.length > 0 && matches.length > 0,
  );
}

/** Where scripts stand, as one text: the same for the same places, whatever the order they are told in. */
export const whereStanding = (
  scripts: readonly { id: string; matches?: string[] | undefined; excludeMatches?: string[] | undefined }[],
): string =>
  scripts
    .map(
      ({ id, matches, excludeMatches }) =>
        `${id} ${matches?.toSorted()} but ${excludeMatches?.toSorted() ?? ''}`,
    )
    .sort()
    .join('; ');
