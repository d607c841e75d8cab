import { expect, it } from 'vitest';
import { english } from '../../src/ui/words/index.ts';
import { languages } from '../../src/ui/words/languages.ts';

const files = import.meta.glob<Record<string, unknown>>('../../src/assets/words/*.json', {
  eager: true,
  import: 'default',
});

// The test on a small spot of skin, twice daily for 7 to 10 days: American Academy of Dermatology, in a news reprint.
const advice = ['panel.care.patch', 'hair.care', 'routine.caution', 'welcome.care'];

it('gives one advice on testing what is new, in every language', () => {
  for (const language of Object.keys(languages)) {
    const words = (files[`../../src/assets/words/${language}.json`] ?? english) as Record<string, unknown>;
    for (const key of advice) expect(String(words[key]), `${language} ${key}`).toMatch(/7 (?:to|bis|a|à) 10/);
  }
});

it('sends who had hives, swelling or trouble breathing to a doctor, not to a test', () => {
  const words = english as Record<string, string>;
  for (const key of ['panel.care.reaction', 'hair.avoid.care', 'routine.caution', 'rules.avoid-list.reacted'])
    expect(words[key]).toMatch(/hives, swelling or trouble breathing.*doctor at once|doctor at once.*hives/);
});

it('no other sentence asks for a test of another length', () => {
  const others = Object.entries(english as Record<string, unknown>).filter(
    ([, text]) =>
      /\b(?:patch|small spot|wait a day)\b/.test(String(text)) && !/7 to 10 days/.test(String(text)),
  );
  expect(others.map(([key]) => key).filter((key) => !/term|sensitizer/.test(key))).toEqual([]);
});
