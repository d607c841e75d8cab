import { bringsFor } from '../../core/amounts/brings.ts';
import { type ProductFacts, type ProductKind, productKinds } from '../../core/product/product.ts';
import { judgeMet } from '../../use/judge/judge-met.ts';
import type { Met } from '../../use/knowing.ts';
import { dotted } from '../describe/dotted.ts';
import { money } from '../describe/money.ts';
import { sumsOf } from '../describe/sums.ts';
import { Card } from '../parts/card.tsx';
import { Columns } from '../parts/columns.tsx';
import { Select } from '../parts/controls/select.tsx';
import { Note } from '../parts/note.tsx';
import { Pending } from '../parts/waiting/pending.tsx';
import { MetAgain } from '../products/label/met-again.tsx';
import { SameBottle } from '../products/label/same-bottle.tsx';
import { sizeWords } from '../products/price.ts';
import type { Translate } from '../words/index.ts';
import type { World } from '../world.ts';
import { Cautions } from './cautions.tsx';
import { ListActions } from './list-actions.tsx';
import { MentionList } from './mention-list.tsx';
import { UnknownNames } from './unknown/unknown-names.tsx';
import { Verdict } from './verdict.tsx';

/** Price, size and maker in one line, as far as they are told. */
function factsLine(facts: ProductFacts, t: Translate): string {
  const { maker, price, currency } = facts;
  return dotted([maker, sizeWords(t, facts), price !== undefined && money(price, currency, t.lang)]);
}

/** Everything told of one list: sum, answer, what to do, names, what is not known, cautions. */
export function ListReading(props: {
  world: World;
  met: Met;
  /** What is pasted has no page to remember a kind with: whoever shows it does. */
  onKind?: (kind: ProductKind | undefined) => void;
}) {
  const { world, met } = props;
  const { t } = world;
  const { facts, text } = met;
  const held = judgeMet(world, met);
  if (!held) return <Pending world={world} />;
  const { reading, judged, checks, notForHair } = held;
  const { kept, kind, use, facts: told } = held.known;
  const correct = (to: ProductKind | undefined) =>
    props.onKind && !kept
      ? props.onKind(to)
      : void world.act({ act: 'correct-kind', met, ...(to && { kind: to }) });
  if (reading.refused)
    return (
      <Note t={t} care>
        <p>{t(`page.refused.${reading.refused}`)}</p>
      </Note>
    );
  return (
    <Columns
      start={
        <>
          <Card over={factsLine(facts, t)} title={facts.name}>
            <Verdict world={world} judged={judged} checks={checks} notForHair={notForHair}>
              <p class="sums">
                {sumsOf(reading, t, bringsFor(reading, { kind, use }, world.practice.washDay))}
              </p>
            </Verdict>
            <Select
              inline
              label={t('panel.kind')}
              empty={t('panel.kind.unknown')}
              options={productKinds.map((value) => ({ value, label: t(`routine.kind.${value}`) }))}
              value={kind}
              onChange={correct}
              hint={use && t(`panel.use.${use}`)}
            />
            <ListActions world={world} met={{ ...met, facts: told }} />
          </Card>
          {kept && <MetAgain world={world} kept={kept} text={text} facts={told} />}
          {!kept && <SameBottle world={world} met={{ text, facts: told }} />}
        </>
      }
      end={
        <>
          <MentionList world={world} reading={reading} decides={checks[0]?.decides ?? []} />
          <UnknownNames world={world} reading={reading} />
          <Cautions world={world} />
        </>
      }
    />
  );
}
