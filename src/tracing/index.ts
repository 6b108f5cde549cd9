export type { Ground, Picture } from './picture.ts';
export { MOST_PIXELS, type TraceOptions, type Tracing, trace } from './trace.ts';
