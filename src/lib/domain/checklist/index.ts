export * from './types';
export { makeChecklist } from './make-checklist';
