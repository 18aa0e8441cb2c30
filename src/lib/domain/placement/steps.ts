/** Step lights beside a flight: rule path.level, 11 lx (1 fc) on each tread. */
import { moved, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import { candelaToward, maintained, photometryOf, sourceFrame, towards } from '../photometry';
import type { Steps, Strip } from '../site';
import type { Cause } from './conflicts';
import { courseOf, leadSide, other, type Course, type Side } from './course';
import { middleOf, type Drafting } from './drafting';
import { moved as movedReason, reason } from './reasons';
import type { Fixture, Reason } from './types';
import { called, either } from './wording';

/** Height of a riser when only the treads are counted, metres (from memory). */
const riser = 0.15;
/** Clear of the edge of the steps, metres: beside the cheek, out of reach of a shoe. */
const clear = 0.06;

export interface Flight {
	treads: number;
	/** Front to back of a tread, metres. */
	going: number;
	width: number;
}
export interface StepLamp {
	/** Tread it stands beside, counted from the foot. */
	tread: number;
	/** −1 at one side of the flight, +1 at the other. */
	side: -1 | 1;
}

/**
 * Lux at the middle of a tread from one lamp beside the flight, maintained (rule light.maintained): E = I · cos(incidence) / d² with
 * the intensity of a step light, which sends nothing above the horizontal. x up the flight, y across, z up.
 */
function lampOnTread(flight: Flight, model: FixtureModel): (lamp: StepLamp, tread: number) => number {
	const out = flight.width / 2 + clear + model.headDiameter / 2;
	const left = maintained();
	const axis = towards({ x: 0, y: out, z: model.lampHeight }, { x: 0, y: 0, z: 0 });
	const frame = sourceFrame(axis);
	const photometry = photometryOf(model, model.lamp, (Math.asin(-axis.z) * 180) / Math.PI);
	return (lamp, tread) => {
		const x = (tread - lamp.tread) * flight.going;
		const z = (tread - lamp.tread) * riser - model.lampHeight;
		if (z >= 0) return 0;
		const distance = Math.hypot(x, out, z);
		const direction = { x: x / distance, y: -out / distance, z: z / distance };
		return (left * candelaToward(photometry, frame, direction) * -direction.z) / distance ** 2;
	};
}
const total = (one: (lamp: StepLamp, tread: number) => number, lamps: readonly StepLamp[], tread: number): number =>
	lamps.reduce((lux, lamp) => lux + one(lamp, tread), 0);

/** Lux at the middle of a tread from lamps beside the flight, maintained. */
export const treadLux = (flight: Flight, lamps: readonly StepLamp[], model: FixtureModel, tread: number): number =>
	total(lampOnTread(flight, model), lamps, tread);

/**
 * Lamps for a flight, from the top down, each beside the first tread that has not yet enough (a lamp lights its own tread
 * and those below); on a flight too wide for one, a pair. `alternate`: sides take turns.
 */
export function stepLamps(
	flight: Flight,
	model: FixtureModel,
	first: -1 | 1,
	alternate: boolean
): { lamps: StepLamp[]; least: number } {
	const enough = rules['path.level'].figures.tread;
	const one = lampOnTread(flight, model);
	const lamps: StepLamp[] = [];
	let side = first;
	let least = Infinity;
	for (let tread = flight.treads - 1; tread >= 0; tread--) {
		for (let add = 0; add < 2 && total(one, lamps, tread) < enough; add++) {
			lamps.push({ tread, side: add === 0 ? side : side === 1 ? -1 : 1 });
		}
		if (alternate && lamps.at(-1)?.tread === tread) side = side === 1 ? -1 : 1;
	}
	for (let tread = 0; tread < flight.treads; tread++) least = Math.min(least, total(one, lamps, tread));
	return { lamps, least };
}

export function placeSteps(d: Drafting, strip: Strip, order: number): void {
	if (strip.steps.length === 0) return;
	const course = courseOf(strip);
	for (const steps of strip.steps) placeFlight(d, course, steps, order);
}

/** Where the step lights of a walk stand, once they are placed. */
export function stepLightsOf({ placed }: Drafting, { steps }: Strip): Point[] {
	const flights = steps.map(({ id }) => id);
	if (flights.length === 0) return [];
	return placed
		.filter(({ fixture: { target } }) => target.kind === 'steps' && flights.includes(target.id))
		.map(({ fixture }) => fixture.at);
}

function placeFlight(d: Drafting, course: Course, steps: Steps, order: number): void {
	const { strip } = course;
	const target: Fixture['target'] = { kind: 'steps', id: steps.id };
	const the = called(strip.name, 'walk');
	const served = [steps.start, steps.end].map((at) => d.servedBy(course.centre(at)));
	if (served[0] && served[1]) {
		d.say(
			'placement.existing',
			'note',
			target,
			'existing.light',
			`The steps on ${the} are lit by ${called(served[0].name, 'existing light')} already: no new light there. If it is off at night, say so and plan again.`
		);
		return;
	}
	if (strip.lights === 'none') {
		d.say(
			'placement.steps-dark',
			'look',
			target,
			'path.level',
			`The steps on ${the} get no light, because the walk takes none. A foot goes wrong on a dark step: choose a side for lights.`
		);
		return;
	}
	const length = steps.end - steps.start;
	if (length <= 0) {
		d.say(
			'placement.no-room',
			'look',
			target,
			'path.level',
			`The steps on ${the} lie beyond its end, so they get no light. Check where they begin.`
		);
		return;
	}
	const flight = { treads: steps.treads, going: length / steps.treads, width: strip.width };
	const model = d.pick({ body: 'step', strength: 'soft' });
	const lead: Side =
		strip.lights === 'left' || strip.lights === 'right' ? strip.lights : leadSide(course, middleOf(d.site));
	const { lamps, least } = stepLamps(flight, model, 1, strip.lights !== 'left' && strip.lights !== 'right');
	const causes = new Set<Cause>();
	let placed = 0;
	for (const lamp of [...lamps].reverse()) {
		const at = steps.start + (lamp.tread + 0.5) * flight.going;
		const wanted = lamp.side === 1 ? lead : other(lead);
		const spot = spotFor(d, course, at, wanted, model, causes);
		if (!spot) continue;
		const centre = course.centre(at);
		d.place({
			target,
			role: 'step',
			technique: 'step',
			at: spot.at,
			model,
			aim: { x: centre.x, y: centre.y, z: 0 },
			reasons: [
				...stepReasons(d, flight, lamps.length, least),
				...(spot.first ? [movedReason(d, spot.first, strip.width, 'at the other side of the flight')] : [])
			],
			order: { strip: order, at }
		});
		placed++;
	}
	const want = rules['path.level'].figures.tread;
	if (placed < lamps.length)
		d.say(
			'placement.no-room',
			'look',
			target,
			'path.level',
			`${placed === 0 ? 'None' : `Only ${placed}`} of ${lamps.length} step lights on ${the} ${placed === 1 ? 'has' : 'have'} room beside the flight: ${either([...causes].map(d.because))}. Think of lights built into the risers.`
		);
	else if (least < want - 0.05)
		d.say(
			'placement.step-level',
			'look',
			target,
			'path.level',
			`The steps on ${the} are ${d.len(strip.width)} wide: lights at their sides leave ${least.toFixed(0)} lx in the middle of a tread, ${want} lx is wanted. Think of lights built into the risers.`
		);
}

/** Beside the tread on the wanted side, else on the other. */
function spotFor(
	d: Drafting,
	course: Course,
	at: number,
	side: Side,
	model: FixtureModel,
	causes: Set<Cause>
): { at: Point; first: Cause | null } | null {
	let first: Cause | null = null;
	const out = course.strip.width / 2 + clear + model.headDiameter / 2;
	for (const s of [side, other(side)]) {
		const heading = course.heading(at);
		const across = s === 'left' ? { x: heading.y, y: -heading.x } : { x: -heading.y, y: heading.x };
		const p = moved(course.centre(at), across, out);
		const cause = d.ground.blocked(p, model.headDiameter / 2, 'mounted');
		if (!cause) return { at: p, first };
		first = cause;
		causes.add(cause);
	}
	return null;
}

function stepReasons(d: Drafting, flight: Flight, count: number, least: number): Reason[] {
	const want = rules['path.level'].figures.tread;
	return [
		reason(
			'path.level',
			Math.round(least * 10) / 10,
			'lx',
			`${count === 1 ? 'One light' : `${count} lights`} beside ${flight.treads === 1 ? 'the tread' : `${flight.treads} treads`} ${d.len(flight.width)} wide: at least ${least.toFixed(0)} lx in the middle of each, ${want} lx (1 fc) wanted.`
		),
		reason('glare.shield', null, '', 'It shines across and down on the treads, not into the eyes of someone climbing.')
	];
}
