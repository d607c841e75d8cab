import type { Page } from 'playwright-core';

export type Overlap = { glyph: string; letter: string; by: number };
export type GlyphReport = { glyphs: number; shown: number; overlaps: Overlap[]; far: string[] };

/**
 * Holds every glyph on a page against the ink of every letter of its lists. Ink boxes are measured letter by
 * letter on a canvas in the page's own font, apart from the painter's code. `far` names glyphs that do not
 * stand by the end of their name.
 */
export const glyphReport = (page: Page): Promise<GlyphReport> =>
  page.evaluate(() => {
    const brush = document.createElement('canvas').getContext('2d')!;
    const range = document.createRange();
    const letters: { letter: string; left: number; right: number; top: number; bottom: number }[] = [];
    for (const list of document.querySelectorAll('.list')) {
      const walker = document.createTreeWalker(list, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode() as Text | null; node; node = walker.nextNode() as Text | null) {
        const style = getComputedStyle(node.parentElement!);
        brush.font = style.font;
        for (let i = 0; i < node.length; i++) {
          const shown = style.textTransform === 'uppercase' ? node.data[i]!.toUpperCase() : node.data[i]!;
          if (!shown.trim()) continue;
          range.setStart(node, i);
          range.setEnd(node, i + 1);
          const at = range.getBoundingClientRect();
          if (at.width === 0) continue;
          const ink = brush.measureText(shown);
          const scale = at.height / (ink.fontBoundingBoxAscent + ink.fontBoundingBoxDescent);
          const baseline = at.top + ink.fontBoundingBoxAscent * scale;
          letters.push({
            letter: `${shown} in ${node.data.slice(Math.max(0, i - 8), i + 8)}`,
            left: at.left,
            right: at.right,
            top: baseline - ink.actualBoundingBoxAscent * scale,
            bottom: baseline + ink.actualBoundingBoxDescent * scale,
          });
        }
      }
    }
    const root = document.querySelector('[data-strandline]')!.shadowRoot!;
    const report: GlyphReport = { glyphs: 0, shown: 0, overlaps: [], far: [] };
    for (const name of root.querySelectorAll<HTMLElement>('.name')) {
      report.glyphs++;
      const glyph = name.querySelector('svg')!;
      const box = glyph.getBoundingClientRect();
      if (box.width === 0) continue;
      report.shown++;
      const at = name.getBoundingClientRect();
      const label = name.getAttribute('aria-label') ?? '';
      const end = getComputedStyle(name).direction === 'rtl' ? at.left : at.right;
      if (
        box.left - end > 6 ||
        end - box.right > at.width / 2 ||
        box.bottom < at.top - 14 ||
        box.top > at.bottom
      )
        report.far.push(label);
      for (const letter of letters) {
        const wide = Math.min(box.right, letter.right) - Math.max(box.left, letter.left);
        const high = Math.min(box.bottom, letter.bottom) - Math.max(box.top, letter.top);
        if (wide > 0.6 && high > 0.6)
          report.overlaps.push({
            glyph: label,
            letter: letter.letter,
            by: Math.round(Math.min(wide, high) * 10) / 10,
          });
      }
    }
    return report;
  });
