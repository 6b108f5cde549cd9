/** Rounds and rows in words from the counts that they are to have. */

/**
 * Words that take `from` stitches and make `to`, with increases (2 in one) or decreases (two
 * together) spread as evenly as whole stitches allow. At most doubled, at least halved.
 */
function spread(from: number, to: number, stitch = 'sc'): string {
  const change = Math.abs(to - from);
  if (change === 0) return `${stitch} in each of next ${from} sts`;
  if (to === 2 * from) return `2 ${stitch} in each of next ${from} sts`;
  const own = to > from ? 1 : 2;
  const shaped = to > from ? `2 ${stitch} in next st` : `${stitch}2tog`;
  const words: string[] = [];
  for (let i = 0; i < change; i++) {
    const width = Math.floor(((i + 1) * from) / change) - Math.floor((i * from) / change);
    if (width > own) words.push(`${stitch} in next ${width - own} st${width - own > 1 ? 's' : ''}`);
    words.push(shaped);
  }
  return words.join(', ');
}

/** A spiral of these counts, begun in a ring. */
export function spiral(counts: readonly number[], stitch = 'sc'): string[] {
  return counts.map((n, i) => {
    const before = counts[i - 1];
    const words = before === undefined ? `${n} ${stitch} in magic ring` : spread(before, n, stitch);
    return `Rnd ${i + 1}: ${words}. (${n} ${stitch})`;
  });
}

/** Joined rounds of these counts, begun with a chain that does not count. */
export function joined(counts: readonly number[], stitch: string, chain: number): string[] {
  return counts.map((n, i) => {
    const before = counts[i - 1];
    const words = before === undefined ? `${n} ${stitch} in magic ring` : spread(before, n, stitch);
    const start = `ch ${chain} (does not count as a st), `;
    return `Rnd ${i + 1}: ${start}${words}; join with sl st in first ${stitch}. (${n} ${stitch})`;
  });
}

/** A flat circle of joined rounds of dc, whose starting ch 3 counts: 12 more a round. */
export function dcCircle(rounds: number): string[] {
  const words = Array.from({ length: rounds }, (_, i) => {
    if (i === 0) return 'Ch 3 (counts as dc), 11 dc in ring';
    if (i === 1) return 'Ch 3 (counts as dc), dc in same st, 2 dc in each st around';
    const plain = `dc in next ${i - 1} st${i > 2 ? 's' : ''}`;
    const first = i > 2 ? `dc in next ${i - 2} st${i > 3 ? 's' : ''}, ` : '';
    const rest = `(${plain}, 2 dc in next st) 11 times`;
    return `Ch 3 (counts as dc), ${first}2 dc in next st, ${rest}`;
  });
  return [
    'Ch 4, join with sl st in first ch to form a ring.',
    ...words.map(
      (w, i) => `Rnd ${i + 1}: ${w}; join with sl st in top of ch-3. (${12 * (i + 1)} dc)`,
    ),
  ];
}

/** An oval in sc round n usable chains: three or four in each end. */
export function oval(n: number, ends: 3 | 4, stated: readonly number[]): string[] {
  const along = `sc in next ${n - 2}`;
  const opposite = 'working along opposite side of foundation ch';
  const first =
    ends === 3
      ? `Sc in 2nd ch from hook, ${along} ch, 3 sc in last ch; ${opposite}, ${along} ch, ` +
        '2 sc in same ch as first sc'
      : `2 sc in 2nd ch from hook, ${along} ch, 4 sc in last ch; ${opposite}, ${along} ch, ` +
        '2 sc in same ch as first 2 sc';
  const rounds = stated.map((count, i) => {
    if (i === 0) return `Rnd 1: ${first}; join with sl st in first sc. (${count} sc)`;
    const plain = i > 1 ? `, sc in next ${i - 1} st${i > 2 ? 's' : ''}` : '';
    const turn = (times: number): string => `(2 sc in next st${plain}) ${times} times`;
    const [whole, start, end] = ends === 3 ? [3, `2 sc in first st${plain}`, 2] : [4, '', 2];
    const head = start || `2 sc in first st${plain}, 2 sc in next st${plain}`;
    return (
      `Rnd ${i + 1}: Ch 1, ${head}, ${along} sts, ${turn(whole)}, ${along} sts, ` +
      `${turn(end)}; join with sl st in first sc. (${count} sc)`
    );
  });
  return [`Ch ${n + 1}.`, ...rounds];
}

/** Rows in which each stitch group of `n` gets one more, what is left over worked plainly. */
export function ruffle(counts: readonly number[], n: number): string[] {
  const rows = counts.map((count, i) => {
    const before = counts[i - 1];
    if (before === undefined) {
      return `Row 1: Sc in 2nd ch from hook and in each ch across. (${count} sc)`;
    }
    const group = n > 1 ? `sc in next ${n - 1} st${n > 2 ? 's' : ''}, 2 sc in next st` : '';
    const repeats = Math.floor(before / n);
    const left = before % n;
    const words = n > 1 ? `(${group}) ${repeats} times` : '2 sc in each st across';
    const rest = left > 0 ? `, sc in last ${left} st${left > 1 ? 's' : ''}` : '';
    return `Row ${i + 1}: Ch 1, turn, ${words}${rest}. (${count} sc)`;
  });
  return [`Ch ${(counts[0] ?? 0) + 1}.`, ...rows];
}
