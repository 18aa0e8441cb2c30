export * from './types';
export * from './route-card';
export { compass, defer } from './words';
export { makeChecklist } from './make-checklist';
export { upkeepCalendar, type UpkeepEvent } from './calendar';
export type { Repeat } from './calendar-dates';
export * from './measured';
export * from './done';
