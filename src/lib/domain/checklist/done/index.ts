export { progressOf, type ItemProgress, type PartProgress, type Progress, type StepProgress } from './progress';
export { targetsOf, withTicks } from './tick';
export type { GuardNote } from './guards';
