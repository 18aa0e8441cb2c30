export { default as Working } from './Working.svelte';
export { showWorking, type Shown } from './show';
export { evaluate } from './evaluate';
