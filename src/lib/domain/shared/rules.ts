/**
 * The rules of the trade as data: an id, what it says, why, where it comes from. The functions that apply a rule live
 * in the stage that uses it and take their figures from here; those that a person may set (`settings.ts`) from the yard's.
 */
import type { SourceId } from './sources';

export interface Rule {
	id: string;
	title: string;
	says: string;
	why: string;
	source: SourceId;
	/** Figures, in metres, degrees, lux, volts, amperes, fractions. */
	figures: Readonly<Record<string, number>>;
}
const rule = <F extends Record<string, number>>(
	id: string,
	title: string,
	says: string,
	why: string,
	source: SourceId,
	figures: F
) => ({
	id,
	title,
	says,
	why,
	source,
	figures
});

export const rules = {
	'tree.offset': rule(
		'tree.offset',
		'Distance from the bark',
		'An uplight stands further from the trunk the wider the canopy: 150 mm (6 in) up to a 3 m (10 ft) spread, 1.05 m (3 ft 5 in) from a 7.5 m (25 ft) spread, in proportion between.',
		'Close in, the light would catch only the trunk of a wide tree; far out, it would miss the trunk of a slim one.',
		'practice',
		{ nearSpread: 3, nearOffset: 0.15, farSpread: 7.5, farOffset: 1.05, farLow: 0.9, farHigh: 1.2 }
	),
	'tree.count': rule(
		'tree.count',
		'How many uplights',
		'One uplight up to about 3.5 m of spread, two to about 7.5 m, three or more beyond, round the trunk, the first on the side it is looked at from. A columnar tree takes one or two close in.',
		'A wide crown lit from one side reads as half a tree.',
		'practice',
		{ one: 3.5, two: 7.5, perFurther: 3.5, columnarTall: 6 }
	),
	'tree.beam': rule(
		'tree.beam',
		'Beam for the crown',
		'The narrowest stock beam that covers the crown at its mid-height.',
		'Light beside the crown goes to the sky.',
		'physics',
		{}
	),
	'tree.aim': rule(
		'tree.aim',
		'Where the beam points',
		'Through the middle of the crown by a clear way up; at most about 35 degrees from upright; more than 40 degrees from the line of sight of someone on the walk or drive or next door, and 30 from a window: outside the beam.',
		'A beam at the trunk alone leaves the crown dark; a beam laid over shines into eyes.',
		'practice',
		{ maxLean: 35, clearOfSight: 40, clearOfWindow: 30 }
	),
	'tree.roots': rule(
		'tree.roots',
		'Root zone',
		'Inside twelve trunk diameters dig by hand and go round roots over 25 mm (1 in).',
		'A cut root is a wound at the base of the tree.',
		'bs5837',
		{ perDiameter: 12, keepRoot: 0.025 }
	),
	'tree.well': rule(
		'tree.well',
		'Flush or staked',
		'In mown lawn a fixture set flush with the ground on gravel; in a bed a spot on a stake.',
		'The mower passes over a flush one; a staked one is easier to aim.',
		'practice',
		{}
	),
	'tree.skirt': rule(
		'tree.skirt',
		'Clothed to the ground',
		'A conical or columnar tree with branches down to about 0.6 m (2 ft) is lit from just outside its branches, 150 mm (6 in) clear of them.',
		'By its trunk a lamp would light a handful of twigs and cook them.',
		'practice',
		{ base: 0.6, clear: 0.15 }
	),
	'tree.group': rule(
		'tree.group',
		'Trees that share a light',
		'Where two trees want a light at nearly the same place, within about 1 m (3 ft), one light between them serves both.',
		'Two lamps side by side light one spot twice.',
		'practice',
		{ within: 1 }
	),
	'tree.growth': rule(
		'tree.growth',
		'Room to grow',
		'Leave slack in the cable and aim for the crown of five years on; look again after pruning.',
		'Trees move; cables do not.',
		'practice',
		{ years: 5 }
	),
	'wall.setback': rule(
		'wall.setback',
		'Distance from the wall',
		'A soft wash stands off a quarter to a third of the lit height; grazing light on rough stone or brick stands within 300 mm (12 in).',
		'Nearer, the light piles up at the foot; grazing shows the texture.',
		'practice',
		{ low: 0.25, high: 1 / 3, graze: 0.3, grazeTaken: 0.25, mostLit: 6, lowest: 1 }
	),
	'wall.spacing': rule(
		'wall.spacing',
		'Spacing along the wall',
		'The widest spacing that keeps brightest to darkest along the wall at mid-height within 3 to 1.',
		'Wider than that, the wall breaks into scallops.',
		'physics',
		{ ratio: 3 }
	),
	'wall.openings': rule(
		'wall.openings',
		'Doors and windows',
		'None in front of a door or a garage door, none under a ground-floor window it would shine into; under a window of the upper floor a wash is aimed so low that the sill lies at the edge of its beam, and grazing light skims past. Piers and corners first.',
		'Nobody wants a lamp in the window or underfoot.',
		'practice',
		{ clear: 0.3 }
	),
	'wall.gable': rule(
		'wall.gable',
		'Gables',
		'Of a row under a gable that rises 0.3 m (1 ft) or more, the lamp under its middle, or the two on either side, shines up into it: off the wall by a quarter to a third of all that is lit, aimed two thirds of the way from the eaves to the point, in the narrowest beam that fills the gable there and leaves the wall below as even as a row does (rule wall.spacing).',
		'A row aimed at the wall below leaves the gable to the dark, and the house without its shape.',
		'practice',
		{ up: 2 / 3, least: 0.3 }
	),
	'wall.porch': rule(
		'wall.porch',
		'Porch roofs',
		'None under or before a porch; beside one with a roof, where the beam passes the underside of the roof on its way up the wall, so far off that half the beam clears its edge.',
		'A roof catches the beam: the underside glares, and the wall above lies in its shadow.',
		'practice',
		{}
	),
	'wall.level': rule(
		'wall.level',
		'How bright a wall',
		'Dark surroundings 5 to 20 lx on a light finish, 5 to 30 on a medium one; bright surroundings 10 to 50 and 10 to 60.',
		'The eye judges a wall against what is round it.',
		'iesLevels',
		{ darkLow: 5, darkHighLight: 20, darkHighMedium: 30, brightLow: 10, brightHighLight: 50, brightHighMedium: 60 }
	),
	'wall.combustible': rule(
		'wall.combustible',
		'Hot lamps',
		'A hot lamp stays as far from siding, mulch and dry leaves as its maker says.',
		'It can set them alight.',
		'memory',
		{}
	),
	'path.spacing': rule(
		'path.spacing',
		'Spacing of path lights',
		'About 3 m (10 ft) apart along one edge and not closer; pools still meet along the centre line on alternating sides.',
		'Closer, a walk looks like a runway.',
		'practice',
		{ spacing: 3 }
	),
	'path.first': rule(
		'path.first',
		'Where a path light comes first',
		'Where people decide or stumble: the entry, each bend over 30 degrees, each junction, each gate, where the walk leaves a patio, head and foot of steps; then evenly between. At a gate just before the reach of its leaf, or just beyond where there is no walk before.',
		'That is where a foot goes wrong.',
		'practice',
		{ bend: 30 }
	),
	'path.setback': rule(
		'path.setback',
		'Back from the walk',
		'The outer edge of the lamp 150 to 300 mm (6 to 12 in) from the edge of the walk.',
		'Out of reach of shoes and mowers.',
		'practice',
		{ low: 0.15, high: 0.3 }
	),
	'path.level': rule(
		'path.level',
		'Light on a walk',
		'A walk 5 lx on average, at most 5 to 1 average to minimum; 11 lx (1 fc) on each tread.',
		'Enough to see the next step by.',
		'iesLevels',
		{ walk: 5, ratio: 5, tread: 11 }
	),
	'path.head': rule(
		'path.head',
		'Which path light',
		'The weakest head of the list whose row, at the spacing it has, gives the walk its average along a straight (rule path.level), worked out by the light model; 10 lx (1 fc) in a town, where street lamps have the eye.',
		'No brighter than needed; beside street lamps a dimmer walk looks dark.',
		'memory',
		{ town: 10 }
	),
	'path.meet': rule(
		'path.meet',
		'Pools that meet',
		'Midway between two path lights of a straight the middle of the walk keeps at least 0.5 lx in the country, 0.75 in a suburb, 1 in a town, by the light model. Where a row from side to side leaves less, it takes one light more, as long as neighbours across the walk stand two thirds of the spacing apart or more. Along one edge the spacing holds: there the plan says what is left midway.',
		'Between pools that do not meet, a foot is in the dark; lights closer along an edge make a runway.',
		'memory',
		{ rural: 0.5, suburb: 0.75, town: 1, across: 2 / 3 }
	),
	'bed.spacing': rule(
		'bed.spacing',
		'Lights in a bed',
		'Low shaded lights stand so far apart that their pools meet where each has fallen to 2 lx (0.2 fc) on bare ground, softly, or to 5 lx (0.5 fc), brightly: with our LED lamps about 3 m (10 ft) and 2.5 m (8 ft), and never half of that. A light beside a walk, a drive or a seat whose pool reaches the bed is counted.',
		'Pools that meet read as one bed; with dark between them it is a row of spots.',
		'memory',
		{ soft: 2, bright: 5 }
	),
	'bed.inset': rule(
		'bed.inset',
		'Inside the edge of a bed',
		'A light stands 450 mm (18 in) inside the edge that is looked at, from a walk or drive within 1 m (3 ft) or from the street; in a narrow bed less, but nothing of it nearer than 150 mm (6 in) to an edge that is cut or mown.',
		'Low plants in front hide it by day, edger and mower pass it; from the middle of a bed its light would not reach the front.',
		'practice',
		{ back: 0.45, clear: 0.15, alongside: 1 }
	),
	'seat.light': rule(
		'seat.light',
		'Light by a seat',
		'One soft light at the edge of a place to sit, two from 3 m (10 ft) across; behind the chairs, away from the way in.',
		'Enough to find a seat and a glass by, and nothing in the eyes of those who sit.',
		'practice',
		{ two: 3 }
	),
	'number.light': rule(
		'number.light',
		'House number',
		'One small shielded light by the number, on the wall about 1.7 m (5 ft 7 in) up for a number at 1.5 m (4 ft 11 in); a light that washes the wall within 1 m (3 ft) of it serves as well.',
		'A visitor, or an ambulance, has to find it.',
		'memory',
		{ lamp: 1.7, number: 1.5, washed: 1 }
	),
	'number.sign': rule(
		'number.sign',
		'Sign or plaque',
		'One light on the ground in front, two from 1.5 m (5 ft) of width; off by three quarters of the height of its middle, further for a wide one so that the beam takes in its width; aimed at its middle, with the least lamp that gives 20 lx (2 fc) there, 40 (4) in a town.',
		'From in front its light goes to the sign and not to whoever reads it; from too near only the foot of it shows.',
		'memory',
		{ two: 1.5, stand: 0.75, middle: 0.9, dark: 20, bright: 40 }
	),
	'drive.setback': rule(
		'drive.setback',
		'Back from the drive',
		'Nothing of the lamp closer than 150 mm (6 in) to the edge of the drive; a stake about 350 mm (14 in) back serves most.',
		'Tyres and snow shovels stray that far.',
		'practice',
		{ clear: 0.15, stake: 0.35 }
	),
	'drive.mouth': rule(
		'drive.mouth',
		'Mouth of the drive',
		'A matched pair marks both sides where the drive meets the street, outside the turning sweep of a car; just outside gate posts that stand there, so that no leaf and no post hides it; where wheels run off, one more just outside that edge.',
		'It is the place that drivers look for.',
		'practice',
		{ flare: 1 }
	),
	'drive.spacing': rule(
		'drive.spacing',
		'Spacing along a drive',
		'3 m (10 ft) or more along an edge; opposite edges in pairs for a formal look, staggered for an even one.',
		'The edge needs marking, not lighting.',
		'practice',
		{ spacing: 3, long: 6, longFrom: 20 }
	),
	'drive.sight': rule(
		'drive.sight',
		"In a driver's sight",
		"Heads below about 600 mm (24 in), light downwards, no bare lamp seen from a driver's eye at 1.1 m.",
		'Glare hides what stands behind it.',
		'practice',
		{ head: 0.6, eye: 1.1 }
	),
	'glare.shield': rule(
		'glare.shield',
		'No bare source',
		'No bare source seen from walk, drive, windows or next door: path lights shaded, uplights with a cowl.',
		'The eye closes down to the brightest thing it sees.',
		'practice',
		{}
	),
	'glare.level': rule(
		'glare.level',
		'A lamp that dazzles',
		'A lamp counts as seen from less than 45 degrees off its beam: further round, its cowl or the rim of its well hides it. More than 50 cd towards an eye within 20 m (66 ft) is called glare: about what a bare bulb of 600 lm sends.',
		'In the dark the eye has opened up, and one bright point closes it again.',
		'memory',
		{ cowl: 45, candela: 50, within: 20 }
	),
	'light.maintained': rule(
		'light.maintained',
		'Light after a few years',
		'Light is counted as it will be: 90 % of new for the ageing of the lamps, and 90 % of that for dirt on the glass.',
		'A plan that is right on the first night only is too dim from the second year on.',
		'memory',
		{ lumens: 0.9, dirt: 0.9 }
	),
	'light.existing': rule(
		'light.existing',
		'How strong a light is that is there',
		'A street lamp or porch light is taken to be as strong as gives 1 lx on the ground at the edge of the reach you told.',
		'Nobody knows its lumens; how far one sees by it anybody can pace out.',
		'memory',
		{ edge: 1 }
	),
	'spill.boundary': rule(
		'spill.boundary',
		"Light at a neighbour's window",
		"Late at night at most 1 lx in the country, 2 in a suburb, 5 in a town on a neighbour's window; in the evening 2, 5 and 10. The late figures are kept.",
		'Nobody should have to draw a curtain against your garden.',
		'en12193',
		{ ruralLate: 1, suburbLate: 2, townLate: 5, ruralEarly: 2, suburbEarly: 5, townEarly: 10 }
	),
	'place.clear': rule(
		'place.clear',
		'Where no lamp stands',
		"Not in paving, house, porch or seating place, not outside the lot; out of reach of a gate's leaf, which is as long as its walk is wide and may swing either way; 1 m clear in front of a door and 5 m, a car's length, in front of a garage door; 0.3 m clear of the receptacle and of another light; off the foot of a trunk, which spreads by about a quarter of its thickness; an uplight not under the eaves.",
		'It would be kicked, run over, dug up or shut in; a beam under the eaves stops there.',
		'memory',
		{ apart: 0.3, doorFront: 1, garageFront: 5, receptacle: 0.3, eaves: 0.6, flare: 0.25 }
	),
	'warm.colour': rule(
		'warm.colour',
		'Warm light',
		'3000 K or less, 2700 K preferred; only where useful, aimed, no brighter than needed, controlled.',
		'Cold light travels further, and wakes more that should sleep.',
		'fivePrinciples',
		{ most: 3000, preferred: 2700 }
	),
	'water.clear': rule(
		'water.clear',
		'Clear of water',
		'3.05 m (10 ft) from the edge of a pool, spa or fountain unless the special article allows it; the supply likewise.',
		'Water and electricity meet in a person.',
		'nec680',
		{ clear: 3.05 }
	),
	'existing.light': rule(
		'existing.light',
		'Lights that are there',
		'A street lamp or porch light that already does the job is counted, not doubled.',
		'Two lights where one did is a brighter place and a darker night.',
		'practice',
		{}
	),
	'supply.height': rule(
		'supply.height',
		'Height of the transformer',
		'Bottom at least 305 mm (12 in) above the ground, upright, on a solid wall or post, in free air, within reach.',
		'Splash, snow and leaves stay below it.',
		'practice',
		{ bottom: 0.305 }
	),
	'supply.receptacle': rule(
		'supply.receptacle',
		'Receptacle',
		"A GFCI-protected outdoor receptacle with a cover that closes over the plug, within the transformer's own cord, no extension cord. A missing one is work for a licensed electrician.",
		'This is where mains and weather meet.',
		'nec210_8',
		{ cord: 1.5, cordMost: 1.8 }
	),
	'supply.load': rule(
		'supply.load',
		'Load on the transformer',
		'At most 80 % of its rated VA, counted in VA, not watts.',
		'Hours on end every night is a continuous load.',
		'nec210_19',
		{ fraction: 0.8, powerFactor: 0.8 }
	),
	'supply.secondary': rule(
		'supply.secondary',
		'Secondary circuit',
		'At most 25 A on one secondary circuit.',
		'Above that the wiring could start a fire before anything trips.',
		'nec411',
		{ amps: 25 }
	),
	'supply.regulation': rule(
		'supply.regulation',
		'Sag under load',
		'The volts at the terminals sag by 3 to 8 % from no load to full load.',
		'It is in the iron and copper of the transformer.',
		'memory',
		{ low: 0.03, high: 0.08, taken: 0.05 }
	),
	'supply.inrush': rule(
		'supply.inrush',
		'Surge at switch-on',
		'A cold filament takes ten times its running current or more for a moment; LED drivers and the transformer itself take a surge too. If a breaker trips, switch on run by run, or take a transformer with a soft start.',
		'A cold filament has about a tenth of its resistance when hot.',
		'memory',
		{ times: 10, share: 0.5 }
	),
	'cable.volts': rule(
		'cable.volts',
		'Volts at each lamp',
		'Each lamp inside its own window: an LED as marked, often 9 to 15 V, a 12 V halogen 10.8 to 12.0 V; lamps of one kind seen together within about 0.5 V.',
		'Below it a lamp is dim or dark, above it short-lived.',
		'practice',
		{ alike: 0.5 }
	),
	'cable.drop': rule(
		'cable.drop',
		'Drop as a planning figure',
		'3 % for lighting, 5 % overall: information, not law.',
		'A check figure for people used to it.',
		'practice',
		{ lighting: 0.03, overall: 0.05 }
	),
	'cable.temperature': rule(
		'cable.temperature',
		'Temperature of the copper',
		'Nominal figures at 30 °C, hot and cold corners for the limits; the handbook table is at 75 °C.',
		'Copper gains about 0.4 % of resistance with each degree.',
		'necTable8',
		{ nominal: 30, hot: 50, cold: -10, table: 75 }
	),
	'cable.corners': rule(
		'cable.corners',
		'Worst case',
		'Still right with lengths 10 % longer, mains 5 % low and hot; and with lengths 10 % shorter, mains 5 % high and cold.',
		'Tapes stretch, mains wander, seasons turn.',
		'practice',
		{ length: 0.1, mains: 0.05 }
	),
	'cable.fuse': rule(
		'cable.fuse',
		'Amperes on a cable',
		'18 AWG 7 A, 16 AWG 10 A (from memory), 14 AWG 15 A, 12 AWG 20 A, 10 AWG 30 A, and never more than the secondary.',
		'Thin cable warms up.',
		'nec240_4',
		{ awg18: 7, awg16: 10, awg14: 15, awg12: 20, awg10: 30 }
	),
	'cable.depth': rule(
		'cable.depth',
		'Depth of the cable',
		"150 mm (6 in) of cover in lawn and beds; 18 in (457 mm; the table's own metric figure is 450) directly buried under a dwelling's drive; less only where the listed system's own instructions say so.",
		'Spades, edgers and aerators reach that far.',
		'nec300_5',
		{ lawn: 0.15, drive: 0.4572 }
	),
	'cable.crossing': rule(
		'cable.crossing',
		'Across paving',
		'In a sleeve that is there, a bored conduit, or an expansion joint whose strip goes back flush over the cable with sand in the gaps. The joint is common practice and shallower than the table: ask the authority.',
		'Paving is dear to cut and easy to go under.',
		'practice',
		{}
	),
	'ground.dig': rule(
		'ground.dig',
		'What a metre costs to dig',
		'Cable goes the way that is least work, counted in metres of open ground. A metre along the edge of a bed against lawn counts 0.7, along a wall or the edge of paving 0.9, inside a bed 1.2, inside the root zone of a tree 2. Nearer to water than rule water.clear allows, 2 more.',
		'Along an edge one slit with a spade does, and the cable is found again. In a bed there are plants to spare, among roots every spadeful is a trowelful.',
		'memory',
		{ lawnEdge: 0.7, edge: 0.9, bed: 1.2, roots: 2, water: 2 }
	),
	'ground.cross': rule(
		'ground.cross',
		'What a crossing costs',
		'Going under paving counts as so much more open ground: 0.5 m (20 in) for a sleeve that is there, 2 m (7 ft) for an expansion joint, 6 m (20 ft) for a bore you have told, 12 m (39 ft) for one that has still to be thought of. A metre that is bored counts as three.',
		'So much further is worth going round before another crossing is the lesser work.',
		'memory',
		{ sleeve: 0.5, joint: 2, bore: 6, undeclared: 12, bored: 3 }
	),
	'cable.slack': rule(
		'cable.slack',
		'Slack',
		'0.6 to 0.9 m (2 to 3 ft) at each fixture and at the transformer.',
		'Fixtures get moved; trees grow.',
		'practice',
		{ low: 0.6, taken: 0.75, high: 0.9 }
	),
	'cable.splice': rule(
		'cable.splice',
		'Connections',
		'Connectors rated for direct burial; piercing kinds centred on the conductor and screwed home; never twisted and taped; cut ends sealed.',
		'Most failures are wet joints.',
		'practice',
		{}
	),
	'cable.clear': rule(
		'cable.clear',
		'Kept apart',
		'Apart from mains wiring, the edger and the aerator; a sketch of where it runs stays with the house.',
		'The next spade will not know.',
		'practice',
		{}
	),
	'cable.order': rule(
		'cable.order',
		'Hub, tee or chain',
		'By what keeps the far lamp up with the least copper and fewest joints.',
		'Every joint and metre costs volts.',
		'physics',
		{}
	),
	'lamp.halogen': rule(
		'lamp.halogen',
		'Filament lamps',
		'Light goes with volts to the power 3.4, power 1.6, current 0.55, life −12 to −16, within about a tenth of rated volts.',
		'A hotter filament shines more and dies sooner.',
		'finkBeaty',
		{ light: 3.4, power: 1.6, current: 0.55, lifeLow: -12, lifeHigh: -16 }
	),
	'lamp.led': rule(
		'lamp.led',
		'LED lamps',
		'Constant power inside the window: the current rises as the volts fall, and beyond a load no solution exists.',
		'The driver takes what it needs.',
		'physics',
		{}
	),
	'sensor.shade': rule(
		'sensor.shade',
		'Sensor out of shade',
		'Not under eaves, canopies or behind walls: what they take of its sky is worked out, a crown letting 15 % of the light through in leaf and 60 % bare (from memory), and up to 10 minutes early or late is let pass.',
		'It would switch on early.',
		'practice',
		{ fromEaves: 0.6, early: 10, leafOn: 0.15, leafOff: 0.6 }
	),
	'sensor.light': rule(
		'sensor.light',
		'Sensor out of lamplight',
		"Not where lamps, the plan's own included, keep it from switching on at dusk or make it switch off again: a night is gone through minute by minute, with the light that falls square to its window; where there is a choice, 3 m (10 ft) clear of lamps.",
		'It would stay off, or blink all night.',
		'practice',
		{ clear: 3 }
	),
	'sensor.level': rule(
		'sensor.level',
		'When the sensor switches',
		'On at about 16 lx on the horizontal, off at 1.5 to 6 times that, with delay: a minute is taken (from memory).',
		'Light enough to walk by at the one, dark enough to need a lamp at the other.',
		'c136_10',
		{ on: 16, offLow: 1.5, offHigh: 6, delay: 1 }
	),
	'sensor.dusk': rule(
		'sensor.dusk',
		'Light at dusk',
		'Clear sky on the ground: about 400 lx at sunset, 3.4 lx with the sun 6 degrees below, 0.008 lx at 12.',
		'It is how far the sensor sees into the evening.',
		'amsTwilight',
		{ sunset: 400, civil: 3.4, nautical: 0.008 }
	),
	'hours.choice': rule(
		'hours.choice',
		'Hours',
		'Dusk to dawn, or a set time from dusk, or until a clock time, or evening and early morning; other hours for a part of the year where wanted. Less is kinder to neighbours, night life and the bill.',
		'Most of the night nobody is looking.',
		'practice',
		{}
	),
	'budget.order': rule(
		'budget.order',
		'What is left out first',
		'To keep to a budget, beauty goes first: second and further lights on a tree, then walls from their ends in, trees, beds, seats. Then way-finding: every other light along a drive, every other along the straights of a walk, then the rest of a drive, then of a walk. In beauty all that was asked for softly goes before anything asked for brightly; of two alike the smaller goes first. Lights for steps, entries, bends, junctions, gates, places where wheels run off, the mouth of a drive and the house number or sign are never left out, nor what you set by hand.',
		'A dark tree is a pity; a dark step is a fall. A car brings its own light.',
		'practice',
		// Places in the order, and the least part of a wall's row that stays before the rest goes at once.
		{
			treeFurther: 1,
			wall: 2,
			tree: 3,
			bed: 4,
			seating: 5,
			driveThin: 6,
			walkThin: 7,
			drive: 8,
			walk: 9,
			wallLeast: 0.5
		}
	),
	'budget.count': rule(
		'budget.count',
		'What a budget counts',
		'A budget in lights counts those on the plan. One in money counts each light at its price, yours or ours, and 30 more for its share of transformer, cable, joints and spares, in the currency of the prices. The shopping list has the whole sum.',
		'What lies in the ground is known only when the lights are placed.',
		'memory',
		{ share: 30 }
	),
	'shop.alike': rule(
		'shop.alike',
		'What serves in place of the plan’s lamp',
		'A fixture of the same kind serves with 0.6 to 1.6 times the lumens and 0.7 to 1.5 times the beam angle. All lights of one need are one product, so that what is seen together looks alike.',
		'In the dark an eye hardly tells a third more or less light. A beam one stock size away still holds the crown or the wall; the next one does not.',
		'practice',
		{ leastLight: 0.6, mostLight: 1.6, leastBeam: 0.7, mostBeam: 1.5 }
	),
	'hand.placed': rule(
		'hand.placed',
		'Placed by you',
		'What you move, turn, choose, add or take away by hand stays as you set it; the plan keeps clear of it and says which rules it breaks.',
		'You see the yard; the plan sees a drawing of it.',
		'asked',
		{}
	),
	'dig.notice': rule(
		'dig.notice',
		'Before digging',
		'Call the dig-notice service at least two full working days before; it does not mark private lines.',
		'Gas and mains are down there.',
		'dig',
		{ days: 2, tolerance: 0.6096 }
	)
} as const satisfies Record<string, Rule>;
export type RuleId = keyof typeof rules;
