import { filledSteps, finding, isKind, type Rule } from './day.ts';

/** Where the water is hard: does a wash take its lime along, or is one wanted now and then? */
export const hardWater: Rule = {
  id: 'hard-water',
  of: 'day',
  aspect: 'cleansing',
  sees: (step, day) => (step.filled && isKind(day, 'cleansing', step) ? `${chelates(step)}` : ''),
  ask(day) {
    const cleansers = filledSteps(day).filter((step) => isKind(day, 'cleansing', step));
    if (day.head?.water !== 'hard' || cleansers.length === 0) return [];
    const key = cleansers.some(chelates) ? 'chelated' : 'now-and-then';
    return [finding(this, 'suits', { key: `rules.hard-water.${key}` }, { steps: cleansers })];
  },
};

const chelates = ({ reading }: ReturnType<typeof filledSteps>[number]) =>
  reading?.mentions.some(({ roles }) => roles.includes('chelating')) ?? false;
