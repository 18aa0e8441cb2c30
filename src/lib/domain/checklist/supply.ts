import { distance } from '../shared/geometry';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import { atPlace } from './done/done-for';
import type { Job } from './job';
import type { ChecklistStep } from './types';
import { defer, place, step, when } from './words';

export const drilling = [
	'Wear eye protection. Masonry dust is silica: drill with a shroud and vacuum, or wet, and wear a mask for fine dust.',
	'Know what is behind the wall before you drill: cable, pipe, gas.'
];
const ladderFrom = 1.8;

function receptacleSteps({ site }: Job): ChecklistStep[] {
	const outlet = site.receptacle;
	const rule = 'supply.receptacle';
	if (!outlet?.known) {
		const text =
			'Have a GFCI-protected outdoor receptacle with an in-use cover fitted near the transformer, or find the one that is there.';
		return [
			step('receptacle', text, { cautions: ['No extension cord.'], defers: [defer.electrician, defer.code], rule })
		];
	}
	return [
		...when(outlet.gfci !== true, () =>
			step(
				'gfci',
				outlet.gfci === false
					? 'Have the receptacle put behind a GFCI before anything is plugged in.'
					: 'Find out whether the receptacle is GFCI-protected: press its test button, or the one at the panel, and see that it goes dead. If it has none, have one fitted first.',
				{
					defers: [defer.electrician, defer.code],
					rule
				}
			)
		),
		...when(outlet.inUseCover !== true, () =>
			step(
				'cover',
				outlet.inUseCover === false
					? 'Have an in-use cover fitted, one that closes over the plug.'
					: 'Check that the cover of the receptacle closes with the plug in it; if it does not, have an in-use cover fitted.',
				{
					cautions: ['Switch the circuit off at the panel and test that it is dead before a cover comes off.'],
					defers: [defer.electrician],
					rule
				}
			)
		)
	];
}
export function supplySteps(job: Job): ChecklistStep[] {
	const { site, cabling, dusk } = job;
	const { supply } = cabling;
	if (!supply) return [];
	const length = (metres: number): string => formatLength(metres, site.units);
	const bottom = rules['supply.height'].figures.bottom;
	const where = `${place(supply.at, site)}, its bottom ${length(supply.mountHeight)} above the ground (never under ${length(bottom)})`;
	const water = site.areas.filter((area) => area.kind === 'water');
	const { sensor } = dusk;
	return [
		...receptacleSteps(job),
		...when(supply.on === 'post', () =>
			step(
				'post',
				`Set a rot-proof post for the transformer at ${place(supply.at, site)}, plumb, a third of it in the ground on gravel.`,
				{
					cautions: ['Dig the hole by hand: the receptacle’s own cable comes up near it.'],
					doneFor: atPlace(supply.at),
					rule: 'supply.height'
				}
			)
		),
		step(
			'transformer',
			`Hang the transformer at ${where}, upright, in free air, within reach of its own cord. Leave it unplugged.`,
			{
				cautions: [
					...(supply.on === 'wall' ? drilling : []),
					...(water.length > 0
						? [
								`Keep it ${length(rules['water.clear'].figures.clear)} from the edge of ${water.map((area) => area.name).join(' and ')}.`
							]
						: []),
					'Never open or cut a transformer, and use no extension cord.'
				],
				defers: [defer.maker, defer.code],
				doneFor: atPlace(supply.at),
				rule: 'supply.height'
			}
		),
		...when(sensor !== null, () => {
			const spot = sensor!;
			const lead = distance(spot.at, supply.at);
			const far = lead > 1.5 ? `, ${length(lead)} from the transformer` : '';
			return step(
				'sensor',
				`Fix the light sensor to ${spot.on === 'wall' ? 'the wall' : 'a post'} at ${place(spot.at, site)}, ${length(spot.height)} above the ground${far}, where it sees open sky and none of the lamps.`,
				{
					cautions: [
						...(spot.on === 'wall' ? drilling : []),
						...(spot.height > ladderFrom ? ['Stand the ladder on firm ground, four up to one out.'] : [])
					],
					defers: [defer.maker],
					doneFor: atPlace(spot.at),
					rule: 'sensor.shade'
				}
			);
		})
	];
}
