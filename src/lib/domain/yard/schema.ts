/**
 * The yard: everything the person told us, and nothing worked out from it.
 *
 * Frame: the house front is the base line. `along` runs along it from its left corner as seen from the street,
 * `out` runs from it towards the street (negative behind the front). Metres, degrees clockwise from north, clock
 * times as "HH:MM" local. Every answer is optional: absent = not asked yet, "unsure" = asked, not known,
 * an empty list = asked, there are none.
 */
import * as z from 'zod/mini';

// The pages forbid evaluated code (content security policy); zod would otherwise try to compile its parsers.
z.config({ jitless: true });

const known = <T extends z.ZodMiniType>(schema: T, title: string, help: string, unit?: string): T => {
	z.globalRegistry.add(schema, unit ? { title, description: help, unit } : { title, description: help });
	return schema;
};

/** Metres within a range that a home can have; beyond it the field refuses. */
const length = (title: string, help: string, min: number, max: number) =>
	known(z.number().check(z.minimum(min), z.maximum(max)), title, help, 'm');

const unsure = z.literal('unsure');
const orUnsure = <T extends z.ZodMiniType>(schema: T) => z.optional(z.union([schema, unsure]));
const maybe = z.optional;

const id = z.string().check(z.regex(/^[a-z][a-z0-9-]{0,39}$/));
const name = z.string().check(z.maxLength(60));

export const limits = { items: 400, linePoints: 60, reach: 500 } as const;

export const pointSchema = z.strictObject({
	along: length(
		'Along',
		'Along the house front from its left corner, seen from the street',
		-limits.reach,
		limits.reach
	),
	out: length('Out', 'Out from the house front towards the street; negative behind it', -limits.reach, limits.reach)
});
const lineSchema = z.array(pointSchema).check(z.minLength(2), z.maxLength(limits.linePoints));
const list = <T extends z.ZodMiniType>(item: T) => maybe(z.array(item).check(z.maxLength(limits.items)));

/** How strongly the person wants something lit. */
const level = z.enum(['none', 'soft', 'bright']);

export const placeSchema = z.strictObject({
	units: maybe(known(z.enum(['feet', 'metres']), 'Units', 'How lengths are read back')),
	location: orUnsure(
		z.strictObject({
			name: maybe(name),
			latitude: known(z.number().check(z.minimum(-90), z.maximum(90)), 'Latitude', 'North positive', 'deg'),
			longitude: known(z.number().check(z.minimum(-180), z.maximum(180)), 'Longitude', 'East positive', 'deg'),
			timeZone: known(z.string().check(z.maxLength(64)), 'Time zone', 'IANA name')
		})
	),
	faces: orUnsure(
		known(z.number().check(z.minimum(0), z.maximum(360)), 'Front faces', 'Bearing the house front looks towards', 'deg')
	),
	surroundings: orUnsure(known(z.enum(['rural', 'suburb', 'town']), 'Surroundings', 'How dark the neighbourhood is'))
});

export const sectionSchema = z.strictObject({
	id,
	width: length('Width', 'Length of this part of the front', 0.5, 100),
	out: maybe(length('Stands out', 'How far this part stands out from the base line towards the street', -30, 30)),
	light: maybe(level)
});
export const openingSchema = z.strictObject({
	id,
	kind: z.enum(['door', 'window', 'garage']),
	wall: z.enum(['front', 'left', 'right']),
	/** On the front: along the base line. On a side: back from the front corner. To the opening's left edge (front) or nearest edge (side). */
	along: length('From the corner', 'From the corner to the nearest edge of the opening', -5, 200),
	width: length('Width', 'Width of the opening', 0.3, 12)
});
export const porchSchema = z.strictObject({
	id,
	along: length('From the left corner', 'To the left edge of the porch', -10, 200),
	width: length('Width', 'Along the front', 0.5, 40),
	depth: length('Depth', 'Out from the wall it stands at', 0.3, 10),
	roof: maybe(z.boolean())
});
export const houseSchema = z.strictObject({
	/** The front from left to right, one part for each step in or out. */
	sections: list(sectionSchema),
	depth: orUnsure(length('Depth of the house', 'From the base line to the back wall', 2, 60)),
	eaves: orUnsure(length('Height of the eaves', 'From the ground to the eaves', 1.8, 15)),
	finish: orUnsure(known(z.enum(['light', 'medium', 'dark']), 'Finish', 'How light the wall is')),
	texture: orUnsure(known(z.enum(['smooth', 'rough']), 'Texture', 'Rough stone or brick takes a grazing light')),
	openings: list(openingSchema),
	porches: list(porchSchema),
	/** Side walls, seen from the street. */
	left: maybe(z.strictObject({ light: maybe(level) })),
	right: maybe(z.strictObject({ light: maybe(level) }))
});

