/** Washing and grazing light on walls: rules wall.setback, wall.spacing, wall.openings, wall.level. */
import { between, moved, towards, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Wall } from '../site';
import type { Cause } from './conflicts';
import type { Drafting } from './drafting';
import { lampOnWall, rowExtremes } from './evenness';
import { layOut, piersOf, type Span } from './layout';
import { lampForWall, wallAim, wallBand } from './wall-level';
import { closedSpans, planWall, type WallPlan } from './wall-plan';
import { input, reason } from './reasons';
import type { Fixture, Reason } from './types';
import { called, capital, either } from './wording';

/** Lamps on one wall beyond which the plan asks instead of placing: our assumption. */
const mostOnWall = 60;
/** Metres between the places that are looked at along a wall. */
const grain = 0.25;

/** Walls alike in height and texture share one computation: it is the dearest of the stage. */
export function placeWalls(d: Drafting, walls: readonly Wall[]): void {
	const plans = new Map<string, WallPlan>();
	const planFor = (wall: Wall, model: FixtureModel): WallPlan => {
		const key = `${model.id} ${wall.height} ${wall.texture}`;
		const plan = plans.get(key) ?? planWall(wall, model);
		plans.set(key, plan);
		return plan;
	};
	for (const wall of walls) placeWall(d, wall, planFor);
}

function placeWall(d: Drafting, wall: Wall, planFor: (wall: Wall, model: FixtureModel) => WallPlan): void {
	if (wall.light === 'none' || wall.length <= 0) return;
	const target: Fixture['target'] = { kind: 'wall', id: wall.id };
	const the = called(wall.name, 'wall');
	const { lowest } = rules['wall.setback'].figures;
	if (wall.height < lowest) {
		d.say(
			'placement.wall-low',
			'look',
			target,
			'wall.setback',
			`${capital(the)} is ${d.len(wall.height)} high, too low to wash with light. Path lights in front of it do more.`
		);
		return;
	}
	// Where lamps stand does not depend on their lumens, so any wash lamp serves to lay the row out.
	const washes = d.pick.all('wash');
	const sample = washes[0] ?? d.pick({ body: 'wash', strength: wall.light });
	const plan = planFor(wall, sample);
	const closed = closedSpans(wall);
	const along = towards(wall.from, wall.to);
	const inTheWay = new Set<Cause>();
	const spotAt = (at: number): { p: Point; setback: number } | null => {
		for (const setback of plan.setbacks) {
			const p = moved(moved(wall.from, along, at), wall.outward, setback);
			const cause = d.ground.blocked(p, sample.headDiameter / 2, 'ground');
			if (!cause) return { p, setback };
			inTheWay.add(cause);
		}
		return null;
	};
	const free = (at: number): boolean =>
		at >= 0 &&
		at <= wall.length &&
		!closed.some((span) => at > span.start + 1e-9 && at < span.end - 1e-9) &&
		spotAt(at) !== null;
	const count = Math.max(1, Math.ceil(wall.length / grain - 1e-9));
	const places = Array.from({ length: count }, (_, i) => ((i + 0.5) * wall.length) / count).filter(free);
	const spacing = Math.max(plan.spacing, wall.length / mostOnWall);
	const prefer =
		Math.abs(along.y) > 1e-9
			? along.y > 0
				? 1
				: -1
			: along.x * d.handed(between(wall.from, wall.to, 0.5)) > 0
				? 1
				: -1;
	const piers = piersOf(wall.length, wall.openings);
	const stations = layOut({
		piers,
		length: wall.length,
		spacing,
		end: Math.min(plan.end, spacing / 2),
		prefer,
		free,
		places
	});
	// All places before the first lamp stands: one lamp of the row is not in the way of the next.
	const spots = stations.map((at) => ({ foot: moved(wall.from, along, at), spot: spotAt(at) }));
	const apart = stations.length > 1 ? (stations.at(-1)! - stations[0]!) / (stations.length - 1) : plan.spacing;
	const perLumen = rowExtremes(lampOnWall(plan.row), apart).mean / sample.lamp.lumens;
	const band = wallBand(d.site.surroundings, wall.finish);
	const model = lampForWall(washes.length > 0 ? washes : [sample], perLumen, wallAim(band, wall.light));
	const level: WallLevel = { model, lux: perLumen * model.lamp.lumens, ...band };
	const reasons = new Map(
		plan.setbacks.map((setback) => [setback, wallReasons(d, wall, plan, level, stations, setback)])
	);
	for (const { foot, spot } of spots) {
		if (!spot) continue;
		const aim = { x: foot.x, y: foot.y, z: plan.row.aimHeight };
		d.place({
			target,
			role: plan.technique,
			technique: plan.technique,
			at: spot.p,
			model,
			aim,
			reasons: reasons.get(spot.setback)!
		});
	}
	wallFindings(d, wall, target, { plan, level, spacing, stations, inTheWay: [...inTheWay] });
}

/** Lamp chosen, its lux on the wall at mid-height, and the band wanted. */
interface WallLevel {
	model: FixtureModel;
	lux: number;
	low: number;
	high: number;
}

