/** A line on the terminal that tells how far a long check has come; none where stderr is no terminal. */

export interface Progress {
  /** Shows that so many files are done. */
  readonly show: (done: number) => void;
  /** Takes the line away, so that a report can be written in its place. */
  readonly clear: () => void;
}

/** Cells of the bar; short enough for a terminal of 40 cells. */
const barWidth = 20;

/** For a few files the line would only flicker. */
const fewest = 5;

export function progressOf(total: number): Progress {
  if (process.stderr.isTTY !== true || total < fewest) return { show: () => {}, clear: () => {} };
  let shown = '';
  const clear = () => {
    if (shown !== '') process.stderr.write(`\r${' '.repeat(shown.length)}\r`);
    shown = '';
  };
  const show = (done: number) => {
    const full = Math.floor((done / total) * barWidth);
    const line = `[${'#'.repeat(full)}${'.'.repeat(barWidth - full)}] ${done} of ${total} files`;
    process.stderr.write(`\r${line}`);
    shown = line;
  };
  return { show, clear };
}
