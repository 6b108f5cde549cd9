/** Writing to standard output and error: nothing is cut off, and a reader that leaves is no fault. */
import type { WriteStream } from 'node:tty';

/** Writes and waits until the stream has taken it, so that large reports fit through small pipes. */
export function write(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    process.stdout.write(text, (error) => (error ? reject(error) : resolve()));
  });
}

/** Ends quietly when whoever reads our output stops reading, as `head` does. */
export function endQuietlyOnClosedPipe(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
      process.exit(process.exitCode ?? 0);
    });
  }
}

/** The width of the terminal in cells, or 100 where there is none. */
export function widthOfOutput(): number {
  return process.stdout.columns ?? 100;
}

/** Colour goes to terminals only, and not against the wish of NO_COLOR (no-color.org). */
export function wantsColour(asked: boolean, stream: WriteStream = process.stdout): boolean {
  const refused = (process.env.NO_COLOR ?? '') !== '' || process.env.TERM === 'dumb';
  return asked && !refused && stream.isTTY === true;
}
