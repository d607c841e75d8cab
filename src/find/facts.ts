/** What the finder knows beside the dictionary's names: `dictionary/finding/` as it sees it. */
type Words = readonly string[];

export type FindingFacts = {
  headings: {
    words: readonly { words: Words; weak?: Words }[];
    slips: { words: Words };
    full: { words: Words };
    teasers: { words: Words; actives: Words; spoken: Words; alone: Words };
    asides: { words: Words };
  };
  denials: { before: { words: Words; loose: Words }; glued: { words: Words }; alone: { words: Words } };
  goods: { goods: readonly { good: string; words: Words }[] };
  shared: { groups: readonly { names: Words }[]; forms: { words: Words }; pressed: { words: Words } };
  own: {
    plain: { words: Words };
    built: { words: Words };
    frequent: { words: Words };
    single: { words: Words };
    latin: { words: Words };
  };
  around: { cosmetic: { words: Words }; elsewise: { words: Words }; home: { words: Words } };
  prose: {
    words: { words: Words };
    goesOn: { words: Words };
    endsOn: { words: Words };
    ends: { words: Words };
  };
  /** Latin genera of the naming grammar. */
  genera: Words;
};
