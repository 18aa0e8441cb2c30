export * from './types';
export { planDusk, assumedHours } from './plan-dusk';
export { sensorOf, type Siting } from './sensor';
export { altitudeAt, offLux, onLux } from './twilight';
export { litHours, nightMinutes } from './hours';
export { judgeNight } from './sensor/night';
export { monthsOf } from './sensor/months';
export { skyOfPlace, type PlaceSky } from './sensor/place-sky';
export {
	costOf,
	costWorking,
	drawOf,
	energyOf,
	energyWorking,
	hoursWorking,
	priceOf,
	type Draw,
	type Price
} from './energy';
export { placeOf } from './place';
export { duskYear } from './year';
