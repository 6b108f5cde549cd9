/**
 * The tone that best parts dark from light: N. Otsu, "A Threshold Selection Method from Gray-Level
 * Histograms", IEEE Transactions on Systems, Man, and Cybernetics 9 (1979), pages 62-66.
 */

export interface Parting {
  /** Between tones: all below it are dark. From 0 to 255. */
  readonly tone: number;
  /**
   * Variance between the two classes over the whole variance, 0 to 1 (the paper's eta): 1 for pure
   * black and white, 3/4 for an even run of tones, which has no natural parting; 0 for one tone.
   */
  readonly clearness: number;
}

export function partTones(tones: Uint8Array): Parting {
  const counts = new Array<number>(256).fill(0);
  for (const tone of tones) counts[tone]!++;
  const sum = counts.reduce((all, count, tone) => all + count * tone, 0);
  const mean = sum / tones.length;
  const variance = counts.reduce((all, count, tone) => all + count * (tone - mean) ** 2, 0);
  let [best, first, last] = [0, 127, 127];
  let [dark, darkSum] = [0, 0];
  for (let tone = 0; tone < 255; tone++) {
    dark += counts[tone]!;
    darkSum += counts[tone]! * tone;
    const light = tones.length - dark;
    if (dark === 0 || light === 0) continue;
    const between = dark * light * (darkSum / dark - (sum - darkSum) / light) ** 2;
    // Between two far tones all partings are as good: the one in the middle is taken.
    if (between > best * (1 + 1e-12)) [best, first, last] = [between, tone, tone];
    else if (between >= best * (1 - 1e-12)) last = tone;
  }
  const clearness = variance === 0 ? 0 : best / (tones.length * variance);
  return { tone: (first + last + 1) / 2, clearness: Math.round(clearness * 1e6) / 1e6 };
}
