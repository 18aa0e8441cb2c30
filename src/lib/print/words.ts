/** Words of the packet, worked out from the plan: names, aims, cable, money, hours. */
import type { Plan } from '../domain/plan';
import type { Fixture } from '../domain/placement';
import type { Run, RunNode, RunSegment } from '../domain/cable';
import type { Hours, Season, Yard } from '../domain/yard';
import { fnv1a } from '../domain/shared/fnv1a';
import { cables, transformers, type Lamp } from '../domain/shared/catalogue';
import { dayInWords, hoursInWords } from '../domain/shared/day-words';
import { modelName as fixtureName } from '../domain/shared/model-name';
import { formatLength } from '../domain/shared/units';

/** The yard's own name, or a plain one. */
export const yardName = (yard: Yard): string => yard.name?.trim() || 'Front yard';

/** What a fixture lights, by the name the person gave it. */
export function targetName(plan: Plan, { target }: Pick<Fixture, 'target'>): string {
	const { site } = plan;
	const strip = site.strips.find(({ id }) => id === target.id);
	switch (target.kind) {
		case 'tree':
			return site.trees.find(({ id }) => id === target.id)?.name || 'Tree';
		case 'wall':
			return site.walls.find(({ id }) => id === target.id)?.name || 'Wall';
		case 'walk':
			return strip?.name || 'Walk';
		case 'drive':
			return strip?.name || 'Drive';
		case 'steps': {
			const owner = site.strips.find(({ steps }) => steps.some(({ id }) => id === target.id)) ?? strip;
			return owner?.name ? `${owner.name}, steps` : 'Steps';
		}
		case 'bed':
			return site.areas.find(({ id, kind }) => kind === 'bed' && id === target.id)?.name || 'Bed';
		case 'seating':
			return site.areas.find(({ id, kind }) => kind === 'seating' && id === target.id)?.name || 'Seating';
		case 'number': {
			const sign = site.houseNumber.find(({ id, kind }) => kind === 'sign' && id === target.id);
			return sign ? sign.name || 'Sign' : 'House number';
		}
		case 'added':
			return 'Placed by you';
	}
}

const ways = [
	'the street',
	'the street and left',
	'left',
	'the house and left',
	'the house',
	'the house and right',
	'right',
	'the street and right'
] as const;
/** A bearing as someone at the street sees it: towards the house, left, right… */
export function wayOf(bearing: number, faces: number): string {
	const turn = (((bearing - faces) % 360) + 360) % 360;
	return ways[Math.round(turn / 45) % 8]!;
}
/** How a fixture is aimed; empty when it is not. */
export function aimOf(fixture: Pick<Fixture, 'aim'>, faces: number): string {
	if (!fixture.aim) return '';
	const tilt = Math.round(fixture.aim.tilt);
	if (tilt === 0) return 'straight up';
	if (tilt >= 175) return 'straight down';
	return `${tilt}° from upright, towards ${wayOf(fixture.aim.bearing, faces)}`;
}

/** A fixture with the lamp in it, a transformer or a cable, as it is called on lists. */
export const modelName = (id: string, lamp?: Pick<Lamp, 'measured'>): string =>
	transformers.find((model) => model.id === id)?.name ??
	cables.find((model) => model.id === id)?.name ??
	fixtureName(id, lamp);

/** Node names of a run: the fixture's label, the transformer, or the hub from which each light has its own lead. */
export function nodeNames(run: Run, fixtures: readonly Fixture[]): Map<string, string> {
	const labels = new Map(fixtures.map((fixture) => [fixture.id, fixture.label]));
	return new Map(
		run.nodes.map((node: RunNode, index) => [
			node.id,
			index === 0 ? 'Transformer' : node.fixture === null ? 'Hub' : (labels.get(node.fixture) ?? node.fixture)
		])
	);
}
const crossingWords = { sleeve: 'sleeve', joint: 'expansion joint', bore: 'bore' } as const;
/** What a length of cable crosses and how. */
export function crossingText(segment: RunSegment, plan: Plan): string {
	return segment.crossings
		.map(({ strip, crossing, kind, length }) => {
			const name = plan.site.strips.find(({ id }) => id === strip)?.name || 'paving';
			const how = crossing === null ? 'bore to be made' : crossingWords[kind];
			return `${name}: ${how}, ${formatLength(length, plan.site.units)}`;
		})
		.join('; ');
}

/** An amount of money: `$12.50`, `12.50 EUR`. */
export const money = (amount: number, currency: string): string =>
	/^[\p{L}]{2,}$/u.test(currency) ? `${amount.toFixed(2)} ${currency}` : `${currency}${amount.toFixed(2)}`;

/** Hours in a sentence: `from dusk until 23:00`, `for 5 hours from dusk`. */
const hoursText = (hours: Hours): string => `${hours.kind === 'after-dusk' ? 'for ' : ''}${hoursInWords(hours)}`;

/** The hours chosen, in words, and those of the season that has its own. */
export const scheduleText = (hours: Hours, season: Season | null = null): string =>
	season
		? `${hoursText(hours)}; from ${dayInWords(season.from)} to ${dayInWords(season.to)} ${hoursText(season.hours)}`
		: hoursText(hours);

/**
 * A short code that tells two printouts apart: same answers, same code, whatever of the work is ticked off. Not a safeguard
 * against tampering.
 */
export function planCode({ done: _, ...answers }: Yard): string {
	return fnv1a(JSON.stringify(answers)).toString(36).toUpperCase().padStart(7, '0').slice(-7);
}

const some = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
/** The plan in one line: `23 lights on 2 runs of cable; a transformer of 150 VA carries 89 VA.` */
export function whatInWords({ fixtures, runs, supply }: Plan): string {
	if (fixtures.length === 0) return 'No lights yet.';
	const lights = some(fixtures.length, 'light');
	const on = runs.length > 0 ? ` on ${some(runs.length, 'run')} of cable` : '';
	const fed = supply
		? `; a transformer of ${supply.ratedVoltAmps} VA carries ${Math.round(supply.loadVoltAmps)} VA`
		: '';
	return `${lights}${on}${fed}.`;
}
