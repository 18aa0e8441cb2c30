export * from './types';
export { planDusk, assumedHours } from './plan-dusk';
export { sensorOf, type Siting } from './sensor';
export { offLux, onLux } from './twilight';
