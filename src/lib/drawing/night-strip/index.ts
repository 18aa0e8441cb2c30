export { default as NightStrip } from './NightStrip.svelte';
export { default as VerdictMark } from './VerdictMark.svelte';
export { blinkRemedies, minuteWords, rangeWords, verdictTitle, verdictWords } from './words';
