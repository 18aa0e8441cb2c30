/** Rules path.first, path.spacing, path.setback, path.level. */
import { firstsOf, type First } from '../../../placement';
import { distance, nearestOnLine, pointAt } from '../../../shared/geometry';
import { rules } from '../../../shared/rules';
import { formatLength } from '../../../shared/units';
import { distanceToStrip, type Strip } from '../../../site';
import type { RuleRow } from '../types';
import { lengthWorking, measured, rowOf, type Ground, type Measure, type PlacedLight } from './ground';

const { spacing } = rules['path.spacing'].figures;
const { low, high } = rules['path.setback'].figures;
/** What does not stand low beside a walk keeps this much off its edge, metres (the plan's own figure for it). */
const others = 0.05;
/** Further than this from a walk a light has nothing to do with its edge, metres. */
const beside = 1.5;

const walksOf = ({ plan }: Ground): Strip[] => plan.site.strips.filter(({ kind }) => kind === 'walk');
const pathLights = ({ lights }: Ground): PlacedLight[] => lights.filter(({ kind }) => kind === 'path');

const firstWords: Readonly<Record<First, string>> = {
	entry: 'Where the walk leaves the street',
	bend: 'The bend',
	junction: 'The junction',
	gate: 'The gate',
	leaving: 'Where the walk leaves other paving',
	foot: 'The foot of the steps',
	head: 'The head of the steps'
};
/** Each place at which a light comes first, with the light nearest to it. */
function firsts(ground: Ground): Measure[] {
	return walksOf(ground).flatMap((walk) =>
		firstsOf(walk, spacing).map(({ at, first }): Measure => {
			const place = pointAt(walk.centre, at);
			const nearest = pathLights(ground)
				.map(({ fixture }) => ({ fixture, away: distance(fixture.at, place) }))
				.toSorted((a, b) => a.away - b.away)[0];
			const where = `${firstWords[first ?? 'entry']} (${formatLength(at, ground.units)} along)`;
			return {
				lights: nearest ? [nearest.fixture.label] : [],
				subject: `${where} has its nearest light`,
				value: nearest?.away ?? Infinity,
				low: null,
				// One light serves what lies within half a spacing of it.
				high: spacing / 2,
				from: nearest ? `away, ${nearest.fixture.label}` : 'away',
				...(nearest ? {} : { fault: `${where} has no light.` }),
				working: nearest
					? lengthWorking(
							'path.first',
							`Distance from ${nearest.fixture.label}`,
							nearest.away,
							'√((a − c)^2 + (b − d)^2)',
							[
								['a', 'the light, along', nearest.fixture.at.x],
								['b', 'the light, out', nearest.fixture.at.y],
								['c', 'the place, along', place.x],
								['d', 'the place, out', place.y]
							]
						)
					: undefined
			};
		})
	);
}
/** Neighbours on one edge of one walk, each pair once. */
function pairs(ground: Ground): Measure[] {
	const found = new Map<string, Measure>();
	for (const walk of walksOf(ground)) {
		const row = pathLights(ground)
			.filter(({ fixture }) => fixture.target.id === walk.id)
			.map(({ fixture }) => ({ fixture, side: nearestOnLine(fixture.at, walk.centre)?.side }));
		for (const { fixture, side } of row) {
			const next = row
				.filter((one) => one.fixture.id !== fixture.id && one.side === side)
				.map((one) => ({ fixture: one.fixture, away: distance(one.fixture.at, fixture.at) }))
				.toSorted((a, b) => a.away - b.away)[0];
			if (!next) continue;
			const [a, b] = [fixture, next.fixture].toSorted((p, q) => p.id.localeCompare(q.id, 'en', { numeric: true })) as [
				typeof fixture,
				typeof fixture
			];
			found.set(`${a.id} ${b.id}`, {
				lights: [a.label, b.label],
				subject: `${a.label} stands`,
				value: next.away,
				low: spacing,
				high: null,
				from: `from ${b.label} on the same edge`,
				working: lengthWorking('path.spacing', `From ${a.label} to ${b.label}`, next.away, '√((a − c)^2 + (b − d)^2)', [
					['a', `${a.label}, along`, a.at.x],
					['b', `${a.label}, out`, a.at.y],
					['c', `${b.label}, along`, b.at.x],
					['d', `${b.label}, out`, b.at.y]
				])
			});
		}
	}
	return [...found.values()];
}
/** Of each light from the edge of each walk that it stands by. */
function setbacks(ground: Ground): Measure[] {
	return walksOf(ground).flatMap((walk) =>
		ground.lights.flatMap(({ kind, fixture, radius }): Measure[] => {
			const own = kind === 'path' && fixture.target.id === walk.id;
			const edge = distanceToStrip(fixture.at, walk);
			const off = edge - radius;
			if (!own && off > beside) return [];
			return [
				{
					lights: [fixture.label],
					subject: `${fixture.label}’s head is`,
					value: off,
					low: kind === 'path' || kind === 'drive' ? low : others,
					high: own ? high : null,
					from: `from the edge of the ${walk.name}`,
					...(off < 0 ? { fault: `${fixture.label} stands in the paving of the ${walk.name}.` } : {}),
					working: lengthWorking('path.setback', `${fixture.label}, edge to head`, off, 'e − r', [
						['e', 'from the edge to its middle', edge],
						['r', 'half its head', radius]
					])
				}
			];
		})
	);
}
/** By the light model: the average against the rule; how even it is, is told and not marked, as the plan does. */
function levelRow(ground: Ground): RuleRow {
	const { walk: want, ratio } = rules['path.level'].figures;
	const walks = ground.plan.light.receivers.filter(({ kind }) => kind === 'walk');
	if (walks.length === 0) return rowOf('path.level', 'none', ['There is no walk.']);
	const least = Math.min(...walks.map(({ average }) => average));
	const state = least >= want - 1e-9 ? 'held' : least >= 0.8 * want ? 'nearly' : 'not';
	return rowOf(
		'path.level',
		state,
		walks.flatMap(({ name, average, least: dark }) => [
			`${name.charAt(0).toUpperCase()}${name.slice(1)} gets ${average.toFixed(1)} lx on average; ${want} lx is asked.`,
			`Its darkest place gets ${dark.toFixed(2)} lx. Public walkways keep average to darkest within ${ratio} to 1; at a home pools with dark between them are common, so that is not marked.`
		]),
		{
			hint: 'Give the widest dark gap one more light, on the other edge if this one is full.',
			working: walks[0]?.working
		}
	);
}
export const walkRows = (ground: Ground): RuleRow[] => [
	measured('path.first', firsts(ground), ground, {
		hint: 'Put the first lights where a foot goes wrong, and only then fill the gaps.',
		none: 'There is no walk.'
	}),
	measured('path.spacing', pairs(ground), ground, {
		hint: 'Leave one out, or put it across the walk: pools from both edges still meet.',
		none: 'No two lights stand on one edge.'
	}),
	measured('path.setback', setbacks(ground), ground, {
		hint: 'Measure from the edge of the paving to the nearest part of the lamp, not to its middle.',
		none: 'No light stands by a walk.'
	}),
	levelRow(ground)
];
