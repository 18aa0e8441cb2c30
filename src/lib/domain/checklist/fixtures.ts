import { distance } from '../shared/geometry';
import { modelName } from '../shared/model-name';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import { calledThe } from '../yard';
import { atPlace } from './done/done-for';
import { tickId } from './done/entry';
import type { Job } from './job';
import { drilling } from './supply';
import type { ChecklistStep } from './types';
import { compass, defer, place, step } from './words';

type Target = Fixture['target'];
const kindWords: Record<Target['kind'], string> = {
	tree: 'tree',
	wall: 'wall',
	walk: 'walk',
	drive: 'drive',
	steps: 'steps',
	bed: 'bed',
	seating: 'seating place',
	number: 'house number',
	added: 'place'
};
function nameOf({ kind, id }: Target, { trees, walls, strips, areas, houseNumber }: Site): string {
	const things = {
		tree: trees,
		wall: walls,
		walk: strips,
		drive: strips,
		bed: areas,
		seating: areas,
		number: houseNumber
	};
	const list: readonly { id: string; name: string }[] = kind in things ? things[kind as keyof typeof things] : [];
	return calledThe(list.find((one) => one.id === id)?.name ?? '', kindWords[kind]);
}
/** What else it lights, for whoever sets and aims it; empty when it lights one thing only. */
export function alsoWords({ also = [], aim, target }: Fixture, site: Site): string {
	if (also.length === 0) return '';
	const names = [...new Set(also.map((one) => nameOf(one, site)))].join(' and ');
	return aim
		? ` It lights ${names} as well as ${nameOf(target, site)}: aim it for both.`
		: ` It lights ${names} too: keep it where the plan has it.`;
}

/** Where a lamp points, in words; empty when it is not aimed. */
export function aimWords(fixture: Fixture, site: Site): string {
	const { aim } = fixture;
	if (!aim) return '';
	const lean = Math.round(aim.tilt);
	const point = `${formatLength(aim.point.z, site.units)} up, over ${place(aim.point, site)}`;
	if (lean < 1) return `Straight up, at a point ${point}.`;
	const way = `towards the ${compass(aim.bearing)} (${Math.round(aim.bearing)}°)`;
	if (lean > 90) return `Down and ${way}, ${180 - lean}° from straight down.`;
	return `Leaning ${lean}° from upright ${way}, at a point ${point}.`;
}
const settings: { mount: Fixture['mount']; id: string; text: string; cautions: string[]; rule?: string }[] = [
	{
		mount: 'stake',
		id: 'set-stakes',
		text: 'Stakes: push each in plumb. Where the ground is hard, open it with a bar first; never hammer on the fixture.',
		cautions: ['Wear eye protection when you drive a bar.']
	},
	{
		mount: 'flush',
		id: 'set-flush',
		text: 'Flush fixtures: bed each level with the ground on gravel, so that water drains and the mower passes over.',
		cautions: [],
		rule: 'tree.well'
	},
	{
		mount: 'surface',
		id: 'set-surface',
		text: 'Fixtures on a riser or wall: fix each with the screws and the seal that its maker gives.',
		cautions: drilling
	}
];
const mounted: Record<Fixture['mount'], string> = {
	stake: 'on its stake',
	flush: 'flush with the ground',
	surface: 'on the riser or wall'
};
function fixtureStep(fixture: Fixture, job: Job): ChecklistStep {
	const { site } = job;
	const rooted = site.trees.find((tree) => distance(tree.at, fixture.at) < tree.rootRadius);
	const hot = fixture.lamp.kind === 'halogen';
	const cautions = [
		...(fixture.mount === 'surface' ? ['Drilling: eye protection, dust shroud, mask.'] : []),
		...(rooted
			? [
					`It stands among the roots of ${rooted.name}: by hand, and go round roots over ${formatLength(rules['tree.roots'].figures.keepRoot, site.units)}.`
				]
			: []),
		...(hot ? ['This lamp gets hot: keep mulch, dry leaves and siding as far off as its maker says.'] : [])
	];
	const reason = fixture.reasons[0]?.rule;
	return step(
		tickId('fixture', fixture.id),
		`${fixture.label}: ${modelName(fixture.model, fixture.lamp)}, ${place(fixture.at, site)}, ${mounted[fixture.mount]}.${alsoWords(fixture, site)}`,
		{
			cautions,
			defers: hot ? [defer.maker] : [],
			doneFor: atPlace(fixture.at),
			...(rooted ? { rule: 'tree.roots' } : reason ? { rule: reason } : {})
		}
	);
}
/** Fixtures in the order in which one walks along the runs. */
export function fixtureSteps(job: Job): ChecklistStep[] {
	const { fixtures, site } = job;
	if (fixtures.length === 0) return [];
	const water = site.areas.some((area) => area.kind === 'water');
	return [
		step(
			'fixtures-measure',
			'Measure each place again with two tapes, along and out from the left front corner, before you set anything.',
			{
				cautions: water
					? [
							`Nothing electrical within ${formatLength(rules['water.clear'].figures.clear, site.units)} of the water’s edge unless it is made and allowed for it.`
						]
					: [],
				defers: [defer.maker, ...(water ? [defer.code] : [])]
			}
		),
		...settings
			.filter(({ mount }) => fixtures.some((fixture) => fixture.mount === mount))
			.map(({ id, text, cautions, rule }) =>
				step(id, text, { cautions, defers: [defer.maker], ...(rule ? { rule } : {}) })
			),
		...fixtures.map((fixture) => fixtureStep(fixture, job))
	];
}
