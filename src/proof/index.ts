export { sumOf } from './amounts.ts';
export { withFixes } from './fixes/with-fixes.ts';
export { notChecked } from './not-checked.ts';
export { prove } from './prove.ts';
