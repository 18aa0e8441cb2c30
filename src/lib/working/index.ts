export { default as Working } from './Working.svelte';
export { showWorking, type Shown } from '../domain/shared/show-working';
export { evaluate } from '../domain/shared/evaluate';
