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

/** Is it too heavy for these strands: oils, butters, waxes, silicones, film formers as much of them as stays? */
export const weight: AspectRule = {
  id: 'weight',
  aspect: 'weight',
  ask(product, head) {
    const { traits, use } = product;
    if (traits.read === 'none') return [];
    const answer = weightAnswer(product, head);
    if (traits.read !== 'enough' && answer === 'suits') return [];
    const key = {
      suits: traits.heavy.length > 0 ? 'carried' : 'light',
      'with-care': 'rich',
      'does-not-suit': 'too-heavy',
      'cannot-tell': 'hair-unknown',
    }[answer];
    return [
      tell(
        this,
        product,
        answer,
        { key: `rules.weight.${key}` },
        {
          mentions: mentionsOf(product, traits.heavy),
          condition: { key: use === 'leave-on' ? 'rules.weight.tips' : 'rules.weight.rinse-well' },
          unknown: untoldOf(answer, head),
        },
      ),
    ];
  },
};

/** What it weighs on this hair: what lies on the cuticle counts more where that lies flat. */
export const weightOn = ({ weight, film }: Judged['traits'], { filmCounts }: HairNumbers) =>
  weight + film * (filmCounts - 1);

export const weightAnswer = (
  { traits }: Pick<Judged, 'traits'>,
  { numbers, practice }: Pick<Against, 'numbers' | 'practice'>,
): Answer =>
  acrossHeads(numbers, (hair) => byRatio(weightOn(traits, hair) / hair.carries, practice.judge.weight.upTo));
