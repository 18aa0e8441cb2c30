export { default as LightMapDrawing } from './LightMapDrawing.svelte';
export { default as LightLegend } from './LightLegend.svelte';
export { footcandleWords, lightSteps, lightWords, luxPerFootcandle, luxWords } from './bands';
export { isUnderHouse, placeWords, surfaceWords } from './place';
