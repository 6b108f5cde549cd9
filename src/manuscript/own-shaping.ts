/**
 * "inc = 3 sc in same st", "dec: dc3tog" in a list: what everybody knows by these words is two stitches in one
 * and two drawn together, of the stitch that the piece is made of. A list that says otherwise is believed.
 */

const NAME = /^(?:(?:inc|dec)(?:rease)?s?)$/i;

/** "increase (3 sc in one st)": what the short form stands for comes first. */
const LEAD = String.raw`^\s*(?:(?:in|de)crease\s?[(:,–-]\s*)?(?:work |make )?`;

const STEM = '(?:sc|hdc|dc|htr|tr|dtr|single|half double|double|half treble|treble)';

/** Three and more in one, or drawn together. */
const MANY = new RegExp(
  String.raw`${LEAD}(?:(?:[3-9]|three|four|five) ?${STEM}\b[^.,;\n]{0,20}\bin\b|${STEM} ?[3-9] ?tog)`,
  'i',
);

/** Two of a taller stitch, which "dc" is in US terms only. */
const TALLER = new RegExp(
  String.raw`${LEAD}(?:(?:2|two) ?(hdc|htr|dc|tr|dtr)\b[^.,;\n]{0,20}\bin\b|(hdc|htr|dc|tr|dtr) ?2 ?tog)`,
  'i',
);

const US = /\b(?:sc|hdc)\b/i;

/** Whether the words behind a name make it a stitch of the designer's own. */
export function isOwnShaping(text: string, name: string, making: string): boolean {
  if (!NAME.test(name)) return false;
  if (MANY.test(making)) return true;
  const taller = TALLER.exec(making);
  const stem = taller?.[1] ?? taller?.[2];
  return stem !== undefined && (stem.toLowerCase() !== 'dc' || US.test(text));
}
