import type { Fabric } from '../fabric/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
export const notChecked = (_m: Manuscript, _f: Fabric): string[] => [];
