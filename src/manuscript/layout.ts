/** Whether a file was written for this program or pasted from a page: it decides what ends a row. */
import type { BlockOptions } from './blocks.ts';
import type { FrontMatter } from './front-matter.ts';

/** A line "# filled box" in a chart's legend is no heading. */
const HEADING = /^ {0,3}(#{1,6})[ \t]+(?!=|(?:filled|open|solid|closed|lacet|bar|no|none)\b)\S/gim;

export function layoutOf(text: string, front: FrontMatter): Pick<BlockOptions, 'layout' | 'titles'> {
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
  };
}
