import { useEffect, useState } from 'preact/hooks';
import { speaksAgainst } from '../../core/judge/finding.ts';
import type { Fill, Move } from '../../core/plan/moves.ts';
import { previewMoves } from '../../core/plan/preview-moves.ts';
import type { Suggestions as Answer, Candidate, Suggestion } from '../../core/plan/suggest.ts';
import type { Wish } from '../../core/plan/wish.ts';
import type { WashDay, WashDayInput } from '../../core/wash-day/add-up.ts';
import { productById } from '../../use/acts/matters/products.ts';
import { keepRoutine } from '../../use/acts/matters/routines.ts';
import { candidatesOf } from '../../use/judge/wash-day-input.ts';
import { carryOut } from '../carry-out.ts';
import { Card } from '../parts/card.tsx';
import { Button } from '../parts/controls/button.tsx';
import { CheckBox } from '../parts/controls/choice.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { Looking } from '../parts/waiting/looking.tsx';
import type { World } from '../world.ts';
import { OneMove } from './one-move.tsx';
import { askSuggest } from './plan/ask-plan.ts';
import { cadenceWords } from './steps/step-editor.tsx';

const none: readonly Candidate[] = [];

/** The smallest change that settles every clash, one press to take it; or what kind of product would. */
export function SuggestionsCard(props: {
  world: World;
  input: WashDayInput;
  day: WashDay;
  /** Steps that a change taken here touched. */
  onChanged: (steps: string[]) => void;
}) {
  const { world, input, day } = props;
  const { t } = world;
  const [considered, setConsidered] = useState(true);
  const [answered, setAnswered] = useState<
    { to: string; of: readonly Candidate[]; answer: Answer } | undefined
  >();
  const [share, setShare] = useState<number | undefined>();
  const clashes = day.findings.some(speaksAgainst);
  const candidates = clashes ? candidatesOf(world, considered) : none;
  const asked = JSON.stringify([input.routine, input.allowance, day.findings]);
  useEffect(() => {
    if (!clashes) return;
    setShare(undefined);
    void askSuggest({ ...input, candidates }, 'suggest', (told) => setShare(told.share)).then((answer) =>
      setAnswered({ to: asked, of: candidates, answer }),
    );
  }, [asked, candidates]);
  // One to what was asked before is none: it would change a routine that stands no more.
  const answer = answered?.to === asked && answered.of === candidates ? answered.answer : undefined;
  if (!clashes) return null;
  const offered = { world, input, candidates, onChanged: props.onChanged };
  const others = world.remembered.products.some(({ owned }) => !owned);
  return (
    <Card title={t('routine.suggest')} over={t('routine.suggest.over')} id="suggestions">
      <div aria-live="polite" class="stack">
        {!answer && <Looking words={t('routine.suggest.looking')} share={share} />}
        {answer?.answer === 'found' && (
          <>
            {!answer.fewest && <p class="hint">{t('routine.suggest.not-fewest')}</p>}
            <Offer {...offered} suggestion={answer.suggestions[0]!} first />
            {answer.suggestions.length > 1 && (
              <Disclosure summary={t('routine.suggest.others', { n: answer.suggestions.length - 1 })}>
                {answer.suggestions.slice(1).map((suggestion) => (
                  <Offer key={JSON.stringify(suggestion.moves)} {...offered} suggestion={suggestion} />
                ))}
              </Disclosure>
            )}
          </>
        )}
        {answer?.answer === 'none' && (
          <>
            <p>
              {t(answer.complete ? 'routine.suggest.none' : 'routine.suggest.none-within', {
                n: answer.upTo,
              })}
            </p>
            {answer.wanted[0] ? (
              <>
                <p>{t('routine.suggest.wanted')}</p>
                <Offer {...offered} suggestion={answer.wanted[0]} />
              </>
            ) : (
              <p>{t('routine.suggest.nothing-would')}</p>
            )}
          </>
        )}
      </div>
      {others && (
        <CheckBox label={t('routine.suggest.considered')} checked={considered} onChange={setConsidered} />
      )}
    </Card>
  );
}

