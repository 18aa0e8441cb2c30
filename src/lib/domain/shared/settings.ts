/**
 * Figures of the rules that a person may change, with the range in which they may lie. Inside its range no figure can
 * break what always holds: nothing in paving, by water, in a door's swing, within 150 mm of a drive. Pure.
 */
import { rules, type RuleId } from './rules';

/**
 * What a rule's figure is measured in; metres are read and written in the person's units. `ground`: times the work of as
 * much open ground.
 */
export type FigureUnit = 'm' | 'deg' | 'ratio' | 'share' | 'ground';

export interface Setting {
	unit: FigureUnit;
	least: number;
	most: number;
	/** What bounds the range, one sentence. */
	range: string;
	/** Where the range comes from. */
	known: 'common practice' | 'memory';
}
type FigureOf<R extends RuleId> = keyof (typeof rules)[R]['figures'] & string;
/** `path.spacing/spacing`: a figure of a rule, as the yard names it. */
export type SettingKey = { [R in RuleId]: `${R}/${FigureOf<R>}` }[RuleId];

const setting = (unit: FigureUnit, least: number, most: number, known: Setting['known'], range: string): Setting => ({
	unit,
	least,
	most,
	range,
	known
});

export const settings = {
	'tree.offset/nearOffset': setting(
		'm',
		0.1,
		0.5,
		'memory',
		'Nearer, the head stands on the root flare; further, it misses a slim trunk.'
	),
	'tree.offset/farOffset': setting(
		'm',
		0.6,
		1.8,
		'memory',
		'Nearer, a wide crown shows its trunk only; further, the beam passes the trunk.'
	),
	'tree.aim/maxLean': setting(
		'deg',
		15,
		45,
		'memory',
		'Below that hardly a crown is reached; laid further over, a beam leaves the tree and meets eyes.'
	),
	'tree.group/within': setting(
		'm',
		0.3,
		2,
		'memory',
		'Nearer, two lamps touch; further, one lamp is not at both trees.'
	),
	'wall.setback/low': setting('share', 0.15, 0.3, 'memory', 'Nearer than about a seventh, the light is a stripe.'),
	'wall.setback/high': setting(
		'share',
		0.3,
		0.5,
		'memory',
		'Further than half the height, little of it meets the wall.'
	),
	'wall.setback/grazeTaken': setting(
		'm',
		0.2,
		0.3,
		'common practice',
		'Grazing light stands within 300 mm (12 in); much nearer, the lamp itself is in the way.'
	),
	'wall.spacing/ratio': setting('ratio', 2, 6, 'memory', 'Two to one looks even; six to one is plain scallops.'),
	'path.spacing/spacing': setting('m', 2, 6, 'memory', 'Closer, a walk is a runway; wider, the pools no longer meet.'),
	'path.setback/low': setting(
		'm',
		0.15,
		0.25,
		'common practice',
		'Nearer than 150 mm (6 in), shoes and mowers reach it.'
	),
	'path.setback/high': setting('m', 0.25, 0.6, 'memory', 'Further out, most of the light falls on the bed.'),
	'drive.setback/stake': setting(
		'm',
		0.25,
		0.9,
		'memory',
		'Nearer, the head comes within 150 mm (6 in) of the wheels; further, the light no longer marks the edge.'
	),
	'drive.mouth/flare': setting(
		'm',
		0.5,
		3,
		'memory',
		'A small car cuts the corner by about 0.5 m (20 in), a van or a trailer by 2 to 3 m (7 to 10 ft).'
	),
	'drive.spacing/spacing': setting('m', 2, 6, 'memory', 'Closer, a drive is a runway; wider, it loses its line.'),
	'drive.spacing/long': setting('m', 4, 12, 'memory', 'On a long drive the eye joins lights that stand further apart.'),
	'place.clear/doorFront': setting('m', 0.9, 2.5, 'memory', 'A door swings about 0.9 m (3 ft).'),
	'place.clear/garageFront': setting('m', 3, 8, 'memory', 'From a very small car to a long van.'),
	'place.clear/receptacle': setting('m', 0.3, 1, 'memory', 'A hand with a plug needs 300 mm (12 in).'),
	'place.clear/eaves': setting('m', 0.3, 1.5, 'memory', 'From narrow eaves to a deep overhang.'),
	'ground.dig/lawnEdge': setting(
		'ground',
		0.3,
		1,
		'memory',
		'At one, the edge is no easier than the lawn; a slit with a spade takes at least a third of the time of a trench.'
	),
	'ground.dig/edge': setting('ground', 0.5, 1, 'memory', 'At one, the edge is no easier than the lawn.'),
	'ground.dig/bed': setting(
		'ground',
		0.5,
		4,
		'memory',
		'From loose bare soil to a bed so full that each plant is lifted.'
	),
	'ground.dig/roots': setting(
		'ground',
		1,
		6,
		'memory',
		'At one, roots are not gone round at all; six times is work with a trowel.'
	),
	'ground.dig/water': setting('ground', 1, 10, 'memory', 'Less would lead cable past water for the sake of a metre.'),
	'ground.cross/sleeve': setting(
		'm',
		0.1,
		5,
		'memory',
		'From one with a draw string in it to one that must first be found.'
	),
	'ground.cross/joint': setting('m', 0.5, 10, 'memory', 'The strip comes out and goes back, whatever else.'),
	'ground.cross/bore': setting('m', 1, 30, 'memory', 'From a narrow walk and a hose to an afternoon with a rod.'),
	'ground.cross/undeclared': setting(
		'm',
		1,
		60,
		'memory',
		'From a narrow walk and a hose to never, as long as there is a way round.'
	),
	'ground.cross/bored': setting('ground', 1, 10, 'memory', 'Under paving a metre is never easier than in lawn.')
} as const satisfies Partial<Record<SettingKey, Setting>>;

