/** What the figures of the rules are, in words: for the page that lists them, and for what the plan says of your own. */
import type { Rule, RuleId } from './rules';
import type { rules } from './rules';
import type { FigureUnit, SettableKey } from './settings';
import { formatLength, type UnitSystem } from './units';

export type FixedUnit =
	| FigureUnit
	| 'lx'
	| 'cd'
	| 'K'
	| 'V'
	| 'A'
	| '°C'
	| 'years'
	| 'days'
	| 'minutes'
	| 'times'
	| 'power'
	| 'place'
	| 'money';
type Words = readonly [label: string, unit: FixedUnit];
type AllWords = {
	[R in RuleId as keyof (typeof rules)[R]['figures'] extends never ? never : R]: {
		[F in keyof (typeof rules)[R]['figures']]: Words;
	};
};

/** Every figure of every rule that has any. */
export const figureWords: AllWords = {
	'tree.offset': {
		nearSpread: ['A slim tree is up to this wide', 'm'],
		nearOffset: ['Bark to light, slim tree', 'm'],
		farSpread: ['A wide tree is from this wide', 'm'],
		farOffset: ['Bark to light, wide tree', 'm'],
		farLow: ['Usual for a wide tree, from', 'm'],
		farHigh: ['Usual for a wide tree, to', 'm']
	},
	'tree.count': {
		one: ['One light up to a spread of', 'm'],
		two: ['Two lights up to a spread of', 'm'],
		perFurther: ['One more for each further', 'm'],
		columnarTall: ['A columnar tree takes two from a height of', 'm']
	},
	'tree.aim': {
		maxLean: ['Most a beam leans from upright', 'deg'],
		clearOfSight: ['Beam clear of a line of sight', 'deg'],
		clearOfWindow: ['Beam clear of a window', 'deg']
	},
	'tree.roots': {
		perDiameter: ['Root zone, in trunk diameters', 'times'],
		keepRoot: ['Go round roots thicker than', 'm']
	},
	'tree.skirt': { base: ['Branches lower than', 'm'], clear: ['Light outside the branches', 'm'] },
	'tree.group': { within: ['One light serves trees that want one within', 'm'] },
	'tree.growth': { years: ['Think ahead', 'years'] },
	'wall.setback': {
		low: ['A wash stands off, of the lit height, from', 'share'],
		high: ['A wash stands off, of the lit height, to', 'share'],
		graze: ['Grazing light, at most', 'm'],
		grazeTaken: ['Grazing light stands off', 'm'],
		mostLit: ['Highest that is lit', 'm'],
		lowest: ['A lower wall is not washed', 'm']
	},
	'wall.spacing': { ratio: ['Brightest to darkest, at most', 'ratio'] },
	'wall.openings': { clear: ['Beside a door or window', 'm'] },
	'wall.gable': { up: ['Aimed, of the way from eaves to point', 'share'], least: ['A lower gable is not lit', 'm'] },
	'wall.level': {
		darkLow: ['Dark surroundings, from', 'lx'],
		darkHighLight: ['Dark surroundings, light finish, to', 'lx'],
		darkHighMedium: ['Dark surroundings, medium finish, to', 'lx'],
		brightLow: ['Bright surroundings, from', 'lx'],
		brightHighLight: ['Bright surroundings, light finish, to', 'lx'],
		brightHighMedium: ['Bright surroundings, medium finish, to', 'lx']
	},
	'path.spacing': { spacing: ['Path lights along one edge, apart', 'm'] },
	'path.first': { bend: ['A bend from', 'deg'] },
	'path.setback': {
		low: ['Lamp from the edge, at least', 'm'],
		high: ['Lamp from the edge, at most', 'm']
	},
	'path.level': {
		walk: ['On a walk, on average', 'lx'],
		ratio: ['Average to least, at most', 'ratio'],
		tread: ['On each tread', 'lx']
	},
	'path.head': { town: ['On a walk in a town, on average', 'lx'] },
	'path.meet': {
		rural: ['Midway, in the country', 'lx'],
		suburb: ['Midway, in a suburb', 'lx'],
		town: ['Midway, in a town', 'lx'],
		across: ['Across the walk, of the spacing, at least', 'share']
	},
	'bed.spacing': {
		soft: ['Edge of a pool in a bed lit softly', 'lx'],
		bright: ['Edge of a pool in a bed lit brightly', 'lx']
	},
	'bed.inset': {
		back: ['Light inside the edge that is looked at', 'm'],
		clear: ['Nothing of it nearer to an edge than', 'm'],
		alongside: ['A walk looks at a bed within', 'm']
	},
	'seat.light': { two: ['Two lights from so far across', 'm'] },
	'number.light': {
		lamp: ['Lamp above the ground', 'm'],
		number: ['Number above the ground', 'm'],
		washed: ['A wall light serves within', 'm']
	},
	'number.sign': {
		two: ['Two lights from a width of', 'm'],
		stand: ['Stands off, of the height of its middle over the lamp', 'share'],
		middle: ['Middle of a sign on posts', 'm'],
		dark: ['On its middle', 'lx'],
		bright: ['On its middle, in a town', 'lx']
	},
	'drive.setback': { clear: ['Nothing of the lamp nearer than', 'm'], stake: ['Stake from the edge', 'm'] },
	'drive.mouth': { flare: ['Corner a turning car cuts, radius', 'm'] },
	'drive.spacing': {
		spacing: ['Drive lights along one edge, apart', 'm'],
		long: ['Apart on a long drive', 'm'],
		longFrom: ['A drive is long from', 'm']
	},
	'drive.sight': { head: ['Heads below', 'm'], eye: ["A driver's eye", 'm'] },
	'glare.level': {
		cowl: ['The bare lamp is hidden from, off its beam', 'deg'],
		candela: ['Glare from', 'cd'],
		within: ['Glare within', 'm']
	},
	'light.maintained': { lumens: ['Left of new, lamps', 'share'], dirt: ['Left of that, dirt', 'share'] },
	'light.existing': { edge: ['At the edge of its reach', 'lx'] },
	'spill.boundary': {
		ruralLate: ['Late, in the country', 'lx'],
		suburbLate: ['Late, in a suburb', 'lx'],
		townLate: ['Late, in a town', 'lx'],
		ruralEarly: ['In the evening, in the country', 'lx'],
		suburbEarly: ['In the evening, in a suburb', 'lx'],
		townEarly: ['In the evening, in a town', 'lx']
	},
	'place.clear': {
		apart: ['Between two lights', 'm'],
		doorFront: ['Clear before a door', 'm'],
		garageFront: ['Clear before a garage door', 'm'],
		receptacle: ['Clear of the receptacle', 'm'],
		eaves: ['Eaves taken to reach out', 'm'],
		flare: ['Foot of a trunk, of its thickness', 'share']
	},
	'warm.colour': { most: ['At most', 'K'], preferred: ['Preferred', 'K'] },
	'water.clear': { clear: ["From the water's edge", 'm'] },
	'supply.height': { bottom: ['Bottom above the ground', 'm'] },
	'supply.receptacle': { cord: ['Cord taken', 'm'], cordMost: ['Longest cord', 'm'] },
	'supply.load': { fraction: ['Of the rated VA', 'share'], powerFactor: ['Power factor of LED lamps', 'share'] },
	'supply.secondary': { amps: ['On one secondary', 'A'] },
	'supply.regulation': { low: ['Sag, from', 'share'], high: ['Sag, to', 'share'], taken: ['Sag taken', 'share'] },
	'supply.inrush': { times: ['Surge of a filament', 'times'], share: ['Said from this part of the load', 'share'] },
	'cable.volts': { alike: ['Lamps of one kind, alike within', 'V'] },
	'cable.drop': { lighting: ['For lighting', 'share'], overall: ['Overall', 'share'] },
	'cable.temperature': {
		nominal: ['Nominal', '°C'],
		hot: ['Hot', '°C'],
		cold: ['Cold', '°C'],
		table: ['Of the table', '°C']
	},
	'cable.corners': { length: ['Lengths, either way', 'share'], mains: ['Mains, either way', 'share'] },
	'cable.fuse': {
		awg18: ['18 AWG', 'A'],
		awg16: ['16 AWG', 'A'],
		awg14: ['14 AWG', 'A'],
		awg12: ['12 AWG', 'A'],
		awg10: ['10 AWG', 'A']
	},
	'cable.depth': { lawn: ['In lawn and beds', 'm'], drive: ["Under a dwelling's drive", 'm'] },
	'ground.dig': {
		lawnEdge: ['Along the edge of a bed against lawn', 'ground'],
		edge: ['Along a wall or the edge of paving', 'ground'],
		bed: ['Inside a bed', 'ground'],
		roots: ['Inside a root zone', 'ground'],
		water: ['Near water, on top of the rest', 'ground']
	},
	'ground.cross': {
		sleeve: ['A sleeve, as much as open ground of', 'm'],
		joint: ['An expansion joint, as much as', 'm'],
		bore: ['A bore you have told, as much as', 'm'],
		undeclared: ['A bore not told, as much as', 'm'],
		bored: ['Bored under paving', 'ground']
	},
	'cable.slack': { low: ['From', 'm'], taken: ['Taken', 'm'], high: ['To', 'm'] },
	'lamp.halogen': {
		light: ['Light', 'power'],
		power: ['Power', 'power'],
		current: ['Current', 'power'],
		lifeLow: ['Life, from', 'power'],
		lifeHigh: ['Life, to', 'power']
	},
	'sensor.shade': {
		fromEaves: ['Below the eaves', 'm'],
		early: ['Early or late, let pass', 'minutes'],
		leafOn: ['Through a crown in leaf', 'share'],
		leafOff: ['Through a bare crown', 'share']
	},
	'sensor.light': { clear: ['Clear of lamps', 'm'] },
	'sensor.level': {
		on: ['Switches on at', 'lx'],
		offLow: ['Off at, from', 'times'],
		offHigh: ['Off at, to', 'times'],
		delay: ['Delay', 'minutes']
	},
	'sensor.dusk': { sunset: ['At sunset', 'lx'], civil: ['Sun 6° below', 'lx'], nautical: ['Sun 12° below', 'lx'] },
	'budget.order': {
		treeFurther: ['Second and further lights of a tree', 'place'],
		wall: ['Walls, from their ends in', 'place'],
		tree: ['Trees', 'place'],
		bed: ['Beds', 'place'],
		seating: ['Seats', 'place'],
		driveThin: ['Every other light along a drive', 'place'],
		walkThin: ['Every other light of a straight walk', 'place'],
		drive: ['The rest of a drive', 'place'],
		walk: ['The rest of a walk', 'place'],
		wallLeast: ['Of a row on a wall, before the rest goes at once, at least', 'share']
	},
	'shop.alike': {
		leastLight: ['Light, of the plan’s lumens, from', 'times'],
		mostLight: ['Light, of the plan’s lumens, to', 'times'],
		leastBeam: ['Beam, of the plan’s angle, from', 'times'],
		mostBeam: ['Beam, of the plan’s angle, to', 'times']
	},
	'budget.count': { share: ['For each light, its share of the rest', 'money'] },
	'dig.notice': { days: ['Working days before', 'days'], tolerance: ['By hand either side of a mark', 'm'] }
};

