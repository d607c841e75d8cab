import type { Good } from '../goods.ts';
import { plain, type Slots } from '../html.ts';

const about = (good: Good) =>
  `<p>Use as a ${good.kind.replace('-', ' ')}: as much as your lengths ask for, and no more.</p>`;

// Lists that stand open in the running text of the page.
export const open = {
  open: (good: Good): Slots => ({
    below: `<section class="sheet"><h2>How to use</h2>${about(good)}</section>
      <section class="sheet"><h2>Ingredients</h2><p>${plain(good.list)}</p></section>`,
  }),

  'heading-runs': (good: Good): Slots => ({
    below: `<div class="sheet"><h3>Description</h3><p>${plain(good.blurb)}</p><h3>Composition</h3><p>${plain(good.list)}</p>
      <h3>How to use</h3>${about(good)}<h3>Returns</h3><p>Unopened goods, within thirty days, at the counter.</p></div>`,
  }),

  'bold-first-line': (good: Good): Slots => ({
    below: `<div class="sheet rich"><p><strong>What it does</strong><br>${plain(good.blurb)}</p>
      <p><strong>Full ingredients (INCI)</strong><br>${plain(good.list)}</p>
      <p><strong>Please note</strong><br>Recipes change. The printed label is the one that counts.</p></div>`,
  }),

  'after-bullets': (good: Good): Slots => ({
    below: `<div class="sheet rich" hidden data-unfold="more"><p>• Feels like nothing<br>• Holds like something<br>• Stirred in small kettles<br><br>
      Ingredients: ${plain(good.list)}<br><br><b>Formulated without:</b> sulfates, parabens, mineral oil, hydrolyzed wheat protein</p></div>
      <p><button type="button" class="quiet" data-unfolds="more">Read more</button></p>`,
  }),

  paragraph: (good: Good): Slots => ({
    below: `<div class="sheet rich"><p>${plain(good.blurb)}</p><p>Ingredients: ${plain(good.list)}</p><p>Batch code on the crimp. Keep out of reach of small sailors.</p></div>`,
  }),

  'no-heading': (good: Good): Slots => ({
    below: `<div class="sheet rich"><p>${plain(good.blurb)}</p><p>${plain(good.list)}</p></div>`,
  }),

  'other-language': (good: Good): Slots => ({
    below: `<section class="sheet" lang="bg"><h3>Описание</h3><p>Масло за сухи краища.</p><h3>Състав</h3><p>${plain(good.list)}</p><h3>Начин на употреба</h3><p>Две капки върху влажна коса.</p></section>`,
  }),

  // Cyrillic letters that look Latin inside names, soft hyphens and a zero-width space: seen on real pages.
  'look-alikes': (good: Good): Slots => ({
    below: `<section class="sheet"><h2>Ingredients / INCI</h2><p>${plain(good.list)
      .replace('Glycerin', 'Gly\u00adcerin')
      .replace('Panthenol', 'Pаnthenol')
      .replace('Silk Amino', 'Silk\u00a0Amino')
      .replace('Citric', '\u200bCitric')}</p></section>`,
  }),

  'below-a-teaser': (good: Good): Slots => ({
    beside: `<div class="teaser"><h3>Key ingredients</h3><ul><li><b>Rose water</b>: calms the cuticle</li><li><b>Betaine</b>: draws water from sugar beet</li><li><b>Silk protein</b>: none of it, on purpose</li></ul></div>`,
    below: `<section class="sheet"><h2>All ingredients</h2><p>${plain(good.list)}</p></section>`,
  }),
};
