/** Lights along a drive: rules drive.mouth, drive.spacing, drive.setback, drive.sight, existing.light. */
import { distance, nearestOnSegment, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Strip, Wall } from '../site';
import type { Cause } from './conflicts';
import { courseOf, leadSide, type Course, type Side } from './course';
import { byPosts, postWords, type ByPost } from './drive-posts';
import { driveSpots, inSweep, mouthAt, stakeOut, type DriveSpot, type Role } from './drive-spots';
import { middleOf, type Drafting } from './drafting';
import { pavedStretches } from './paved-spans';
import { input, moved as movedReason, reason } from './reasons';
import { Skips } from './skips';
import type { Fixture, Reason } from './types';
import { called, either } from './wording';

/** Steps tried towards the house when a place is taken, metres; a light of an edge only so far that it crowds nothing, then as far back. */
const slides = [0, 0.25, 0.5, 0.75, 1, 1.5, 2, 2.5, 3];
const edgeSlides = [...slides.slice(0, 5), -0.25, -0.5, -0.75, -1];
/** A lit wall this near beside an edge marks it, metres: our assumption. */
const besideWall = 1;

export function placeDrive(d: Drafting, strip: Strip, order: number): void {
	if (strip.lights === 'none' || strip.length <= 0) return;
	const course = courseOf(strip);
	const target: Fixture['target'] = { kind: 'drive', id: strip.id };
	const the = called(strip.name, 'drive');
	const model = d.pick({ body: 'marker', strength: 'soft' });
	const skips = new Skips(d, target, the);
	const { stake } = d.figures['drive.setback'];
	const pair = pairByPosts(d, course, model);
	const paved = pavedStretches(d.site, strip);
	const standing: { p: Point; side: Side }[] = [];
	const failed = new Map<Role, Set<Cause>>();
	let shown = 0;
	for (const spot of driveSpots(course, leadSide(course, middleOf(d.site)), d.figures, paved)) {
		const near = standing.filter((s) => s.side === spot.side);
		const lamp = d.servedBy(course.centre(spot.at));
		if (lamp) {
			skips.existing(lamp);
			continue;
		}
		const walls = spot.role === 'edge' ? markedBy(d, course.beside(spot.at, spot.side, stake)) : [];
		if (walls[0]) {
			skips.wall(walls[0]);
			for (const wall of walls) d.marking.add(wall);
			continue;
		}
		const causes = new Set<Cause>();
		const found =
			(spot.role === 'mouth' && pair && atPost(course, spot, pair)) || findSpot(d, course, spot, model, causes, near);
		if (!found) {
			if (causes.size > 0) failed.set(spot.role, new Set([...(failed.get(spot.role) ?? []), ...causes]));
			continue;
		}
		const nearest = Math.min(Infinity, ...near.map((s) => distance(s.p, found.p)));
		standing.push({ p: found.p, side: spot.side });
		d.place({
			target,
			role: spot.role,
			technique: 'drive',
			at: found.p,
			model,
			reasons: [...driveReasons(d, strip, { ...spot, ...found }, model, nearest), ...notThere(d, spot, found)],
			order: { strip: order, at: found.at },
			...(spot.role === 'edge' && !spot.bend ? { fills: spot.at } : {})
		});
		shown++;
	}
	for (const [role, causes] of failed) {
		const where = { mouth: 'one side of the mouth', runoff: 'a place where wheels run off', edge: 'part of an edge' }[
			role
		];
		const rank = role === 'edge' ? 'note' : 'look';
		const none = shown === 0 ? ' No light stands along it at all.' : '';
		d.say(
			'placement.no-room',
			rank,
			target,
			`drive.${role === 'mouth' ? 'mouth' : 'setback'}`,
			`On ${the} ${where} gets no light: ${either([...causes].map(d.because))}.${none}`
		);
	}
	skips.report();
}

interface Found {
	p: Point;
	at: number;
	/** Of the stake from the edge, metres. */
	out: number;
	/** Beside a gate post. */
	byPost: boolean;
	/** Where it would stand with nothing in the way, and what was. */
	wanted: Point;
	first: Cause | null;
}
const notThere = (d: Drafting, { role }: DriveSpot, { p, wanted, first }: Found): Reason[] =>
	first
		? [movedReason(d, first, distance(p, wanted), role === 'edge' ? 'where an even row has it' : 'where it was wanted')]
		: [];

