import { type AspectRule, acrossHeads, byRatio, type Judged, mentionsOf, tell, untoldOf } from '../asked.ts';
import { type Answer, answersByWeight } from '../finding.ts';
import type { HairNumbers } from '../hair-numbers.ts';
import type { Practice } from '../practice.ts';

/** Does it do its step's work on this head: soften enough where it is there to soften, and not dry or stiffen? */
export const care: AspectRule = {
  id: 'care',
  aspect: 'care',
  ask(product, head) {
    const { traits } = product;
    if (traits.read === 'none' || product.kind === 'cleanser') return [];
    const across = (ask: (hair: HairNumbers) => Answer) => acrossHeads(head.numbers, ask);
    // What was not read may soften.
    const soft =
      traits.read === 'enough' ? across((hair) => softAnswer(product, hair, head.practice)) : 'suits';
    const dry = across((hair) => dryAnswer(product, hair, head.practice));
    const stiff = across((hair) => stiffAnswer(product, hair));
    const worst = answersByWeight.find((answer) => [soft, dry, stiff].includes(answer))!;
    if (traits.read !== 'enough' && worst === 'suits') return [];
    const why = worst === dry ? 'dry' : worst === soft ? 'soft' : 'stiff';
    const key =
      worst === 'suits'
        ? traits.softeners.length > 0
          ? 'softens'
          : 'harmless'
        : worst === 'cannot-tell'
          ? 'hair-unknown'
          : `${{ dry: 'dries', soft: 'thin', stiff: 'stiff' }[why]}${worst === 'with-care' ? '-somewhat' : ''}`;
    return [
      tell(
        this,
        product,
        worst,
        { key: `rules.care.${key}` },
        {
          mentions: mentionsOf(
            product,
            worst === 'suits' || why === 'soft'
              ? traits.softeners
              : why === 'dry'
                ? traits.dryers
                : traits.stiffeners,
          ),
          condition: {
            key: `rules.care.${{ dry: 'not-each-time', soft: 'with-more', stiff: 'over-cream' }[why]}`,
          },
          unknown: untoldOf(worst, head),
        },
      ),
    ];
  },
};

/** How much care it brings for the step it stands in, against what this hair wants there: 1 is enough. */
export function softness(
  { kind, traits }: Pick<Judged, 'kind' | 'traits'>,
  { wants }: HairNumbers,
  { judge: { care } }: Practice,
) {
  const asks = care.steps[kind];
  if (!asks) return undefined;
  return (asks.soft * (traits.soft - care.proteinStiffens * traits.builds) + asks.rich * traits.rich) / wants;
}

export function softAnswer(
  product: Pick<Judged, 'kind' | 'traits'>,
  hair: HairNumbers,
  practice: Practice,
): Answer {
  const { steps, enough, little } = practice.judge.care;
  const brings = softness(product, hair, practice);
  if (brings === undefined || brings >= enough) return 'suits';
  return brings >= little || steps[product.kind]!.atMostWithCare ? 'with-care' : 'does-not-suit';
}

/** What dries is borne where it is rinsed off, and made up for by what softens beside it. */
export function dryAnswer(
  { use, traits }: Pick<Judged, 'use' | 'traits'>,
  hair: HairNumbers,
  { judge: { care } }: Practice,
): Answer {
  if (use === 'rinse-off') return 'suits';
  const left = traits.dry - care.softMakesUp * (traits.soft + traits.rich);
  return byRatio(left / hair.bearsDry, care.dryUpTo);
}

export function stiffAnswer({ use, traits }: Pick<Judged, 'use' | 'traits'>, hair: HairNumbers): Answer {
  if (use === 'rinse-off') return 'suits';
  return traits.stiff - traits.soft > hair.bearsStiff ? 'with-care' : 'suits';
}
