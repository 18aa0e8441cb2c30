export { default as Worksheets } from './Worksheets.svelte';
export { gridScales } from './grid';
export type { Printed } from './words';
