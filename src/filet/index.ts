export type { Cell, Grid } from './grid.ts';
