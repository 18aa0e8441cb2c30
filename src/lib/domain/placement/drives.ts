/** Lights along a drive: rules drive.mouth, drive.spacing, drive.setback, drive.sight, existing.light. */
import { distance, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Strip } from '../site';
import type { Cause } from './conflicts';
import { courseOf, leadSide, other, type Course, type Side } from './course';
import { middleOf, type Drafting } from './drafting';
import { input, reason } from './reasons';
import { Skips } from './skips';
import type { Fixture, Reason } from './types';
import { called, either } from './wording';

const { spacing: least, long, longFrom } = rules['drive.spacing'].figures;
const { clear, stake } = rules['drive.setback'].figures;
const { flare } = rules['drive.mouth'].figures;
const { head } = rules['drive.sight'].figures;
const slides = [0, 0.25, 0.5, 0.75, 1, 1.5, 2, 2.5, 3];
/** The last light keeps this far from the garage or the end of the drive, metres: our assumption. */
const fromEnd = 1.5;

type Role = 'mouth' | 'runoff' | 'edge';
interface Spot {
	at: number;
	side: Side;
	role: Role;
}

/** Metres between lights along one edge of a drive so long: at least the rule's, wider on a long one. */
export const driveSpacing = (length: number): number => (length > longFrom ? long : least);

/**
 * Whether a point `out` from the edge and `back` from the street lies in the corner that a turning car cuts: the ground
 * between the corner and the arc of radius `flare` that joins street and edge (metres; figure from memory).
 */
export const inSweep = (out: number, back: number): boolean =>
	out < flare && back < flare && (flare - out) ** 2 + (flare - back) ** 2 > flare ** 2;

/** Where lights are wanted along a drive, before anything is in the way. */
export function driveSpots(strip: Strip, lead: Side): Spot[] {
	const spots: Spot[] = [];
	const start = Math.min(flare, strip.length / 2);
	for (const side of [lead, other(lead)]) spots.push({ at: start, side, role: 'mouth' });
	for (const { at, side } of strip.runOffs) spots.push({ at, side, role: 'runoff' });
	const room = strip.length - fromEnd - start;
	const count = Math.floor(room / driveSpacing(strip.length) + 1e-9);
	if (count < 1 || strip.lights === 'mouth' || strip.lights === 'none') return spots;
	const step = room / count;
	const sides: Side[] = strip.lights === 'left' || strip.lights === 'right' ? [strip.lights] : [lead, other(lead)];
	for (const side of sides) {
		const shift = strip.pattern === 'staggered' && sides.length === 2 && side !== lead ? step / 2 : 0;
		for (let k = 1; k <= count; k++) {
			const at = start + k * step + shift;
			if (at <= strip.length - fromEnd + 1e-9) spots.push({ at, side, role: 'edge' });
		}
	}
	return spots;
}

export function placeDrive(d: Drafting, strip: Strip, order: number): void {
	if (strip.lights === 'none' || strip.length <= 0) return;
	const course = courseOf(strip);
	const target: Fixture['target'] = { kind: 'drive', id: strip.id };
	const the = called(strip.name, 'drive');
	const model = d.pick({ body: 'marker', strength: 'soft' });
	const skips = new Skips(d, target, the);
	const standing: { p: Point; side: Side }[] = [];
	const failed = new Map<Role, Set<Cause>>();
	let shown = 0;
	for (const spot of driveSpots(strip, leadSide(course, middleOf(d.site)))) {
		const near = standing.filter((s) => s.side === spot.side);
		const lamp = d.servedBy(course.centre(spot.at));
		if (lamp) {
			skips.existing(lamp);
			continue;
		}
		const causes = new Set<Cause>();
		const found = findSpot(d, course, spot, model, causes, near);
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
			reasons: driveReasons(d, strip, { ...spot, at: found.at }, model, nearest),
			order: { strip: order, at: found.at }
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

/** A place that is free, moved along towards the house if need be; edge lights keep the spacing along their edge. */
function findSpot(
	d: Drafting,
	course: Course,
	spot: Spot,
	model: FixtureModel,
	causes: Set<Cause>,
	near: readonly { p: Point }[]
): { p: Point; at: number } | null {
	const radius = model.headDiameter / 2;
	const out = Math.max(stake, clear + radius);
	for (const slide of slides) {
		const at = spot.at + slide;
		if (at > course.length) break;
		const p = course.beside(at, spot.side, out);
		if (spot.role === 'edge' && near.some((s) => distance(s.p, p) < least - 1e-6)) continue;
		if (spot.role === 'mouth' && course.strip.meetsStreet && inSweep(out - radius, d.site.street - p.y - radius)) {
			causes.add('lot');
			continue;
		}
		const cause = d.ground.blocked(p, radius, 'path');
		if (!cause) return { p, at };
		causes.add(cause);
	}
	return null;
}

function driveReasons(
	d: Drafting,
	strip: Strip,
	{ role, side, at }: Spot,
	model: FixtureModel,
	nearest: number
): Reason[] {
	const { len } = d;
	const the = called(strip.name, 'drive');
	const posts = strip.posts ? ', by the gate posts' : '';
	const first: Reason[] =
		role === 'mouth'
			? [
					reason(
						'drive.mouth',
						at,
						'm',
						`One of the pair at the mouth of ${the}${posts}, ${len(at)} in${strip.meetsStreet ? `, clear of the corner that a turning car cuts (taken as an arc of ${len(flare)} radius)` : ''}.`,
						{
							source: 'memory'
						}
					)
				]
			: role === 'runoff'
				? [reason('drive.mouth', null, '', `Just outside the ${side} edge of ${the}, where wheels run off.`)]
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
			stake,
			'm',
			`The stake stands ${len(stake)} outside the edge, so that nothing of the lamp is within ${len(clear)}.`,
			{
				working: {
					label: 'Head clear of the edge',
					value: stake - model.headDiameter / 2,
					unit: 'm',
					decimals: 3,
					rule: rules['drive.setback'].says,
					expression: 's − d ÷ 2',
					inputs: [
						input('s', 'stake from the edge', stake, 'm'),
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
