/**
 * Doubts: what the words leave open. The hands ask, and get the reading chosen for the part (or for
 * one row), else the custom of the trade; every question is noted, so that other readings can be
 * tried where the sums do not come out, and so that assumptions can be listed.
 */
import type { Span } from '../source/index.ts';

export interface Question extends Span {
  /** "start-chain 2", "times", "gaps" …: one reading a part. */
  readonly doubt: string;
  /** What custom says. */
  readonly custom: string;
  readonly alternatives: readonly string[];
  /** Local doubts hang on the wording of one row; sisters may differ without a finding. */
  readonly local: boolean;
  /** The rows' own words tell: no single row is read otherwise, only all of the part. */
  readonly whole?: true;
}

export interface Asked extends Question {
  reading: string;
}

/** Readings chosen, by doubt. */
export type Choices = ReadonlyMap<string, string>;

export interface Readings {
  readonly part: Choices;
  /** Readings for this row alone; they win. */
  row: Choices;
  /** Doubts met in this row, by name. */
  readonly asked: Map<string, Asked>;
}

export const newReadings = (part: Choices, row: Choices): Readings => ({
  part,
  row,
  asked: new Map(),
});

/** The reading to work by; the first question about a doubt in a row is noted. */
export function ask(readings: Readings, question: Question): string {
  const { doubt, custom } = question;
  const reading = readings.row.get(doubt) ?? readings.part.get(doubt) ?? custom;
  if (!readings.asked.has(doubt)) readings.asked.set(doubt, { ...question, reading });
  return reading;
}
