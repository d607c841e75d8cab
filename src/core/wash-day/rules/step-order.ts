import { type Day, type DayStep, filledSteps, finding, isKind, type Rule, staysOn } from './day.ts';

/** Is nothing that should stay on washed out again by a later step? */
export const stepOrder: Rule = {
  id: 'step-order',
  of: 'day',
  aspect: 'care',
  sees: (step, day) =>
    step.filled ? `${staysBy(step, day)} ${rinses(step)} ${isKind(day, 'cleansing', step)}` : '',
  softens: () => false,
  ask(day) {
    const steps = filledSteps(day);
    const lost = steps.filter((step, at) => staysBy(step, day) && steps.slice(at + 1).some(rinses));
    if (lost.length === 0) return [];
    const washing = steps.filter(
      (step, at) => rinses(step) && steps.slice(0, at).some((before) => lost.includes(before)),
    );
    const shampooed = washing.some((step) => isKind(day, 'cleansing', step));
    return [
      finding(
        this,
        'does-not-suit',
        {
          key: `rules.step-order.${shampooed ? 'washed-out' : 'rinsed-out'}`,
          values: { kind: lost[0]!.kind },
        },
        { steps: [...lost, ...washing], extent: lost.length },
      ),
    ];
  },
};

/** An oil before the wash is a pre-wash, and sprays between washes belong to no place. */
const staysBy = (step: DayStep, day: Day) =>
  staysOn(step) && !day.practice.washDay.kinds.anywhere.includes(step.kind);

const rinses = (step: DayStep) => !staysOn(step);
