/** A tree in one line, short enough for a case of one line; see the cases for how it reads. */
import {
  type CountsAs,
  type Instruction,
  NO_VOCABULARY,
  type Noun,
  type Numbers,
  type Place,
  type RowLabel,
  readInstruction,
  type StatedCount,
  type Step,
  type StitchTerm,
  type Times,
  type Until,
  type Vocabulary,
} from '../../../src/notation/index.ts';

/** The instruction as read, on one line. */
export const tree = (text: string, known: Partial<Vocabulary> = {}): string =>
  shown(readInstruction(text, 0, text.length, { ...NO_VOCABULARY, ...known }), text);

function shown(read: Instruction, text: string): string {
  const label = read.label ? `${labelled(read.label)}: ` : '';
  const counts = read.counts.map(counted).join(', ');
  const orders = read.orders.map((order) => ` !${order.kind}`).join('');
  return `${label}${steps(read.steps, text)}${counts ? ` = ${counts}` : ''}${orders}`;
}

const steps = (all: readonly Step[], text: string): string =>
  all.map((step) => stepped(step, text)).join('; ');

function labelled(label: RowLabel): string {
  const numbers =
    label.numbers.length > 4
      ? `${label.numbers[0]}..${label.numbers.at(-1)}`
      : label.numbers.join(',');
  const parts = [label.sizes && `{${label.sizes}}`, label.word || '#', numbers, label.side];
  if (label.yarn) parts.push(`in ${label.yarn}`);
  if (label.every) parts.push(`every ${label.every}`);
  if (label.openEnd) parts.push('on');
  if (label.next) parts.push(`next ${numbered(label.next)}`);
  if (label.lastBySize) parts.push(`last ${label.lastBySize.join('/')}`);
  if (label.firstBySize) parts.push(`first ${label.firstBySize.join('/')}`);
  if (label.numbers.length === 0) parts.push(`"${label.text}"`);
  return parts.filter(Boolean).join(' ');
}

const numbered = (n: Numbers): string => n.values.map((value) => value ?? '-').join('/');

function stepped(step: Step, text: string): string {
  const words = text.slice(step.from, step.to).replace(/\s+/g, ' ');
  switch (step.kind) {
    case 'work': {
      const parts = [step.n && numbered(step.n), stitch(step.stitch)];
      if (step.numberAfter) parts.reverse();
      if (step.evenly) parts.push('evenly');
      if (step.place) parts.push(placed(step.place));
      for (const place of step.alsoIn) parts.push(`& ${placed(place)}`);
      if (step.until) parts.push(untilled(step.until));
      if (step.countsAs) parts.push(counting(step.countsAs));
      return parts.filter(Boolean).join(' ');
    }
    case 'chain': {
      const n = step.n ? numbered(step.n) : step.open ? '~' : '?';
      return `ch ${n}${step.countsAs ? ` ${counting(step.countsAs)}` : ''}`;
    }
    case 'skip':
      return `skip ${placed(step.place)}${step.countsAs ? ` ${counting(step.countsAs)}` : ''}`;
    case 'group':
      return `${step.loose ? '?' : ''}{${steps(step.steps, text)}} ${placed(step.place)}`;
    case 'repeat': {
      const ending = step.ending ? ` ending ${ended(step.ending, text)}` : '';
      const again = step.again ? 'again ' : '';
      return `${again}${step.mark}<${steps(step.steps, text)}> ${timed(step.times)}${ending}`;
    }
    case 'mark':
      return `mark ${step.mark}`;
    case 'join': {
      const parts = ['join', step.yarn && `yarn ${step.yarn}`];
      if (step.with && step.with.stem !== 'ss') parts.push(`with ${stitch(step.with)}`);
      if (step.ring) parts.push('ring');
      if (step.place) parts.push(placed(step.place));
      return parts.filter(Boolean).join(' ');
    }
    case 'turn':
      return step.not ? 'no turn' : 'turn';
    case 'fasten-off':
      return step.not ? 'no fasten-off' : 'fasten-off';
    case 'yarn':
      return `yarn ${step.act} ${step.yarn}`;
    case 'other-side':
      return `other-side${step.chains ? ` ch${numbered(step.chains)}` : ''}${step.rowEnds ? ' rows' : ''}`;
    case 'unworked':
      return `unworked${step.n ? ` ${numbered(step.n)}` : ''}`;
    case 'loop':
      return `loop ${step.loop}${step.row === null ? '' : ` of ${step.row}`}`;
    case 'boxes': {
      const until = step.until ? ` ${untilled(step.until)}` : '';
      return `${step.n ? numbered(step.n) : '?'} ${step.box}-box${until}`;
    }
    case 'chart': {
      const over = step.n ? ` over ${numbered(step.n)}` : '';
      const boxes = step.fromBox === null ? '' : ` boxes ${step.fromBox}-${step.toBox}`;
      return `chart "${step.name}"${over}${boxes}${step.row === null ? '' : ` row ${step.row}`}`;
    }
    case 'rows-again': {
      const numbers = step.lastN === null ? `rows ${step.rows.join(',')}` : `last ${step.lastN} rows`;
      const parts = [step.named === null ? numbers : `${step.named} row`];
      if (step.times) parts.push(`x${numbered(step.times)}`);
      if (step.rowsInAll) parts.push(`until ${numbered(step.rowsInAll)} rows`);
      if (step.stitchesAtEnd) parts.push(`until ${numbered(step.stitchesAtEnd)} sts`);
      if (step.moreRows) parts.push(`for ${numbered(step.moreRows)} rows`);
      if (step.measure) parts.push(`to ${step.measure.mm ?? '?'} mm`);
      if (step.endingWith !== null) parts.push(`ending ${step.endingWith}`);
      if (step.then.length > 0) parts.push(`then ${step.then.join(',')}`);
      if (step.part) parts.push(`of ${step.part}`);
      for (const { stem, was, now, atEnd } of step.changes)
        parts.push(`${stem ?? 'ch'} ${was ?? (atEnd ? 'end' : '?')}->${now}`);
      return parts.join(' ');
    }
    case 'even': {
      const parts = ['even', step.stitch && stitch(step.stitch)];
      if (step.until) parts.push(untilled(step.until));
      if (step.rows) parts.push(`${numbered(step.rows)} rows`);
      if (step.measure) parts.push(`to ${step.measure.mm ?? '?'} mm`);
      return parts.filter(Boolean).join(' ');
    }
    case 'remark':
      return `"${words}"`;
    case 'unread':
      return `UNREAD "${words}"`;
    case 'piece':
      return `piece ${step.how} ${step.which ?? ''} ${step.word}`;
    case 'not-worked':
      return `not-worked "${words}"`;
    default:
      return step.kind;
  }
}

