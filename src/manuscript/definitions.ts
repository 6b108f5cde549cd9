/** Lines that define a stitch: "Shell (sh): 5 dc in same st", "puff = (yo, …) 3 times". */

import type { Span } from '../source/index.ts';
import { isDigitCode, isLetterCode, signBehindName } from './line-shapes.ts';
import { oneOf } from './one-of.ts';
import { isOwnShaping } from './own-shaping.ts';
import type { Section } from './sections.ts';

/** Name, its short form in brackets, a sign, and words behind it. */
const SHAPE = new RegExp(
  [
    String.raw`^((?:\d{1,2}[ -]?)?[a-z][a-z0-9'’./ -]{0,40}?)\s*`,
    String.raw`(?:[([]([^)\]]{1,60})[)\]])?\s*(:|=|\s[–—-]|[–—]|-(?=\(|\s+[a-z]*\d|\d{1,2} ?(?:[sdh]{1,2}c|tr)|ch ?\d))\s*(?=\S)`,
  ].join(''),
  'i',
);

/** Outside a list of stitches only such names are taken for stitches: "Note: …" is none. */
const STITCH_NAME = new RegExp(
  String.raw`\b${oneOf(`
    shells? | fans? | clusters? | cl | picots? | puffs? | pop | popcorns? | bobbles? | v[ -]?st
    | [vxy][ -]st(?:itch)? | stitch | st | box | block | mesh | group | crab | bead | scallop | sh
    | pf | bob | pc | lacet | bar
  `)}\b`,
  'i',
);
/** Words of rows and remarks; in a list of stitches they may be part of a name. */
const NO_STITCH = new RegExp(
  String.raw`\b${oneOf(`
    rows? | rnds? | rounds? | notes? | tip | size | yarn | hook | gauge | tension | count
    | materials? | stitches | step | part | pattern | end | start | begin | foundation | make
    | place | next | each | with
  `)}\b`,
  'i',
);
/** What every pattern has needs no definition. */
const PLAIN_NAME = new RegExp(
  `^${oneOf(String.raw`
    notes? | tip | step \d+ | gauge | tension | ch | chain | sc | hdc | dc | tr | htr | dtr | sts?
    | (?:[sdh]{1,2}c|tr|htr)[ -]?(?:inc|dec)(?:rease)? | sl ?st | ss | sp | sk | skip | rep | rnd | yo | beg | inc | dec | blo | flo | mr | mc | cc
    | rs | ws | rem | \w{0,4}\d?tog | st\(s\)
  `)}$`,
  'i',
);

const TRADE_SHORT = /^(?:[sdh]{1,2}c|tr|htr|dtr)\d?tog$/i;

/** "Foundation ch and row 1: Ch 32. …" among the special stitches is the first row. */
const NAMES_ROW =
  /\b(?:rows?|rnds?|rounds?) \d|^(?:foundation|set-?up|base|starting|beginning) (?:ch|chain|row|rnd|round)\b|^(?:foundation|start|set-?up)$|^to (?:begin|start)\b/i;

/** "MB: make bobble - 4 dc in next st, …": a short form, and how it is made. */
const SHORT_NAME = /^[A-Za-z][A-Za-z0-9-]{0,5}$/;
const MAKES =
  /^(?:make|work|form) (?:a |an |one |1 )?(?:\w+ )?(?:bobble|popcorn|puff|cluster|shell|picot|fan|v-?st|stitch|pc)/i;

/** "Cosy - With 4 mm hook, ch 6": the piece begins. */
const LEADS_WORK = /^(?:with|using)\s/i;

