import type { Dusk } from '../dusk';
import type { Fixture } from '../placement';
import { dayInWords } from '../shared/day-words';
import type { Hours } from '../yard/schema';
import { forHours } from './done/done-for';
import { tickId } from './done/entry';
import { aimWords } from './fixtures';
import type { Job } from './job';
import type { ChecklistStep, FirstNightRow } from './types';
import { clock, defer, step, when } from './words';

const seasons = [
	['03-20', '20 March'],
	['06-21', '21 June'],
	['09-22', '22 September'],
	['12-21', '21 December']
] as const;
/** Lights-on times through the year, in words. */
function onTimes(dusk: Dusk): string {
	const said = seasons.map(([date, name]) => {
		const day = dusk.days.find((one) => one.date.endsWith(date));
		const on = day?.on ?? null;
		return `${name} ${on === null ? 'not at all' : clock(on)}`;
	});
	return said.join(', ');
}
const hoursWords = (hours: Hours): string => {
	switch (hours.kind) {
		case 'dusk-to-dawn':
			return 'on at dusk, off at dawn';
		case 'until':
			return `on at dusk, off at ${hours.clock}`;
		case 'split':
			return `on at dusk, off at ${hours.evening}, on again at ${hours.morning}, off at dawn`;
		case 'after-dusk':
			return `on at dusk, off ${hours.hours} ${hours.hours === 1 ? 'hour' : 'hours'} later`;
	}
};
const scheduleWords = ({ schedule, season }: Dusk): string =>
	season
		? `${hoursWords(schedule)}; from ${dayInWords(season.from)} to ${dayInWords(season.to)}, ${hoursWords(season.hours)}`
		: hoursWords(schedule);
export function firstNightSteps(job: Job): ChecklistStep[] {
	const { cabling, fixtures, dusk, halogen } = job;
	if (cabling.runs.length === 0) return [];
	const aims = fixtures.flatMap(({ id, label, aim }) => (aim ? [{ id: tickId('aim', id), label }] : []));
	const aimed = aims.length > 0;
	const neighbours =
		'Look from the street, from the walk, from a driver’s seat in the drive and from next door: no bare lamp in sight of any.';
	return [
		step(
			'gfci-test',
			'Before dusk, plug the transformer in, press the GFCI test button and see the transformer go dead; reset it. Close the cover over the plug.',
			{
				cautions: ['If it does not trip, unplug and use it no further.'],
				defers: [defer.electrician],
				rule: 'supply.receptacle'
			}
		),
		step(
			'measure',
			'With all lamps on for ten minutes, measure the volts at each lamp and write them on the sheet. Each should lie within its low and high figure.',
			{
				cautions: [
					'Touch only the probes’ handles, and let no two probes meet.',
					...(halogen ? ['Halogen lamps are hot: keep hands and leaves off them.'] : [])
				],
				rule: 'cable.volts'
			}
		),
		step(
			'low-volts',
			'A lamp far below its figure: look for a loose connection on the way to it before you move the run to another tap. Unplug for each change.',
			{
				cautions: ['No lamp may be left above its highest volts.'],
				defers: [defer.maker],
				rule: 'cable.volts'
			}
		),
		step(
			'wait',
			`Wait for full dark. The sensor should bring the lights on at about: ${onTimes(dusk)} (clear sky; clouds bring it forward).`,
			{ rule: 'sensor.level' }
		),
		...when(aimed, () =>
			step('aim', `Aim each lamp as the sheet says, then by eye. ${neighbours}`, {
				cautions: halogen ? ['Unplug and let a hot lamp cool before you turn its head.'] : [],
				items: aims,
				rule: 'glare.shield'
			})
		),
		...when(!aimed, () => step('look', neighbours, { rule: 'glare.shield' })),
		step('hours', `Set the control: ${scheduleWords(dusk)}.`, {
			defers: [defer.maker],
			doneFor: forHours(dusk.schedule, dusk.season?.hours ?? null),
			rule: 'hours.choice'
		}),
		step(
			'sensor-check',
			'See that the lights stay on and do not blink: a sensor that sees lamplight switches them off again. Move or hood it if so.',
			{ rule: 'sensor.light' }
		),
		step('finish', 'Next day, close the ground over the joints, and leave nothing dry against a lamp.', {
			rule: halogen ? 'wall.combustible' : 'cable.depth'
		})
	];
}
const rounded = (value: number | null | undefined): number | null =>
	typeof value === 'number' ? Math.round(value * 100) / 100 : null;

/** One line for each fixture: where to aim, and the volts to expect with their worst-case band. */
export function firstNightRows(job: Job): FirstNightRow[] {
	return job.fixtures.map((fixture: Fixture) => {
		const node = job.nodeOf(fixture);
		return {
			fixture: fixture.id,
			label: fixture.label,
			aim: aimWords(fixture, job.site),
			expectedVolts: rounded(node?.volts),
			low: rounded(node?.band?.low),
			high: rounded(node?.band?.high)
		};
	});
}
