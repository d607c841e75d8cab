import { useEffect, useState } from 'preact/hooks';
import type { Product } from '../../core/product/product.ts';
import { isJudged, type JudgedProduct, judgeKept } from '../../use/judge/judge-met.ts';
import type { World } from '../world.ts';

const slice = 12; // ms of judging before the user's hand has its turn
const mostAsked = 20; // labels that are asked to be read at a time

let spent = 0;
let due = false;
let waiting: (() => void)[] = [];

function nextTurn() {
  if (due) return;
  due = true;
  setTimeout(() => {
    [due, spent] = [false, 0];
    const all = waiting;
    waiting = [];
    for (const each of all) each();
  });
}

function judgeNow(world: World, product: Product): JudgedProduct | undefined {
  const from = performance.now();
  const held = judgeKept(world, product);
  spent += performance.now() - from;
  nextTurn();
  return held;
}

/** A product kept, judged at once where that was done before, else when it is its row's turn. */
export function useJudged(
  world: World,
  product: Product,
): { held?: JudgedProduct | undefined; waits: boolean } {
  const [turn, setTurn] = useState(0);
  const waits = spent >= slice && !isJudged(world, product);
  useEffect(() => {
    if (!waits) return;
    const now = () => setTurn((n) => n + 1);
    waiting.push(now);
    nextTurn();
    return () => {
      waiting = waiting.filter((each) => each !== now);
    };
  }, [waits, turn]);
  return waits ? { waits } : { held: judgeNow(world, product), waits };
}

/** Judges all of these a little at a time; true until it is done. A world that changes meanwhile is begun anew. */
export function useJudgedAll(world: World, products: readonly Product[] | undefined): boolean {
  const [turn, setTurn] = useState(0);
  const left = products?.filter((product) => product.labels[0] && !isJudged(world, product)) ?? [];
  useEffect(() => {
    let asked = 0;
    for (const product of left) {
      if (spent >= slice || asked >= mostAsked) break;
      if (!judgeNow(world, product)) asked++;
    }
    if (left.length === 0) return;
    const timer = setTimeout(() => setTurn((n) => n + 1), asked > 0 ? 60 : 0);
    return () => clearTimeout(timer);
  }, [products, world.remembered, turn]);
  return left.length > 0;
}
