/** What the words of a heading say about the lines below it. Common practice. */

/**
 * work: rows may stand there. The others hold no rows unless these are labelled; in `comments`
 * nothing is a row, since readers quote rows there.
 */
export type Section = 'work' | 'notes' | 'specials' | 'abbreviations' | 'materials' | 'comments';

const NAMES: readonly (readonly [Section, RegExp])[] = [
  [
    'specials',
    /^(?:(?:special|pattern|stitch|other)\s+(?:stitch(?:es)?|sts?|guide|patterns?|techniques?|terms|definitions?|glossary|instructions)(?:\s+used)?|stitch(?:es)?(?:\s+(?:used|needed|key|explanations?))?|techniques?(?:\s+used)?)$/,
  ],
  [
    'abbreviations',
    /^(?:(?:(?:stitch|pattern|list of|key to|u\.?[sk]\.?|crochet)\s+)*(?:abbreviations?|abbrev|abbr|key|legend|glossary|terminology|terms)(?:\s+(?:used|list|key|and terms))?)$/,
  ],
  [
    'notes',
    /^(?:(?:pattern|general|construction|important|special|some|designer'?s?|instruction|additional|working|a)\s+)*(?:notes?|information|info|tips?|remarks?|hints?|before you (?:begin|start)|read (?:this )?first|good to know|please note|overview|about(?: the| this)?(?: pattern)?)$/,
  ],
  [
    'materials',
    /^(?:(?:the|all|my)\s+)?(?:materials?|supplies|requirements|tools|notions|equipment|yarns?|hooks?|gauge|tension|sizes?|sizing|measurements?|dimensions|skill(?: level)?|difficulty|level|finished(?: size| measurements| dimensions)?|colou?rs?(?: used)?|what(?: do)? you(?:'ll| will)? need|you(?:'ll| will)? need|you need|needed|shopping list)(?:\s+(?:and|&|needed|used|required|list|you(?:'ll| will)? need|yarn|hook|tools|materials|supplies|notions))*$/,
  ],
  [
    'comments',
    /^(?:\d+\s+)?(?:comments?|responses?|replies|reviews|thoughts|reader comments|leave a (?:reply|comment)|post a comment|share this|related(?: posts?| patterns?)?|you may also like|older posts|newer posts)(?:\s+(?:on|to|for|about)\b.*)?$/,
  ],
];

/** `null`: the words are not the name of such a section, and so perhaps of a part. */
export function sectionNamed(words: string): Section | null {
  if (words.length > 60) return null;
  const name = words
    .toLowerCase()
    .replace(/[’‘]/g, "'")
    .replace(/\([^)]*\)/g, ' ')
    .replace(/[^a-z0-9'&. ]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  for (const [section, pattern] of NAMES) if (pattern.test(name)) return section;
  return null;
}
