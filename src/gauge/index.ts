export {
  type Diameter,
  type RunningLength,
  runningLength,
  texOf,
  yarnDiameterMm,
} from './diameter.ts';
export { type FabricName, fabricNamed, stitchNamesSource } from './fabric-name.ts';
export type {
  Blocking,
  BoxSize,
  Gauge,
  GaugeCount,
  GaugeRecord,
  Gauges,
  GaugeUnit,
  Had,
  How,
} from './gauge.ts';
export { gaugeFromWords } from './gauge-words.ts';
export { type Hook, hookFromWords, usHookLabel } from './hook.ts';
export { boxSize, fabricGauge, isCounted, plainGauge } from './look-up.ts';

export { fabricMeant, gaugesWith, readGauges } from './read-gauges.ts';
export { putUpFromWords } from './read-yarns.ts';
export { gaugeFindings } from './unlikely.ts';
export { classRow, weightClassNamed } from './weight-classes.ts';
export type { PutUp, WeightClass, Yarn } from './yarn.ts';
