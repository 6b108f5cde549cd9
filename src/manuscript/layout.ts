/** Whether a file was written for this program or pasted from a page: it tells what ends a row. */

import type { LineStarts } from '../source/index.ts';
import type { FrontMatter } from './front-matter.ts';
import type { BlockOptions } from './scan.ts';

/** A line "# filled box" in a chart's legend is no heading. */
const HEADING = /^ {0,3}(#{1,6})[ \t]+(?!=|(?:filled|open|solid|closed|lacet|bar|no|none)\b)\S/gim;

export function layoutOf(
  text: string,
  lines: LineStarts,
  front: FrontMatter,
): Pick<BlockOptions, 'layout' | 'titles' | 'width'> {
  let headings = 0;
  let title = false;
  HEADING.lastIndex = front.bodyFrom;
  for (let found = HEADING.exec(text); found; found = HEADING.exec(text)) {
    // "# Title" alone divides nothing.
    if (found[1] === '#' && headings === 0 && !title) title = true;
    else headings++;
    if (headings > 0) break;
  }
  return {
    layout: front.span || title ? 'written' : 'pasted',
    titles: headings > 0 ? 'headings' : 'lines',
    width: widthOf(lines, text.length, front.bodyFrom),
  };
}

/** Wider lines are whole paragraphs; narrower ones are too short to be wrapped. */
const WIDEST = 110;
const NARROWEST = 45;

/** At how many characters the text is wrapped; 0 if it is not. */
function widthOf(lines: LineStarts, to: number, from: number): number {
  let width = 0;
  let wide = 0;
  let inked = 0;
  for (let i = 0; i < lines.length; i++) {
    const at = lines[i] ?? 0;
    if (at < from) continue;
    // The line end is no part of the line; one that is two signs long does no harm here.
    const length = (lines[i + 1] ?? to + 1) - at - 1;
    if (length > 1) inked++;
    if (length > WIDEST) wide++;
    else if (length > width) width = length;
  }
  return wide * 10 > inked || width < NARROWEST ? 0 : width;
}
