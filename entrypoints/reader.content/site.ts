import { thingKey } from '../../src/store/keys.ts';

type Area = { get(key: string): Promise<Record<string, unknown>> };

/**
 * What is remembered of a site, read where the worker need not wake for it. What is not of the right shape is
 * taken for nothing; the keeper sets it aside in its own time.
 */
export async function siteHere(area: Area, origin: string): Promise<{ paused: boolean; listsAt: string[] }> {
  const key = thingKey('sites', origin);
  const { [key]: value } = await area.get(key).catch(() => ({}) as Record<string, unknown>);
  const { paused, listsAt } = (value ?? {}) as { paused?: unknown; listsAt?: unknown };
  return {
    paused: paused === true,
    listsAt: Array.isArray(listsAt) ? listsAt.filter((each) => typeof each === 'string') : [],
  };
}
