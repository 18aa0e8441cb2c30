/** Words of the hours page: how another way to set the hours differs from the one chosen. */
import type { Dusk, ScheduleFigures, SensorSpot } from '$lib/domain/dusk';
import { currencyWords } from '../parts/words';

const whole = new Intl.NumberFormat('en', { maximumFractionDigits: 0 });
/** `1,830 h`. */
export const hourWords = (hours: number): string => `${whole.format(hours)} h`;

type Figures = Pick<ScheduleFigures, 'cost' | 'lateHours'>;
/** `Saves $9.20 a year, 610 hours less light after 23:00.` */
export function differenceWords(one: Figures, chosen: Figures, currency: string): string {
	const cost = Math.round((one.cost - chosen.cost) * 100) / 100;
	const late = Math.round(one.lateHours - chosen.lateHours);
	const money =
		cost === 0
			? 'Costs the same'
			: cost < 0
				? `Saves ${currencyWords(-cost, currency)} a year`
				: `Costs ${currencyWords(cost, currency)} more a year`;
	const count = Math.abs(late);
	const light =
		late === 0
			? 'as much light after 23:00'
			: `${whole.format(count)} ${count === 1 ? 'hour' : 'hours'} ${late < 0 ? 'less' : 'more'} light after 23:00`;
	return `${money}, ${light}.`;
}
/** `LED 14 years, halogen 1.2 years`; empty where nothing burns. */
export function lampWords(lampYears: ScheduleFigures['lampYears']): string {
	return lampYears
		.map(({ kind, years }) => {
			const count = years < 9.95 ? years.toFixed(1) : whole.format(years);
			return `${kind === 'led' ? 'LED' : 'halogen'} ${count} ${count === '1.0' ? 'year' : 'years'}`;
		})
		.join(', ');
}
/** The answers that make a way to set the hours the plan's own; the label says what was done. */
export const hoursTaken = ({ label, schedule, season }: ScheduleFigures) => ({
	label: `hours set to “${label.charAt(0).toLowerCase()}${label.slice(1)}”`,
	changes: [
		{ path: 'power.hours', value: schedule },
		{ path: 'power.season', value: season }
	]
});
const millimetre = (metres: number): number => Math.round(metres * 1000) / 1000;
/** The answer that hangs the sensor at a spot; the plan's own spots stand at most 4 m up, as the answer allows. */
export const sensorHung = ({ at, on, height, faces }: SensorSpot, number: number) => ({
	label: `sensor hung at spot ${number}`,
	changes: [
		{
			path: 'power.sensor',
			value: {
				at: { along: millimetre(at.x), out: millimetre(at.y) },
				on,
				height: millimetre(height),
				faces: Math.round((((faces % 360) + 360) % 360) * 10) / 10
			}
		}
	]
});
/** Whether a spot is where the sensor hangs now. */
export function isHungAt(spot: Pick<SensorSpot, 'at' | 'height' | 'faces'>, sensor: Dusk['sensor']): boolean {
	if (!sensor) return false;
	const turn = Math.abs(((spot.faces - sensor.view.faces + 540) % 360) - 180);
	const apart = Math.hypot(spot.at.x - sensor.at.x, spot.at.y - sensor.at.y);
	return apart < 0.01 && Math.abs(spot.height - sensor.height) < 0.01 && turn < 1;
}
