/**
 * Older shapes of everything remembered, brought up to date one version at a time. A migration works on the
 * document form (the same as the export file), so that a store and a file of the same age take the same path.
 * It never throws for one bad item: what it cannot carry over goes to `aside` with its raw value.
 */
export const currentVersion = 2;

export type Raw = Record<string, unknown>;
type Aside = (key: string, value: unknown, why: string) => void;

export const isRecord = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const listOf = (value: unknown) => (Array.isArray(value) ? (value as unknown[]) : []);

/** Version n → n + 1, at index n − 1. */
const migrations: ((document: Raw, aside: Aside) => Raw)[] = [
  // 1: one label and one source for a product; an avoid list of bare names; wash days without a cadence.
  (document, aside) => {
    const each = (name: string, change: (item: Raw) => Raw) =>
      listOf(document[name]).flatMap((item, i) => {
        if (isRecord(item)) return [change(item)];
        aside(`${name}:${i}`, item, 'not an object');
        return [];
      });
    return {
      ...document,
      heads: each('heads', (head) => ({
        ...head,
        avoid: listOf(head.avoid).map((name, i) =>
          typeof name === 'string'
            ? { id: `${typeof head.id === 'string' ? head.id : ''}-avoid-${i}`, name, reacted: false }
            : name,
        ),
        stretch: head.stretch ?? [],
        setAside: head.setAside ?? [],
      })),
      products: each('products', ({ label, seen, url, price, currency, ...rest }) => ({
        ...rest,
        labels: typeof label === 'string' ? [{ text: label, seen: seen ?? rest.added }] : [],
        sources:
          typeof url === 'string'
            ? [
                {
                  url,
                  ...(price !== undefined && { price }),
                  ...(currency !== undefined && { currency }),
                  seen: seen ?? rest.added,
                },
              ]
            : [],
      })),
      routines: each('routines', (routine) => ({
        ...routine,
        washEvery: routine.washEvery ?? 7,
        steps: listOf(routine.steps).map((step) =>
          isRecord(step) ? { optional: false, cadence: { every: 'wash' }, ...step } : step,
        ),
      })),
    };
  },
];

/** Brings a document of any older version up to date; returns it unchanged when it is current. */
export function migrate(document: Raw, version: number, aside: Aside): Raw {
  let current = document;
  for (let at = version; at < currentVersion; at++) current = migrations[at - 1]!(current, aside);
  return current;
}
