import { readdirSync, readFileSync } from 'node:fs';
import preact from '@preact/preset-vite';
import type {} from '@wxt-dev/auto-icons';
import { minify } from 'terser';
import { defineConfig } from 'wxt';

/** What the worker would else work out of the dictionary each time it wakes is written into its file. */
const writtenAhead = {
  name: 'written-ahead',
  async load(id: string) {
    if (!/knowing\/written\.ts$/.test(id)) return undefined;
    const { writeAhead } = await import('./entrypoints/background/knowing/write-ahead.ts');
    return `export const written = ${JSON.stringify(writeAhead())};`;
  },
};

/**
 * What starts each file, without what never happens here: calls of WXT's logger, which prints nothing in
 * production, and in scripts brought into a page the watch over a `main` that could fail or settle late.
 */
const plainStart = {
  name: 'plain-start',
  transform: (code: string, id: string) => {
    if (/define-unlisted-script/.test(id)) return 'export const defineUnlistedScript = (main) => ({ main });';
    if (!/virtual:wxt-.*-entrypoint/.test(id)) return undefined;
    const needs = code.match(/^import (?:definition|\{ ContentScriptContext \}) .*$/gm)?.join('\n');
    if (/unlisted/.test(id)) return `${needs}\ndefinition.main();`;
    if (/content-script/.test(id)) return `${needs}\ndefinition.main(new ContentScriptContext());`;
    return code.replace(/^\s*logger\.\w+\(.*\);$/gm, '');
  },
};

/** Preact sets markup through one property that no view of ours uses: there it is set as text, and markup cannot be. */
const noMarkup = {
  name: 'no-markup',
  transform: (code: string, id: string) =>
    /\bpreact\b.*\bpreact\.\w*js/.test(id)
      ? code.replace(/(\w+)\.innerHTML=/g, '$1.textContent=')
      : undefined,
};

/** What tells the build how to register the reader; in the page nobody asks for it. */
const builtWith = /\bregistration:`runtime`,cssInjectionMode:`manual`,noScriptStartedPostMessage:!0,/;

/** What a shop's page has to load is made as small as can be; for the rest Vite's own way is small enough, and quick. */
const tightScripts = {
  name: 'tight-scripts',
  enforce: 'post' as const,
  async generateBundle(_: unknown, bundle: Record<string, { type: string; code?: string }>) {
    for (const [name, chunk] of Object.entries(bundle))
      if (chunk.code && /\b(?:reader|painter|shelf|picker|taught)\.js$/.test(name)) {
        const { code } = await minify(chunk.code.replace(builtWith, ''), {
          ecma: 2020,
          // Nothing of ours counts a function's parameters, changes by being looked at, or stands in for a built-in.
          compress: { passes: 3, unsafe_arrows: true, keep_fargs: false, pure_getters: true, unsafe: true },
        });
        chunk.code = code ?? chunk.code;
      }
  },
};

/** The reader of tables can also fetch them by address, which no view of ours asks for: there it has nothing to ask with. */
const noFetching = {
  name: 'no-fetching',
  transform: (code: string, id: string) =>
    /\bpapaparse\b/.test(id) ? code.replace(/new XMLHttpRequest\b/g, 'null') : undefined,
};

/**
 * What reads print, as we need it: it makes no code from text, which none of our pages may, knows no address of
 * elsewhere, and asks only for its own files.
 */
