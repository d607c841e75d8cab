// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import { findLists } from '../../src/page/find-lists.ts';
import { gate } from '../../src/page/read/gate.ts';
import { plain } from './open-page.ts';
import { tricky } from './tricky.ts';

it.each(tricky)('%s', (_odd, body, wanted) => {
  document.body.innerHTML = body;
  const found = findLists(document);
  expect(found.map((list) => plain(list.text))).toEqual(
    wanted.map((list) => plain(Array.isArray(list) ? list[0] : list)),
  );
  for (const [i, list] of wanted.entries())
    if (Array.isArray(list)) expect(found[i]!.product?.name).toBe(list[1]);
  if (wanted.length > 0) expect(gate(document)).toBe(true);
});
