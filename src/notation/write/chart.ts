/** "work chart Tide over next 21 boxes", "work row 3 of chart Tide". */
import type { ChartStep } from '../tree.ts';
import { isMany, writeNumbers } from './numbers.ts';
import type { Voice } from './voice.ts';

export function writeChart(step: ChartStep, voice: Voice): string {
  const { part, onwards, row, name } = step;
  const columns = part === null ? '' : `boxes ${part.from}-${part.to} of `;
  const before = row === null || onwards ? '' : `row ${row} of `;
  const behind = row !== null && onwards ? ` from row ${row}` : '';
  const chart = name === '' ? 'chart' : `chart ${name}`;
  return `work ${before}${columns}${chart}${behind}${over(step, voice)}`;
}

function over(step: ChartStep, voice: Voice): string {
  if (step.fromBox !== null && step.toBox !== null) {
    return ` over boxes ${step.fromBox}-${step.toBox}`;
  }
  if (step.n === null) return '';
  return ` over next ${writeNumbers(step.n, voice)} ${isMany(step.n) ? 'boxes' : 'box'}`;
}
