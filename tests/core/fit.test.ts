import { describe, expect, it } from 'vitest';
import type { Head } from '../../src/core/hair/head.ts';
import { answerOf, fitProduct } from '../../src/core/judge/fit.ts';
import type { ProductKind } from '../../src/core/product/product.ts';
import {
  allowance,
  careful,
  fatty,
  glutamate,
  glycerin,
  type Hand,
  hand,
  head,
  middling,
  oatExtract,
  peptide,
  practice,
  silk,
  thirsty,
  unknown,
  water,
  wheat,
} from './hand-read.ts';

const answer = (parts: Hand[], of: Head | undefined, kind: ProductKind = 'leave-in') =>
  answerOf(
    fitProduct(
      { reading: hand(parts), kind },
      { practice, ...(of && { head: of, allowance: allowance(of) }) },
    ),
  );

describe('one product against one head', () => {
  it.each<[string, Hand[], Head | undefined, ProductKind, string, string]>([
    ['protein-free suits anyone', [water, glycerin, fatty], undefined, 'gel', 'suits', 'protein-dose.free'],
    ['protein-free suits careful hair', [water, glycerin], careful, 'gel', 'suits', 'protein-dose.free'],
    [
      'large on coarse, low-porosity hair',
      [water, fatty, wheat],
      careful,
      'gel',
      'does-not-suit',
      'large-proteins.unwelcome',
    ],
    [
      'large rinsed out is still unwelcome there',
      [water, wheat],
      careful,
      'conditioner',
      'does-not-suit',
      'large-proteins.unwelcome',
    ],
    [
      'a rinsed trace of large',
      [water, fatty, { ...wheat, share: { min: 0, max: 1 } }],
      careful,
      'conditioner',
      'suits',
      'large-proteins.trace-rinsed',
    ],
    [
      'a trace of large that stays',
      [water, { ...wheat, share: { min: 0, max: 1 } }],
      careful,
      'gel',
      'cannot-tell',
      'large-proteins.trace-stays',
    ],
    [
      'large on fine, porous, bleached hair',
      [water, wheat],
      thirsty,
      'gel',
      'suits',
      'large-proteins.welcome',
    ],
    [
      'large leads and stays, middling hair',
      [water, wheat],
      middling,
      'gel',
      'does-not-suit',
      'large-proteins.sparing-leads',
    ],
    [
      'large leads but is rinsed out',
      [water, wheat],
      middling,
      'conditioner',
      'suits',
      'large-proteins.sparing',
    ],
    [
      'protein and moisture together',
      [water, glycerin, silk],
      middling,
      'cream',
      'suits',
      'protein-dose.with-moisture',
    ],
    [
      'protein, hair not described',
      [water, silk],
      undefined,
      'gel',
      'cannot-tell',
      'protein-dose.hair-unknown',
    ],
    [
      'protein that stays on careful hair',
      [water, silk],
      careful,
      'gel',
      'cannot-tell',
      'protein-dose.leave-ons-free',
    ],
    ['named peptides are no dose', [water, peptide], careful, 'gel', 'suits', 'protein-dose.peptides-only'],
    [
      'glutamate surfactants are no dose',
      [water, glutamate],
      careful,
      'cleanser',
      'suits',
      'protein-dose.surfactants-only',
    ],
    [
      'protein-bearing that stays',
      [water, oatExtract],
      middling,
      'gel',
      'cannot-tell',
      'protein-dose.bearing',
    ],
    [
      'protein-bearing rinsed out',
      [water, oatExtract],
      middling,
      'conditioner',
      'suits',
      'protein-dose.bearing-slight',
    ],
    ['too little read', [water, unknown, unknown], middling, 'gel', 'cannot-tell', 'too-little-read.little'],
  ])('%s', (_, parts, of, kind, expected, key) => {
    expect(answer(parts, of, kind)).toMatchObject({ answer: expected, reason: { key: `rules.${key}` } });
  });

  it('names the mentions that decided', () => {
    const findings = fitProduct(
      { reading: hand([water, glycerin, wheat]), kind: 'gel' },
      { head: careful, allowance: allowance(careful), practice },
    );
    expect(findings.find(({ rule }) => rule === 'large-proteins')?.mentions).toEqual([
      { step: 'this', index: 2 },
    ]);
  });

  it('without a label says so', () => {
    expect(answerOf(fitProduct({ reading: undefined }, { practice }))).toMatchObject({
      answer: 'cannot-tell',
      reason: { key: 'rules.too-little-read.no-label' },
    });
  });
});

describe('the avoid list', () => {
  const avoiding = (avoid: Partial<Head['avoid'][number]>) =>
    head({ ...middling, avoid: [{ id: 'a', reacted: false, ...avoid }] });
  it.each<[string, Hand[], Head, string, string]>([
    ['a family', [water, wheat], avoiding({ family: 'wheat' }), 'does-not-suit', 'holds'],
    [
      'a family reacted to',
      [water, wheat],
      avoiding({ family: 'wheat', reacted: true }),
      'does-not-suit',
      'reacted',
    ],
    ['a name, in any case', [water, glycerin], avoiding({ name: 'glycerin' }), 'does-not-suit', 'holds'],
    [
      'a name inside a longer one is asked, not decided',
      [water, fatty],
      avoiding({ name: 'alcohol' }),
      'cannot-tell',
      'nearly',
    ],
    [
      'a close spelling is asked, not decided',
      [water, glycerin, { name: 'Glycerinn', unread: ['Glycerin'] }],
      avoiding({ name: 'Glycerin' }),
      'does-not-suit',
      'holds',
    ],
    [
      'a close spelling alone',
      [water, fatty, { name: 'Glycerinn', unread: ['Glycerin'] }],
      avoiding({ name: 'Glycerin' }),
      'cannot-tell',
      'nearly',
    ],
    [
      'an unread name after a reaction',
      [water, glycerin, unknown],
      avoiding({ family: 'nut', reacted: true }),
      'cannot-tell',
      'reacted-unread',
    ],
    [
      'fragrance by role',
      [water, { name: 'Parfum', roles: ['fragrance'] }],
      avoiding({ family: 'fragrance' }),
      'does-not-suit',
      'holds',
    ],
    ['nothing of it', [water, glycerin], avoiding({ family: 'nut' }), 'suits', 'clear'],
  ])('%s', (_, parts, of, expected, key) => {
    const found = fitProduct(
      { reading: hand(parts), kind: 'gel' },
      { head: of, allowance: allowance(of), practice },
    );
    expect(found.find(({ rule }) => rule === 'avoid-list')).toMatchObject({
      answer: expected,
      reason: { key: `rules.avoid-list.${key}` },
    });
  });
});
