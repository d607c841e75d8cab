import { filledSteps, finding, mentionsOf, type Rule } from './day.ts';

/** Is enough of the label read to tell at all? */
export const tooLittleRead: Rule = {
  id: 'too-little-read',
  of: 'product',
  aspect: 'care',
  sees: ({ filled, traits }) => (filled ? traits.read : ''),
  ask: (day) =>
    filledSteps(day)
      .filter(({ traits }) => traits.read !== 'enough')
      .map((step) => {
        const { read, unread } = step.traits;
        const values = { n: unread.length, of: step.reading?.mentions.length ?? 0 };
        const key = read === 'none' ? 'no-label' : 'little';
        return finding(
          tooLittleRead,
          'cannot-tell',
          { key: `rules.too-little-read.${key}`, values },
          {
            steps: [step],
            mentions: mentionsOf(step, unread),
            ...(read === 'little' && { unknown: { key: 'rules.unknown.unread', values } }),
          },
        );
      }),
};