const wishOf = (move: Move): Wish | undefined =>
  'with' in move && 'wish' in move.with ? move.with.wish : undefined;

function Offer(props: {
  world: World;
  input: WashDayInput;
  candidates: readonly Candidate[];
  suggestion: Suggestion;
  onChanged: (steps: string[]) => void;
  first?: boolean;
}) {
  const { world, input, suggestion, candidates, onChanged } = props;
  const { t } = world;
  const { moves, because, untold } = suggestion;
  const wishes = moves.flatMap((move) => wishOf(move) ?? []);
  const take = (taken: readonly Move[]) => {
    const { routine, touched } = previewMoves(input, taken, candidates, world.newId);
    const said = { key: 'routine.suggest.taken' };
    void carryOut(world, keepRoutine(world.remembered, routine, said)).then((ok) => ok && onChanged(touched));
  };
  return (
    <div class="offer">
      <ul class="plain-list">
        {moves.map((move) => (
          <li key={JSON.stringify(move)}>
            <p>{moveWords(world, input, move)}</p>
          </li>
        ))}
      </ul>
      {untold.length > 0 && <p class="hint">{t('routine.suggest.untold', { n: untold.length })}</p>}
      <div class="actions">
        {wishes.length === 0 && (
          <Button look={props.first ? 'strong' : 'plain'} onClick={() => take(moves)}>
            {t('routine.suggest.take')}
          </Button>
        )}
        {wishes.map((wish) => (
          <Button key={JSON.stringify(wish)} onClick={() => world.go('products', { wish })}>
            {t('routine.suggest.look-for', { what: wishWords(world, wish) })}
          </Button>
        ))}
      </div>
      <Disclosure summary={t('routine.suggest.why')}>
        {moves.map((move, index) => (
          <div key={JSON.stringify(move)}>
            <p>{moveWords(world, input, move)}</p>
            {because[index]!.map(({ rule, reason }) => (
              <p key={rule + reason.key} class="hint">
                {t('routine.suggest.because')} {t(reason.key, reason.values)}
              </p>
            ))}
            {!wishOf(move) && (
              <OneMove
                t={t}
                move={move}
                words={moveWords(world, input, move)}
                preview={() => previewMoves(input, [move], candidates, () => move.step)}
                onTake={() => take([move])}
              />
            )}
          </div>
        ))}
      </Disclosure>
    </div>
  );
}

/** "protein-free gel" */
export const wishWords = ({ t }: Pick<World, 't'>, wish: Wish): string =>
  t(`routine.wish.${wish.lifts ? 'lifting-' : ''}${wish.protein}`, { kind: t(`routine.kind.${wish.kind}`) });

export function moveWords(world: World, { routine }: WashDayInput, move: Move): string {
  const { t } = world;
  const step = routine.steps.find(({ id }) => id === move.step);
  const old = productById(world.remembered, step?.product)?.name;
  const kind = t(`routine.kind.${'kind' in move ? move.kind : step!.kind}`);
  const fillWords = (fill: Fill) => {
    if ('wish' in fill) return t('routine.suggest.a', { what: wishWords(world, fill.wish) });
    const names = [fill.product, ...fill.alternatives].flatMap((id) => {
      const product = productById(world.remembered, id);
      if (!product) return [];
      return product.owned ? product.name : t('plan.thought-of', { name: product.name });
    });
    return names.length > 1
      ? t('routine.suggest.or', { name: names[0]!, others: names.slice(1).join(', ') })
      : (names[0] ?? '');
  };
  switch (move.do) {
    case 'omit':
      return t('routine.suggest.omit', { kind, name: old ?? kind });
    case 'space':
      return t('routine.suggest.space', { kind, cadence: cadenceWords(t, move.cadence) });
    case 'add':
      return t('routine.suggest.add', { kind, name: fillWords(move.with) });
    default:
      return old
        ? t('routine.suggest.swap', { kind, old, name: fillWords(move.with) })
        : t('routine.suggest.fill', { kind, name: fillWords(move.with) });
  }
}
