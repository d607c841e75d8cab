import { useId } from 'preact/hooks';
import type { Feel } from '../../core/wash-day/routine.ts';
import { Button } from '../parts/controls/button.tsx';
import type { Translate } from '../words/index.ts';

/** The pairs, first word at 2, second at −2. */
export const feelPairs = ['soft', 'springy', 'defined', 'dry', 'elastic'] as const satisfies (keyof Feel)[];
const values = [2, 1, 0, -1, -2];

/** Five places between two words; none chosen says nothing. */
export function FeelScale(props: {
  t: Translate;
  pair: keyof Feel;
  value: number | undefined;
  onChange: (value: number | undefined) => void;
}) {
  const { t, pair, value } = props;
  const name = useId();
  const [first, second] = [t(`log.feel.${pair}.first`), t(`log.feel.${pair}.second`)];
  return (
    <fieldset class="feel">
      <legend class="sr">{t('log.feel.pair', { first, second })}</legend>
      <span class="feel-word">{first}</span>
      <span class="feel-places">
        {values.map((place) => (
          <label key={place} class="feel-place">
            <input
              type="radio"
              name={name}
              value={place}
              checked={value === place}
              aria-label={placeWords(t, pair, place)}
              onChange={() => props.onChange(place)}
            />
          </label>
        ))}
      </span>
      <span class="feel-word end">{second}</span>
      {value !== undefined && (
        <Button
          look="quiet"
          label={t('log.feel.clear.what', { first, second })}
          onClick={() => props.onChange(undefined)}
        >
          ×
        </Button>
      )}
    </fieldset>
  );
}

/** "very soft", "soft", "neither soft nor rough", … */
export function placeWords(t: Translate, pair: keyof Feel, place: number): string {
  const word = t(`log.feel.${pair}.${place >= 0 ? 'first' : 'second'}`);
  if (place === 0)
    return t('log.feel.neither', {
      first: t(`log.feel.${pair}.first`),
      second: t(`log.feel.${pair}.second`),
    });
  return Math.abs(place) === 2 ? t('log.feel.very', { word }) : word;
}

export const feelWords = (t: Translate, feel: Feel): string =>
  feelPairs
    .filter((pair) => feel[pair] !== undefined && feel[pair] !== 0)
    .map((pair) => placeWords(t, pair, feel[pair]!))
    .join(', ');