export const treeSchema = z.strictObject({
	id,
	name,
	at: maybe(pointSchema),
	spread: orUnsure(length('Across the canopy', 'From leaf tip to leaf tip', 0.3, 40)),
	height: orUnsure(length('Height', 'Ground to top', 0.5, 60)),
	crownBase: orUnsure(length('Height to the lowest branches', 'Ground to where the crown begins', 0, 30)),
	trunk: orUnsure(length('Trunk', 'Diameter at chest height', 0.02, 4)),
	form: orUnsure(z.enum(['round', 'spreading', 'columnar', 'conical', 'vase', 'weeping', 'multi-stem', 'palm'])),
	ground: orUnsure(z.enum(['lawn', 'bed', 'gravel'])),
	light: maybe(level),
	seenFrom: maybe(z.enum(['street', 'house', 'walk']))
});

export const crossingSchema = z.strictObject({
	id,
	/** Along the centre line of the walk or drive, from its first point. */
	at: length('Where', 'Along the centre line from the street end', 0, 500),
	kind: known(
		z.enum(['sleeve', 'joint', 'bore']),
		'Kind',
		'An existing sleeve, an expansion joint, or a bore to be made'
	)
});

const strip = {
	id,
	name,
	/** Centre line from the street (or the gate) towards the house. Left and right are seen walking that way. */
	line: maybe(lineSchema),
	curved: maybe(z.boolean()),
	crossings: list(crossingSchema)
};
export const walkSchema = z.strictObject({
	...strip,
	width: orUnsure(length('Width', 'Edge to edge', 0.3, 6)),
	lights: maybe(z.enum(['none', 'left', 'right', 'both', 'either'])),
	rail: maybe(z.enum(['none', 'left', 'right', 'both'])),
	steps: list(
		z.strictObject({
			id,
			at: length('Where', 'Along the centre line from the street end to the foot of the flight', 0, 500),
			treads: known(z.int().check(z.minimum(1), z.maximum(40)), 'Treads', 'How many treads'),
			going: orUnsure(length('Depth of a tread', 'Front to back', 0.15, 2))
		})
	)
});
export const driveSchema = z.strictObject({
	...strip,
	width: orUnsure(length('Width', 'Edge to edge', 1.5, 15)),
	lights: maybe(z.enum(['none', 'mouth', 'left', 'right', 'both'])),
	pattern: maybe(z.enum(['paired', 'staggered'])),
	/** Gate posts either side of the mouth. */
	posts: maybe(z.boolean()),
	/** Where wheels run off the edge. */
	runOffs: list(
		z.strictObject({
			id,
			at: length('Where', 'Along the centre line from the street end', 0, 500),
			side: z.enum(['left', 'right'])
		})
	)
});

export const bedSchema = z.strictObject({
	id,
	name,
	outline: maybe(z.array(pointSchema).check(z.minLength(3), z.maxLength(limits.linePoints)))
});
export const seatingSchema = z.strictObject({
	id,
	name,
	at: maybe(pointSchema),
	across: orUnsure(length('Across', 'Diameter of the seating place', 0.5, 20)),
	light: maybe(level)
});
export const houseNumberSchema = z.strictObject({
	id,
	name: maybe(name),
	at: maybe(pointSchema),
	light: maybe(z.boolean())
});
export const waterSchema = z.strictObject({
	id,
	name,
	kind: z.enum(['pond', 'pool', 'spa', 'fountain']),
	at: maybe(pointSchema),
	length: orUnsure(length('Along the front', 'Size measured along the house front', 0.3, 60)),
	width: orUnsure(length('Out', 'Size measured towards the street', 0.3, 60))
});
export const existingLightSchema = z.strictObject({
	id,
	name,
	kind: z.enum(['street-lamp', 'porch-light', 'other']),
	at: maybe(pointSchema),
	height: orUnsure(length('Height', 'Of the lamp above the ground', 0.2, 20)),
	reach: orUnsure(length('Lights as far as', 'How far around it you can see your step', 0.5, 40))
});
export const freeWallSchema = z.strictObject({
	id,
	name,
	from: maybe(pointSchema),
	to: maybe(pointSchema),
	height: orUnsure(length('Height', 'Ground to coping', 0.3, 8)),
	finish: orUnsure(z.enum(['light', 'medium', 'dark'])),
	texture: orUnsure(z.enum(['smooth', 'rough'])),
	light: maybe(level)
});
export const spotsSchema = z.strictObject({
	beds: list(bedSchema),
	seating: list(seatingSchema),
	numbers: list(houseNumberSchema),
	water: list(waterSchema),
	lights: list(existingLightSchema),
	walls: list(freeWallSchema)
});

export const lotSchema = z.strictObject({
	street: orUnsure(length('To the street', 'From the base line to the edge of the street or pavement', 0.5, 300)),
	left: orUnsure(length('To the left boundary', 'From the left corner of the house to the boundary', 0, 200)),
	right: orUnsure(length('To the right boundary', 'From the right corner of the house to the boundary', 0, 200))
});

