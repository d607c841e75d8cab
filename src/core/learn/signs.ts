import { dayFelt } from '../hair/day-feel.ts';
import type { FeelPractice } from '../judge/practice.ts';
import type { Feel } from '../wash-day/routine.ts';
import type { Sign } from './learn-practice.ts';

/**
 * What was wrong with a wash day as it felt when dry; undefined where nothing was. Greasy is coated, whatever else
 * it is: that names the cause. Common practice.
 */
export function signOf(feel: Feel, practice: FeelPractice): Sign | undefined {
  const { dry = 0, defined = 0 } = feel;
  if (dry <= -practice.feltFrom) return 'coated';
  const felt = dayFelt(feel, practice);
  if (felt === 'stiff' || felt === 'limp') return felt;
  if (dry >= practice.feltFrom) return 'dry';
  return defined <= -practice.feltFrom ? 'frizzy' : undefined;
}
