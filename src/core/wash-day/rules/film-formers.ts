import { filledSteps, finding, isKind, mentionsOf, type Rule } from './day.ts';

// Looks: the film a step leaves, then how a cleanser lifts and whether it was read.
const films = /^(strong|mild)/;
const mayLift = / (strong|mild|- (none|little))/;
const liftsStrong = / (strong|(mild|-) (none|little))/;

/** Is there a cleanser strong enough to lift the films that the other steps leave? */
export const filmFormers: Rule = {
  id: 'film-formers',
  of: 'day',
  aspect: 'cleansing',
  sees: (step, day) =>
    step.filled
      ? `${step.traits.film ?? ''} ${isKind(day, 'cleansing', step) ? `${step.traits.lifts ?? '-'} ${step.traits.read}` : ''}`
      : '',
  mayHelp: (before, after) => films.test(before) || mayLift.test(after),
  // Where no cleanser within reach lifts strong films, each of them must go.
  excess: ({ reason }, reachable) =>
    reason.values?.strength === 'mild' || reachable.some((look) => liftsStrong.test(look))
      ? 1
      : Number(reason.values?.n),
  ask(day) {
    const steps = filledSteps(day);
    const filming = steps.filter(({ traits }) => traits.film);
    if (filming.length === 0) return [];
    const strong = filming.filter(({ traits }) => traits.film === 'strong');
    const needing = strong.length > 0 ? strong : filming;
    const cleansers = steps.filter((step) => isKind(day, 'cleansing', step));
    const lifting = cleansers.filter(({ traits }) =>
      strong.length > 0 ? traits.lifts === 'strong' : traits.lifts,
    );
    const say = (key: string) => ({
      key: `rules.film-formers.${key}`,
      values: { n: needing.length, strength: strong.length > 0 ? 'strong' : 'mild' },
    });
    const mentions = needing.flatMap((step) => mentionsOf(step, step.traits.films));
    if (lifting.length > 0)
      return [finding(this, 'suits', say('lifted'), { steps: [...needing, ...lifting], mentions })];
    const unsure = cleansers.filter(({ traits }) => traits.read !== 'enough');
    if (unsure.length > 0)
      return [
        finding(this, 'cannot-tell', say('cleanser-unread'), {
          steps: [...needing, ...unsure],
          mentions,
          unknown: { key: 'rules.unknown.labels', values: { n: unsure.length } },
        }),
      ];
    const key = cleansers.length === 0 ? 'no-cleanser' : strong.length > 0 ? 'too-mild' : 'does-not-lift';
    return [finding(this, 'does-not-suit', say(key), { steps: [...needing, ...cleansers], mentions })];
  },
};
