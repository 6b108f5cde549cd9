/**
 * How an open question was settled, as the sentence that would settle it if it stood in the notes.
 * Keys are the engine's names of the questions; `#` stands for the number in the name, `{row}` for what
 * the pattern calls its courses.
 */

interface Sentences {
  /** Told even where custom decided. Others arise in every other row, and are told only where the
   * counts asked for a reading. */
  readonly tellsCustom: boolean;
  /** Sentence by reading. */
  readonly readings: Readonly<Record<string, string>>;
}

const sentences: Readonly<Record<string, Sentences>> = {
  'start-chain': {
    tellsCustom: true,
    readings: {
      counts: 'The ch # at the start of a {row} counts as a stitch.',
      'does not count': 'The ch # at the start of a {row} does not count as a stitch.',
    },
  },
  'start-chain for the first': {
    tellsCustom: true,
    readings: {
      counts: 'The ch # of a {row} that skips its first stitch counts as a stitch.',
      'does not count': 'The ch # of a {row} that skips its first stitch does not count as one.',
    },
  },
  'gap of the start-chain': {
    tellsCustom: true,
    readings: {
      none: 'The ch # at the start of a {row} stands for a stitch, with no space beside it.',
      'a space': 'The ch # at the start of a {row} stands for a stitch and a space beside it.',
    },
  },
  'start-chain of a mesh': {
    tellsCustom: true,
    readings: {
      'a space': 'The ch # at the start of a {row} is a space, as the others of its {row} are.',
      'does not count':
        'The ch # at the start of a {row} is neither a stitch nor a space of the mesh.',
      counts: 'The ch # at the start of a {row} counts as a stitch with a space beside it.',
    },
  },
  'start-chain at the edge': {
    tellsCustom: true,
    readings: {
      counts: 'The ch # at the start of a {row} stands for its first stitch and adds no boxes.',
      'adds boxes':
        'The ch # at the start of a {row} is the foundation of boxes added at the edge.',
    },
  },
  'start-chain joined to': {
    tellsCustom: false,
    readings: {
      counts: 'A ch # that the {row} is joined to counts as a stitch.',
      'does not count':
        'The ch # at the start of a {row} does not count as a stitch, though the {row} is joined to it.',
    },
  },
  'foot of the start-chain': {
    tellsCustom: false,
    readings: {
      'taken by the chain': 'The ch # at the start of a {row} takes the place on which it stands.',
      'worked last':
        'The last stitch of a {row} goes into the place on which its ch # stands, and the chain counts.',
    },
  },
  'skipped chains': {
    tellsCustom: true,
    readings: {
      count: 'The # chains skipped at the start count as a stitch.',
      'do not count': 'The # chains skipped at the start do not count as a stitch.',
      'count, with a space': 'The # chains skipped at the start count as a stitch and a space.',
      'a loop': 'The # chains skipped at the start are the first loop of the {row}.',
    },
  },
  'rep from * n times': {
    tellsCustom: true,
    readings: {
      'n more': '"Rep from * 5 times" means 5 times more.',
      'n in all': '"Rep from * 5 times" means 5 times in all.',
    },
  },
  'ring of chain': {
    tellsCustom: true,
    readings: {
      'into the ring': 'Stitches told with no place after a ring of chain go into the ring.',
      'along the chain': 'Stitches told with no place after a ring of chain go along its chains.',
    },
  },
  'no beginning': {
    tellsCustom: true,
    readings: { 'a ring': 'The first round is worked into a magic ring.' },
  },
  'first chains': {
    tellsCustom: false,
    readings: {
      'worked from the first': 'The first row is worked into every chain.',
      'passed to turn': 'The first row passes the chains that turn, as many as its stitch is high.',
      'passed, and a stitch':
        'The first row passes the chains that turn; they count as its first stitch.',
    },
  },
  'n in next n': {
    tellsCustom: false,
    readings: {
      'one in each': '"2 dc in next 2 sts" means 1 dc in each of them.',
      'n in each': '"2 dc in next 2 sts" means 2 dc in each of them.',
    },
  },
  'row not understood': {
    tellsCustom: false,
    readings: {
      'as many as beneath':
        'A {row} that was not understood leaves as many stitches as it stands on.',
    },
  },
  'chains in counts': {
    tellsCustom: false,
    readings: {
      'each chain counts': 'In counts of stitches each chain of a space counts as a stitch.',
      'no chain counts': 'In counts of stitches the chains of spaces do not count.',
    },
  },
  'start-chain before several': {
    tellsCustom: false,
    readings: {
      'a place of its own': 'A start chain that counts leaves its place to no other stitch.',
      'one of them':
        'Before "2 dc in each st" the start chain is one of the stitches in its own place.',
    },
  },
  'every other stitch': {
    tellsCustom: false,
    readings: {
      'the others are passed': '"In every other st" passes the stitches between.',
      'the others have one each':
        '"2 sc in every other st" means 1 sc in each of the stitches between.',
    },
  },
  'closing chain': {
    tellsCustom: false,
    readings: {
      made: 'A round of loops is closed by a last chain, and the join stands for its stitch.',
      'not made': 'The chain of a repeat is not made again before the join.',
    },
  },
  'bare behind a skip': {
    tellsCustom: false,
    readings: {
      'one after the other':
        'Stitches behind a skip for which no place is told go into one stitch each.',
      'in one place': 'Stitches behind a skip for which no place is told all go into one stitch.',
    },
  },
  'list before same': {
    tellsCustom: false,
    readings: {
      'the next place':
        'In a list that ends "in same st" the stitches before go into the next one.',
      'the place worked last':
        'A list that ends "in same st" all goes into the stitch worked last.',
    },
  },
  'list behind a skip': {
    tellsCustom: false,
    readings: {
      'one after the other': 'Stitches listed behind a skip go into one stitch each.',
      'in one place':
        'Stitches listed behind a skip all go into the one stitch named at their end.',
    },
  },
  'first stitches behind the chain': {
    tellsCustom: false,
    readings: {
      'its own too': 'Of the first stitches skipped, one is that on which the start chain stands.',
      others: 'The first stitches skipped come behind that on which the start chain stands.',
    },
  },
  'skip behind the chain': {
    tellsCustom: false,
    readings: {
      'another stitch': 'A skip right after a starting chain passes over the next stitch.',
      'its own': 'A skip right after a starting chain names the stitch that the chain stands for.',
    },
  },
  'last pass': {
    tellsCustom: true,
    readings: {
      whole: 'Repeats to the end are worked in whole passes.',
      'as far as it goes': 'The last repeat of a row stops where the row ends.',
    },
  },
  'base of the start chain': {
    tellsCustom: false,
    readings: {
      'the first stitch': '"In base of ch" is the first stitch of the row.',
      'beside the first stitch':
        '"In base of ch" is a stitch more in the first place, which the row then works again.',
    },
  },
  'same in a pass': {
    tellsCustom: false,
    readings: {
      'the place worked last': '"In same st" at the start of a repeat is the stitch worked last.',
      'one place for each pass': '"In same st" at the start of a repeat is the next stitch.',
    },
  },
  'rep from * twice over': {
    tellsCustom: false,
    readings: {
      'all since the star': 'A second "rep from *" works again all since the star.',
      'the first part': 'A second "rep from *" works again what the first one did.',
    },
  },
  'same in a list': {
    tellsCustom: false,
    readings: {
      'the place worked last':
        '"3 sc in same st" among numbers of stitches is the stitch worked last.',
      'one place for all': '"3 sc in same st" among numbers of stitches is one stitch, the next.',
    },
  },
  list: {
    tellsCustom: false,
    readings: {
      once: 'A list of stitches is worked once.',
      'repeated around': 'Stitches told once, with no place, are repeated to the end.',
    },
  },
  'behind petals': {
    tellsCustom: true,
    readings: {
      'one place for each petal': 'Behind petals there is one place for each of them.',
    },
  },
  'list before "around"': {
    tellsCustom: true,
    readings: {
      'repeated around': 'Stitches told before "inc around" are repeated with it.',
      once: 'Stitches told before the one that goes around are worked once.',
    },
  },
  'gap of the join': {
    tellsCustom: false,
    readings: {
      'worked first': 'The gap in which the round begins is not worked again at its end.',
      'worked last': 'The gap in which the round begins is worked again at its end.',
    },
  },
  'around behind next': {
    tellsCustom: false,
    readings: {
      'the whole sentence': '"Sc in next st, 2 sc in next st around" repeats both.',
      'the last clause': '"Sc in next st, 2 sc in next st around" repeats the 2 sc only.',
    },
  },
  'same space': {
    tellsCustom: false,
    readings: {
      'the space ahead': '"Same space" after a join is the space beside it.',
      'the stitch of the join': '"Same space" after a join is the stitch that was joined to.',
    },
  },
  'slip stitches': {
    tellsCustom: false,
    readings: {
      'not counted': 'Slip stitches along a {row} do not count as stitches.',
      counted: 'Slip stitches along a {row} count as stitches.',
    },
  },
  'space stood in': {
    tellsCustom: false,
    readings: {
      passed: 'Where the hook stands in a space, "next" is the space after it.',
      'worked first': 'Where the hook stands in a space, "next" is that space.',
    },
  },
  'together in one place': {
    tellsCustom: false,
    readings: {
      'in one place': '"dc2tog in next st" has all its legs in that one stitch.',
      'over as many places': '"dc2tog in next st" is worked over the next 2 sts.',
    },
  },
  'between stitches': {
    tellsCustom: false,
    readings: {
      'a stitch is passed': 'Stitches worked between stitches pass one stitch each.',
      'no stitch is passed': 'Stitches worked between stitches pass none.',
    },
  },
  gaps: {
    tellsCustom: false,
    readings: {
      passed: '"St" means a stitch; chain spaces are passed over.',
      one: '"St" means a stitch or a chain space.',
      chains: '"St" means a stitch or a chain, each chain of a space being one.',
    },
  },
  noun: {
    tellsCustom: false,
    readings: {
      next: '"In next dc" means the next stitch, whatever it is.',
      seek: '"In next dc" passes over other stitches on the way.',
    },
  },
  'each of a name': {
    tellsCustom: false,
    readings: {
      'every stitch': '"In each sc" means every stitch, though some are no sc.',
      'those of that name': '"In each sc" means the sc alone; other stitches are passed over.',
    },
  },
  'group without brackets': {
    tellsCustom: false,
    readings: {
      'one place': 'Stitches listed before "in" are all worked in that place.',
      'along the row': 'Of stitches listed before "in", only the last is worked in that place.',
    },
  },
  'list in n places': {
    tellsCustom: false,
    readings: {
      'all in each': '"(a, b) in next 2 sts" works both stitches in each of the two.',
      'one in each':
        '"(a, b) in next 2 sts" works the first stitch in the first place, the second in the next.',
    },
  },
  'bare 2': {
    tellsCustom: false,
    readings: {
      along: '"2 sc" means 1 sc in each of the next 2 sts.',
      'in one place': '"2 sc" means 2 sc in the next st.',
    },
  },
  'stitch behind': {
    tellsCustom: false,
    readings: {
      used: 'The stitch behind a stitch worked below is skipped.',
      'skipped in words':
        'The stitch behind a stitch worked below is skipped only where that is said.',
    },
  },
  'repeat without a number': {
    tellsCustom: false,
    readings: {
      'to the end': 'A repeat without a number goes on to the end of the {row}.',
      once: 'Brackets without a number are worked once.',
    },
  },
  'ending with': {
    tellsCustom: false,
    readings: {
      adds: '"Ending with" comes after the last repeat.',
      replaces: '"Ending with" takes the place of the end of the last repeat.',
      'replaces the last of several':
        '"Ending last repeat with" takes the place of the last of several stitches.',
    },
  },
  'corners of the piece': {
    tellsCustom: false,
    readings: {
      'places of their own': "A corner of the piece stands beside its sides' last stitches.",
      'the last places of its sides': "A corner of the piece stands in its sides' last stitches.",
    },
  },
  'far end of the chain': {
    tellsCustom: false,
    readings: {
      'with the chain first worked': 'The opposite side ends with the chain that was worked first.',
      'without the chain first worked':
        'The opposite side ends before the chain that was worked first.',
      'with the chains at both ends': 'The opposite side takes the chains at both ends once more.',
    },
  },
};

/** The sentence; the engine's own words where this table has none. */
export function sentenceFor(
  what: string,
  reading: string,
  course: 'row' | 'round' = 'row',
): string {
  const { name, number } = split(what);
  const sentence = sentences[name]?.readings[reading];
  if (sentence === undefined) return `${what}: ${reading}`;
  return sentence.replace('#', number).replaceAll('{row}', course);
}

/** Whether a reading that custom decided is worth a line. */
export function tellsCustom(what: string): boolean {
  return sentences[split(what).name]?.tellsCustom ?? true;
}

/** "start-chain 3" is the question about start chains, of three; "start-chain 6 at the edge" has it within. */
function split(what: string): { readonly name: string; readonly number: string } {
  // "bare 2" is a name as it stands.
  if (what in sentences) return { name: what, number: '' };
  const [, before = what, number = '', after = ''] = /^(.*?) (\d+)( .*)?$/.exec(what) ?? [];
  return { name: before + after, number };
}
