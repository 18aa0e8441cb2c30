export { checkRuns } from './check-runs';
export type { MeasuredRow, RunCheck, Suspicion } from './types';
