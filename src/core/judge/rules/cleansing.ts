import { type Against, type AspectRule, acrossHeads, byRatio, mentionsOf, tell, untoldOf } from '../asked.ts';
import { type Answer, answersByWeight } from '../finding.ts';
import type { HairNumbers } from '../hair-numbers.ts';
import type { Wash } from '../traits.ts';

/** Of cleansers: is it too harsh for this hair and scalp at this rhythm, and does it clean them at all? */
export const cleansing: AspectRule = {
  id: 'cleansing',
  aspect: 'cleansing',
  ask(product, head) {
    const { traits } = product;
    const { wash } = traits;
    if (!wash || traits.read === 'none') return [];
    const harsh = acrossHeads(head.numbers, (hair) => harshAnswer(wash, hair, head));
    const weak = weakAnswer(wash, head);
    const worse = answersByWeight.find((answer) => answer === harsh || answer === weak)!;
    const key =
      worse === 'suits'
        ? 'suits'
        : worse === harsh
          ? { 'with-care': 'strong', 'does-not-suit': 'too-harsh', 'cannot-tell': 'hair-unknown' }[worse]
          : worse === 'with-care'
            ? 'weak'
            : 'too-weak';
    return [
      tell(
        this,
        product,
        worse,
        { key: `rules.cleansing.${key}` },
        {
          mentions: mentionsOf(product, key === 'weak' || key === 'too-weak' ? [] : traits.cleansers),
          condition: {
            key: key === 'weak' ? 'rules.cleansing.shampoo-between' : 'rules.cleansing.now-and-then',
          },
          unknown: untoldOf(worse, head),
        },
      ),
    ];
  },
};

/** Against flakes even a strong wash is called for: on the scalp, with care for the lengths. */
export function harshAnswer(
  { harsh, scalp }: Wash,
  hair: HairNumbers,
  { head, practice }: Pick<Against, 'head' | 'practice'>,
  bears = hair.bearsWash,
): Answer {
  const { upTo, scalpCalls } = practice.judge.wash;
  const called = scalp && head?.scalpKind === 'flaky' ? scalpCalls : 1;
  return byRatio(harsh / (bears * called), upTo);
}

/** A co-wash leaves oil and scale behind: wrong for a scalp that has them, now and then not enough for others. */
export function weakAnswer(
  { power, creamy }: Wash,
  { numbers, head }: Pick<Against, 'numbers' | 'head'>,
): Answer {
  const { asksWash } = numbers[0]!;
  if (!creamy || power >= asksWash / 2) return 'suits';
  return head?.scalpKind === 'oily' || head?.scalpKind === 'flaky' ? 'does-not-suit' : 'with-care';
}
