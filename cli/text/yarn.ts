/** The yarn of the sheet: metres, grams and whole balls of each colour, the margin on its own line. */
import { type Amount, type Units, wrap, type YarnNeed } from '../../src/index.ts';

export interface YarnLayout {
  readonly units: Units;
  readonly width: number;
  /** "[2]": numbers of the reasons. */
  readonly refs: (because: readonly string[]) => string;
}

export function yarnLines(need: YarnNeed, { units, width, refs }: YarnLayout): string[] {
  const name = need.name === '' ? 'Yarn' : need.name;
  const sure = SURE[need.how];
  const grams = need.grams ? `; ${weightSaid(need.grams, units)}` : '';
  const { share, metres, because } = need.margin;
  return [
    ...wrap(
      '  ',
      `${name}: ${lengthSaid(need.metres, units)}${grams}${sure} ${refs(need.because)}`,
      width,
      '      ',
    ),
    ...wrap('      ', `of it ${extras(need, units)}`, width, '          '),
    `      margin ${Math.round(share * 100)} % (${because}): ${lengthSaid(exact(metres), units)} more`,
    ballsSaid(need, units),
    ...need.cautions.flatMap((caution) => wrap('      ', caution, width, '          ')),
  ];
}

const SURE: Readonly<Record<YarnNeed['how'], string>> = {
  swatch: '',
  estimate: ' estimate',
  assumed: ' a guess',
};

const exact = (value: number): Amount => ({ value, spread: 0 });

function extras({ foundation, joins, tails, seams }: YarnNeed, units: Units): string {
  const some: readonly (readonly [string, number])[] = [
    ['foundation', foundation],
    ['joins of rounds', joins],
    ['tails', tails],
    ['seams about', seams],
  ];
  return some
    .filter(([, metres]) => metres > 0)
    .map(([what, metres]) => `${what} ${lengthSaid(exact(metres), units)}`)
    .join('; ');
}

function ballsSaid({ balls }: YarnNeed, units: Units): string {
  if (!balls) return '      balls: not known without a put-up such as 50 g / 110 m';
  const { ball, likely, atMost } = balls;
  const each =
    units === 'us'
      ? `${ouncesSaid(ball.grams)} / ${Math.round(ball.metres / YARD_M)} yd`
      : `${Math.round(ball.grams)} g / ${Math.round(ball.metres)} m`;
  const more = atMost > likely ? `, up to ${atMost} if the estimate is short` : '';
  return `      with it ${likely} ${likely === 1 ? 'ball' : 'balls'} of ${each}${more}`;
}

/** Less than this rounds to nought, and is not nothing. */
const UNDER = 0.5;

const YARD_M = 0.9144;
const OUNCE_G = 28.349523125;

/** "190 m (140-235), 210 yd (150-260)". */
function lengthSaid(amount: Amount, units: Units): string {
  // So little is the same in either unit.
  if (units === 'both' && amount.value < UNDER) return 'under 1 m';
  const metric = amountSaid(amount, 'm');
  const us = amountSaid({ ...amount, value: amount.value / YARD_M }, 'yd');
  return units === 'metric' ? metric : units === 'us' ? us : `${metric}, ${us}`;
}

function weightSaid(amount: Amount, units: Units): string {
  const metric = amountSaid(amount, 'g');
  const us = ouncesRange(amount);
  return units === 'metric' ? metric : units === 'us' ? us : `${metric}, ${us}`;
}

const QUARTERS = ['', '¼', '½', '¾'];

/** Quarter ounces, as balls are sold: "1¾"; halves from 8 oz, whole ones from a pound on. */
function ouncesIn(grams: number): string {
  const ounces = grams / OUNCE_G;
  const step = ounces < 8 ? 1 : ounces < 16 ? 2 : 4;
  const quarters = step * Math.round((4 * ounces) / step);
  const whole = Math.floor(quarters / 4);
  return `${whole === 0 && quarters > 0 ? '' : whole}${QUARTERS[quarters % 4]}`;
}

const ouncesSaid = (grams: number): string =>
  ouncesIn(grams) === '0' ? 'under ¼ oz' : `${ouncesIn(grams)} oz`;

/** "3 oz (2¼-3¾)" */
function ouncesRange({ value, spread }: Amount): string {
  const [from, to] = [ouncesIn(value * (1 - spread)), ouncesIn(value * (1 + spread))];
  return ouncesIn(value) === '0' || from === '0' || from === to
    ? ouncesSaid(value)
    : `${ouncesSaid(value)} (${from}-${to})`;
}

/** Two figures at most, since no yardage is known better. */
function amountSaid({ value, spread }: Amount, unit: string): string {
  if (value < UNDER) return `under 1 ${unit}`;
  const by = (n: number): number => roundedTo(n, value);
  const [from, to] = [by(value * (1 - spread)), by(value * (1 + spread))];
  const range = from === to ? '' : ` (${from}-${to})`;
  return `${by(value)} ${unit}${range}`;
}

function roundedTo(value: number, size: number): number {
  const step = size < 20 ? 1 : size < 200 ? 5 : size < 1000 ? 10 : 50;
  return Math.round(value / step) * step;
}

/** Yarn of all sizes in a row: "A: 80 (95, 110, 125) m, 90 (100, 120, 135) yd". */
export function yarnsOfSizes(
  sizes: readonly { readonly yarns: readonly YarnNeed[] }[],
  units: Units,
): string[] {
  const names = new Set(sizes.flatMap(({ yarns }) => yarns.map(({ name }) => name)));
  return [...names].flatMap((name) => {
    const needs = sizes.map(({ yarns }) => yarns.find((need) => need.name === name));
    const list = (said: (need: YarnNeed) => number): string => {
      const [first = '', ...others] = needs.map((need) => (need ? String(said(need)) : '-'));
      return `${first} (${others.join(', ')})`;
    };
    const rounded = (value: number): number => roundedTo(value, value);
    const metres = list(({ metres: { value } }) => rounded(value));
    const yards = list(({ metres: { value } }) => rounded(value / YARD_M));
    const said =
      units === 'metric'
        ? `${metres} m`
        : units === 'us'
          ? `${yards} yd`
          : `${metres} m, ${yards} yd`;
    const hasBalls = needs.every((need) => !need || need.balls);
    const balls = hasBalls ? [`balls with margin ${list(({ balls: b }) => b?.likely ?? 0)}`] : [];
    return [`  Yarn${name === '' ? '' : ` ${name}`}: ${[said, ...balls].join('; ')}`];
  });
}
