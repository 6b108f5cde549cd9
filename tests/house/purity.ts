// What would make the engine's output differ from run to run or machine to machine, and that the
// lint cannot name because it is a member, not a global.
import { mask } from './mask.ts';
import type { Sources } from './sources.ts';

const banned = [
  { what: /\bMath\s*\.\s*random\b/g, why: 'the engine has no randomness: seeds are parameters' },
  { what: /\.\s*localeCompare\b/g, why: 'order must not depend on the machine: compare with <' },
  { what: /\.\s*toLocale\w+/g, why: 'output must not depend on the locale of the machine' },
];

/** Every such place, as "file:line what: why". */
export function impurities(sources: Sources): readonly string[] {
  return [...sources].flatMap(([path, text]) => {
    const code = mask(text);
    return banned.flatMap(({ what, why }) =>
      [...code.matchAll(what)].map((match) => {
        const line = code.slice(0, match.index).split('\n').length;
        return `${path}:${line} ${match[0]}: ${why}`;
      }),
    );
  });
}
