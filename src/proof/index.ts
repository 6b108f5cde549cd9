export { withFixes } from './fixes/with-fixes.ts';
export { type Faces, frontOf } from './front.ts';
export { notChecked } from './not-checked.ts';
export { prove } from './prove.ts';
export { unaccused } from './unaccused.ts';
