/**
 * The words of the yard's published JSON Schema: title, description and unit by path. Kept apart from the schema, so that
 * pages which only check answers do not carry them.
 */
export type SchemaWords = readonly [title: string, description: string, unit?: string];

/** Of any point, wherever in the yard. */
export const pointWords: Readonly<Record<'along' | 'out', SchemaWords>> = {
	along: ['Along', 'Along the house front from its left corner, seen from the street', 'm'],
	out: ['Out', 'Out from the house front towards the street; negative behind it', 'm']
};
/** `*` stands for each item of a list. */
export const schemaWords: Readonly<Record<string, SchemaWords>> = {
	'place.units': ['Units', 'How lengths are read back'],
	'place.location.latitude': ['Latitude', 'North positive', 'deg'],
	'place.location.longitude': ['Longitude', 'East positive', 'deg'],
	'place.location.timeZone': ['Time zone', 'IANA name'],
	'place.faces': ['Front faces', 'Bearing the house front looks towards', 'deg'],
	'place.surroundings': ['Surroundings', 'How dark the neighbourhood is'],
	'house.sections.*.width': ['Width', 'Length of this part of the front', 'm'],
	'house.sections.*.out': ['Stands out', 'How far this part stands out from the base line towards the street', 'm'],
	'house.sections.*.eaves': [
		'Height of its own eaves',
		'From the ground; absent: the height of the eaves of the house',
		'm'
	],
	'house.sections.*.gable': ['Point of its gable', 'From the ground to the point, over the middle of the part', 'm'],
	'house.depth': ['Depth of the house', 'From the base line to the back wall', 'm'],
	'house.eaves': ['Height of the eaves', 'From the ground to the eaves', 'm'],
	'house.finish': ['Finish', 'How light the wall is'],
	'house.texture': ['Texture', 'Rough stone or brick takes a grazing light'],
	'house.openings.*.along': ['From the corner', 'From the corner to the nearest edge of the opening', 'm'],
	'house.openings.*.width': ['Width', 'Width of the opening', 'm'],
	'house.openings.*.floor': ['Floor', 'Which row of doors and windows it belongs to; absent: the ground floor'],
	'house.porches.*.along': ['From the left corner', 'To the left edge of the porch', 'm'],
	'house.porches.*.width': ['Width', 'Along the front', 'm'],
	'house.porches.*.depth': ['Depth', 'Out from the wall it stands at', 'm'],
	'house.porches.*.under': ['Underside of its roof', 'From the ground to the underside of the roof', 'm'],
	'lot.street': ['To the street', 'From the base line to the edge of the street or pavement', 'm'],
	'lot.left': ['To the left boundary', 'From the left corner of the house to the boundary', 'm'],
	'lot.right': ['To the right boundary', 'From the right corner of the house to the boundary', 'm'],
	'trees.*.spread': ['Across the canopy', 'From leaf tip to leaf tip', 'm'],
	'trees.*.height': ['Height', 'Ground to top', 'm'],
	'trees.*.crownBase': ['Height to the lowest branches', 'Ground to where the crown begins', 'm'],
	'trees.*.trunk': ['Trunk', 'Diameter at chest height', 'm'],
	'walks.*.crossings.*.at': ['Where', 'Along the centre line from the street end', 'm'],
	'walks.*.crossings.*.kind': ['Kind', 'An existing sleeve, an expansion joint, or a bore to be made'],
	'walks.*.width': ['Width', 'Edge to edge', 'm'],
	'walks.*.steps.*.at': ['Where', 'Along the centre line from the street end to the foot of the flight', 'm'],
	'walks.*.steps.*.treads': ['Treads', 'How many treads'],
	'walks.*.steps.*.going': ['Depth of a tread', 'Front to back', 'm'],
	'walks.*.gates.*.at': ['Where', 'Along the centre line from the street end; the gate is as wide as the walk', 'm'],
	'drives.*.crossings.*.at': ['Where', 'Along the centre line from the street end', 'm'],
	'drives.*.crossings.*.kind': ['Kind', 'An existing sleeve, an expansion joint, or a bore to be made'],
	'drives.*.width': ['Width', 'Edge to edge', 'm'],
	'drives.*.postsAt': ['Gate posts', 'Along the centre line from the street end to the posts', 'm'],
	'drives.*.runOffs.*.at': ['Where', 'Along the centre line from the street end', 'm'],
	'spots.paved.*.cars': ['For cars', 'Whether cars drive or stand on it'],
	'spots.beds.*.light': ['Light', 'How strongly the bed is lit; absent: not at all'],
	'spots.numbers.*.kind': ['Kind', 'A house number or a sign; absent: a house number'],
	'spots.numbers.*.width': ['Width', 'Of a sign, from edge to edge', 'm'],
	'spots.seating.*.across': ['Across', 'Diameter of the seating place', 'm'],
	'spots.water.*.length': ['Along the front', 'Size measured along the house front', 'm'],
	'spots.water.*.width': ['Out', 'Size measured towards the street', 'm'],
	'spots.lights.*.height': ['Height', 'Of the lamp above the ground', 'm'],
	'spots.lights.*.reach': ['Lights as far as', 'How far around it you can see your step', 'm'],
	'spots.walls.*.height': ['Height', 'Ground to coping', 'm'],
	'power.transformer.height': ['Height', 'Of its bottom edge above the ground', 'm'],
	'power.sensor.height': ['Height', 'Of its bottom edge above the ground', 'm'],
	'power.price.perKwh': ['Price of power', 'For one kilowatt-hour'],
	'power.budget.kind': ['Limit', 'Whether the plan keeps to a number of lights, a sum of money, or both'],
	'power.budget.fixtures': ['Lights at most', 'How many lights the plan may have'],
	'power.budget.money': [
		'Money for the lights',
		'In the currency of the prices: lights at their prices, and for each an allowance for its share of the rest'
	],
	'power.lamps.*.name': ['Name', 'Of the real lamp, as its photometric file gives it'],
	'power.lamps.*.for': ['Stands for', 'Models of the list in whose place it goes'],
	'power.lamps.*.watts': ['Watts', 'As marked on it; absent: those of the model', 'W'],
	'power.lamps.*.vertical': ['Angles off the axis', 'Ascending; the axis is along the beam', 'deg'],
	'power.lamps.*.horizontal': ['Planes round the axis', 'C-planes, ascending over the span of the symmetry', 'deg'],
	'power.lamps.*.symmetry': ['Symmetry', 'How far its planes reach, and what the rest of the circle repeats'],
	'power.lamps.*.candela': ['Candela', 'Plane after plane, as many in each as there are angles', 'cd'],
	'power.owned.cableLength': ['Cable in hand', 'Length of cable already owned', 'm'],
	rules: ['Figures of rules', 'By rule and figure, such as path.spacing/spacing; in metres, degrees or parts of one'],
	'underlay.picture': ['Picture', 'SHA-256 of its bytes; the bytes lie beside the yard'],
	'underlay.width': ['Width of the picture', 'In its own pixels'],
	'underlay.height': ['Height of the picture', 'In its own pixels'],
	'underlay.opacity': ['Opacity', 'One: fully shown'],
	'underlay.from': ['First mark', 'A place on the picture, in its pixels from the upper left corner'],
	'underlay.to': ['Second mark', 'A place on the picture, in its pixels from the upper left corner'],
	'underlay.apart': ['Between the marks', 'How far apart the two marks are in the yard', 'm'],
	'underlay.at': ['First mark in the yard', 'Where the first mark lies'],
	'underlay.turn': ['Turn', 'Degrees clockwise by which the picture is turned about the first mark', 'deg'],
	done: [
		'Done',
		'Steps of the checklist that are done, by their ids, each once and sorted; after an @ what it was done for'
	],
	pictures: ['Pictures', 'Data addresses by SHA-256: only in a file']
};