/** Why the figures of a rule are not yours to change; of one with figures that are, why not the others. */
export const fixedWhy: Partial<Record<RuleId, string>> = {
	'tree.offset': 'The spreads are where the two offsets hold; change the offsets.',
	'tree.count': 'Add or take away a light on the layout page: that is surer than another count for every tree.',
	'tree.aim': 'Clear of eyes is not a matter of taste: glare blinds whoever walks or drives there.',
	'tree.roots': 'A published figure that keeps the tree alive.',
	'tree.skirt': 'Nearer, a lamp scorches twigs.',
	'tree.growth': 'It changes nothing on the plan.',
	'wall.setback': 'The lamps of the list reach that high; a lower wall has no room for a wash.',
	'wall.openings': 'A lamp nearer shines into a room or lies underfoot.',
	'wall.gable': 'Aimed lower, the point stays dark; higher, half the light goes past it into the sky.',
	'wall.level': 'Published levels. How bright a wall is, you say where the house is asked about.',
	'path.first': 'The survey of your walks counts bends by it.',
	'path.level': 'Published levels: by less, a foot misses a step.',
	'path.head': 'Choose another lamp on the layout page.',
	'path.meet': 'It only says where a row takes one light more. Set the spacing for more or fewer.',
	'bed.spacing': 'Whether a bed is lit softly or brightly, you say where it is asked about.',
	'bed.inset': 'Edgers and mowers stray that far. Move a light on the layout page where your plants want it.',
	'seat.light': 'Add or take away a light on the layout page.',
	'number.light': 'Where the number hangs you say where it is asked about.',
	'number.sign': 'It follows from the beam of the lamps. Move a light on the layout page.',
	'drive.setback': 'Tyres and snow shovels stray that far whatever anybody likes.',
	'drive.spacing': 'Where a drive begins to be long only chooses between the two spacings.',
	'drive.sight': 'Glare at a driver is a danger to others.',
	'glare.level': 'It only decides what the plan warns you of. Look for yourself on the first night.',
	'light.maintained': 'It belongs to lamps and weather: clean the glass and more is left.',
	'light.existing': 'Tell its reach where lights are asked about.',
	'spill.boundary': 'Published levels, and what is at stake is your neighbour’s sleep.',
	'place.clear': 'A spade needs that room between two lamps; the foot of a trunk is the tree’s own.',
	'warm.colour': 'You choose the colour where lamps are asked about.',
	'water.clear': 'A safety figure of the code. Nobody gets to set it lower.',
	'supply.height': 'A safety figure: it keeps water out.',
	'supply.receptacle': 'A safety figure: an extension cord is where water gets in.',
	'supply.load': 'A standard figure: the transformer overheats beyond it.',
	'supply.secondary': 'A safety figure of the standard.',
	'supply.regulation': 'It belongs to the transformer. Measure yours on the first night.',
	'supply.inrush': 'It belongs to the lamps.',
	'cable.volts': 'What the eye sees as alike is no setting.',
	'cable.drop': 'Information only: nothing on the plan hangs on it.',
	'cable.temperature': 'Set by the ground and by the table.',
	'cable.corners': 'A plan checked against less would hold on good days only.',
	'cable.fuse': 'A safety figure of the code.',
	'cable.depth': 'A safety figure: spades reach that far. Yours may have to lie deeper where you live.',
	'cable.slack': 'Less leaves nothing to move a light with.',
	'lamp.halogen': 'Measured of filaments.',
	'sensor.shade': 'Set by how a sensor sees the sky.',
	'sensor.light': 'Nearer, the sensor sees its own lamps.',
	'sensor.level': 'Set by the sensor’s standard; its marking comes first.',
	'sensor.dusk': 'Set by the sun.',
	'budget.order': 'How softly or brightly each thing is lit, you say where it is asked about: that changes the order.',
	'budget.count': 'An allowance only. The shopping list has the whole sum, at your prices.',
	'shop.alike': 'What one eye takes for another light is no setting.',
	'dig.notice': 'Set by law. Yours may ask for more.'
};

