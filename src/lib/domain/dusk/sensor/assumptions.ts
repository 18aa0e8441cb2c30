import type { Assumption } from '../../shared/findings';
import { formatLength } from '../../shared/units';
import type { Site } from '../../site';
import { calledThe, capital } from '../../yard';
import type { Yard } from '../../yard/schema';
import { keepsLeaves } from './leaves';
import type { Weighed } from './view';
import { windOf } from './words';

const about = { kind: 'power', id: 'sensor' };
/** What is taken for a sensor: what was not told of its spot, and what the sums behind it leave out. */
export function assumptionsFor(
	{ spot, taken }: Weighed,
	told: { height?: number | undefined; faces?: number | undefined } | null,
	site: Site,
	yard: Yard
): Assumption[] {
	const assumptions: Assumption[] = [];
	const take = (path: string, message: string): void => {
		assumptions.push({ path, message, about });
	};
	if (told && told.height === undefined)
		take(
			'power.sensor.height',
			`The sensor is taken to hang ${formatLength(spot.height, site.units)} above the ground.`
		);
	if (told && told.faces === undefined)
		take(
			'power.sensor.faces',
			`The window of the sensor is taken to look ${windOf(spot.faces)}, ${spot.on === 'wall' ? 'out from its wall' : 'away from the midday sun'}.`
		);
	take(
		'power.sensor',
		'The sensor’s levels are taken as light on its window. The sky is taken to be evenly bright, lights that are there to burn from sunset to sunrise, and nothing to throw light back.'
	);
	for (const { id } of taken.filter(({ kind }) => kind === 'tree')) {
		const tree = site.trees.find((one) => one.id === id);
		if (!tree || yard.trees?.find((one) => one.id === id)?.leaf) continue;
		const does = keepsLeaves(tree, yard) ? 'keep its leaves all year' : 'be bare in winter';
		take(`trees.${id}.leaf`, `${capital(calledThe(tree.name, 'tree'))} is taken to ${does}.`);
	}
	return assumptions;
}
