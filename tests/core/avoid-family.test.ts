import { expect, it } from 'vitest';
import { entries, limits, patterns } from '../../dictionary/index.ts';
import { practice } from '../../dictionary/practice.ts';
import type { Avoid } from '../../src/core/hair/head.ts';
import { allowanceOf } from '../../src/core/hair/tolerance.ts';
import { fitProduct } from '../../src/core/judge/fit.ts';
import { createLookup } from '../../src/core/names/lookup.ts';
import { readLabel } from '../../src/core/reading/reading.ts';
import { madeHead } from '../keeping/made.ts';

const lookup = createLookup(entries, patterns, limits);
const answer = (label: string, avoid: Omit<Avoid, 'id' | 'reacted'>) => {
  const head = madeHead({ avoid: [{ id: 'a', reacted: false, ...avoid }] });
  const allowance = allowanceOf(head, practice.allowance, { today: '2026-03-01', log: [] });
  const reading = readLabel(label, lookup);
  const findings = fitProduct({ reading, kind: 'gel', use: 'leave-on' }, { head, allowance, practice });
  return findings.find(({ rule }) => rule === 'avoid-list')?.answer;
};

it.each<[string, Omit<Avoid, 'id' | 'reacted'>, string]>([
  ['Aqua, Alcohol Denat., Glycerin', { role: 'drying-alcohol' }, 'does-not-suit'],
  ['Aqua, Cetearyl Alcohol, Glycerin', { role: 'drying-alcohol' }, 'suits'], // a fatty alcohol is none
  ['Aqua, Phenoxyethanol', { role: 'preservative' }, 'does-not-suit'],
  ['Aqua, Hydrolyzed Wheat Protein', { family: 'wheat' }, 'does-not-suit'],
  ['Aqua, Cocodimonium Hydroxypropyl Hydrolyzed Corn/Wheat Protein', { family: 'wheat' }, 'does-not-suit'],
  ['Aqua, Hydrolyzed Vegetable Protein', { family: 'wheat' }, 'cannot-tell'],
  ['Aqua, Hydrolyzed Vegetable Protein', { family: 'milk' }, 'suits'],
  ['Aqua, Hydrolyzed Collagen', { family: 'fish' }, 'cannot-tell'],
  ['Aqua, Hydrolyzed Marine Collagen', { family: 'fish' }, 'does-not-suit'],
  ['Aqua, Fagopyrum Esculentum (Buckwheat) Seed Extract', { family: 'wheat' }, 'suits'],
  ['Aqua, Fragrance', { name: 'Parfum' }, 'does-not-suit'],
  ['Aqua, Glycerin', { name: 'Parfum' }, 'suits'],
])('%s against %j', (label, avoid, wanted) => expect(answer(label, avoid)).toBe(wanted));
