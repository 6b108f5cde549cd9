/** What is carried over in the designer's own words: remarks, unread words, work named but not done. */
import type { Span } from '../../source/index.ts';
import type { Step } from '../tree.ts';
import type { Voice } from './voice.ts';

export const isVerbatim = (step: Step): boolean =>
  step.kind === 'remark' || step.kind === 'unread' || step.kind === 'not-worked';

/** The words on one line, without the stop or comma that the list writer sets again. */
export const writeVerbatim = (span: Span, voice: Voice): string =>
  voice
    .quote(span)
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;]+|[\s,;.]+$/g, '');
