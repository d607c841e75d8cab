import kinds from '../../dictionary/kinds.json' with { type: 'json' };
import { createKindReader } from '../../src/core/product/kind.ts';
import type { KindWords } from '../../src/core/product/kind-words.ts';

export type KindAnswer = { kind: string; use: string };

const { recognise } = createKindReader(kinds as KindWords);

/** What kind of product is it, and is it rinsed off or left on? */
export function askKind(title: string, breadcrumb: string): KindAnswer {
  return recognise({ name: title, category: breadcrumb });
}
