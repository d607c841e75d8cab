import { expect, it } from 'vitest';
import { useLevelsSchema } from '../../dictionary/amounts/schema.ts';
import label from '../../dictionary/finding/label.json' with { type: 'json' };
import remarks from '../../dictionary/finding/remarks.json' with { type: 'json' };
import { findingSchema, labelSchema, remarksSchema } from '../../dictionary/finding/schema.ts';
import { entries, findingFacts, limits, patterns } from '../../dictionary/index.ts';
import kindWords from '../../dictionary/kinds.json' with { type: 'json' };
import {
  entrySchema,
  kindWordsSchema,
  limitsSchema,
  patternSchema,
  printedOftenSchema,
  sourcesSchema,
  sourceWordsSchema,
} from '../../dictionary/schema.ts';
import sources from '../../dictionary/sources.json' with { type: 'json' };
import { dictionaryFiles } from '../run/dictionary-files.ts';

it.each(dictionaryFiles())('$path is as the formatter writes it (npm run fix)', ({ text, formatted }) => {
  expect(text === formatted).toBe(true);
});

it('every entry, pattern and limit has the shape of the schema', () => {
  const wrong = [...entries, ...patterns].flatMap((each) => {
    const parsed = ('id' in each ? patternSchema : entrySchema).safeParse(each);
    return parsed.success ? [] : [`${'id' in each ? each.id : each.name}: ${parsed.error.message}`];
  });
  expect(wrong).toEqual([]);
  const { usual, sourceWords = [], labelWords, printedOften, ...ceilings } = limits;
  expect(limitsSchema.safeParse(ceilings).error).toBeUndefined();
  expect(useLevelsSchema.safeParse(usual).error).toBeUndefined();
  for (const family of sourceWords) expect(sourceWordsSchema.safeParse(family).error).toBeUndefined();
  expect(kindWordsSchema.safeParse(kindWords).error).toBeUndefined();
  expect(sourcesSchema.safeParse(sources).error).toBeUndefined();
  expect(printedOftenSchema.safeParse(printedOften).error).toBeUndefined();
  expect(remarksSchema.safeParse(remarks).error).toBeUndefined();
  expect(labelSchema.safeParse(label).error).toBeUndefined();
  expect(findingSchema.safeParse(findingFacts).error).toBeUndefined();
});

it('every family file is in the index', () => {
  const inFiles = dictionaryFiles()
    .filter(({ path }) => path.startsWith('entries'))
    .reduce((sum, { text }) => sum + (JSON.parse(text) as unknown[]).length, 0);
  expect(entries.length).toBe(inFiles);
});

it('every threshold names its source', () => {
  const { sources: named = {}, ...thresholds } = limits.thresholds;
  expect(Object.keys(named).sort()).toEqual(Object.keys(thresholds).sort());
});
