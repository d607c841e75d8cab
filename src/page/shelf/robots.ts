import robotsParser from 'robots-parser';
import type { Manners } from '../../contract/shelf.ts';
import { askShop, type Network } from './ask-shop.ts';

/** The name a shop may address us by in its robots.txt; what it says to all (`*`) counts too. */
const ourName = 'strandline';

export type Robots = {
  allows(address: string): boolean;
  /** Set when the shop asked to be left alone for now. */
  again?: number;
  /** Set when the file could not be had, so that its rules are not known: nothing is asked. */
  why?: 'offline' | 'unreachable';
};

/**
 * What the shop asks of programs, by RFC 9309: no such file (4xx) allows everything, a file that cannot be had
 * (5xx, no line) forbids everything until it can. Asked once for all pages of a press.
 */
export async function askRobots(
  origin: string,
  manners: Manners,
  network: Network,
  signal: AbortSignal,
): Promise<Robots> {
  const at = `${origin}/robots.txt`;
  const answer = await askShop(at, manners, network, signal);
  if ('page' in answer) {
    const robots = robotsParser(at, answer.page);
    return { allows: (address) => robots.isAllowed(address, ourName) !== false };
  }
  const allowed = ['not-found', 'refused', 'login', 'no-page'].includes(answer.why);
  const { why, again } = answer;
  if (again !== undefined) return { allows: () => false, again };
  if (allowed || why === 'cancelled') return { allows: () => allowed };
  return { allows: () => false, why: why === 'offline' ? why : 'unreachable' };
}
