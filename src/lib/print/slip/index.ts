export { default as Slip } from './Slip.svelte';
export { comesFirst, slipCautions, type SlipCaution } from './cautions';
export { readSlipPaper, slipPapers, type SlipPaper } from './papers';
export type { SlipFacts } from './types';
