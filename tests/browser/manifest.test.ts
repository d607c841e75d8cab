// Both manifests as they ship, word for word: what is asked, allowed and forbidden is decided here and nowhere else.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { weights } from '../bench/weight.ts';
import { root } from '../run/steps.ts';

const manifest = (build: string) =>
  JSON.parse(readFileSync(join(root, '.output', build, 'manifest.json'), 'utf8')) as Record<string, unknown>;

const both = {
  manifest_version: 3,
  name: 'Strandline',
  default_locale: 'en',
  description: '__MSG_about__',
  version: '0.1.0',
  icons: {
    16: 'icons/16.png',
    32: 'icons/32.png',
    48: 'icons/48.png',
    96: 'icons/96.png',
    128: 'icons/128.png',
  },
  optional_host_permissions: ['https://*/*'],
  content_security_policy: {
    extension_pages:
      "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self' data: blob:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  },
  incognito: 'not_allowed',
  commands: {
    'jump-to-strip': {
      suggested_key: { default: 'Alt+Shift+S' },
      description: '__MSG_jumpToStrip__',
    },
    'read-shelf': {
      suggested_key: { default: 'Alt+Shift+E' },
      description: '__MSG_readShelf__',
    },
  },
  action: { default_title: '__MSG_button__' },
};

it('Chromium', () => {
  expect(manifest('chrome-mv3')).toEqual({
    ...both,
    minimum_chrome_version: '140',
    permissions: ['storage', 'activeTab', 'scripting', 'contextMenus', 'sidePanel'],
    background: { service_worker: 'background.js' },
    side_panel: { default_path: 'sidepanel.html' },
  });
});

it('Firefox', () => {
  expect(manifest('firefox-mv3')).toEqual({
    ...both,
    permissions: ['storage', 'activeTab', 'scripting', 'contextMenus'],
    background: { scripts: ['background.js'] },
    browser_specific_settings: {
      gecko: {
        id: 'strandline@strandline.example',
        strict_min_version: '142.0',
        data_collection_permissions: { required: ['none'] },
      },
    },
    sidebar_action: { default_panel: 'sidepanel.html', default_title: 'Strandline' },
  });
});

it('what the browser says of it stands in each language, short enough for the stores', () => {
  const asked = JSON.stringify(both).match(/(?<=__MSG_)\w+(?=__)/g)!;
  const folder = join(root, '.output', 'chrome-mv3', '_locales');
  const languages = readdirSync(folder);
  expect(languages.toSorted()).toEqual(['de', 'en', 'es', 'fr', 'pt_BR']);
  for (const language of languages) {
    const said = JSON.parse(readFileSync(join(folder, language, 'messages.json'), 'utf8'));
    expect(Object.keys(said).toSorted()).toEqual(asked.toSorted());
    // The Chrome Web Store takes no description of more than 132 letters.
    expect(said.about.message.length).toBeLessThanOrEqual(132);
  }
});

it('what a page has to load keeps its weight: 15 kB with a list, half of it before one', () => {
  const { reader, painter } = weights();
  expect(reader).toBeLessThanOrEqual(7500);
  expect(reader + painter).toBeLessThanOrEqual(15_000);
});
