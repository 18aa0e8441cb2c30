/** Rules water.clear, place.clear, glare.level. */
import { distance, distanceToPolygon } from '../../../shared/geometry';
import { rules } from '../../../shared/rules';
import type { RuleRow } from '../types';
import { factOf, findingsOf, labelFor, lengthWorking, measured, rowOf, type Ground, type Measure } from './ground';

const { apart } = rules['place.clear'].figures;
const { clear } = rules['water.clear'].figures;

function waters(ground: Ground): Measure[] {
	const { site, supply } = ground.plan;
	return site.areas
		.filter(({ kind }) => kind === 'water')
		.flatMap(({ name, polygon }) => {
			const of = (label: string, subject: string, edge: number, radius: number): Measure => ({
				lights: label ? [label] : [],
				subject,
				value: edge - radius,
				low: clear,
				high: null,
				from: `from the ${name}`,
				working: lengthWorking('water.clear', `From the ${name}`, edge - radius, 'e − r', [
					['e', 'from its edge to the middle', edge],
					['r', 'half the head', radius]
				]),
				...(edge - radius <= 0 ? { fault: `${subject.replace(/ (stands|hangs)$/, '')} is in the ${name}.` } : {})
			});
			return [
				...ground.lights.map(({ fixture, radius }) =>
					of(fixture.label, `${fixture.label} stands`, distanceToPolygon(fixture.at, polygon), radius)
				),
				...(supply && ground.supplyTold
					? [of('', 'The transformer hangs', distanceToPolygon(supply.at, polygon), 0)]
					: [])
			];
		});
}
/** Lights nearer to each other than a spade needs; others are not measured. */
function neighbours({ lights }: Ground): Measure[] {
	return lights.flatMap(({ fixture }, i) =>
		lights.slice(i + 1).flatMap((other): Measure[] => {
			const away = distance(fixture.at, other.fixture.at);
			if (away >= apart) return [];
			const [a, b] = [fixture.label, other.fixture.label];
			return [
				{
					lights: [a, b],
					subject: `${a} stands`,
					value: away,
					low: apart,
					high: null,
					from: `from ${b}`,
					...(away < 0.01 ? { fault: `${a} and ${b} stand at one spot.` } : {})
				}
			];
		})
	);
}
/** On the lot, off the house, with room round it: the plan's own findings. */
function placeRow(ground: Ground): RuleRow {
	const hint = 'Look at the grid again: along is from the left corner of the house, out is towards the street.';
	const found = findingsOf(ground, 'place.clear').filter(({ code }) => code !== 'placement.hand-near');
	const near = measured('place.clear', neighbours(ground), ground, { hint, none: '' });
	const close = near.state === 'not' || near.state === 'nearly' ? near.facts : [];
	const lost = ground.refused > 0 ? [`${ground.refused} could not be placed at all.`] : [];
	if (found.length + close.length + lost.length === 0)
		return ground.lights.length > 0
			? rowOf('place.clear', 'held', ['Every light stands in open ground, on the lot, with room for a spade.'])
			: rowOf('place.clear', 'none', ['There are no lights yet.']);
	const isNearly = found.length + lost.length === 0 && near.state === 'nearly';
	return rowOf('place.clear', isNearly ? 'nearly' : 'not', [...lost, ...found.map(factOf), ...close], {
		hint,
		lights: [...found.flatMap((one) => labelFor(ground, one)), ...(close.length > 0 ? near.lights : [])]
	});
}
function glareRow(ground: Ground): RuleRow {
	if (ground.lights.length === 0) return rowOf('glare.level', 'none', ['There are no lights yet.']);
	const { candela: most } = rules['glare.level'].figures;
	const worst = ground.plan.light.glare.toSorted((a, b) => b.candela - a.candela)[0];
	const label = ground.plan.fixtures.find(({ id }) => id === worst?.fixture)?.label;
	if (!worst || !label) return rowOf('glare.level', 'held', ['No bare lamp is seen from walk, drive or window.']);
	const words = `The brightest bare lamp, ${label}, sends ${worst.candela.toFixed(0)} cd towards an eye; ${most} is the most.`;
	const state = worst.candela <= most ? 'held' : worst.candela <= 1.2 * most ? 'nearly' : 'not';
	const remedies = ground.plan.light.glare.flatMap(({ remedy }) => remedy ?? []);
	return rowOf('glare.level', state, state === 'held' ? [words] : [words, ...remedies], {
		hint: 'Stand it further from where people walk and sit, or aim it more steeply.',
		lights: [label]
	});
}
export const aroundRows = (ground: Ground): RuleRow[] => [
	measured('water.clear', waters(ground), ground, {
		hint: 'Move it out of the ring round the water: someone in it stands on bare, wet feet.',
		none: ground.lights.length > 0 ? 'There is no water.' : 'There are no lights yet, or no water.'
	}),
	placeRow(ground),
	glareRow(ground)
];
