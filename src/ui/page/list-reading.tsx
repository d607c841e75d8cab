import { useState } from 'preact/hooks';
import { type ProductFacts, type ProductKind, productKinds, usualUse } from '../../core/product/product.ts';
import { findSame } from '../../core/product/same-product.ts';
import { sumsOf } from '../describe/strip.ts';
import { headInUse } from '../heads.ts';
import { Card } from '../parts/card.tsx';
import { Note } from '../parts/note.tsx';
import { Pending } from '../parts/pending.tsx';
import { Select } from '../parts/select.tsx';
import { MetAgain } from '../products/met-again.tsx';
import type { World } from '../world.ts';
import { Cautions } from './cautions.tsx';
import { ListActions } from './list-actions.tsx';
import { MentionList } from './mention-list.tsx';
import { UnknownNames } from './unknown-names.tsx';
import { Verdict } from './verdict.tsx';
import { weigh } from './weigh.ts';

/** Price, size and maker in one line, as far as they are told. */
function factsLine({ maker, size, sizeUnit, price, currency }: ProductFacts, lang: string): string {
  const said: string[] = [];
  if (maker) said.push(maker);
  if (size !== undefined) said.push(`${new Intl.NumberFormat(lang).format(size)} ${sizeUnit ?? 'ml'}`);
  if (price !== undefined)
    said.push(
      currency
        ? new Intl.NumberFormat(lang, { style: 'currency', currency }).format(price)
        : new Intl.NumberFormat(lang).format(price),
    );
  return said.join(' · ');
}

/** Everything told of one list: sum, answer, what to do, names, what is not known, cautions. */
export function ListReading({ world, text, facts }: { world: World; text: string; facts: ProductFacts }) {
  const { t, remembered } = world;
  const kept = findSame(remembered.products, { facts, text });
  const [corrected, setKind] = useState<ProductKind | undefined>();
  const kind = corrected ?? kept?.kind ?? facts.kind;
  const use = (corrected && usualUse[corrected]) ?? kept?.use ?? facts.use ?? (kind && usualUse[kind]);
  const reading = world.reading(text, use);
  const told: ProductFacts = { ...facts, ...(kind && { kind }), ...(use && { use }) };
  if (!reading) return <Pending t={t} />;
  if (reading.refused)
    return (
      <Note t={t} care>
        <p>{t(`page.refused.${reading.refused}`)}</p>
      </Note>
    );
  const head = headInUse(remembered);
  const weighed = head && weigh(world, head, reading, kind, use);
  return (
    <>
      <Card over={factsLine(facts, t.lang)} title={facts.name}>
        <p class="sums">{sumsOf(reading, t)}</p>
        <Verdict world={world} reading={reading} weighed={weighed} />
        <Select
          inline
          label={t('panel.kind')}
          empty={t('panel.kind.unknown')}
          options={productKinds.map((value) => ({ value, label: t(`routine.kind.${value}`) }))}
          value={kind}
          onChange={setKind}
          hint={use && t(`panel.use.${use}`)}
        />
        <ListActions world={world} text={text} facts={told} />
      </Card>
      {kept && <MetAgain world={world} kept={kept} text={text} facts={told} />}
      <MentionList world={world} reading={reading} decides={weighed?.decides ?? []} />
      <UnknownNames world={world} reading={reading} />
      <Cautions world={world} />
    </>
  );
}