/** The pair at the mouth where gate posts stand at the street; null elsewhere. */
function pairByPosts(d: Drafting, course: Course, model: FixtureModel): ByPost | null {
	const { 'drive.setback': setback, 'drive.mouth': mouth } = d.figures;
	const radius = model.headDiameter / 2;
	return byPosts(course, mouthAt(course.length, mouth), model, setback, (at, side, out) => {
		const p = course.beside(at, side, out);
		return inSweepAt(d, course, p, out, radius) ? 'lot' : d.ground.blocked(p, radius, 'path');
	});
}
const atPost = (course: Course, { side }: DriveSpot, { at, out }: ByPost): Found => {
	const p = course.beside(at, side, out);
	return { p, at, out, byPost: true, wanted: p, first: null };
};
/** Whether a lamp beside the mouth stands in the corner that a turning car cuts. */
const inSweepAt = (d: Drafting, { strip }: Course, p: Point, out: number, radius: number): boolean =>
	strip.meetsStreet && inSweep(out - radius, d.site.street - p.y - radius, d.figures['drive.mouth'].flare);

/** The lit walls that mark an edge here: at a corner of the house two. */
const markedBy = (d: Drafting, p: Point): Wall[] =>
	d.site.walls.filter(
		({ light, height, length, from, to }) =>
			light !== 'none' &&
			length > 0 &&
			height >= d.figures['wall.setback'].lowest &&
			nearestOnSegment(p, from, to).distance < besideWall
	);

/** A place that is free, moved along towards the house if need be; edge lights keep the spacing along their edge. */
function findSpot(
	d: Drafting,
	course: Course,
	spot: DriveSpot,
	model: FixtureModel,
	causes: Set<Cause>,
	near: readonly { p: Point }[]
): Found | null {
	const radius = model.headDiameter / 2;
	const { spacing: least } = d.figures['drive.spacing'];
	const out = stakeOut(model.headDiameter, d.figures['drive.setback']);
	const wanted = course.beside(spot.at, spot.side, out);
	let first: Cause | null = null;
	for (const slide of spot.role === 'edge' ? edgeSlides : slides) {
		const at = spot.at + slide;
		if (at > course.length) break;
		const p = course.beside(at, spot.side, out);
		if (spot.role === 'edge' && near.some((s) => distance(s.p, p) < least - 1e-6)) continue;
		if (spot.role === 'mouth' && inSweepAt(d, course, p, out, radius)) {
			causes.add('lot');
			first ??= 'lot';
			continue;
		}
		const cause = d.ground.blocked(p, radius, 'path');
		if (!cause) return { p, at, out, byPost: false, wanted, first };
		first ??= cause;
		causes.add(cause);
	}
	return null;
}

function driveReasons(
	d: Drafting,
	strip: Strip,
	{ role, side, at, bend, out, byPost }: DriveSpot & Found,
	model: FixtureModel,
	nearest: number
): Reason[] {
	const { len, figures } = d;
	const { clear } = figures['drive.setback'];
	const { spacing: least } = figures['drive.spacing'];
	const { flare } = figures['drive.mouth'];
	const { head } = figures['drive.sight'];
	const the = called(strip.name, 'drive');
	const posts = postWords(strip, at, byPost, len);
	const first: Reason[] =
		role === 'mouth'
			? [
					reason(
						'drive.mouth',
						at,
						'm',
						`One of the pair at the mouth of ${the}${posts}, ${len(at)} in${strip.meetsStreet ? `, clear of the corner that a turning car cuts (taken as an arc of ${len(flare)} radius${d.own.tail('drive.mouth/flare') ? '' : ', from memory'})` : ''}.`,
						{
							source: 'memory'
						}
					)
				]
			: role === 'runoff'
				? [reason('drive.mouth', null, '', `Just outside the ${side} edge of ${the}, where wheels run off.`)]
				: bend
					? [
							reason(
								'drive.spacing',
								null,
								'',
								`On the outside of a bend of ${the}, where an edge is missed; the others stand evenly along this edge, which is longer than the middle of the drive.`
							)
						]
					: [];
	return [
		...first,
		reason(
			'drive.spacing',
			Number.isFinite(nearest) ? nearest : null,
			'm',
			!Number.isFinite(nearest)
				? `Lights along one edge stand at least ${len(least)} apart; it is the first on this edge.`
				: nearest < least - 1e-6
					? `${len(nearest)} from the nearest on this edge, closer than ${len(least)}: wheels run off that close.`
					: `${len(nearest)} from the nearest on this edge, not closer than ${len(least)}.`
		),
		reason(
			'drive.setback',
			out,
			'm',
			`The stake stands ${len(out)} outside the edge${byPost ? ' and beyond the post' : ''}, so that nothing of the lamp is within ${len(clear)}.`,
			{
				working: {
					label: 'Head clear of the edge',
					value: out - model.headDiameter / 2,
					unit: 'm',
					decimals: 3,
					rule: rules['drive.setback'].says,
					expression: 's − d ÷ 2',
					inputs: [
						input('s', 'stake from the edge', out, 'm'),
						input('d', 'diameter of the head', model.headDiameter, 'm')
					],
					source: rules['drive.setback'].source
				}
			}
		),
		reason(
			'drive.sight',
			model.lampHeight,
			'm',
			`Its head is ${len(model.lampHeight)} up, below ${len(head)}, and throws its light down: out of a driver's eyes.`
		)
	];
}