function stitch(term: StitchTerm): string {
  const name = term.special ? `<${term.special}>` : (term.stem ?? '');
  const shape = {
    one: '', increase: 'inc', together: 'tog', cluster: 'cluster', bobble: 'bobble', puff: 'puff',
    popcorn: 'popcorn', shell: 'shell', v: 'v', picot: 'picot', special: '',
  }[term.shape]; // biome-ignore format: a table
  const parts = [
    term.loop && `${term.loop}-loop`,
    term.post && `${term.post}-post`,
    term.foundation && 'foundation',
    ...term.manner,
    `${name}${term.legs ?? ''}${shape}` || 'st',
  ];
  return parts.filter(Boolean).join(' ');
}

function placed(place: Place): string {
  const parts: (string | false | null)[] = [
    place.all && 'all',
    place.pick === 'nth' ? `nth${place.nth}` : place.pick,
    place.each && place.pick !== 'each' && 'each',
    place.n && numbered(place.n),
    place.nouns.map(noun).join(place.joinedBy === 'or' ? '|' : '+'),
    place.fromHook && 'from-hook',
    place.loop && `${place.loop}-loop`,
    place.post && `${place.post}-post`,
    place.rowsBelow > 0 && `${place.rowsBelow} below`,
    place.row !== null && `of row ${place.row}`,
    place.of && `of (${placed(place.of)})`,
    place.until && untilled(place.until),
  ];
  return `@${parts.filter(Boolean).join(' ')}`;
}

function noun(said: Noun): string {
  const name = said.stem ?? (said.kind === 'stitch' ? 'st' : said.kind);
  const word = said.word ? `'${said.word}'` : '';
  const flags = `${said.corner && said.kind !== 'corner' ? '-corner' : ''}${said.skipped ? '-free' : ''}`;
  return `${name}${said.chains ? numbered(said.chains) : ''}${word}${flags}${said.plural ? 's' : ''}`;
}

function untilled(until: Until): string {
  if (until.kind === 'end') return '->end';
  if (until.kind === 'length') return '->length';
  if (until.kind === 'last') {
    return `->last ${numbered(until.n)}${until.noun ? ` ${noun(until.noun)}` : ''}`;
  }
  const before = until.before ? `${numbered(until.before)} before ` : "";
  return `->${before}${placed(until.place)}`;
}

function timed(times: Times): string {
  if (times.kind === 'missing') return 'x?';
  if (times.kind === 'until') return untilled(times.until);
  return `x${numbered(times.n)}${times.more === null ? ' maybe more' : times.more ? ' more' : ''}`;
}

function ended(ending: NonNullable<(Step & { kind: 'repeat' })['ending']>, text: string): string {
  if (ending.kind === 'at') return `at ${ending.mark}`;
  if (ending.kind === 'in') return `last ${placed(ending.place)}`;
  const list = `[${steps(ending.steps, text)}]`;
  return ending.kind === 'omit' ? `without ${list}` : `${ending.last ? 'last ' : ''}with ${list}`;
}

function counting(said: CountsAs): string {
  if (!said.counts) return `(no st${said.throughout ? ' throughout' : ''})`;
  const chains = said.chains > 0 ? `+ch${said.chains}` : '';
  return `(=${said.stitches} ${said.stem ?? 'st'}${chains}${said.throughout ? ' throughout' : ''})`;
}

function counted(count: StatedCount): string {
  const unit = count.unit === 'stem' ? (count.stem ?? 'stem') : (count.unit ?? '');
  const parts = [numbered(count.n), unit + (count.chains ? numbered(count.chains) : '')];
  if (count.word) parts.push(`'${count.word}'`);
  if (count.startChainIncluded !== null) parts.push(count.startChainIncluded ? '+start' : '-start');
  if (count.partial) parts.push('partial');
  return parts.filter(Boolean).join(' ');
}