/** "2nd Round - …" below a list of abbreviations that nothing closes. */
const ROW_NAME =
  /^(?:\d{1,3}(?:st|nd|rd|d|th)?[ -]?(?:rows?|rnds?|rounds?|rds?)|(?:rows?|rnds?|rounds?|rds?|r)[ .#]*\d)/i;

/** Whether a line opens a definition in this section; what it says is read later. */
export function opensDefinition(text: string, from: number, to: number, section: Section): boolean {
  if (section === 'materials' || section === 'comments') return false;
  if (isStopped(text, from, to)) return true;
  if (!mayBeNamed(text, from, to)) return false;
  if (isMakingBehind(text, from, to, section)) return true;
  if (section === 'specials' && isNamedInFull(text, from, to)) return true;
  const found = SHAPE.exec(text.slice(from, Math.min(to, from + 80)));
  if (!found) return false;
  const [, name = '', short = '', sign = ''] = found;
  if (
    ROW_NAME.test(name) ||
    NAMES_ROW.test(name) ||
    LEADS_WORK.test(text.slice(from + found[0].length, to))
  )
    return false;
  // "Decrease (sc2tog) – insert hook into a st" tells what everybody knows.
  if (/^(?:pattern )?(?:instructions?|directions?|method)$/i.test(name.trim())) return false;
  const making = text.slice(from + found[0].length, Math.min(to, from + found[0].length + 60));
  if (isOwnShaping(text, name.trim(), making) || isOwnShaping(text, short.trim(), making))
    return true;
  if (PLAIN_NAME.test(name.trim()) || TRADE_SHORT.test(short.trim())) return false;
  if (name.split(/\s+/).length > 6) return false;
  if (section === 'specials' || section === 'abbreviations') return true;
  if (/[–—-]/.test(sign) && isGroupName(name)) return true;
  if ((sign !== ':' && sign !== '=' && sign !== '-') || NO_STITCH.test(name)) return false;
  const behind = from + found[0].length;
  if (SHORT_NAME.test(name.trim()) && MAKES.test(text.slice(behind, Math.min(to, behind + 40))))
    return true;
  if (
    SHORT_NAME.test(name.trim()) &&
    NAMED_BEHIND.test(text.slice(behind, Math.min(to, behind + 60)))
  )
    return true;
  if (/^v$/i.test(name.trim()) && GAPPED.test(text.slice(behind, Math.min(to, behind + 40))))
    return true;
  return STITCH_NAME.test(name) || STITCH_NAME.test(short);
}

/** "V: 1 tr, 2 ch, 1 tr": a stitch, a chain and a stitch; the V of charts in letters is two stitches. */
const GAPPED = /^[([]?(?:1 ?)?(?:h?dc|[hd]?tr),? ?(?:ch ?\d|\d ?ch)\b/i;

/** "bs = Bobble stitch - (yo, …) 4 times", "PC: popcorn stitch: 5 dc in same st": the name in full. */
const NAMED_BEHIND =
  /^(?:[a-z]+[ -]){0,3}?(?:stitch|bobble|popcorn|puff|cluster|shell|fan|picot)(?: st(?:itch)?)?\s?[:(–—-]/i;

/** "Picot", "Beg shell", "Puff stitch": nothing but what a group of stitches is called. */
export const isGroupName = (name: string): boolean => GROUP_NAME.test(name.trim());

const GROUP_NAME =
  /^(?:(?:beg|beginning|starting|end|ending|inc|increase|corner|cent(?:er|re)|half|large|big|small|little|mini|double|triple|\d)[ -])?(?:picot|shell|puff|bobble|popcorn|cluster|fan|v|x)(?:[ -]?(?:st|stitch))?$/i;

/** "V-stitch (work 2 dc into one stitch)", "Shell (2 dc, ch 1, 2 dc) in same st": no sign between. */
const MAKING_BEHIND =
  /^([a-z][a-z0-9'’ -]{0,30}?)\s*[([](?:work |make )?\d{1,2} ?[a-z]{2}[^)\]:=]{0,60}[)\]](.{0,30})/i;

function isMakingBehind(text: string, from: number, to: number, section: Section): boolean {
  if (section !== 'specials') return isMakingAlone(text, from, to);
  const found = MAKING_BEHIND.exec(text.slice(from, Math.min(to, from + 130)));
  if (!found) return false;
  const [line, name = '', behind = ''] = found;
  if (NO_STITCH.test(name) || !STITCH_NAME.test(name)) return false;
  const place = /\b(?:in|into) (?:the )?(?:same|one|next|indicated|a|1)\b/i;
  return place.test(line) && !/^\s*[:=–—-]/.test(behind);
}

/** "cross-dc (crossed double crochet) Skip next st, dc in next st, …": the name in full, and no sign. */
function isNamedInFull(text: string, from: number, to: number): boolean {
  const found = NAMED_IN_FULL.exec(text.slice(from, Math.min(to, from + 140)));
  return found !== null && !PLAIN_NAME.test(found[1] ?? '') && !NO_STITCH.test(found[1] ?? '');
}

const NAMED_IN_FULL =
  /^([a-z][a-z0-9-]{1,24}(?: [a-z0-9-]+){0,2}) ?\([^()]{4,80}\) (?=(?:Skip|Work|Insert|Yarn over|Yo|[SsDd]c|H?dc|Tr|Ch|Sl st|\(|\[|\d+ [a-z])\W?)/i;

/** "Shell (5 dc in a ch)", "V (dc ch 1 dc)" on a line of its own, in a list of the stitches used. */
function isMakingAlone(text: string, from: number, to: number): boolean {
  if (to - from > 60) return false;
  const found = MAKING_ALONE.exec(text.slice(from, to));
  return found !== null && (found[1] === 'V' || STITCH_NAME.test(found[1] ?? ''));
}

const MAKING_ALONE =
  /^(\p{Lu}[\p{L} -]{0,20}?) \((?:\d{1,2} ?)?(?:[sdh]{1,2}c|tr)\b(?:[^)]*\b(?:in|into)\b[^)]*|,? ch ?\d,? [^)]*)\)\.?$/u;

/** "Shell:", "dcf.", "Puff stitch (ps)": a name alone. */
const NAME_ALONE =
  /^((?:\d{1,2}[ -]?)?[a-z][a-z0-9'’/ -]{0,30}?)\s*(?:\(([^)]{1,16})\)\s*)?[:.]?$/i;

/** "Working (3 dc, ch 1, 3 dc) all in the same sp makes a shell", "Work dc around front post" */
const TELLS_MAKING =
  /^(?:work(?:ing)? (?:[([]|\d|a |[sdh]{1,2}c\b|tr\b)|yo\b|yarn over|insert |[([]?\d{0,2} ?(?:[sdh]{1,2}c|tr)\b[^.]{0,60}\b(?:same|one|indicated|around)\b)/i;

/** "5dc group. 5 dc in same sp", "dcf. Work dc around front of dc": a stop behind the name. */
function isStopped(text: string, from: number, to: number): boolean {
  const bracketed = signBehindName(text, from, Math.min(to, from + 80));
  const named = bracketed === OPEN || bracketed === HYPHEN || bracketed > 127;
  const short = named ? STOPPED_SHORT.exec(text.slice(from, Math.min(to, from + 80))) : null;
  if (short) return STITCH_NAME.test(short[1]!) || isNameOfStitch(short[2]!.toLowerCase(), '.');
  const stop = text.slice(from, Math.min(to, from + 24)).indexOf('.');
  if (stop < 2 || from + stop + 3 > to) return false;
  const name = text.slice(from, from + stop);
  return (
    isNameOfStitch(name, '.') && TELLS_MAKING.test(text.slice(from + stop + 1, to).trimStart())
  );
}

const OPEN = 40;
const HYPHEN = 45;

/** "Crossed treble (abbreviated xtr). Skip dc, tr in next dc": a stop behind the bracket. */
const STOPPED_SHORT =
  /^([a-z][a-z -]{2,40}?) \((?:abbreviated(?: as)?|abbr\.?) ([^)]{1,12})\)\. (?=\p{Lu})/iu;

/** A name that may stand alone, and what follows it. */
function isNameOfStitch(name: string, sign: string): boolean {
  if (NO_STITCH.test(name) || PLAIN_NAME.test(name.trim())) return false;
  return STITCH_NAME.test(name) || (sign !== '' && /^[a-z]{2,6}$/.test(name));
}

/** Whether the name of a stitch has a line of its own, and the line below tells how it is made. */
export function namesDefinitionBelow(
  text: string,
  { from, to, next }: { readonly from: number; readonly to: number; readonly next: number },
  section: Section,
): boolean {
  if (to - from > 40 || section === 'materials' || section === 'comments') return false;
  const found = NAME_ALONE.exec(text.slice(from, to));
  if (!found) return false;
  const [line, name = '', short = ''] = found;
  const sign = /[.:]$/.exec(line)?.[0] ?? '';
  if (!isNameOfStitch(name, sign) && !(short !== '' && isNameOfStitch(short, ''))) return false;
  const below = text.slice(next, next + 120).trimStart();
  return TELLS_MAKING.test(below);
}

/** Most lines go on with a comma where a name would have its bracket or its sign. */
function mayBeNamed(text: string, from: number, to: number): boolean {
  const most = Math.min(to, from + 80);
  for (let at = from; at < most; at++) {
    const code = text.charCodeAt(at);
    if (isLetterCode(code) || isDigitCode(code)) continue;
    const sign = text[at] ?? '';
    const next = text[at + 1];
    if (sign === '-' && (text[at - 1] === ' ' || next === '(' || next === ' ')) return true;
    // "Shell-3 dc in same sp", "Beginning shell-ch 3, 2 dc in same sp"
    if (sign === '-' && at > from + 2 && (isDigitCode(text.charCodeAt(at + 1)) || next === 'c'))
      return true;
    if (!" -./'’".includes(sign)) return code > 127 || code < 32 || '([:='.includes(sign);
  }
  return false;
}

/** "For X stitch (xst), …": where the name begins; -1: another sentence. */
export function afterFor(text: string, from: number, to: number): number {
  if ((text.charCodeAt(from) | 32) !== 102) return -1;
  const found = FOR_NAME.exec(text.slice(from, Math.min(to, from + 80)));
  if (!found || !ENDS_IN_STITCH.test(found[1] ?? '')) return -1;
  return from + (found[0].length - found[0].replace(FOR_LEAD, '').length);
}

/** "shell stitch", not "shell stitch scarf". */
const ENDS_IN_STITCH = new RegExp(`${STITCH_NAME.source}$`, 'i');

const FOR_LEAD = /^for (?:the |an? )?/i;
const FOR_NAME =
  /^for (?:the |an? )?([a-z][a-z0-9 -]{1,30}?)\s*(?:\(([^)]{1,16})\)\s*,|:|,(?= ?(?:\d|[([]|work\b|yo\b|yarn over|keeping\b|insert\b)))\s*(?=\S)/i;

/** "… 7 dc in given st. For cluster (cl), …" behind the definition at `from`: where it begins, or -1. */
export function nextFor(text: string, from: number, to: number): number {
  const found = NEXT_FOR.exec(text.slice(from, to));
  const at = found ? from + found.index + found[0].length : -1;
  return at > 0 && afterFor(text, at, to) > 0 ? at : -1;
}

const NEXT_FOR = /[.;]\s+(?=For )/;

/** "… Half shell = 3 dc in same st" behind another definition in the line: where it begins, or -1. */
export function nextDefinition(text: string, from: number, to: number): number {
  // Only within the line: the rest of the file would be gone through for each definition.
  const line = text.slice(from, to);
  const glued = line.includes('-(') ? NEXT_GLUED.exec(line.slice(6)) : null;
  if (glued) return from + 6 + glued.index + 1;
  const found = line.includes('=') ? NEXT.exec(line) : nextNamed(line);
  if (!found) return -1;
  const at = from + found.index + found[0].length;
  return SHAPE.test(text.slice(at, Math.min(to, at + 80))) ? at : -1;
}

/** "… in same st. Fan: 4 dc in same sp" */
function nextNamed(line: string): RegExpExecArray | null {
  const found = NEXT_NAMED.exec(line);
  const name = found?.[1] ?? '';
  return found && STITCH_NAME.test(name) && !NO_STITCH.test(name) ? found : null;
}

const NEXT_NAMED = /[.;]\s+(?=(\p{Lu}[\p{L}\d -]{1,30})(?:\([^)]{1,16}\)\s*)?:\s?[\d([])/u;

/** "Beg V-st-(ch 3, dc in same sp) V-st-(dc, ch 1, dc) in the ch-1 sp" */
const NEXT_GLUED = / (?=\p{Lu}[\p{L}-]{0,14}-\()/u;

const NEXT = /[.;]\s+(?=\p{Lu}[\p{L}\d -]{1,30}(?:\([^)]{1,16}\)\s*)?=\s?[\d(\p{L}])/u;

/** "Special stitches: Shell: …", "Special Abbreviations Shell = …" */
const SPECIALS_LEAD =
  /^(?:special\s+(?:stitch(?:es)?|abbreviations?|terms?|sts?)|stitch\s+explanations?)(?:\s+used)?\s*(?:[:–—-]\s*(?=\S)|\s(?=[\w'-]+(?: [\w'-]+){0,2} ?(?:\([^)]{1,12}\) ?)?=))/i;

/** "Special stitch: Shell: 5 dc in same st": where the definition itself begins. */
export function afterSpecialsLead(text: string, from: number, to: number): number {
  if ((text.charCodeAt(from) | 32) !== 115) return from;
  const found = SPECIALS_LEAD.exec(text.slice(from, Math.min(to, from + 40)));
  return found ? from + found[0].length : from;
}

/** "… in same st. Ch 3 counts as dc." behind a definition speaks of rows: where it begins, or -1. */
export function chainRemark(text: string, from: number, to: number): number {
  const line = text.slice(from, to);
  const found = line.includes('count') ? CHAIN_REMARK.exec(line) : null;
  return found ? from + found.index + found[0].length : -1;
}

const CHAIN_REMARK =
  /[.;]\s+(?=(?:(?:the|a|any|beg(?:inning)?|starting|turning)\s+)*ch(?:ain)?[ -]?\d\s+(?:\p{L}+\s+){0,3}?counts?\b)/iu;

/**
 * The stitches among a list in one line, "ch = chain, sc = single crochet, V = (dc, ch 1, dc) in one
 * st": each from its name to the next one. Words that every pattern has are left out.
 */
export function listedDefinitions(text: string, from: number, to: number): readonly Span[] {
  const line = text.slice(from, to);
  if (!line.includes('=')) return [];
  const items = [...line.matchAll(LISTED)].filter(({ index }) => isOutside(line, index));
  return items.flatMap(({ index, groups }, i) => {
    const lead = groups?.lead ?? '';
    const name = (groups?.name ?? '').trim();
    const end = items[i + 1]?.index ?? line.length;
    const isOwn = !PLAIN_NAME.test(name) && TELLS_OWN.test(behindSign(line.slice(index, end)));
    return isOwn ? [{ from: from + index + lead.length, to: from + end }] : [];
  });
}

const LISTED = /(?<lead>(?:^|[,;:.])\s*)(?<name>\p{L}[\p{L}\d -]{0,24}(?:\([^)=]{1,16}\)\s*)?)=/gu;

/** "(dc, ch 1, dc) in one st", "tall picot (ch 3, sl st in first ch, ch 4)" */
const TELLS_OWN = /^\s*(?:[\d([]|\p{L}[\p{L} -]{1,30}\([^)]*\d)/u;

const behindSign = (item: string): string => item.slice(item.indexOf('=') + 1);

function isOutside(line: string, at: number): boolean {
  let depth = 0;
  for (let i = 0; i < at; i++) {
    if (line[i] === '(' || line[i] === '[') depth++;
    else if (line[i] === ')' || line[i] === ']') depth--;
  }
  return depth <= 0;
}
