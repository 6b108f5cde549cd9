/** Numbers as the trade writes measures: "20", "7.5", "7,5", "7½", "7 1/2", "7-1/2", "½". */

const VULGAR: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};

/**
 * One number with its fraction, as the source of a regular expression. Digits are capped, so that a
 * page of digits costs no more than its length.
 */
export const NUMBER_SOURCE: string = [
  String.raw`\d{1,6}[\s-]{1,2}\d{1,2}[/⁄]\d{1,2}`,
  String.raw`\d{1,2}[/⁄]\d{1,2}`,
  String.raw`\d{1,6}\s?[¼½¾⅛⅜⅝⅞⅓⅔]`,
  '[¼½¾⅛⅜⅝⅞⅓⅔]',
  String.raw`\d{1,6}(?:[.,]\d{1,4})?`,
].join('|');

/** The value of a text that `NUMBER_SOURCE` matches; `null` for a fraction over nought. */
export function numberOf(text: string): number | null {
  const last = text.at(-1) ?? '';
  const vulgar = VULGAR[last];
  if (vulgar !== undefined) return Number(text.slice(0, -1).trim() || '0') + vulgar;
  const slash = /^(?:(\d+)[\s-]+)?(\d+)[/⁄](\d+)$/.exec(text);
  if (!slash) return Number(text.replace(',', '.'));
  const under = Number(slash[3]);
  return under === 0 ? null : Number(slash[1] ?? '0') + Number(slash[2]) / under;
}
