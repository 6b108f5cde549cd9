/** Files are written whole or not at all: to a name of their own first, then moved into place. */
import { rename, rm, writeFile } from 'node:fs/promises';

export async function saveWhole(path: string, content: string | Uint8Array): Promise<void> {
  const part = `${path}.${process.pid}.part`;
  try {
    await writeFile(part, content);
    await rename(part, path);
  } catch (error) {
    await rm(part, { force: true });
    throw error;
  }
}
