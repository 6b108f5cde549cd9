/** Readings of a doubt in words: they stand in the middle of a sentence. */

const SENTENCES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'rep from * n times': {
    'n more': '"n times" means n more times',
    'n in all': '"n times" means n times in all',
  },
  'far end of the chain': {
    'with the chain first worked': 'the chain first worked is taken again at the far end',
    'without the chain first worked': 'the chain first worked is not taken again',
    'with the chains at both ends': 'the chains at both ends are taken again',
  },
  'chains in counts': {
    'each chain counts': 'each chain counts as a stitch',
    'no chain counts': 'no chain counts as a stitch',
  },
  'skip behind the chain': {
    'another stitch': 'the skip behind the start chain is of another stitch',
    'its own': 'the skip behind the start chain is of the stitch that it stands on',
  },
  gaps: {
    passed: '"st" passes over chain spaces',
    one: '"st" takes a chain space as one place',
    chains: '"st" takes each chain',
  },
};

export function doubtWords(doubt: string, reading: string): string {
  const known = SENTENCES[doubt]?.[reading];
  if (known) return known;
  const start = /^start-chain (\d+)(?: joined to| for the first)?$/.exec(doubt);
  if (start) {
    const verb = reading === 'counts' ? 'counts' : 'does not count';
    return `the ch ${start[1]} at its start ${verb} as a stitch`;
  }
  const foot = /^foot of the start-chain (\d+)$/.exec(doubt);
  if (foot) {
    const again =
      reading === 'worked last' ? 'is worked again at its end' : 'is taken by that chain';
    return `the place of the ch ${foot[1]} at its start ${again}`;
  }
  const mesh = /^start-chain (\d+) of a mesh$/.exec(doubt);
  if (mesh) {
    const what = reading === 'a space' ? 'is a space of the mesh' : `${reading} as a stitch`;
    return `the ch ${mesh[1]} at its start ${what}`;
  }
  const skipped = /^skipped chains (\d+)$/.exec(doubt);
  if (skipped) {
    if (reading === 'a loop') return `the ${skipped[1]} chains skipped at its start are a loop`;
    const verb = reading === 'count' ? 'count' : 'do not count';
    return `the ${skipped[1]} chains skipped at its start ${verb} as a stitch`;
  }
  return `${doubt} is read as "${reading}"`;
}
