export { csvOf } from './csv';
export { dpis, type Dpi } from './png-size';
export { planPng } from './plan-png';
export { planSvg } from './plan-svg';
export { tableOf, type TableId } from './tables';
