/** A small light for the house number: rule number.light. */
import { distance, moved, nearestOnSegment, towards, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Site, Wall } from '../site';
import type { Cause } from './conflicts';
import { middleOf, type Drafting, type Placed } from './drafting';
import { moved as movedReason, reason } from './reasons';
import type { Sight } from './sight';
import { placeSign } from './sign';
import type { Fixture } from './types';
import { called, capital, either } from './wording';

/** A number told so near to a wall hangs on it, metres: our assumption. */
const onWall = 0.6;
/** Height of a number on a post, metres: our assumption. */
const onPost = 1;
const { lamp: lampHeight, number: numberHeight, washed } = rules['number.light'].figures;
/** Tried along the wall when the place is taken, metres. */
const slides = [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5];

type HouseNumber = Site['houseNumber'][number];
/** `the house number`, `the board of the farm shop`. */
const calledOf = ({ name, kind }: HouseNumber): string =>
	kind === 'sign' ? called(name, 'sign') : called('', 'house number');

export function placeNumber(d: Drafting, number: HouseNumber, sight: Sight): void {
	const target: Fixture['target'] = { kind: 'number', id: number.id };
	const lamp = d.servedBy(number.at);
	if (lamp) {
		d.say(
			'placement.existing',
			'note',
			target,
			'existing.light',
			`${capital(calledOf(number))} is lit by ${called(lamp.name, 'existing light')} already: no new light there. If it is off at night, say so and plan again.`
		);
		return;
	}
	if (byWash(d, number)) return;
	if (number.kind === 'sign') return placeSign(d, number, wallAt(d.site, number.at), sight);
	const model = d.pick({ body: 'step', strength: 'soft' });
	const causes = new Set<Cause>();
	const wall = wallAt(d.site, number.at);
	let wanted: Point | null = null;
	let first: Cause | null = null;
	for (const p of wall ? alongWall(d, wall, number.at) : round(d, number.at)) {
		const cause = d.ground.blocked(p, model.headDiameter / 2, wall ? 'mounted' : 'ground');
		wanted ??= p;
		if (cause) {
			first ??= cause;
			causes.add(cause);
			continue;
		}
		const aside = distance(p, number.at);
		d.place({
			target,
			role: 'number',
			technique: 'number',
			at: p,
			model,
			height: wall ? lampHeight : model.lampHeight,
			aim: { x: number.at.x, y: number.at.y, z: wall ? numberHeight : onPost },
			reasons: [
				reason(
					'number.light',
					aside,
					'm',
					`A small light ${wall ? 'on the wall' : 'by the post'}${aside > 0.3 ? `, ${d.len(aside)} aside where it has room` : ''}, so that a visitor or an ambulance finds the number.`
				),
				reason('glare.shield', null, '', 'Shielded and small: it lights the number, not the street.'),
				...(first ? [movedReason(d, first, distance(p, wanted), 'right at the number')] : [])
			]
		});
		return;
	}
	d.say(
		'placement.no-room',
		'look',
		target,
		'number.light',
		`The house number gets no light: ${either([...causes].map(d.because))}. A porch light that reaches it serves as well: tell it under existing lights.`
	);
}

/** Metres above the ground of the middle of a number or a sign: on a wall, on a gate post, on posts of its own. */
export const heightOf = (site: Site, number: HouseNumber): number => {
	if (wallAt(site, number.at)) return numberHeight;
	return number.kind === 'sign' ? rules['number.sign'].figures.middle : onPost;
};

/** Counts the number as lit by a light on its own wall. Whether there is one near enough. */
function byWash(d: Drafting, number: HouseNumber): boolean {
	const wall = wallAt(d.site, number.at);
	if (!wall || wall.light === 'none') return false;
	const foot = nearestOnSegment(number.at, wall.from, wall.to).point;
	let light: Placed | null = null;
	let nearest = washed;
	for (const one of d.placed) {
		const { target, aim, at } = one.fixture;
		if (target.kind !== 'wall' || target.id !== wall.id || !aim) continue;
		const away = distance(aim.point, foot);
		if (away > nearest + 1e-6 || away >= washed - 1e-6) continue;
		// Two that are aimed at one point of a gable: the one that stands nearer.
		if (light && away > nearest - 1e-6 && distance(at, foot) >= distance(light.fixture.at, foot) - 1e-6) continue;
		nearest = Math.min(nearest, away);
		light = one;
	}
	if (!light) return false;
	const target: Fixture['target'] = { kind: 'number', id: number.id };
	light.fixture = { ...light.fixture, also: [...(light.fixture.also ?? []), target] };
	const message = `${capital(calledOf(number))} is lit by the light on ${called(wall.name, 'wall')}, less than ${d.len(washed)} aside: no light of its own. Look on the first night whether it reads from the street.`;
	d.say('placement.group', 'note', target, 'existing.light', message);
	return true;
}

/** The nearest wall within reach; at a corner the one that faces the street more, then the one nearer to the middle of the front. */
function wallAt(site: Site, at: Point): Wall | null {
	const middle = middleOf(site);
	const aside = ({ from, to }: Wall): number => Math.abs((from.x + to.x) / 2 - middle);
	const wins = (wall: Wall, over: Wall): boolean => {
		const gain = wall.outward.y - over.outward.y;
		return Math.abs(gain) > 1e-9 ? gain > 0 : aside(wall) < aside(over) - 1e-9;
	};
	let best: Wall | null = null;
	let least = onWall;
	for (const wall of site.walls) {
		const away = nearestOnSegment(at, wall.from, wall.to).distance;
		const gain = least - away;
		if (gain < -1e-6 || (best && gain < 1e-6 && !wins(wall, best))) continue;
		least = Math.min(least, away);
		best = wall;
	}
	return best;
}
/** Places on a wall, the nearest first. */
function* alongWall(d: Drafting, wall: Wall, at: Point): Generator<Point> {
	const along = towards(wall.from, wall.to);
	const foot = nearestOnSegment(at, wall.from, wall.to).t * wall.length;
	const way = d.handed(at) * (along.x >= 0 ? 1 : -1);
	for (const slide of slides) {
		for (const s of slide === 0 ? [foot] : [foot + way * slide, foot - way * slide]) {
			if (s >= 0 && s <= wall.length)
				yield moved(moved(wall.from, along, s), wall.outward, rules['wall.openings'].figures.clear / 3);
		}
	}
}
/** Places round a post, on the house side first: it shines towards the street. */
function* round(d: Drafting, at: Point): Generator<Point> {
	const way = d.handed(at);
	for (const [x, y] of [
		[0, -1],
		[way, 0],
		[-way, 0],
		[0, 1]
	] as const)
		yield { x: at.x + x * 0.3, y: at.y + y * 0.3 };
}
