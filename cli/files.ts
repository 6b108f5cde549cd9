/** Finds and reads the files to check. */
import { lstat, open, readdir, realpath, stat } from 'node:fs/promises';
import { join } from 'node:path';

/** Why something was not checked, as a line for stderr. */
export interface Fault {
  readonly file: string;
  readonly why: string;
}

export interface Found {
  /** Sorted by path; `-` for standard input. */
  readonly files: readonly string[];
  readonly faults: readonly Fault[];
}

/** Standard input, where a path is due. */
export const standardInput = '-';

/** In folders only these are looked at; a file named outright may have any name. */
const patternFile = /\.(md|txt)$/i;

/**
 * The files named, and those in the folders named, each once even if links lead to it twice. Passed
 * over are hidden folders and node_modules, where no patterns lie, and links to other folders, which
 * may lead anywhere or round in a ring.
 */
export async function findFiles(paths: readonly string[]): Promise<Found> {
  const files: string[] = [];
  const faults: Fault[] = [];
  const seen = new Set<string>();
  for (const path of paths) {
    if (path === standardInput) {
      if (!files.includes(path)) files.push(path);
      continue;
    }
    const before = files.length + faults.length;
    const isFolder = await visit(path, true);
    if (isFolder && files.length + faults.length === before) {
      faults.push({ file: path, why: 'no pattern in this folder (*.pattern.md, *.md, *.txt)' });
    }
  }
  return { files: files.sort(byCodeUnits), faults };

  /** Enters a file or what a folder holds; tells if it was a folder seen for the first time. */
  async function visit(path: string, named: boolean): Promise<boolean> {
    try {
      const [real, info] = [await realpath(path), await stat(path)];
      if (seen.has(real)) return false;
      if (info.isDirectory()) {
        if (!named && (await lstat(path)).isSymbolicLink()) return false;
        seen.add(real);
        const names = (await readdir(path)).sort(byCodeUnits);
        for (const name of names.filter(isWorthALook)) await visit(join(path, name), false);
        return true;
      }
      if (named || (info.isFile() && patternFile.test(path))) {
        seen.add(real);
        files.push(path);
      }
    } catch (error) {
      if (named || patternFile.test(path)) faults.push({ file: path, why: whyOf(error) });
    }
    return false;
  }
}

/**
 * Bytes read of a file at most. Three bytes of UTF-8 make one UTF-16 unit at the least, so this is
 * surely over the engine's 4 MB: it refuses the text, and no huge file is loaded whole.
 */
const mostBytes = 16 * 1024 * 1024;

/** The text of a file or of standard input, cut behind what the engine accepts. */
export async function readText(file: string): Promise<string> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of file === standardInput ? process.stdin : await chunksOf(file)) {
    chunks.push(Buffer.from(chunk));
    length += chunk.length;
    if (length >= mostBytes) break;
  }
  const bytes = Buffer.concat(chunks).subarray(0, mostBytes);
  const why = whyNoText(bytes);
  if (why !== null) throw new Error(why);
  return decode(bytes);
}

/** How files begin that hold a pattern and are no plain text; the marks are those of their formats. */
const documents: readonly (readonly [begins: string, what: string])[] = [
  ['%PDF-', 'a PDF'],
  ['PK\u0003\u0004', 'a packed document, such as word processors save'],
  ['\u00d0\u00cf\u0011\u00e0', 'a document of an older word processor'],
  ['{\\rtf', 'a rich-text document'],
  ['\u0089PNG', 'a picture'],
  ['\u00ff\u00d8\u00ff', 'a picture'],
];

/** Read as text, such a file would be told to have no rows, and nobody would know why. */
function whyNoText(bytes: Buffer): string | null {
  const start = bytes.subarray(0, 8).toString('latin1');
  const [, what] = documents.find(([begins]) => start.startsWith(begins)) ?? [];
  if (what === undefined) return null;
  return `this is ${what}. Save its words as plain text (.txt), or copy and paste them: loopwright check -`;
}

async function chunksOf(file: string) {
  const handle = await open(file);
  return handle.createReadStream({ highWaterMark: 1 << 20 });
}

/** UTF-8 or, with a byte order mark, UTF-16; the mark is no part of the text. */
function decode(bytes: Buffer): string {
  const start = bytes.subarray(0, 2).toString('hex');
  if (start === 'fffe') return new TextDecoder('utf-16le').decode(bytes);
  if (start === 'feff') return new TextDecoder('utf-16be').decode(bytes);
  try {
    // Where the file was cut, the last sign may be cut in two; `stream` leaves it out then.
    const stream = bytes.length === mostBytes;
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream });
  } catch {
    return decodeWindows1252(bytes);
  }
}

/**
 * The code page in which older editors on Windows save, as the WHATWG Encoding Standard has it: Latin
 * 1 but for bytes 80 to 9F. By hand, since Node 20 decodes those bytes as control signs.
 */
function decodeWindows1252(bytes: Buffer): string {
  const special = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';
  return bytes.toString('latin1').replace(/[\u0080-\u009f]/g, (sign) => {
    return special.charAt(sign.charCodeAt(0) - 0x80);
  });
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or folder',
  EACCES: 'reading is not allowed',
  EPERM: 'reading is not allowed',
  EISDIR: 'this is a folder',
  ELOOP: 'links lead round in a ring',
  ENAMETOOLONG: 'the name is too long',
};

/** The reason of a failed read in plain words. */
export function whyOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException | undefined)?.code ?? '';
  return reasons[code] ?? (error instanceof Error ? error.message : String(error));
}

function isWorthALook(name: string): boolean {
  return !name.startsWith('.') && name !== 'node_modules';
}

function byCodeUnits(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
