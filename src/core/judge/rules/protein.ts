import {
  type Against,
  type AspectRule,
  acrossHeads,
  byRatio,
  type Judged,
  mentionsOf,
  tell,
  untoldOf,
} from '../asked.ts';
import type { Answer } from '../finding.ts';
import type { HairNumbers } from '../hair-numbers.ts';

/** Is the dose of protein in this one product what this hair takes at each wash? */
export const proteinRule: AspectRule = {
  id: 'protein',
  aspect: 'protein',
  ask(product, head) {
    const { traits, use } = product;
    const say = (key: string, n = 0) => ({ key: `rules.protein.${key}`, values: { n } });
    const about = (indexes: readonly number[]) => ({ mentions: mentionsOf(product, indexes) });
    if (traits.protein !== 'yes') {
      const shown = [...traits.doses, ...traits.uncounted];
      if (shown.length > 0)
        return [tell(this, product, 'suits', say('uncounted', shown.length), about(shown))];
      if (traits.bearing.length > 0)
        return [tell(this, product, 'suits', say('bearing', traits.bearing.length), about(traits.bearing))];
      return traits.read === 'enough' ? [tell(this, product, 'suits', say('free'))] : [];
    }
    const answer = proteinAnswer(product, head);
    const { sizesBy } = head.practice.judge.dose;
    const n = traits.doses.length;
    const suits = Math.min(...head.numbers.map((numbers) => numbers.protein.suits));
    const every = Math.max(2, Math.ceil(traits.dose / suits));
    const rest = {
      ...about(traits.doses),
      condition:
        use === 'leave-on'
          ? { key: 'rules.protein.now-and-then' }
          : { key: 'rules.protein.every-nth', values: { n: every } },
      unknown:
        untoldOf(answer, head) ??
        (traits.disputed.length > 0
          ? sizesBy
            ? { key: `rules.protein.size-disputed-${sizesBy}` }
            : { key: 'rules.protein.size-disputed' }
          : undefined),
    };
    const key = {
      suits: 'suits',
      'with-care': use === 'leave-on' ? 'strong-left-on' : 'strong',
      'does-not-suit': use === 'leave-on' ? 'too-much-left-on' : 'too-much',
      'cannot-tell': 'hair-unknown',
    }[answer];
    return [tell(this, product, answer, say(key, n), rest)];
  },
};

/** The answer alone: also what a whole day asks of each product. */
export function proteinAnswer(
  { kind, traits }: Pick<Judged, 'kind' | 'traits'>,
  { numbers, practice }: Pick<Against, 'numbers' | 'practice'>,
): Answer {
  const ask = (hair: HairNumbers) => doseAnswer(traits.dose, traits.doseAsMeasured, hair);
  // Whether a treatment is wanted at all is what the missing answers decide.
  const { strengthening, bond } = practice.washDay.kinds;
  const treats = strengthening.includes(kind) && !bond.includes(kind);
  if (treats && new Set(numbers.map(ask)).size > 1) return 'cannot-tell';
  return acrossHeads(numbers, ask);
}

/** A no that rests on a size which measurement denies is softened to care. */
export function doseAnswer(
  dose: number,
  asMeasured: number,
  { protein: { suits, upTo } }: HairNumbers,
): Answer {
  const answer = byRatio(dose / suits, upTo / suits);
  return answer === 'does-not-suit' && asMeasured <= upTo ? 'with-care' : answer;
}
