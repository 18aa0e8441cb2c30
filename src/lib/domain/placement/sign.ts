/** Light on a sign or a plaque, from the ground in front of it: rule number.sign. */
import { distance, moved, nearestOnSegment, rightOf, rotated, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Working } from '../shared/working';
import type { Site, Wall } from '../site';
import type { Cause } from './conflicts';
import type { Drafting } from './drafting';
import { lampOnWall, rowOf } from './evenness';
import { input, moved as movedReason, reason } from './reasons';
import { clearestOf, watcherWords, type Sight, type Watcher } from './sight';
import type { Fixture, Reason } from './types';
import { called, capital, either } from './wording';

type Sign = Site['houseNumber'][number];
const figures = rules['number.sign'].figures;
/** Degrees round the sign, and shares of the distance, tried when the place straight in front is taken: our assumptions. */
const turns = [0, 15, 30, 45];
const shares = [1, 0.8, 1.25];

export interface SignPlan {
	/** Lamps, and how much of the sign's width each takes in. */
	count: 1 | 2;
	part: number;
	/** Metres off the face, and the height of the sign's middle. */
	off: number;
	middle: number;
	model: FixtureModel;
	/** Lux at the middle of a part. */
	lux: number;
	wanted: number;
}

/** How far off a lamp of height `lampHeight` and `beamAngle` degrees stands whose beam takes in a width at its middle's height. */
export function signOff(middle: number, lampHeight: number, width: number, beamAngle: number): number {
	const rise = middle - lampHeight;
	const thrown = width / 2 / Math.tan((beamAngle * Math.PI) / 360);
	return Math.max(figures.stand * rise, Math.sqrt(Math.max(0, thrown * thrown - rise * rise)));
}

/** The lamps for a sign so wide. `models`: of one beam and height, at least one. */
export function signPlan(width: number, middle: number, models: readonly FixtureModel[], town: boolean): SignPlan {
	const count = width >= figures.two ? 2 : 1;
	const part = width / count;
	const wanted = town ? figures.bright : figures.dark;
	const rising = [...models].sort((a, b) => a.lamp.lumens - b.lamp.lumens);
	const plans = rising.map((model): SignPlan => {
		const off = signOff(middle, model.lampHeight, part, model.lamp.beamAngle);
		const own = luxAt(model, off, middle, 0);
		return { count, part, off, middle, model, wanted, lux: count === 1 ? own : own + luxAt(model, off, middle, part) };
	});
	return plans.find(({ lux }) => lux >= wanted) ?? plans.at(-1)!;
}
/** Lux on the face at the middle of a part, from a lamp that stands `aside` metres along and is aimed straight in. */
const luxAt = ({ lamp, lampHeight }: FixtureModel, off: number, middle: number, aside: number): number =>
	lampOnWall(rowOf(lamp, { setback: off, lampHeight, aimHeight: middle, middle }))(aside);

/** `wall`: the one it hangs on, null for a sign on posts, which is taken to face the street. */
export function placeSign(d: Drafting, sign: Sign, wall: Wall | null, sight: Sight): void {
	const target: Fixture['target'] = { kind: 'number', id: sign.id };
	const middle = wall ? rules['number.light'].figures.number : figures.middle;
	const plan = signPlan(sign.width, middle, d.pick.all('wash'), d.site.surroundings === 'town');
	const outward = wall?.outward ?? { x: 0, y: 1 };
	const along = rightOf(outward);
	const face = wall ? nearestOnSegment(sign.at, wall.from, wall.to).point : sign.at;
	const causes = new Set<Cause>();
	const seenBy = new Set<Watcher>();
	const radius = plan.model.headDiameter / 2;
	const { lampHeight } = plan.model;
	const stood: Point[] = [];
	// The one towards the middle of the front first, as in a yard so in its mirror image.
	const first = d.handed(face) * (along.x >= 0 ? 1 : -1);
	for (const side of plan.count === 1 ? [0] : [first, -first]) {
		const point = moved(face, along, (side * plan.part) / 2);
		const straight = moved(point, outward, plan.off);
		let inTheWay: Cause | null = null;
		// Outwards first for one of a pair; the two stay well apart.
		const places = placesBefore(point, outward, plan.off, side || first).filter((p) => {
			const near = stood.some((q) => distance(p, q) < plan.part / 2);
			const cause = near ? 'fixture' : d.ground.blocked(p, radius, 'ground');
			if (cause) causes.add(cause);
			if (distance(p, straight) < 1e-9) inTheWay = cause;
			return cause === null;
		});
		const best = clearestOf(sight, places, lampHeight, { ...point, z: middle });
		if (!best) continue;
		if (best.watcher) seenBy.add(best.watcher);
		d.place({
			target,
			role: 'sign',
			technique: 'wash',
			at: best.at,
			model: plan.model,
			aim: { ...point, z: middle },
			reasons: signReasons(d, sign, wall, plan, {
				off: distance(best.at, point),
				aside: distance(best.at, straight),
				first: inTheWay
			})
		});
		stood.push(best.at);
	}
	signFindings(d, sign, target, { plan, placed: stood.length, causes, seenBy });
}
/** Places before a part of the sign, straight in front first, then turned aside, nearer and further. */
const placesBefore = (point: Point, outward: Point, off: number, hand: number): Point[] =>
	shares.flatMap((share) =>
		turns.flatMap((turn) =>
			(turn === 0 ? [0] : [turn * hand, -turn * hand]).map((angle) =>
				moved(point, rotated(outward, angle), off * share)
			)
		)
	);

