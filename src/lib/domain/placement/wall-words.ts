/** What is said of the lights on a wall: why they stand there, and what could not be kept. */
import type { FixtureModel } from '../shared/catalogue';
import { formatFigure } from '../shared/rule-words';
import { rules } from '../shared/rules';
import type { Wall } from '../site';
import type { Cause } from './conflicts';
import type { Drafting } from './drafting';
import type { Span } from './layout';
import { input, reason } from './reasons';
import { beforeLamps } from './wall-openings';
import { mostOnWall, type Porch, type WallPlan } from './wall-plan';
import type { Fixture, Reason } from './types';
import { called, capital, either } from './wording';

/** Lamp chosen, its lux on the wall at mid-height, and the band wanted. */
export interface WallLevel {
	model: FixtureModel;
	lux: number;
	low: number;
	high: number;
}

export function wallReasons(
	d: Drafting,
	wall: Wall,
	plan: WallPlan,
	{ model, lux, low: least, high: most }: WallLevel,
	stations: readonly number[],
	{ setback, lowered }: { setback: number; lowered: number | null }
): Reason[] {
	const { len } = d;
	const { low, high, graze } = d.figures['wall.setback'];
	const { ratio } = d.figures['wall.spacing'];
	const between = d.own.own.has('wall.setback')
		? `${formatFigure(low, 'share', d.site.units)} and ${formatFigure(high, 'share', d.site.units)}`
		: 'a quarter and a third';
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
				: `${len(setback)} off the wall, between ${between} of the ${len(plan.litHeight)} that is lit${wall.height > plan.litHeight + 1e-9 ? `, of ${len(wall.height)} in all` : ''}.`,
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
								input('a', d.own.own.has('wall.setback') ? 'least share' : 'a quarter', low, ''),
								input('b', d.own.own.has('wall.setback') ? 'most' : 'a third', high, ''),
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
		reason('wall.openings', null, '', openingWords(d, wall, lowered)),
		reason(
			'wall.level',
			lux,
			'lx',
			`${model.lamp.lumens} lm each: about ${lux.toFixed(0)} lx on the wall at mid-height, for a ${wall.light} light within ${least} to ${most} lx.`
		)
	];
}

function openingWords(d: Drafting, wall: Wall, lowered: number | null): string {
	if (lowered !== null)
		return `Under a window of the upper floor: aimed ${d.len(lowered)} up, lower than the others, so that the sill lies at the edge of its beam; the wall higher up gets less.`;
	if (beforeLamps(wall).length > 0) return 'Clear of doors, and not under a window it would shine into.';
	return 'No door or window on this wall to keep clear of.';
}

/** Why no lamp of a row stands at a porch, as the end of a sentence. */
export const porchWords = (d: Drafting, { under }: Porch): string =>
	under === null
		? 'the porch is there, and feet come and go'
		: `the roof of the porch, ${d.len(under)} up, would catch its beam and leave the wall above it dark`;

export interface Outcome {
	plan: WallPlan;
	level: WallLevel;
	spacing: number;
	stations: readonly number[];
	piers: readonly Span[];
	porches: readonly Porch[];
	/** Beside a porch lamps keep further off than its posts ask, for the sake of its roof. */
	caught: boolean;
	/** There is a gable to light, and no lamp near its middle. */
	gableDark: boolean;
	/** Brightest to darkest beside the light that shines up into the gable; null where there is none. */
	gableBright: number | null;
	inTheWay: Cause[];
}
export function wallFindings(
	d: Drafting,
	wall: Wall,
	target: Fixture['target'],
	{ plan, level, spacing, stations, piers, porches, caught, gableDark, gableBright, inTheWay }: Outcome
): void {
	const the = called(wall.name, 'wall');
	const roof = caught ? ['the roof of the porch would catch its beam'] : [];
	if (stations.length === 0) {
		const why = [
			...(beforeLamps(wall).length > 0 ? ['doors and windows take its length'] : []),
			...(porches.length > 0 && !inTheWay.includes('porch') ? [d.because('porch')] : []),
			...roof,
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
	if (piers.some((pier) => dark(pier, stations, spacing, plan.end)))
		d.say(
			'placement.wall-gap',
			'note',
			target,
			'wall.spacing',
			`${capital(the)} has a stretch that stays darker than the rest: no lamp may stand before it (${inTheWay.length + roof.length > 0 ? either([...inTheWay.map(d.because), ...roof]) : 'openings on both sides'}).`
		);
	if (porches.length > 0)
		d.say(
			'placement.porch-dark',
			'note',
			target,
			'wall.porch',
			`${porchDark(d, the, wall, porches)} A light on the porch itself does that.`
		);
	const top = Math.max(wall.height, wall.peak ?? 0);
	if (top > d.figures['wall.setback'].mostLit + 1e-9)
		d.say(
			'placement.wall-tall',
			'note',
			target,
			'wall.setback',
			`${capital(the)} is ${d.len(top)} high. The lamps of the list reach about ${d.len(d.figures['wall.setback'].mostLit)}: above that the light fades.`
		);
	if (gableDark)
		d.say(
			'placement.gable-dark',
			'note',
			target,
			'wall.gable',
			`The gable of ${the} stays darker than the wall below it: no lamp may stand near its middle, or only under a window of the upper floor.`
		);
	const { ratio } = d.figures['wall.spacing'];
	if (gableBright !== null && gableBright > ratio + 0.05)
		d.say(
			'placement.gable-bright',
			'note',
			target,
			'wall.spacing',
			`Beside the light for its gable ${the} is ${gableBright.toFixed(1)} times as bright at its brightest as at its darkest, at mid-height; ${ratio} is wanted. No lamp of the list that fills the gable leaves it more even: look at it on the first night.`
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

function porchDark(d: Drafting, the: string, wall: Wall, porches: readonly Porch[]): string {
	const under = Math.min(...porches.map((porch) => porch.under ?? Infinity));
	if (under === Infinity)
		return `Behind the porch ${the} takes no light from the ground: a lamp on the porch is in the way, and one before it would light the porch.`;
	const above =
		wall.height > under ? ` Above its roof, ${d.len(under)} up, the wall lies in the shadow of the roof.` : '';
	return `Behind the porch ${the} takes no light from the ground: a lamp in the porch is in the way, and one before it would light the underside of its roof.${above}`;
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