const ownFilesOnly = (code: string) =>
  code
    .replace(
      /(?:new )?\bFunction\((["'])(?:return this|r\1, ?\1regeneratorRuntime = r)\1\)\(\w*\)/g,
      'globalThis',
    )
    .replaceAll('https://cdn.jsdelivr.net', '')
    .replace(/\bXMLHttpRequest\b/g, 'undefined')
    .replace('await fetch(image)', 'null');
const printFromOwnFiles = {
  name: 'print-from-own-files',
  transform: (code: string, id: string) =>
    /tesseract\.js.*spawnWorker/.test(id)
      ? 'module.exports = ({ workerPath }) => new Worker(workerPath);'
      : /regenerator-runtime|tesseract\.js\b/.test(id)
        ? ownFilesOnly(code)
        : undefined,
};

/** What our own pages may load and do: their own files, pictures made in them, and nothing from anywhere else. */
const pagesMay = [
  "default-src 'none'",
  // Compiled code of our own files: what reads print in pictures.
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "style-src 'self'",
  "connect-src 'self'",
  "img-src 'self' data: blob:",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** What reads print in pictures, as its packages bring it; loaded by a page of ours when a picture is to be read. */
const printReader = [
  'tesseract.js/dist/worker.min.js',
  'tesseract.js-core/tesseract-core-simd-lstm.js',
  'tesseract.js-core/tesseract-core-simd-lstm.wasm',
  '@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz',
];

/** What the browser itself says of us, in each language there are words for. */
async function locales() {
  const { english } = await import('./src/ui/words/index.ts');
  const { browserWords } = await import('./src/ui/describe/browser-words.ts');
  const folder = `${import.meta.dirname}/src/assets/words`;
  const others = readdirSync(folder).map((file) => ({
    language: file.replace('.json', ''),
    words: JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')),
  }));
  return [{ language: 'en', words: english }, ...others].map(({ language, words }) => ({
    contents: browserWords(words),
    relativeDest: `_locales/${language.replace('-', '_')}/messages.json`,
  }));
}

/**
 * Two build modes. The shipped one asks for nothing beyond the permissions below and reads a page on a
 * press or where the reader allowed it; `--mode localhost` reads pages on localhost by itself, for the
 * demo and most end-to-end tests.
 */
export default defineConfig({
  imports: false,
  manifestVersion: 3,
  publicDir: 'src/assets',
  modules: ['@wxt-dev/auto-icons'],
  autoIcons: { baseIconPath: 'src/assets/icon.svg', sizes: [16, 32, 48, 96, 128] },
  targetBrowsers: ['chrome', 'firefox'],
  hooks: {
    'build:publicAssets': async (_, files) => {
      for (const file of printReader) {
        const absoluteSrc = `${import.meta.dirname}/node_modules/${file}`;
        const relativeDest = `print-reader/${file.split('/').at(-1)}`;
        if (file.endsWith('.js'))
          files.push({ contents: ownFilesOnly(readFileSync(absoluteSrc, 'utf8')), relativeDest });
        else files.push({ absoluteSrc, relativeDest });
      }
      files.push(...(await locales()));
    },
  },
  vite: ({ mode, command }) => ({
    plugins: [
      preact(),
      command === 'build' && writtenAhead,
      printFromOwnFiles,
      mode === 'production' && plainStart,
      mode === 'production' && noMarkup,
      noFetching,
      mode === 'production' && tightScripts,
    ],
    resolve: {
      alias: {
        'wxt/utils/content-script-context': `${import.meta.dirname}/entrypoints/reader.content/context.ts`,
      },
    },
    build: { target: 'es2023', cssTarget: ['chrome140', 'firefox140'] },
  }),
  manifest: ({ mode, browser }) => ({
    name: 'Strandline',
    default_locale: 'en',
    description: '__MSG_about__',
    permissions: ['storage', 'activeTab', 'scripting', 'contextMenus'],
    ...(mode === 'localhost'
      ? { host_permissions: ['http://localhost/*'] }
      : { optional_host_permissions: ['https://*/*'] }),
    commands: {
      'jump-to-strip': {
        suggested_key: { default: 'Alt+Shift+S' },
        description: '__MSG_jumpToStrip__',
      },
      // Alt+Shift+R is Chromium's own: it would be left unassigned, without a word.
      'read-shelf': {
        suggested_key: { default: 'Alt+Shift+E' },
        description: '__MSG_readShelf__',
      },
    },
    content_security_policy: { extension_pages: pagesMay },
    // What is kept from a private window would be seen outside it.
    incognito: 'not_allowed',
    action: { default_title: '__MSG_button__' },
    ...(browser === 'firefox'
      ? {
          browser_specific_settings: {
            gecko: {
              id: 'strandline@strandline.example',
              strict_min_version: '142.0',
              data_collection_permissions: { required: ['none'] },
            },
          },
        }
      : { minimum_chrome_version: '140' }),
  }),
});
