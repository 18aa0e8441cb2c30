/** What makes and draws the sheets: loaded when the page stands. */
export { lessons, makeSheets } from '$lib/domain/lesson';
export { Worksheets, gridScales } from '$lib/print/lesson';
export { default as Picture } from '../pictures/Picture.svelte';
