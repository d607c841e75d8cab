// Labels that nobody wrote: whatever is printed is read, or told why not.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { type ReadAs, type ReadOptions, readLabel } from '../../src/core/reading/reading.ts';
import { tried } from '../run/fuzz-runs.ts';

const lookup = createLookup(entries, patterns, limits);
const options = (readAs: ReadAs = {}): ReadOptions => ({ use: 'leave-on', readAs });

/** Reads it, and looks at what every reading promises. */
function sound(text: string, given = options()): void {
  const reading = readLabel(text, lookup, given);
  for (const { raw, share } of reading.mentions) {
    expect(raw).not.toBe('');
    expect(share.min).toBeGreaterThanOrEqual(0);
    expect(share.max).toBeLessThanOrEqual(100);
    expect(share.min).toBeLessThanOrEqual(share.max);
  }
}

const names = entries.slice(0, 400).map(({ name }) => name);
// Past failures stay.
const odd = [
  'constructor',
  'toString',
  '__proto__',
  'hasOwnProperty',
  'valueOf',
  'then',
  '',
  '%',
  '0',
  '\ud800',
];

describe('is read', () => {
  it.each(odd)('%s as a name', (name) => sound(`Aqua, ${name}, Glycerin, Hydrolyzed Silk`));
  it('names of Object as what the reader said', () => {
    const readAs = JSON.parse('{"__proto__":"Glycerin","Mystery":{"as":"protein"}}') as ReadAs;
    sound(`Aqua, ${odd.join(', ')}, Mystery`, options(readAs));
    const [, name] = readLabel('Aqua, constructor', lookup, options()).mentions;
    expect(name?.found.how).toBe('none');
  });
});

const letter = fc.constantFrom(
  ...'ab 1,;/()[]{}*%.-\n\t\v\u00a0\u200b·•&+éßК語\0',
  'may contain',
  'Ingredients:',
  '<b>',
  '±',
);
const part = fc.oneof(
  fc.constantFrom(...names),
  fc.constantFrom(...odd),
  fc.string({ unit: letter, maxLength: 12 }),
  fc.string({ unit: 'binary', maxLength: 12 }),
);
const join = fc.constantFrom(', ', ',', ' / ', '; ', '\n', ' • ', ' ', ' (', ') ', ' & ', '. ');

it('never throws, whatever is printed', () =>
  tried(
    'labels',
    fc.property(fc.array(fc.tuple(part, join), { maxLength: 25 }), (parts) => sound(parts.flat().join(''))),
    1500,
  ));
