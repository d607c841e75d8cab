import { acrossHeads, untoldOf } from '../../../judge/asked.ts';
import { washesBetween } from '../cadence.ts';
import { distinctProducts, filledSteps, finding, mentionsOf, type Rule, staysOn } from '../day.ts';

/** Do large proteins stay on hair on which they build up: low porosity, coarse, little damaged? */
export const largeProteinsStay: Rule = {
  id: 'large-proteins-stay',
  of: 'day',
  aspect: 'protein',
  sees: (step, { washEvery }) =>
    step.filled && staysOn(step) && step.traits.largeDose > 0
      ? `${step.traits.largeDose / washesBetween(step.cadence, washEvery)} ${step.product}`
      : '',
  softens: () => false,
  mayHelp: (before, after) =>
    before !== '' && (after === '' || Number.parseFloat(after) < Number.parseFloat(before)),
  ask(day) {
    const { stays } = day.practice.judge.large;
    const steps = distinctProducts(filledSteps(day)).filter(
      (step) => staysOn(step) && step.traits.largeDose > 0,
    );
    const total = steps.reduce(
      (all, { traits, cadence }) => all + traits.largeDose / washesBetween(cadence, day.washEvery),
      0,
    );
    if (total < stays.from) return [];
    const answer = acrossHeads(day.hair.numbers, ({ tolerance }) =>
      tolerance < stays.upToTolerance ? 'with-care' : 'suits',
    );
    if (answer === 'suits') return [];
    return [
      finding(
        this,
        answer,
        { key: 'rules.large-proteins-stay.build-up', values: { n: steps.length } },
        {
          steps,
          mentions: steps.flatMap((step) => mentionsOf(step, step.traits.large)),
          condition: { key: 'rules.large-proteins-stay.now-and-then' },
          unknown: untoldOf(answer, day.hair),
          extent: total,
        },
      ),
    ];
  },
};
