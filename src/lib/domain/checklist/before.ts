import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import type { Job } from './job';
import type { ChecklistStep } from './types';
import { defer, step, when } from './words';

export function beforeSteps({ site, fixtures, cabling }: Job): ChecklistStep[] {
	if (fixtures.length === 0 && cabling.runs.length === 0) return [];
	const { tolerance } = rules['dig.notice'].figures;
	const blocked = cabling.findings.some((finding) => finding.rank === 'stop');
	return [
		...when(blocked, () =>
			step('stops', 'Put right what the plan marks as a stop before you buy or dig: it says what and where.', {
				defers: [defer.code]
			})
		),
		step(
			'dig-notice',
			'Call the dig-notice service (811 in the US) at least two full working days before you dig, and wait until every utility has answered.',
			{
				cautions: [
					'It marks the utilities’ own lines only. Private lines are not marked: irrigation, an old lighting cable, gas to a grill, power to a shed. Find and mark those yourself.',
					`Within ${formatLength(tolerance, site.units)} of a mark use hand tools only; your state or country may ask for more.`
				],
				defers: [defer.dig],
				rule: 'dig.notice'
			}
		),
		step(
			'permission',
			'Ask whether low-voltage outdoor lighting needs a permit where you live, and whether a landlord or association has a say.',
			{
				defers: [defer.code]
			}
		),
		step(
			'weather',
			'Choose a dry day and a dry ground for the work on connections, and the evening of it for aiming.',
			{
				cautions: ['Do no electrical work in rain or standing water.']
			}
		),
		step('count', 'Lay out what you bought against the shopping list, and read the instructions of each thing.', {
			defers: [defer.maker]
		}),
		step(
			'flags',
			'Set a flag where each fixture goes and at each lettered turn of the cable on its route card, by the figures along and out from the left front corner. Walk it, and look from the street before you dig.',
			{
				cautions: [
					'Open holes and flags trip people: keep children and pets away, and close the day with the holes covered.'
				]
			}
		)
	];
}
