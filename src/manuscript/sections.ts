/** What the words of a heading say about the lines below it. Common practice. */
import { oneOf } from './one-of.ts';

/**
 * work: rows may stand there. The others hold no rows unless these are labelled; in `comments`
 * nothing is a row, since readers quote rows there.
 */
export type Section = 'work' | 'notes' | 'specials' | 'abbreviations' | 'materials' | 'comments';

const SPECIALS = [
  // "Pattern instructions" stands above the rows themselves.
  `(?!pattern (?:instructions?|guide)$)${oneOf('special | pattern | stitch | other')} ${oneOf(`
    stitch(?:es)? | st'?s? | guide | patterns? | techniques? | terms | definitions? | glossary
    | instructions
  `)}(?: instructions?)?(?: used)?`,
  'stitch(?:es)?(?: (?:used|needed|key|explanations?))?',
  'techniques?(?: used)?',
  'special abbreviations?(?: used)?',
].join('|');

const ABBREVIATIONS =
  `(?:${oneOf(String.raw`stitch | (?:special )?stitches(?: used)?(?: and| &) | pattern | list of | key to | u\.?[sk]\.? | crochet`)} )*` +
  oneOf('abbreviations? | abbrev | abbr | key | legend | glossary | terminology | terms') +
  '(?: (?:used|list|key|and terms))?';

const STITCHES_NEEDED =
  "(?:crochet )?(?:stitches|terms|abbreviations)(?: that)? you(?:'ll| will)?(?: need(?: to know)?| should know|'ll use)";

const NOTES =
  `(?:${oneOf(`
    pattern | general | construction | important | special | some | designer'?s? | instruction
    | crochet | increase | increasing | decrease | decreasing | colou?r
    | additional | working | a
  `)} )*` +
  oneOf(`
    notes? | information | info | tips? | remarks? | hints? | before you (?:begin|start)
    | read (?:this )?first | good to know | please note | overview | (?:for )?examples?
    | about(?: the| this)?(?: pattern)? | how to (?:read|use|follow)(?: .{1,40})?
  `);

const YOU_NEED = "you(?:'ll| will)? need";
const MATERIALS =
  // "All sizes" alone stands above rows.
  '(?!all sizes$)(?:(?:the|all|my) )?' +
  oneOf(`
    materials? | supplies | requirements | tools | notions | equipment | yarns? | hooks? | gauge
    | tension | sizes? | sizing | measurements? | dimensions | skill(?: level)? | difficulty
    | level | finished(?: size| measurements| dimensions)? | colou?rs?(?: used)?
    | what(?: do)? ${YOU_NEED} | ${YOU_NEED} | needed | shopping list
  `) +
  `(?: ${oneOf(`
    and | & | needed | used | required | list | ${YOU_NEED} | yarn | hook | tools | materials
    | supplies | notions
  `)})*`;

const COMMENTS =
  String.raw`(?:\d+ )?` +
  oneOf(`
    comments? | responses? | replies | reviews | thoughts | reader comments
    | leave a (?:reply|comment) | post a comment | share this | related(?: posts?| patterns?)?
    | you may also like | older posts | newer posts
  `) +
  '(?: (?:on|to|for|about) .*)?';

const NAMES: readonly (readonly [Section, RegExp])[] = [
  ['specials', new RegExp(`^(?:${SPECIALS})$`)],
  ['abbreviations', new RegExp(`^(?:${ABBREVIATIONS}|${STITCHES_NEEDED})$`)],
  ['notes', new RegExp(`^${NOTES}$`)],
  ['materials', new RegExp(`^${MATERIALS}$`)],
  ['comments', new RegExp(`^${COMMENTS}$`)],
];

/** "US terms" alone says in which terms the pattern is; it opens no list of them, and no part. */
export const saysTerms = (words: string): boolean =>
  /^(?:in )?(?:u\.?[sk]\.?|american|british)(?: crochet)? terms?(?: used)?[.:]?$/i.test(
    words.trim(),
  );

/** "How to read row 12", "Comments on round 3": no other name ends in a figure, as labels do. */
const OF_FIGURES = /\W(?:on|to|for|about)\W/i;

/** `null`: the words are not the name of such a section, and so perhaps of a part. */
export function sectionNamed(words: string): Section | null {
  if (words.length > 60 || (/\d$/.test(words) && !OF_FIGURES.test(words))) return null;
  const name = words
    .toLowerCase()
    .replace(/[’‘]/g, "'")
    .replace(/\([^)]*\)/g, ' ')
    .replace(/[^a-z0-9'&. ]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  if (saysTerms(name)) return null;
  for (const [section, pattern] of NAMES) if (pattern.test(name)) return section;
  return null;
}
