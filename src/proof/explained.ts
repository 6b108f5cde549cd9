/** Does the pattern say in passing what a group of stitches is? */

/** "2 dc, ch 2, 2 dc (large shell)", "this makes a shell of 5 dc", "5 dc in next st—shell made". */
export function isExplainedInPassing(text: string, stitch: string): boolean {
  const name = stitch.replace(/[^a-z0-9]+/gi, '[\\s-]*');
  return new RegExp(
    `\\((?:[a-z-]+\\s){0,2}${name}s?\\)|[-–—(,]\\s?(?:[a-z]+\\s){0,2}${name} (?:is )?made\\b|\\b(?:makes?|forms?|creates?|called) (?:an? |one |the )?(?:[a-z-]+ )?${name}\\b`,
    'i',
  ).test(text);
}
