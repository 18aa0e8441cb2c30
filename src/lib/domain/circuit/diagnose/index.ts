export { diagnose } from './diagnose';
export type { Diagnosis, Fault, Inspected, Reading, Suspect } from './types';
