/**
 * Letters of other scripts that look like Latin ones: pages that would not be copied mix them into
 * their words. Which look alike is from memory; Unicode's list of confusables has them all.
 */
const FOREIGN = 'аеорсхукіјѕһАВЕКМНОРСТХУІЈЅονυαιρκΑΒΕΖΗΙΚΜΝΟΡΤΥΧ';
const LATIN = 'aeopcxykijshABEKMHOPCTXYIJSovuaipkABEZHIKMNOPTYX';

/** Greek and Cyrillic. */
const LOOKALIKE = /[\u0370-\u04FF]/;

const WORD = /[A-Za-z\u0370-\u04FF]*[\u0370-\u04FF][A-Za-z\u0370-\u04FF]*/g;

/** The text with such letters as Latin ones, sign for sign; words that are of another script stay. */
export function withoutLookalikes(text: string): string {
  const ofLatin = (text.match(/[A-Za-z]/g) ?? []).length;
  const ofOthers = (text.match(/[\u0370-\u04FF]/g) ?? []).length;
  return text.replace(WORD, (word) => {
    if (ofLatin < ofOthers && !/[A-Za-z]/.test(word)) return word;
    const read = [...word].map((sign) => LATIN[FOREIGN.indexOf(sign)] ?? sign).join('');
    return LOOKALIKE.test(read) ? word : read;
  });
}
