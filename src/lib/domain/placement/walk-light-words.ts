/** What a path light says of the light it gives its walk: rules path.head and path.meet. */
import { distance, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import type { Working } from '../shared/working';
import { maintained } from '../photometry';
import type { Drafting } from './drafting';
import { input, reason } from './reasons';
import type { Fixture, Reason } from './types';
import { meetsAt, nextOn, rowLux, towardsGround, type RowHead, type WalkRow } from './walk-light';
import type { Standing } from './walk-words';

/** Lux as it is said: two digits. */
const lux = (value: number): string => `${value.toFixed(value < 0.95 ? 2 : value < 9.95 ? 1 : 0)} lx`;

/** `apart`: metres of walk to each light of the row. */
export function lightReasons(d: Drafting, row: WalkRow, head: RowHead, apart: number, light: Standing): Reason[] {
	return [headReason(d, head, apart), ...midwayReason(d, row, head.model, light)];
}

function headReason(d: Drafting, { model, average, wanted, weakest }: RowHead, apart: number): Reason {
	const enough =
		average >= wanted
			? `${weakest ? 'the weakest head of the list is enough for' : 'no weaker head of the list gives'} the ${lux(wanted)} wanted`
			: `${lux(wanted)} is wanted, and no head of the list gives more`;
	return reason(
		'path.head',
		average,
		'lx',
		`${model.lamp.lumens} lm: about ${lux(average)} on average along a straight with one light to each ${d.len(apart)}, by the model; ${enough}.`,
		{ source: 'physics' }
	);
}

/** Midway to the next, on the centre line; nothing where steps, other paving or the end come next. */
function midwayReason(d: Drafting, row: WalkRow, model: FixtureModel, light: Standing): Reason[] {
	const next = nextOn(row, light.at);
	if (!next) return [];
	const place = row.course.centre(light.at + next.gap / 2);
	const total = rowLux(row, model, place);
	const least = meetsAt(d.site);
	const said =
		total >= least
			? `pools count as meeting from ${lux(least)}`
			: `the pools do not meet, which they do from ${lux(least)}; closer along one edge than ${d.len(d.figures['path.spacing'].spacing)} the walk would look like a runway`;
	return [
		reason(
			'path.meet',
			total,
			'lx',
			`Midway to the next, ${d.len(next.gap)} on, the lights of this walk leave ${total < 0.005 ? 'no light' : lux(total)} on its middle, by the model: ${said}.`,
			{ source: 'physics', working: midwayWorking(model, place, light.p, nearestTo(place, next.lights), total) }
		)
	];
}
const nearestTo = (place: Point, lights: readonly Standing[]): Point =>
	lights.reduce((best, { p }) => (distance(p, place) < distance(best, place) - 1e-9 ? p : best), lights[0]!.p);

/** The light of the two on either side and of all the others, at a place on the ground. */
function midwayWorking(model: FixtureModel, place: Point, one: Point, other: Point, total: number): Working {
	const toward = towardsGround(model);
	const here = toward(place.x - one.x, place.y - one.y);
	const next = toward(place.x - other.x, place.y - other.y);
	const [m, h] = [maintained(), model.lampHeight];
	const two = m * h * (here.candela / here.away ** 3 + next.candela / next.away ** 3);
	return {
		label: 'Light midway to the next',
		value: total,
		unit: 'lx',
		decimals: 2,
		rule: 'What a lamp sends that way times the cosine at which it lands, over the distance squared; the cosine is the height of the lamp over the distance.',
		expression: 'm × h × (I ÷ a ^ 3 + J ÷ b ^ 3) + r',
		inputs: [
			input('m', 'left of new, for age and dirt', m, ''),
			input('h', 'height of the lamps', h, 'm'),
			input('I', 'this one sends that way', here.candela, 'cd'),
			input('a', 'from this lamp to the place', here.away, 'm'),
			input('J', 'the next sends that way', next.candela, 'cd'),
			input('b', 'from the next lamp to the place', next.away, 'm'),
			input('r', 'from the lights further off', Math.max(0, total - two), 'lx')
		],
		source: 'physics'
	};
}

/** A light with the head of its row, and with what it says of it before its colour. Another lamp, chosen by hand, stays. */
export function lit(
	d: Drafting,
	fixture: Fixture,
	asked: FixtureModel,
	{ id, mount, lamp }: FixtureModel,
	said: readonly Reason[]
): Fixture {
	const { reasons } = fixture;
	return {
		...fixture,
		...(fixture.model === asked.id ? { model: id, mount, lamp } : {}),
		reasons: [...reasons.slice(0, -1), ...said.map(d.own.reason), ...reasons.slice(-1)]
	};
}
