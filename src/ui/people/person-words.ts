import type { Head } from '../../core/hair/head.ts';
import { allowanceOf } from '../../core/hair/tolerance.ts';
import type { Finding } from '../../core/judge/finding.ts';
import { washDay } from '../../core/wash-day/add-up.ts';
import { newestFirst } from '../../core/wash-day/days.ts';
import type { Routine } from '../../core/wash-day/routine.ts';
import { routineInUse } from '../../use/in-use.ts';
import { washDayInput } from '../../use/judge/wash-day-input.ts';
import { avoidWord } from '../hair/avoid-list.tsx';
import { feelWords } from '../log/feel-scale.tsx';
import { hairWords, type Sheet, sheetOf } from '../routine/sheet/sheet-words.ts';
import type { World } from '../world.ts';

/** One wash day of a person: its steps with their reasons, what it still lacks, what is to be said of it. */
export type PersonPlan = { sheet: Sheet; missing: string[]; open: string[] };

/** All that goes on the sheet of one person. Nothing is taken from anybody else's hair, log or plans. */
export type PersonSheet = {
  name: string;
  made: string;
  hair: string[];
  /** How much protein suits, and why line by line. */
  tolerance: string | undefined;
  reasons: string[];
  /** What was not told of the hair. */
  unknown: string[];
  avoid: string[];
  plans: PersonPlan[];
  /** How the last wash day felt. */
  last: string | undefined;
  watch: string[];
};

/** The sheet of one person, in words: screen, paper, picture and text draw the same. */
export function personSheet(world: World, head: Head): PersonSheet {
  const { t, remembered, practice, today } = world;
  const log = remembered.log.filter((entry) => entry.head === head.id);
  const { level, reasons, unknown } = allowanceOf(head, practice.allowance, { today, log });
  const made = new Intl.DateTimeFormat(t.lang, { dateStyle: 'long', timeZone: 'UTC' });
  const plans = plansOf(world, head).map((routine) => planOf(world, routine));
  const told = log.toSorted(newestFirst).find(({ feel }) => feelWords(t, feel) !== '');
  return {
    name: head.name,
    made: made.format(new Date(today)),
    hair: hairWords(t, { ...head, avoid: [] }),
    tolerance: level && t(`hair.allowance.level.${level}`),
    reasons: reasons
      .filter(({ setAside }) => !setAside)
      .map(({ said }) => t(said.key, { n: 1, ...said.values })),
    unknown: unknown.map(({ key, values }) => t(key, values)),
    avoid: head.avoid.map((avoid) =>
      avoid.reacted ? `${avoidWord(t, avoid)} (${t('hair.avoid.did-react')})` : avoidWord(t, avoid),
    ),
    plans,
    last:
      told &&
      t('plan.person.last', { date: made.format(new Date(told.date)), feel: feelWords(t, told.feel) }),
    watch: [...new Set(plans.flatMap(({ sheet }) => sheet.watch))],
  };
}

/** The plans of one person, the one in use first. */
function plansOf({ remembered }: World, head: Head): Routine[] {
  const inUse = routineInUse(remembered, head);
  return remembered.routines
    .filter((routine) => routine.head === head.id && routine.steps.length > 0)
    .toSorted((a, b) => Number(b === inUse) - Number(a === inUse));
}

function planOf(world: World, routine: Routine): PersonPlan {
  const { t, practice } = world;
  const day = washDay(washDayInput(world, routine));
  const lacks = ({ rule, reason }: Finding) =>
    practice.plan.unfinished.some((each) => each === rule || each === reason.key);
  const said = day.findings.filter(({ answer }) => answer !== 'suits');
  const words = (findings: readonly Finding[]) => [
    ...new Set(
      findings.map(({ reason, condition }) =>
        [reason, condition].flatMap((each) => (each ? [t(each.key, each.values)] : [])).join(' '),
      ),
    ),
  ];
  const empty = routine.steps.filter(({ product }) => product === undefined);
  return {
    sheet: sheetOf(world, routine, day),
    missing: [
      ...empty.map(({ kind }) => t('plan.person.no-product', { kind: t(`routine.kind.${kind}`) })),
      ...words(said.filter(lacks)),
    ],
    open: words(said.filter((finding) => !lacks(finding))),
  };
}

/** The same as plain text, to paste into a message. */
export function personText(world: World, sheet: PersonSheet): string {
  const { t } = world;
  const list = (title: string, lines: readonly string[]) =>
    lines.length > 0 ? ['', title, ...lines.map((line) => `- ${line}`)] : [];
  return [
    `${sheet.name} · ${sheet.made}`,
    ...list(t('plan.person.hair'), sheet.hair),
    ...(sheet.tolerance ? list(t('plan.person.tolerance', { level: sheet.tolerance }), sheet.reasons) : []),
    ...list(t('plan.person.unknown'), sheet.unknown),
    ...list(t('hair.avoid'), sheet.avoid),
    ...sheet.plans.flatMap(({ sheet: plan, missing, open }) => [
      '',
      plan.name,
      ...(plan.note ? [plan.note] : []),
      ...plan.steps.map(
        ({ kind, product, facts, why }, at) =>
          `${at + 1}. ${kind}: ${product}\n   ${facts.join(' · ')}. ${why}`,
      ),
      plan.protein,
      ...list(t('plan.missing'), missing),
      ...list(t('plan.person.open'), open),
    ]),
    ...(sheet.last ? ['', sheet.last] : []),
    ...list(t('plan.watch'), sheet.watch),
    '',
    t('routine.caution'),
    '',
  ].join('\n');
}