function wallReasons(
	d: Drafting,
	wall: Wall,
	plan: WallPlan,
	{ model, lux, low: least, high: most }: WallLevel,
	stations: readonly number[],
	setback: number
): Reason[] {
	const { len } = d;
	const { low, high, graze } = rules['wall.setback'].figures;
	const { ratio } = rules['wall.spacing'].figures;
	const share = (low + high) / 2;
	const shared = stations.length > 1 ? (stations.at(-1)! - stations[0]!) / (stations.length - 1) : null;
	const washed = Math.abs(setback - share * plan.litHeight) < 1e-9;
	return [
		reason(
			'wall.setback',
			setback,
			'm',
			plan.technique === 'graze'
				? `${len(setback)} off the wall, within ${len(graze)}: light that grazes up the rough face shows its texture.`
				: `${len(setback)} off the wall, between a quarter and a third of the ${len(plan.litHeight)} that is lit.`,
			washed && plan.technique === 'wash'
				? {
						working: {
							label: 'Distance from the wall',
							value: setback,
							unit: 'm',
							decimals: 2,
							rule: rules['wall.setback'].says,
							expression: '(a + b) ÷ 2 × H',
							inputs: [
								input('a', 'a quarter', low, ''),
								input('b', 'a third', high, ''),
								input('H', 'lit height', plan.litHeight, 'm')
							],
							source: rules['wall.setback'].source
						}
					}
				: {}
		),
		reason(
			'wall.spacing',
			plan.spacing,
			'm',
			`At most ${len(plan.spacing)} apart: wider, the wall at mid-height would be more than ${ratio} times as bright at its brightest as at its darkest.${shared === null ? '' : ` On average they stand ${len(shared)} apart.`}`,
			{
				working: {
					label: 'Brightest to darkest at that spacing',
					value: plan.light.most / plan.light.least,
					unit: '',
					decimals: 2,
					rule: 'Light from each lamp of the row, by the inverse square and cosine laws, added point by point along the wall at the middle of the lit height.',
					expression: 'M ÷ m',
					inputs: [
						input('M', 'brightest point', plan.light.most, 'lx'),
						input('m', 'darkest point', plan.light.least, 'lx')
					],
					source: rules['wall.spacing'].source
				}
			}
		),
		reason(
			'wall.openings',
			null,
			'',
			wall.openings.length > 0
				? 'Clear of doors, and not under a window it would shine into.'
				: 'No door or window on this wall to keep clear of.'
		),
		reason(
			'wall.level',
			lux,
			'lx',
			`${model.lamp.lumens} lm each: about ${lux.toFixed(0)} lx on the wall at mid-height, for a ${wall.light} light within ${least} to ${most} lx.`
		)
	];
}

interface Outcome {
	plan: WallPlan;
	level: WallLevel;
	spacing: number;
	stations: readonly number[];
	inTheWay: Cause[];
}
function wallFindings(
	d: Drafting,
	wall: Wall,
	target: Fixture['target'],
	{ plan, level, spacing, stations, inTheWay }: Outcome
): void {
	const the = called(wall.name, 'wall');
	if (stations.length === 0) {
		const why = [
			...(wall.openings.length > 0 ? ['doors and windows take its length'] : []),
			...inTheWay.map(d.because)
		];
		d.say(
			'placement.no-room',
			'look',
			target,
			'wall.openings',
			`${capital(the)} gets no light: ${either(why)}. Light it from elsewhere, or leave it dark.`
		);
		return;
	}
	if (spacing > plan.spacing + 1e-9)
		d.say(
			'placement.too-many',
			'look',
			target,
			'wall.spacing',
			`${capital(the)} is ${d.len(wall.length)} long and would take more than ${mostOnWall} lights at ${d.len(plan.spacing)} apart. They are spread wider and it will be uneven: light a part of it instead.`
		);
	if (piersOf(wall.length, wall.openings).some((pier) => dark(pier, stations, spacing, plan.end)))
		d.say(
			'placement.wall-gap',
			'note',
			target,
			'wall.spacing',
			`${capital(the)} has a stretch that stays darker than the rest: no lamp may stand before it (${inTheWay.length > 0 ? either(inTheWay.map(d.because)) : 'openings on both sides'}).`
		);
	if (level.lux < level.low || level.lux > level.high)
		d.say(
			'placement.wall-level',
			'note',
			target,
			'wall.level',
			`${capital(the)} comes to about ${level.lux.toFixed(0)} lx at mid-height; ${level.low} to ${level.high} lx is usual here. No lamp in the list comes nearer: look at it on the first night.`
		);
	if (level.model.lamp.kind === 'halogen')
		d.say(
			'placement.hot',
			'look',
			target,
			'wall.combustible',
			`Halogen lamps by ${the} run hot. Keep them as far from siding, mulch and dry leaves as their maker says.`
		);
}

/** Whether a piece of wall wide enough to look at lies further from the lamps than an even row allows, by a quarter. */
function dark(pier: Span, stations: readonly number[], spacing: number, end: number): boolean {
	if (pier.end - pier.start < 4 * rules['wall.openings'].figures.clear) return false;
	const bounds = [pier.start - end, ...stations.filter((at) => at >= pier.start && at <= pier.end), pier.end + end];
	return bounds.some((at, i) => {
		if (i === 0) return false;
		const edge = i === 1 || i === bounds.length - 1;
		return (
			at - bounds[i - 1]! > (edge ? 2 * Math.max(end, rules['wall.openings'].figures.clear) : spacing) * 1.25 + 1e-9
		);
	});
}
