import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const css = ['tokens.css', 'panel.css']
  .map((file) => readFileSync(resolve(import.meta.dirname, '../../src/ui', file), 'utf8'))
  .join('');
const tokens = Object.fromEntries(
  [...css.matchAll(/--([\w-]+):\s*light-dark\((#\w+),\s*(#\w+)\)/g)].map(([, name, light, dark]) => [
    name!,
    { light: light!, dark: dark! },
  ]),
);

/** Relative luminance and contrast as WCAG 2.2 defines them (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance). */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
}

it('contrast is computed as published', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#ffffff', '#ffffff')).toBe(1);
  // A pair that is often printed as just passing: #767676 on white, 4.54.
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

describe.each(['light', 'dark'] as const)('%s', (scheme) => {
  const of = (name: string) => tokens[name]![scheme];
  const grounds = ['paper', 'raised', 'wash'];
  const pairs = (inks: string[], on: string[]) => inks.flatMap((ink) => on.map((ground) => [ink, ground]));

  it.each(pairs(['ink'], grounds))('%s on %s reads: 7:1', (ink, ground) => {
    expect(contrast(of(ink!), of(ground!))).toBeGreaterThanOrEqual(7);
  });
  it.each(pairs(['quiet', 'plum', 'teal', 'ochre'], ['paper', 'raised']))(
    '%s on %s reads: 4.5:1',
    (ink, ground) => {
      expect(contrast(of(ink!), of(ground!))).toBeGreaterThanOrEqual(4.5);
    },
  );
  it.each(pairs(['edge', 'teal', 'ink'], ['paper', 'raised']))(
    '%s on %s is seen as an edge or a focus ring: 3:1',
    (edge, ground) => {
      expect(contrast(of(edge!), of(ground!))).toBeGreaterThanOrEqual(3);
    },
  );
});