export type SettableKey = keyof typeof settings;
export const isSettable = (key: string): key is SettableKey => Object.hasOwn(settings, key);

/** The rule and the figure that a key names. */
export const partsOfKey = (key: SettableKey): [rule: RuleId, figure: string] => {
	const [rule = '', figure = ''] = key.split('/');
	return [rule as RuleId, figure];
};
/** The trade's figure. */
export function usual(key: SettableKey): number {
	const [rule, figure] = partsOfKey(key);
	const figures: Readonly<Record<string, number>> = rules[rule].figures;
	return figures[figure]!;
}

export type Figures = { readonly [R in RuleId]: (typeof rules)[R]['figures'] };

export interface FiguresInForce {
	/** Every figure of every rule: the trade's, or the person's own. */
	figures: Figures;
	/** Rules with the keys of their figures that are the person's own. */
	own: ReadonlyMap<RuleId, readonly SettableKey[]>;
	/** Told, but not of this list or beyond its range: not applied. */
	refused: readonly { key: string; value: number }[];
}
const trade = Object.fromEntries(Object.entries(rules).map(([id, { figures }]) => [id, figures])) as Figures;
export const tradeFigures: FiguresInForce = { figures: trade, own: new Map(), refused: [] };

/** Whether a value may stand for a figure. */
export const mayBe = (key: SettableKey, value: number): boolean =>
	value >= settings[key].least && value <= settings[key].most;

/** The figures in force for what a yard says of them. One that equals the trade's is the trade's. */
export function figuresOf(told: Readonly<Record<string, number>> | undefined): FiguresInForce {
	if (!told) return tradeFigures;
	const own = new Map<RuleId, SettableKey[]>();
	const refused: { key: string; value: number }[] = [];
	const figures: Record<string, Record<string, number>> = { ...trade };
	for (const [key, value] of Object.entries(told)) {
		if (!isSettable(key) || !mayBe(key, value)) {
			refused.push({ key, value });
			continue;
		}
		if (value === usual(key)) continue;
		const [rule, figure] = partsOfKey(key);
		own.set(rule, [...(own.get(rule) ?? []), key]);
		figures[rule] = { ...figures[rule], [figure]: value };
	}
	return { figures: figures as Figures, own, refused };
}
