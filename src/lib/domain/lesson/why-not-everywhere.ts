/** Rules that hold wherever a light stands, and what keeps each of them out here. Distances from the middle of the light, metres. */
import { distance } from '../shared/geometry';
import { rules } from '../shared/rules';
import { calledThe } from '../yard';
import type { Check, Planned } from './why-not';
import { len, nearestArea, nearestLight, nearestOf, nearestStrip, The, type Light } from './why-not-words';

function water(plan: Planned, light: Light): string | null {
	const { clear } = rules['water.clear'].figures;
	const near = nearestArea(plan.site, light, ({ kind }) => kind === 'water');
	if (!near || near.away < clear) return null;
	return `${The(near.thing.name, 'water')} is ${len(plan, near.away)} away. Nothing electrical stands nearer than ${len(plan, clear)}.`;
}
function roots(plan: Planned, { at }: Light): string | null {
	const near = nearestOf(plan.site.trees, (tree) => distance(at, tree.at) - tree.rootRadius);
	if (!near || near.away <= 0) return null;
	const { name, rootRadius } = near.thing;
	return `${The(name, 'tree')} stands ${len(plan, near.away + rootRadius)} away. By hand only within ${len(plan, rootRadius)} of its trunk.`;
}
function apart(plan: Planned, light: Light): string | null {
	const near = nearestLight(plan, light, () => true);
	const least = rules['place.clear'].figures.apart;
	if (!near || near.away < least) return null;
	return `The nearest other light, ${near.thing.label}, is ${len(plan, near.away)} away. Two keep ${len(plan, least)} apart.`;
}
function walkEdge(plan: Planned, light: Light): string | null {
	const { low, high } = rules['path.setback'].figures;
	const near = nearestStrip(plan.site, light, 'walk');
	if (!near || near.away <= high) return null;
	return `The edge of ${calledThe(near.thing.name, 'walk')} is ${len(plan, near.away)} away. Shoes and mowers reach ${len(plan, low)} to ${len(plan, high)}.`;
}
function driveEdge(plan: Planned, light: Light): string | null {
	const { clear, stake } = rules['drive.setback'].figures;
	const near = nearestStrip(plan.site, light, 'drive');
	if (!near || near.away <= stake) return null;
	return `The edge of ${calledThe(near.thing.name, 'drive')} is ${len(plan, near.away)} away. Tyres stray ${len(plan, clear)}.`;
}
const eyes = { walk: 'on a walk', drive: 'at the wheel', seat: 'on a seat', window: 'at a window' } as const;
function glare(plan: Planned, light: Light): string | null {
	const { candela, within } = rules['glare.level'].figures;
	const seen = plan.light.glare.filter(({ fixture }) => fixture === light.id);
	const worst = seen.toSorted((a, b) => b.candela - a.candela)[0];
	if (!worst)
		return `Nobody within ${len(plan, within)} on a walk, at the wheel, on a seat or at a window sees the bare lamp.`;
	if (worst.candela > candela) return null;
	return `It sends ${worst.candela.toFixed(0)} cd to the eyes of someone ${eyes[worst.eye.kind]}. Glare begins at ${candela} cd.`;
}
function spill(plan: Planned): string | null {
	const faces = plan.light.receivers.filter(({ aim }) => aim?.rule === 'spill.boundary');
	if (faces.some(({ verdict }) => verdict === 'spills')) return null;
	const worst = faces.toSorted((a, b) => b.fromPlan.most - a.fromPlan.most)[0];
	if (!worst?.aim?.high) return null;
	return `All lights together put at most ${worst.fromPlan.most.toFixed(2)} lx on ${worst.name}. The limit late at night is ${worst.aim.high} lx.`;
}
function existing(plan: Planned, { at }: Light): string | null {
	const near = nearestOf(plan.site.existing, (light) => distance(at, light.at) - light.reach);
	if (!near || near.away <= 0) return null;
	const { name, reach } = near.thing;
	return `${The(name, 'light that is there')} is ${len(plan, near.away + reach)} away. By it one sees one’s step within ${len(plan, reach)}.`;
}
function sensor(plan: Planned, { at }: Light): string | null {
	const { clear } = rules['sensor.light'].figures;
	const spot = plan.dusk.sensor;
	if (!spot) return null;
	const away = distance(at, spot.at);
	return away <= clear
		? null
		: `The light sensor is ${len(plan, away)} away. It is kept ${len(plan, clear)} from lamps.`;
}
function hot(_: Planned, { lamp }: Light): string | null {
	return lamp.kind === 'led'
		? `Its LED lamp takes ${lamp.watts} W. The rule is for lamps with a filament, which burn hot.`
		: null;
}
export const everywhere: readonly Check[] = [
	['water.clear', water],
	['tree.roots', roots],
	['place.clear', apart],
	['path.setback', walkEdge],
	['drive.setback', driveEdge],
	['glare.level', glare],
	['spill.boundary', spill],
	['existing.light', existing],
	['sensor.light', sensor],
	['wall.combustible', hot]
];
