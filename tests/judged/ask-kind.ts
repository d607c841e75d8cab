import { notBuilt } from './not-built.ts';

export type KindAnswer = { kind: string; use: string };

/** What kind of product is it, and is it rinsed off or left on? */
export function askKind(_title: string, _breadcrumb: string): KindAnswer {
  return notBuilt('askKind');
}
