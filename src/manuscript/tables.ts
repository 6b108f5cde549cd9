/**
 * Rows that stand in a table, "| 4 | sc in each st | 20 |": the bars give way to the signs that a
 * line of work has, "4: sc in each st (20)", each in its place, so that all offsets stay.
 */

/** "1 | 12 sc in ring |" too, as pages are pasted. First cell: the row's number or a short name. Last cell: its count, if it is a number. */
const ROW =
  /^([ \t]*)(\|?)([ \t]*(?:(?:rows?|rnds?|rounds?|r)[ \t]*)?\d{1,3}(?:[ \t]*[-–—][ \t]*r?\d{1,3})?[ \t]*|[ \t]*(?:fnd|foundation|set-?up)[ \t]*)\|([^|\r\n]*[a-z][^|\r\n]*)(\|[^\r\n]*)$/gim;

/** The line of names above such a table, and the rule below it. */
const HEAD = /^[ \t]*\|?[ \t]*(?:rows?|rnds?|rounds?|no|#)\.?[ \t]*\|[^\r\n\d]*\|[ \t]*$/gim;
const RULE = /^[ \t]*\|[ \t:|-]*-[ \t:|-]*\|[ \t]*$/gm;

export function withoutTables(text: string): string {
  if (!/^[ \t]*(?:\d{1,3}[ \t]*)?\|/m.test(text)) return text;
  return text
    .replace(RULE, blanks)
    .replace(HEAD, blanks)
    .replace(ROW, (_, ...[indent = '', bar = '', label = '', work = '', rest = '']: string[]) =>
      [indent, bar && ' ', closed(label), ' ', work, counted(rest)].join(''),
    );
}

const blanks = (line: string): string => ' '.repeat(line.length);

/** The colon stands right behind the label, where a blank or the bar was. */
const closed = (label: string): string => {
  const words = label.trimEnd();
  // The foundation needs no label: its work says what it is.
  if (!/\d/.test(words)) return ' '.repeat(label.length);
  return words.length < label.length ? `${words}:`.padEnd(label.length) : label;
};

/** "| 81 |" to "(81)"; the bars of other cells become dashes. */
function counted(rest: string): string {
  const cell = /^\|([ \t]*\d[^|]*?)([ \t]*)\|[ \t]*$/.exec(rest);
  if (!cell) return rest.replace(/\|/g, ' ');
  const [, count = ''] = cell;
  return `(${count})`.padEnd(rest.length);
}
