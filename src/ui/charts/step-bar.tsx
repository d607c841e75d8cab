import { type BringStep, type Brought, steps } from '../../core/amounts/brings.ts';

const stepAt = (step: BringStep) => steps.indexOf(step);

/** The four steps as three boxes: filled up to the likely one, outlined up to the most it may be. */
export function StepBar({ brought, hue }: { brought: Brought; hue: 'plum' | 'teal' }) {
  const [likely, most] = [stepAt(brought.step), stepAt(brought.most)];
  return (
    <svg
      class={`step-bar ${hue}`}
      viewBox="0 0 62 12"
      width="62"
      height="12"
      aria-hidden="true"
      direction="ltr"
    >
      {steps.slice(1).map((step, index) => (
        <rect
          key={step}
          x={index * 21 + 0.5}
          y="0.5"
          width="18"
          height="11"
          class={index < likely ? 'likely' : index < most ? 'may' : 'not'}
        />
      ))}
    </svg>
  );
}
