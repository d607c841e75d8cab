// Both manifests as they ship, word for word: what is asked, allowed and forbidden is decided here and nowhere else.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { weights } from '../bench/weight.ts';
import { root } from '../run/steps.ts';

const manifest = (build: string) =>
  JSON.parse(readFileSync(join(root, '.output', build, 'manifest.json'), 'utf8')) as Record<string, unknown>;

const both = {
  manifest_version: 3,
  name: 'Strandline',
  description:
    'Reads ingredient lists where they are printed, sees protein and moisture, and helps plan a balanced wash day. All on your machine.',
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
      description: 'Jump to the strip by the ingredient list',
    },
    'read-shelf': {
      suggested_key: { default: 'Alt+Shift+E' },
      description: 'Read this shelf: asks this shop for its products’ pages',
    },
  },
  action: { default_title: 'Strandline: read this page' },
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

it('what a page has to load keeps its weight: 15 kB with a list, half of it before one', () => {
  const { reader, painter } = weights();
  expect(reader).toBeLessThanOrEqual(7500);
  expect(reader + painter).toBeLessThanOrEqual(15_000);
});
