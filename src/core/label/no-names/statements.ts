import { anyOf, type LabelWords } from '../label-words.ts';

/** A sentence of a label that says what is in it beside the list of names: "Contains egg", "May contain traces of nuts". */
export type Statement = {
  raw: string;
  from: number;
  to: number;
  /** What it names: said to be in it, or that it may be, in traces. */
  things: { name: string; sure: boolean }[];
};

/** What tells such sentences by their verbs. */
export function statements(words: LabelWords) {
  const of = `(?:${anyOf(words.of, words.fill)}(?:(?<=['’])|(?!\\p{L})))`;
  const spoken = { words: words.may.words.filter((word) => /^\p{L}/u.test(word)) };
  const maySource = `(?:${anyOf(words.mayAround, spoken)}|${anyOf(words.traces)}(?:\\s${of})?)`;
  const does = anyOf(words.contain, words.allergens);
  const verbs = `(?:${maySource}|${does})`;
  const may = new RegExp(maySource, 'iu');
  // Where a sentence begins; a verb within one may be denied before it.
  const sentence = new RegExp(
    `(?:^|[.;!\\n\\r*•|])\\s*(?<whole>(?<verb>${verbs})(?![\\p{L}])\\s*:?(?<body>[^.;!\\n\\r*•|]{0,120}))`,
    'giu',
  );
  const opens = new RegExp(`^\\W*${verbs}(?!\\p{L}).{0,60}$`, 'iu');
  const denied = new RegExp(`^${anyOf(words.notSo)}(?!\\p{L})`, 'iu');
  // German says the verb last: "Kann Spuren von Nüssen enthalten".
  const between = new RegExp(
    `^${anyOf(words.mayAround).replaceAll('.{0,40}?', '(?<thing>.{2,40}?)')}$`,
    'iu',
  );
  const apart = new RegExp(`[,/&+()]|\\s${anyOf(words.and, words.andOnce, words.or)}\\s`, 'iu');
  const filler = new RegExp(`^(?:(?:${maySource}|${anyOf(words.contain)})(?!\\p{L})|${of})\\s*`, 'iu');

  function bare(thing: string): string {
    const left = thing.trim();
    const rest = left.replace(filler, '').trim();
    return rest === left ? left : bare(rest);
  }

  return {
    /** Whether a text is the beginning of such a sentence, in a line. */
    opensStatement: (text: string): boolean => opens.test(text),

    /** Statements on what a label's product holds, where its sentences begin. A denial is none. */
    statementsIn: (text: string): Statement[] =>
      [...text.matchAll(sentence)].flatMap(({ index, 0: { length }, groups }): Statement[] => {
        const { whole = '', verb = '', body = '' } = groups ?? {};
        const said = (between.exec(verb)?.groups?.thing ?? body).trim();
        if (denied.test(said)) return [];
        const from = index + length - whole.length;
        const raw = whole.trimEnd();
        let sure = !may.test(verb);
        const things = said.split(apart).flatMap((thing) => {
          // "Contains egg, may contain milk": what comes after is as unsure.
          sure &&= !may.test(thing);
          const name = bare(thing);
          return name ? [{ name, sure }] : [];
        });
        return [{ raw, from, to: from + raw.length, things }];
      }),
  };
}
