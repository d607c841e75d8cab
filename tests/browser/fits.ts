// What does not fit where it stands, measured from boxes of letters: for checks at any width, language and direction.
import type { Page } from 'playwright-core';

/**
 * Letters outside the view or their own box, cut-off letters, words broken where nothing breaks them, and words of a
 * drawing that stand on each other; one line each. `root` is a CSS selector.
 */
export const unfit = (page: Page, root = 'body'): Promise<string[]> =>
  page.evaluate((within) => {
    const found = new Set<string>();
    const wide = document.documentElement;
    if (wide.scrollWidth > wide.clientWidth)
      found.add(`the page is ${wide.scrollWidth - wide.clientWidth} px too wide`);
    const scrolls = (each: Element) => /auto|scroll/.test(getComputedStyle(each).overflowX);
    const cuts = (each: Element) => /hidden|clip/.test(getComputedStyle(each).overflowX);
    const drawn = (each: Element) => {
      const { borderLeftWidth, borderRightWidth, borderTopWidth, backgroundColor, display } =
        getComputedStyle(each);
      return (
        display !== 'inline' &&
        ([borderLeftWidth, borderRightWidth, borderTopWidth].every((width) => width !== '0px') ||
          !/, 0\)$|transparent/.test(backgroundColor))
      );
    };
    const upTo = (from: Element | null, is: (each: Element) => boolean): Element | null => {
      for (let at = from; at; at = at.parentElement) if (is(at)) return at;
      return null;
    };
    const nameOf = (each: Element) =>
      `${each.localName}${[...each.classList].map((name) => `.${name}`).join('')}`;
    const range = document.createRange();
    const beyond = (its: DOMRect, box: DOMRect) =>
      Math.max(box.left - its.left, its.right - box.right, box.top - its.top, its.bottom - box.bottom);
    const inDrawings = new Map<Element, { text: string; box: DOMRect }[]>();
    const letters = document.createTreeWalker(document.querySelector(within)!, NodeFilter.SHOW_TEXT);
    for (let node = letters.nextNode(); node; node = letters.nextNode()) {
      const parent = node.parentElement!;
      const text = node.textContent!;
      if (
        !text.trim() ||
        parent.closest('.print-sheet, option, script, style, title, desc') ||
        !parent.checkVisibility()
      )
        continue;
      if (upTo(parent, (each) => getComputedStyle(each).clipPath !== 'none')) continue; // for screen readers alone
      const said = `"${text.trim().slice(0, 50)}" in ${nameOf(parent.closest('[class]') ?? parent)}`;
      range.selectNodeContents(node);
      const [hides, holds, moves] = [upTo(parent, cuts), upTo(parent, drawn), upTo(parent, scrolls)];
      const svg = parent.closest('svg');
      // Letters that a drawing presses together are where the drawing says.
      for (const box of svg ? [parent.getBoundingClientRect()] : range.getClientRects()) {
        if (box.width === 0) continue;
        if (!moves && (box.left < -1 || box.right > innerWidth + 1)) found.add(`outside the view: ${said}`);
        if (hides && beyond(box, hides.getBoundingClientRect()) > 1.5) found.add(`cut off: ${said}`);
        if (
          !svg &&
          holds &&
          (!moves || (moves !== holds && moves.contains(holds))) &&
          beyond(box, holds.getBoundingClientRect()) > 1.5
        )
          found.add(`outside ${nameOf(holds)}: ${said}`);
        if (svg) inDrawings.set(svg, [...(inDrawings.get(svg) ?? []), { text, box }]);
      }
      for (const { 0: word, index } of text
        .replace(/\S{25,}/g, (all) => ' '.repeat(all.length))
        .matchAll(/[\p{L}\p{M}\p{N}’']{2,}/gu)) {
        range.setStart(node, index);
        range.setEnd(node, index + word.length);
        const lines = new Set(
          [...range.getClientRects()].filter(({ width }) => width > 0).map(({ top }) => Math.round(top)),
        );
        if (lines.size > 1) found.add(`broken over ${lines.size} lines: ${word} (${said})`);
      }
    }
    for (const [svg, all] of inDrawings)
      for (const [at, one] of all.entries())
        for (const other of all.slice(at + 1))
          if (
            one.text !== other.text &&
            Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left) > 2 &&
            Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top) > 3
          )
            found.add(`"${one.text}" stands on "${other.text}" in ${nameOf(svg)}`);
    const pen = document.createElement('canvas').getContext('2d')!;
    for (const select of document.querySelectorAll<HTMLSelectElement>(`${within} select`)) {
      if (!select.checkVisibility()) continue;
      const style = getComputedStyle(select);
      pen.font = style.font;
      const words = select.selectedOptions[0]?.textContent ?? '';
      const room =
        select.clientWidth -
        Number.parseFloat(style.paddingLeft) -
        Number.parseFloat(style.paddingRight) -
        18;
      if (pen.measureText(words).width > room) found.add(`cut off: "${words}" in select`);
    }
    return [...found];
  }, root);
