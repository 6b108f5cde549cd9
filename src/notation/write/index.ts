export { writeInstruction } from './instruction.ts';
export { writeOrder } from './orders.ts';
export { writeSpecial } from './special.ts';
export type { WriteOptions } from './voice.ts';
export { writeWords } from './words.ts';
