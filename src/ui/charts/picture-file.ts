const shown = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'font-family',
  'font-size',
  'font-weight',
  'font-style',
  'opacity',
  'paint-order',
];

/** A drawn SVG as a file of its own: every colour and font as it is computed now, on the paper of this scheme. */
export function pictureFile(svg: SVGSVGElement): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const from = [svg, ...svg.querySelectorAll('*')];
  const to = [copy, ...copy.querySelectorAll('*')];
  for (const [i, element] of from.entries()) {
    const style = getComputedStyle(element);
    const target = to[i]!;
    target.removeAttribute('class');
    for (const name of shown) {
      const value = style.getPropertyValue(name);
      if (value) target.setAttribute(name, value);
    }
  }
  const [x = 0, y = 0, width = 0, height = 0] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number);
  const paper = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  for (const [name, value] of Object.entries({ x, y, width, height }))
    paper.setAttribute(name, String(value));
  paper.setAttribute('fill', getComputedStyle(svg).getPropertyValue('background-color') || '#fff');
  copy.insertBefore(paper, copy.querySelector(':scope > :not(title, desc, defs)'));
  copy.setAttribute('width', String(width * 2));
  copy.setAttribute('height', String(height * 2));
  return new XMLSerializer().serializeToString(copy);
}
