import type { World } from '../world.ts';
import { Button } from './controls/button.tsx';
import { Empty } from './empty.tsx';

/** A place that asks for a head of hair before it can say anything, and where to describe one. */
export function NoHead({ world, title, why }: { world: World; title: string; why: string }) {
  return (
    <>
      <h2>{title}</h2>
      <Empty
        title={world.t('routine.no-head')}
        actions={
          <Button look="strong" onClick={() => world.go('hair')}>
            {world.t('routine.no-head.do')}
          </Button>
        }
      >
        <p>{why}</p>
      </Empty>
    </>
  );
}
