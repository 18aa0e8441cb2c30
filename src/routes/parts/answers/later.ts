/** The kinds of answer that the first question does not need: loaded after it stands, in one piece. */
export { readTyped } from '../readers';
export { default as LaterAnswer } from './LaterAnswer.svelte';
export { glossary } from '$lib/flow';