const plain = (value: number): string => String(Math.round(value * 1000) / 1000);
const ordinal = (place: number): string => `${place}${['th', 'st', 'nd', 'rd'][place] ?? 'th'}`;
/** A figure as read back to a person. */
export function formatFigure(value: number, unit: FixedUnit, units: UnitSystem): string {
	switch (unit) {
		case 'm':
			return formatLength(value, units);
		case 'deg':
			return `${plain(value)}°`;
		case 'ratio':
			return `${plain(value)} to 1`;
		case 'share':
			return `${String(Math.round(value * 1000) / 10)} %`;
		case 'times':
			return `${plain(value)} times`;
		case 'minutes':
			return value === 1 ? '1 minute' : `${plain(value)} minutes`;
		case 'ground':
			return `${plain(value)} times open ground`;
		case 'power':
			return `volts to the power ${plain(value).replace('-', '−')}`;
		case 'place':
			return `goes ${ordinal(value)}`;
		case 'money':
			return `${plain(value)} in the currency of the prices`;
		default:
			return `${plain(value).replace('-', '−')} ${unit}`;
	}
}
/** Words and value of every figure of a rule, in the order of the rule. */
export const figuresIn = (rule: Rule): { figure: string; value: number; label: string; unit: FixedUnit }[] =>
	Object.entries(rule.figures).map(([figure, value]) => {
		const words = (figureWords as Readonly<Record<string, Readonly<Record<string, Words>>>>)[rule.id];
		const [label, unit] = words![figure]!;
		return { figure, value, label, unit };
	});
/** What a figure that may be set is called, inside a sentence. */
export function labelOf(key: SettableKey): string {
	const [rule = '', figure = ''] = key.split('/');
	const words = (figureWords as Readonly<Record<string, Readonly<Record<string, Words>>>>)[rule];
	const [label] = words![figure]!;
	return label.charAt(0).toLowerCase() + label.slice(1);
}
