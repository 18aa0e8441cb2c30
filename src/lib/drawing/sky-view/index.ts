export { default as Facing } from './Facing.svelte';
export { default as SkyShares } from './SkyShares.svelte';
export { default as SpotsDrawing } from './SpotsDrawing.svelte';
export { facingWords, placeWords, spotWords } from './words';
export { shareWords, takerName } from './draw-shares';
