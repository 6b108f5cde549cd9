export {
  type FoundLength,
  findLength,
  type LengthUnit,
  length,
  lengthIn,
  type Millimetres,
  printLength,
  roundedCm,
  roundedInches,
} from './length.ts';
export { NUMBER_SOURCE, numberOf } from './number.ts';
export { cos, PI, sin, sqrt, tan } from './trigonometry.ts';
export {
  type FoundWeight,
  findWeight,
  type Grams,
  roundedWeight,
  type WeightUnit,
  weight,
  weightIn,
} from './weight.ts';
