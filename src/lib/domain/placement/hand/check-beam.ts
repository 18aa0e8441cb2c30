/** Which rules the beam or the lamp of a light set by hand breaks. */
import type { Drafting } from '../drafting';
import { sightOn, watcherWords, type Sight } from '../sight';
import type { Fixture } from '../types';
import type { Broken } from './check-place';

export function brokenByBeam(
	d: Drafting,
	{ aim, technique, at, height }: Fixture,
	turned: boolean,
	sight: Sight
): Broken[] {
	if (!aim || (technique !== 'uplight' && !turned)) return [];
	const { maxLean } = d.figures['tree.aim'];
	const broken: Broken[] = [];
	if (technique === 'uplight' && aim.tilt > maxLean + 1e-6)
		broken.push({
			what: 'lean',
			rank: 'look',
			rule: 'tree.aim',
			words: `leans ${aim.tilt.toFixed(0)}° from upright: more than ${maxLean}° shines past the tree and into eyes`
		});
	const { spare, watcher } = sightOn(sight, at, height, aim.point);
	if (watcher && spare <= 0)
		broken.push({
			what: 'sight',
			rank: 'look',
			rule: 'tree.aim',
			words: `shines into the eyes of someone ${watcherWords[watcher]}: its beam passes ${(-spare).toFixed(0)}° nearer to them than it should`
		});
	return broken;
}

export function brokenByLamp(d: Drafting, fixture: Fixture, kind: 'led' | 'halogen'): Broken[] {
	const tree = d.site.trees.find(({ id }) => fixture.target.kind === 'tree' && fixture.target.id === id);
	const broken: Broken[] = [];
	if (fixture.lamp.kind !== kind)
		broken.push({
			what: 'lamp',
			rank: 'look',
			rule: 'cable.volts',
			words: `has ${fixture.lamp.kind === 'led' ? 'an LED' : 'a halogen'} lamp where the others are ${kind === 'led' ? 'LED' : 'halogen'}: they want other volts, and change colour and brightness differently`
		});
	if (tree?.ground === 'lawn' && fixture.technique === 'uplight' && fixture.mount !== 'flush')
		broken.push({
			what: 'mount',
			rank: 'note',
			rule: 'tree.well',
			words: 'stands on a stake in mown lawn: a flush one spares the mower'
		});
	return broken;
}
