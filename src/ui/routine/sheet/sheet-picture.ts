import { pictureFile } from '../../charts/picture-file.ts';

const wide = 760;
const margin = 24;

const looks = (ink: string, quiet: string, paper: string) => `
  .page { box-sizing: border-box; width: ${wide}px; padding: ${margin}px; color: ${ink}; background: ${paper};
    font: 16px/1.4 system-ui, sans-serif; overflow-wrap: anywhere; }
  h1 { font: 600 26px/1.2 Georgia, serif; margin: 0 0 8px; }
  p, ul, ol, blockquote { margin: 0 0 10px; }
  ul, ol { padding-inline-start: 24px; }
  li { margin-block-end: 4px; }
  .plain-list { list-style: none; padding: 0; }
  .finding { display: flex; gap: 8px; }
  .hint { color: ${quiet}; font-size: 14px; }
  .sheet-steps strong { display: inline-block; }
  .sheet-steps strong::first-letter { text-transform: uppercase; }
  .plan-note { padding-inline-start: 12px; border-inline-start: 3px double ${ink}; white-space: pre-line; }
  .sr { display: none; }
`;

/** A sheet as one picture: its words and its drawings in the colours they have now. */
export function sheetPicture(sheet: HTMLElement): string {
  const style = getComputedStyle(sheet);
  const copy = sheet.cloneNode(true) as HTMLElement;
  const drawn = copy.querySelectorAll('svg');
  for (const [at, svg] of sheet.querySelectorAll('svg').entries()) {
    const { width, height } = svg.getBoundingClientRect();
    const file = new DOMParser().parseFromString(pictureFile(svg), 'image/svg+xml').documentElement;
    const scale = Math.min(1, (wide - 2 * margin) / Math.max(1, width));
    file.setAttribute('width', String(width * scale));
    file.setAttribute('height', String(height * scale));
    drawn[at]!.replaceWith(document.importNode(file, true));
  }
  const page = document.createElement('div');
  page.className = 'page';
  page.lang = sheet.lang;
  page.dir = sheet.dir;
  page.append(...copy.childNodes);
  const css = document.createElement('style');
  css.textContent = looks(
    style.color,
    getComputedStyle(sheet.querySelector('.hint') ?? sheet).color,
    getComputedStyle(document.body).backgroundColor,
  );
  const height = heightOf(page, css);
  page.prepend(css);
  const box = `width="${wide * 2}" height="${height * 2}" viewBox="0 0 ${wide} ${height}"`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" ${box}><foreignObject width="${wide}" height="${height}">` +
    `${new XMLSerializer().serializeToString(page)}</foreignObject></svg>`
  );
}

/** As tall as it will be, away from what the panel's own styles would do to it. */
function heightOf(page: HTMLElement, css: HTMLElement): number {
  const host = document.createElement('div');
  host.style.cssText = 'position: fixed; inset-inline-start: -2000px; visibility: hidden';
  const room = host.attachShadow({ mode: 'closed' });
  room.append(css.cloneNode(true), page);
  document.body.append(host);
  const { height } = page.getBoundingClientRect();
  host.remove();
  return Math.ceil(height) + 1;
}
