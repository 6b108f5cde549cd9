/** Standing orders: "Ch 3 counts as dc here and throughout", "Turn at the end of each row". */
import type { StandingOrder } from '../tree.ts';
import { writeCountsAs } from './counts-as.ts';
import { sentence, voiceOf } from './list.ts';
import { writeIn } from './place.ts';
import { slipWord, type Voice, type WriteOptions } from './voice.ts';

/** One order as a sentence of its own. `quote` is not asked: orders were understood whole. */
export const writeOrder = (order: StandingOrder, options: WriteOptions): string =>
  sentence(orderWords(order, voiceOf({ ...options, course: 'rnd' })));

/** The order without capital and full stop. */
export function orderWords(order: StandingOrder, voice: Voice): string {
  switch (order.kind) {
    case 'start-chain': {
      const chain = order.n === null ? 'beg ch' : `ch ${order.n}`;
      return `${chain} ${writeCountsAs(order.countsAs, voice)}`;
    }
    case 'turning':
      return order.turn ? 'turn at the end of each row' : 'do not turn';
    case 'joining': {
      if (!order.join) return 'do not join rnds';
      const place =
        order.place === null ? '' : ` with ${slipWord(voice)} ${writeIn(order.place, voice)}`;
      return `join each rnd${place}`;
    }
    case 'loops':
      return order.loop === 'both'
        ? 'work through both loops throughout'
        : `work in ${order.loop === 'third' ? '3rd' : order.loop} loops only throughout`;
    case 'chains-count':
      return order.count ? 'chains count as sts' : 'chains do not count as sts';
    case 'turning-chain':
      return `ch ${order.n} to turn each row`;
    case 'terms':
      return `${voice.to} terms`;
    case 'times':
      return order.more
        ? '"rep from * 5 times" means 5 more times'
        : '"rep from * 5 times" means 5 times in all';
  }
}
