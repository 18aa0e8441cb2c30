export * from './types';
export * from './route-card';
export { makeChecklist } from './make-checklist';
