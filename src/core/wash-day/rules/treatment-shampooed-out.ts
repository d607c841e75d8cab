import { alwaysComesWith } from './cadence.ts';
import { finding, isKind, type Rule } from './day.ts';

/** Is each strengthening treatment shampooed out: does a cleanser come after it? */
export const treatmentShampooedOut: Rule = {
  id: 'treatment-shampooed-out',
  of: 'day',
  aspect: 'protein',
  sees: (step, day) =>
    isKind(day, 'strengthening', step) || isKind(day, 'cleansing', step)
      ? `${step.kind} ${step.filled} ${JSON.stringify(step.cadence)}`
      : '',
  ask: (day) =>
    day.steps.flatMap((treatment, at) => {
      if (!treatment.filled || !isKind(day, 'strengthening', treatment)) return [];
      const cleansers = day.steps
        .slice(at + 1)
        .filter(
          (step) =>
            step.filled && isKind(day, 'cleansing', step) && alwaysComesWith(step.cadence, treatment.cadence),
        );
      const values = { kind: treatment.kind };
      const key = `rules.treatment-shampooed-out.${cleansers.length > 0 ? 'washed' : 'missing'}`;
      return [
        finding(
          treatmentShampooedOut,
          cleansers.length > 0 ? 'suits' : 'does-not-suit',
          { key, values },
          {
            steps: [treatment, ...cleansers],
          },
        ),
      ];
    }),
};
