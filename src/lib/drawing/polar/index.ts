export { default as PolarCurve } from './PolarCurve.svelte';
export { drawPolar, type PolarDrawing } from './draw-polar';
