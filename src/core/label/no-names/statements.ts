/** A sentence of a label that says what is in it beside the list of names: "Contains egg", "May contain traces of nuts". */
export type Statement = {
  raw: string;
  from: number;
  to: number;
  /** What it names: said to be in it, or that it may be, in traces. */
  things: { name: string; sure: boolean }[];
};

const may =
  /may (?:also )?contain|traces? of|kann .{0,40}enthalten|spuren von|peut contenir|traces? (?:de|d['’])|puede contener|trazas de|pode conter|traços de|può contenere|tracce di/iu;
const does =
  /contains?|enthält|contient|contiene|contém|bevat|zawiera|allergens?|allergene|allergènes|alérgenos|alergênicos/iu;
// Where a sentence begins; a verb within one may be denied before it.
const sentence = new RegExp(
  `(?:^|[.;!\\n\\r*•|])\\s*(?<whole>(?<verb>${may.source}|${does.source})(?![\\p{L}])\\s*:?(?<body>[^.;!\\n\\r*•|]{0,120}))`,
  'giu',
);
const denied =
  /^(?:no|not|none|zero|0|neither|free|keine?[nrs]?|nicht|pas|aucune?|non|sin|ningun[oa]?|sem|nenhuma?|nie|geen)(?!\p{L})/iu;
// German says the verb last: "Kann Spuren von Nüssen enthalten".
const between = /^kann (?:spuren von )?(?<thing>.{2,40}?) enthalten$/iu;
const apart = /[,/&+()]|\s(?:and|or|und|oder|et|ou|y|o|e)\s/iu;
const filler =
  /^(?:(?:may (?:also )?contain|contains?|peut contenir|puede contener|pode conter|traces? (?:of|de)|spuren von|trazas de|traços de|tracce di|of|von|also|auch|des?|du|la|le|les)(?!\p{L})|traces? d['’]|[dl]['’])\s*/iu;

/** Statements on what a label's product holds, where its sentences begin. A denial is none. */
export function statementsIn(text: string): Statement[] {
  return [...text.matchAll(sentence)].flatMap(({ index, 0: { length }, groups }): Statement[] => {
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
  });
}

function bare(thing: string): string {
  const left = thing.trim();
  const rest = left.replace(filler, '').trim();
  return rest === left ? left : bare(rest);
}
