import { filledSteps, finding, isKind, mentionsOf, type Rule } from './day.ts';

/**
 * Do films and fats stay because nothing lifts them? A mild wash lifts what water half dissolves; what is
 * tougher asks for a stronger wash now and then, never at every wash. A co-wash lifts neither.
 */
export const buildUp: Rule = {
  id: 'build-up',
  of: 'day',
  aspect: 'cleansing',
  sees: (step, day) =>
    step.filled
      ? isKind(day, 'cleansing', step)
        ? `${step.traits.wash?.lifts ?? '-'} ${step.traits.read}`
        : `${step.traits.films.strong.length > 0} ${step.traits.films.mild.length > 0}`
      : '',
  ask(day) {
    const steps = filledSteps(day);
    const cleansers = steps.filter((step) => isKind(day, 'cleansing', step));
    const others = steps.filter((step) => !isKind(day, 'cleansing', step));
    const tough = others.filter(({ traits }) => traits.films.strong.length > 0);
    const filming = others.filter(({ traits }) => traits.films.strong.length + traits.films.mild.length > 0);
    if (filming.length === 0 || cleansers.length === 0) return [];
    const lifts = (how: 'strong' | 'mild') => cleansers.some(({ traits }) => traits.wash?.lifts === how);
    const say = (
      answer: 'suits' | 'with-care' | 'does-not-suit' | 'cannot-tell',
      key: string,
      which = filming,
    ) => [
      finding(
        this,
        answer,
        { key: `rules.build-up.${key}`, values: { n: which.length } },
        {
          steps: [...which, ...cleansers],
          mentions: which.flatMap((step) =>
            mentionsOf(step, [...step.traits.films.strong, ...step.traits.films.mild]),
          ),
          ...(answer === 'cannot-tell' && {
            unknown: { key: 'rules.unknown.labels', values: { n: cleansers.length } },
          }),
          extent: which.length,
        },
      ),
    ];
    if (lifts('strong') || (lifts('mild') && tough.length === 0)) return say('suits', 'lifted');
    if (lifts('mild')) return say('suits', 'now-and-then', tough);
    if (cleansers.some(({ traits }) => traits.read !== 'enough')) return say('cannot-tell', 'unread');
    return say(tough.length > 0 ? 'does-not-suit' : 'with-care', 'nothing-lifts');
  },
};
