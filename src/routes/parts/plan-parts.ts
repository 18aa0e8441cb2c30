/** What shows a plan: loaded after the first question stands, in one piece. */
export { default as Board } from '$lib/drawing/view/Board.svelte';
export { default as Key } from '$lib/drawing/Key.svelte';
export { default as DrawingPane } from './DrawingPane.svelte';
export { default as EffectPanel } from './EffectPanel.svelte';
export { highlightOf } from './highlight';
