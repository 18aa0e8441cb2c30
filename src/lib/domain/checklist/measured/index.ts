export { against, checkRuns } from './check-runs';
export { summaryOf, type NightSummary } from './summary';
export type { MeasuredRow, RunCheck, Suspicion } from './types';
