/** What the words leave open of the colours: rows that name none, and yarns that no row names. */
import { type Cloth, type Fabric, NO_YARN } from '../fabric/index.ts';

/** Sentences for a pattern of several yarns; none for one of one yarn. */
export function coloursSaid({ yarns, cloths }: Fabric): string[] {
  const named = yarns.filter((yarn) => yarn !== '');
  if (named.length < 2) return [];
  const used = new Set(cloths.flatMap((cloth) => [...yarnsIn(cloth)]));
  const idle = yarns.filter((yarn, at) => yarn !== '' && !used.has(at));
  const unsaid = yarns.indexOf('');
  const before = new Set(cloths.flatMap(unnamedIn));
  return [
    ...(idle.length > 0
      ? [
          `No row was read as worked with ${listed(idle)}: what the words say of ${idle.length === 1 ? 'it' : 'them'} is told with the other yarns.`,
        ]
      : []),
    ...(before.size > 0
      ? [`No yarn is named for ${[...before].join('; ')}: told with ${yarns[0]}.`]
      : []),
    ...(unsaid >= 0 && used.has(unsaid)
      ? ['Where the colour changes without a name, it is not known which yarn is meant.']
      : []),
  ];
}

const listed = (names: readonly string[]): string =>
  names.length === 1 ? names[0]! : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

function yarnsIn({ nodes }: Cloth): ReadonlySet<number> {
  const found = new Set<number>();
  for (let id = 0; id < nodes.n; id++) found.add(nodes.yarn[id]!);
  return found;
}

/** Headings under which stitches have no named yarn. */
const unnamedIn = ({ nodes, rows }: Cloth): string[] =>
  rows
    .filter(({ nodes: { from, to } }) => to > from && nodes.yarn[from] === NO_YARN)
    .map(({ part }) => part || 'the first rows');
