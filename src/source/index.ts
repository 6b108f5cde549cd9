export { applyEdits, type Edit } from './edit.ts';
export { type LineStarts, lineStarts, placeAt, type TextPlace } from './lines.ts';
export { cover, type Span, shift } from './span.ts';
