/** Whether a file was written for this program or pasted from a page: it decides what ends a row. */

import { lineAt } from './fences.ts';
import type { FrontMatter } from './front-matter.ts';
import type { BlockOptions } from './scan.ts';

/** A line "# filled box" in a chart's legend is no heading. */
const HEADING = /^ {0,3}(#{1,6})[ \t]+(?!=|(?:filled|open|solid|closed|lacet|bar|no|none)\b)\S/gim;

export function layoutOf(
  text: string,
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
    layout: front.span || title || headings > 0 ? 'written' : 'pasted',
    titles: headings > 0 ? 'headings' : 'lines',
    width: widthOf(text, front.bodyFrom),
  };
}

/** Wider lines are paragraphs that nothing has wrapped; narrower ones are too short to be wrapped. */
const WIDEST = 110;
const NARROWEST = 45;

/** At how many characters the text is wrapped; 0 if it is not. */
function widthOf(text: string, from: number): number {
  let width = 0;
  let wide = 0;
  let lines = 0;
  let at = from;
  while (at < text.length) {
    const line = lineAt(text, at);
    const length = line.to - line.from;
    if (length > 0) lines++;
    if (length > WIDEST) wide++;
    else if (length > width) width = length;
    at = line.next;
  }
  return wide * 10 > lines || width < NARROWEST ? 0 : width;
}