function signReasons(
	d: Drafting,
	sign: Sign,
	wall: Wall | null,
	plan: SignPlan,
	{ off, aside, first }: { off: number; aside: number; first: Cause | null }
): Reason[] {
	const { model, middle, lux, wanted, count } = plan;
	const one = count === 1 ? `One light takes in ${d.len(sign.width)}` : `One of two lights for ${d.len(sign.width)}`;
	const stands = wall ? '' : ' The sign is taken to face the street.';
	return [
		reason(
			'number.sign',
			off,
			'm',
			`${one} of width: ${d.len(off)} in front, aimed at the middle, ${d.len(middle)} up; about ${lux.toFixed(0)} lx there, ${wanted} lx wanted.${stands}`,
			aside < 1e-6 ? { working: offWorking(plan) } : {}
		),
		reason(
			'glare.shield',
			null,
			'',
			`A ${model.lamp.beamAngle}° beam, up and away from whoever reads it; a cowl hides the lamp.`
		),
		...(aside > 1e-6 ? [notStraight(d, first, aside)] : [])
	];
}
/** Something stood there, or from there its beam came nearer to somebody's eyes. */
const notStraight = (d: Drafting, first: Cause | null, aside: number): Reason =>
	first
		? movedReason(d, first, aside, 'straight in front')
		: reason(
				'glare.shield',
				aside,
				'm',
				`Not straight in front, ${d.len(aside)} from here: the beam would come nearer to the eyes of someone passing.`,
				{ notHere: true }
			);
/** Distance off, shown: by the height, or for a wide sign by the width that the beam has to take in. */
function offWorking({ off, middle, part, model }: SignPlan): Working {
	const rise = middle - model.lampHeight;
	const byHeight = Math.abs(off - figures.stand * rise) < 1e-9;
	const common = { label: 'In front of the sign', value: off, unit: 'm', decimals: 2, rule: rules['number.sign'].says };
	const height = [
		input('z', 'middle of the sign', middle, 'm'),
		input('h', 'height of the lamp', model.lampHeight, 'm')
	];
	return byHeight
		? {
				...common,
				expression: 's × (z − h)',
				inputs: [input('s', 'three quarters', figures.stand, ''), ...height],
				source: rules['number.sign'].source
			}
		: {
				...common,
				expression: '((w ÷ 2 ÷ t) ^ 2 − (z − h) ^ 2) ^ 0.5',
				inputs: [
					input('w', 'width it takes in', part, 'm'),
					input('t', 'tangent of half the beam angle', Math.tan((model.lamp.beamAngle * Math.PI) / 360), ''),
					...height
				],
				source: 'physics'
			};
}

function signFindings(
	d: Drafting,
	sign: Sign,
	target: Fixture['target'],
	{ plan, placed, causes, seenBy }: { plan: SignPlan; placed: number; causes: Set<Cause>; seenBy: Set<Watcher> }
): void {
	const the = capital(called(sign.name, 'sign'));
	if (placed < plan.count) {
		const gets = placed === 0 ? 'no light' : 'one light instead of two';
		const message = `${the} gets ${gets}: in front of it ${either([...causes].map(d.because))}. A porch light that reaches it serves as well: tell it under existing lights.`;
		d.say('placement.no-room', 'look', target, 'number.sign', message);
	} else if (plan.lux < plan.wanted - 0.5) {
		const message = `${the} gets about ${plan.lux.toFixed(0)} lx, ${plan.wanted} lx is wanted: no lamp of the list gives more. Look on the first night whether it reads from the street.`;
		d.say('placement.sign-level', 'note', target, 'number.sign', message);
	}
	if (seenBy.size > 0) {
		const who = [...seenBy].map((watcher) => watcherWords[watcher]).join(' or ');
		const message = `The light on ${called(sign.name, 'sign')} may meet the eyes of someone ${who} where the sign does not hide it. Turn its cowl that way on the first night.`;
		d.say('placement.sign-glare', 'note', target, 'glare.shield', message);
	}
}