const clock = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));
export const hoursSchema = z.discriminatedUnion('kind', [
	z.strictObject({ kind: z.literal('dusk-to-dawn') }),
	z.strictObject({ kind: z.literal('after-dusk'), hours: z.number().check(z.minimum(0.5), z.maximum(14)) }),
	z.strictObject({ kind: z.literal('until'), clock })
]);
export const spotSchema = z.strictObject({
	at: pointSchema,
	on: z.enum(['wall', 'post']),
	height: maybe(length('Height', 'Of its bottom edge above the ground', 0, 4))
});
/** Id of a fixture in the plan: what it lights, and its place there. */
const fixtureId = z.string().check(z.regex(/^[a-z][a-z0-9-]{0,39}\/[a-z0-9-]{1,40}$/));
/** A run of cable as the person has it or wants it; what is absent is chosen by the plan. */
export const runChoiceSchema = z.strictObject({
	id,
	/** The lamps it feeds. Absent: all that no other run names. Ids of lamps that are no longer there are kept. */
	lamps: maybe(z.array(fixtureId).check(z.maxLength(limits.items))),
	/** Gauge or mm², by which sizes are sold here. */
	size: maybe(z.number().check(z.minimum(0.5), z.maximum(35))),
	tap: maybe(z.number().check(z.minimum(6), z.maximum(24))),
	feed: maybe(z.enum(['end', 'middle', 'hub']))
});
/** The circuit as set by hand, on the circuit page or by an advice taken there. */
export const circuitChoiceSchema = z.strictObject({
	/** Rating of the transformer from the list of usual sizes. */
	transformerVoltAmps: maybe(z.number().check(z.minimum(20), z.maximum(2000))),
	runs: list(runChoiceSchema)
});
export const powerSchema = z.strictObject({
	receptacle: maybe(z.union([pointSchema, z.literal('none'), unsure])),
	gfci: orUnsure(z.boolean()),
	inUseCover: orUnsure(z.boolean()),
	transformer: maybe(z.union([spotSchema, z.literal('suggest')])),
	sensor: maybe(z.union([spotSchema, z.literal('suggest')])),
	hours: orUnsure(hoursSchema),
	price: orUnsure(
		z.strictObject({
			perKwh: known(z.number().check(z.minimum(0), z.maximum(10)), 'Price of power', 'For one kilowatt-hour'),
			currency: z.string().check(z.minLength(1), z.maxLength(4))
		})
	),
	lamp: orUnsure(z.enum(['led', 'halogen'])),
	warmth: orUnsure(z.union([z.literal(2700), z.literal(3000)])),
	/** Which cable sizes are sold here. */
	cable: maybe(z.enum(['awg', 'mm2'])),
	owned: maybe(
		z.strictObject({
			transformerVoltAmps: maybe(z.number().check(z.minimum(20), z.maximum(2000))),
			cableSize: maybe(z.number()),
			cableLength: maybe(length('Cable in hand', 'Length of cable already owned', 0, 1000))
		})
	),
	circuit: maybe(circuitChoiceSchema),
	/** Prices the person has changed, by catalogue id, in their currency. */
	prices: maybe(z.record(z.string(), z.number().check(z.minimum(0), z.maximum(100000))))
});

export const yardSchema = z.strictObject({
	format: z.literal('duskwright/yard'),
	version: z.literal(1),
	name: maybe(name),
	place: placeSchema,
	house: houseSchema,
	lot: lotSchema,
	trees: list(treeSchema),
	walks: list(walkSchema),
	drives: list(driveSchema),
	spots: spotsSchema,
	power: powerSchema
});

export type Yard = z.infer<typeof yardSchema>;
export type YardPoint = z.infer<typeof pointSchema>;
export type YardTree = z.infer<typeof treeSchema>;
export type YardWalk = z.infer<typeof walkSchema>;
export type YardDrive = z.infer<typeof driveSchema>;
export type RunChoice = z.infer<typeof runChoiceSchema>;
export type CircuitChoice = z.infer<typeof circuitChoiceSchema>;
export type YardSection = z.infer<typeof sectionSchema>;
export type YardOpening = z.infer<typeof openingSchema>;
/** Spelt out, since the plan's JSON Schema is made from types; the parts of `Yard` that use them hold them equal. */
export type Hours = { kind: 'dusk-to-dawn' } | { kind: 'after-dusk'; hours: number } | { kind: 'until'; clock: string };
export type Level = 'none' | 'soft' | 'bright';
export type Units = 'feet' | 'metres';

/** A yard of which nothing is known yet. */
export const blankYard = (): Yard => ({
	format: 'duskwright/yard',
	version: 1,
	place: {},
	house: {},
	lot: {},
	spots: {},
	power: {}
});
