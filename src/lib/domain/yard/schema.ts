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
/** As set here: for other rooms that check what was kept, so that it is loaded in one piece with the yard. */
export { z };

/** Metres within a range that a home can have; beyond it the field refuses. */
const length = (min: number, max: number) => z.number().check(z.minimum(min), z.maximum(max));

const unsure = z.literal('unsure');
const orUnsure = <T extends z.ZodMiniType>(schema: T) => z.optional(z.union([schema, unsure]));
const maybe = z.optional;

const id = z.string().check(z.regex(/^[a-z][a-z0-9-]{0,39}$/));
const name = z.string().check(z.maxLength(60));

export const limits = { items: 400, linePoints: 60, reach: 500 } as const;

export const pointSchema = z.strictObject({
	along: length(-limits.reach, limits.reach),
	out: length(-limits.reach, limits.reach)
});
const lineSchema = z.array(pointSchema).check(z.minLength(2), z.maxLength(limits.linePoints));
const list = <T extends z.ZodMiniType>(item: T) => maybe(z.array(item).check(z.maxLength(limits.items)));

/** How strongly the person wants something lit. */
const level = z.enum(['none', 'soft', 'bright']);

export const placeSchema = z.strictObject({
	units: maybe(z.enum(['feet', 'metres'])),
	location: orUnsure(
		z.strictObject({
			name: maybe(name),
			latitude: z.number().check(z.minimum(-90), z.maximum(90)),
			longitude: z.number().check(z.minimum(-180), z.maximum(180)),
			timeZone: z.string().check(z.maxLength(64))
		})
	),
	faces: orUnsure(z.number().check(z.minimum(0), z.maximum(360))),
	surroundings: orUnsure(z.enum(['rural', 'suburb', 'town']))
});

export const sectionSchema = z.strictObject({
	id,
	width: length(0.5, 100),
	out: maybe(length(-30, 30)),
	/** Height of its own eaves; absent: that of the house. */
	eaves: maybe(length(1.8, 15)),
	/** Its wall runs up to a point under the roof: height of that point above the ground. */
	gable: maybe(length(2, 20)),
	light: maybe(level)
});
export const openingSchema = z.strictObject({
	id,
	kind: z.enum(['door', 'window', 'garage']),
	wall: z.enum(['front', 'left', 'right']),
	/** On the front: along the base line. On a side: back from the front corner. To the opening's left edge (front) or nearest edge (side). */
	along: length(-5, 200),
	width: length(0.3, 12),
	/** Which row of windows it belongs to; absent: the ground floor. */
	floor: maybe(z.enum(['ground', 'upper']))
});
export const porchSchema = z.strictObject({
	id,
	along: length(-10, 200),
	width: length(0.5, 40),
	depth: length(0.3, 10),
	roof: maybe(z.boolean()),
	/** Underside of the roof above the ground. */
	under: maybe(length(1.8, 8))
});
export const houseSchema = z.strictObject({
	/** The front from left to right, one part for each step in or out. */
	sections: list(sectionSchema),
	depth: orUnsure(length(2, 60)),
	eaves: orUnsure(length(1.8, 15)),
	finish: orUnsure(z.enum(['light', 'medium', 'dark'])),
	texture: orUnsure(z.enum(['smooth', 'rough'])),
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
	spread: orUnsure(length(0.3, 40)),
	height: orUnsure(length(0.5, 60)),
	crownBase: orUnsure(length(0, 30)),
	trunk: orUnsure(length(0.02, 4)),
	form: orUnsure(z.enum(['round', 'spreading', 'columnar', 'conical', 'vase', 'weeping', 'multi-stem', 'palm'])),
	/** Whether it keeps its leaves through the winter. */
	leaf: maybe(z.enum(['sheds', 'keeps'])),
	ground: orUnsure(z.enum(['lawn', 'bed', 'gravel'])),
	light: maybe(level),
	seenFrom: maybe(z.enum(['street', 'house', 'walk']))
});

export const crossingSchema = z.strictObject({
	id,
	/** Along the centre line of the walk or drive, from its first point. */
	at: length(0, 500),
	kind: z.enum(['sleeve', 'joint', 'bore'])
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
	width: orUnsure(length(0.3, 6)),
	lights: maybe(z.enum(['none', 'left', 'right', 'both', 'either'])),
	rail: maybe(z.enum(['none', 'left', 'right', 'both'])),
	steps: list(
		z.strictObject({
			id,
			at: length(0, 500),
			treads: z.number().check(z.multipleOf(1), z.minimum(1), z.maximum(40)),
			going: orUnsure(length(0.15, 2))
		})
	),
	/** A gate as wide as the walk, across it at so many metres. */
	gates: list(z.strictObject({ id, at: length(0, 500) }))
});
export const driveSchema = z.strictObject({
	...strip,
	width: orUnsure(length(1.5, 15)),
	lights: maybe(z.enum(['none', 'mouth', 'left', 'right', 'both'])),
	pattern: maybe(z.enum(['paired', 'staggered'])),
	/** Gate posts either side of the mouth. */
	posts: maybe(z.boolean()),
	/** Metres along the centre line at which they stand. */
	postsAt: orUnsure(length(0, 100)),
	/** Where wheels run off the edge. */
	runOffs: list(
		z.strictObject({
			id,
			at: length(0, 500),
			side: z.enum(['left', 'right'])
		})
	)
});

export const bedSchema = z.strictObject({
	id,
	name,
	outline: maybe(z.array(pointSchema).check(z.minLength(3), z.maxLength(limits.linePoints))),
	light: maybe(level)
});
/** Paving that is no walk and no drive: an apron before a garage, a patio, a place to park. */
export const pavedSchema = z.strictObject({
	id,
	name,
	outline: maybe(z.array(pointSchema).check(z.minLength(3), z.maxLength(limits.linePoints))),
	/** Cars drive or stand on it. */
	cars: maybe(z.boolean())
});
export const seatingSchema = z.strictObject({
	id,
	name,
	at: maybe(pointSchema),
	across: orUnsure(length(0.5, 20)),
	light: maybe(level)
});
export const houseNumberSchema = z.strictObject({
	id,
	name: maybe(name),
	/** Absent: a house number. */
	kind: maybe(z.enum(['number', 'sign'])),
	/** Of a sign. */
	width: orUnsure(length(0.2, 4)),
	at: maybe(pointSchema),
	light: maybe(z.boolean())
});
export const waterSchema = z.strictObject({
	id,
	name,
	kind: z.enum(['pond', 'pool', 'spa', 'fountain']),
	at: maybe(pointSchema),
	length: orUnsure(length(0.3, 60)),
	width: orUnsure(length(0.3, 60))
});
export const existingLightSchema = z.strictObject({
	id,
	name,
	kind: z.enum(['street-lamp', 'porch-light', 'other']),
	at: maybe(pointSchema),
	height: orUnsure(length(0.2, 20)),
	reach: orUnsure(length(0.5, 40))
});
export const freeWallSchema = z.strictObject({
	id,
	name,
	from: maybe(pointSchema),
	to: maybe(pointSchema),
	height: orUnsure(length(0.3, 8)),
	finish: orUnsure(z.enum(['light', 'medium', 'dark'])),
	texture: orUnsure(z.enum(['smooth', 'rough'])),
	light: maybe(level)
});
export const spotsSchema = z.strictObject({
	beds: list(bedSchema),
	paved: list(pavedSchema),
	seating: list(seatingSchema),
	numbers: list(houseNumberSchema),
	water: list(waterSchema),
	lights: list(existingLightSchema),
	walls: list(freeWallSchema)
});

export const lotSchema = z.strictObject({
	street: orUnsure(length(0.5, 300)),
	left: orUnsure(length(0, 200)),
	right: orUnsure(length(0, 200))
});

const clock = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));
export const hoursSchema = z.union([
	z.strictObject({ kind: z.literal('dusk-to-dawn') }),
	z.strictObject({ kind: z.literal('after-dusk'), hours: z.number().check(z.minimum(0.5), z.maximum(14)) }),
	z.strictObject({ kind: z.literal('until'), clock }),
	/** On from dusk until `evening`, and again from `morning` until dawn. */
	z.strictObject({ kind: z.literal('split'), evening: clock, morning: clock })
]);
const monthDay = z.string().check(z.regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/));
/** Other hours for a part of the year, from one date to another, both in it; it may pass the new year. */
export const seasonSchema = z.strictObject({ from: monthDay, to: monthDay, hours: hoursSchema });
export const spotSchema = z.strictObject({
	at: pointSchema,
	on: z.enum(['wall', 'post']),
	height: maybe(length(0, 4))
});
export const sensorSpotSchema = z.strictObject({
	...spotSchema.shape,
	/** Which way its window looks, degrees from north; absent: out from its wall, on a post to the darker side of the sky. */
	faces: maybe(z.number().check(z.minimum(0), z.maximum(360)))
});
/** Id of a fixture in the plan: what it lights, and its place there. */
const fixtureId = z.string().check(z.regex(/^[a-z][a-z0-9-]{0,59}\/[a-z0-9-]{1,40}$/));
/** Cable as the person drew it, from one light to the next: straight from bend to bend, or by the plan's own way where no bends are told. */
export const linkSchema = z.strictObject({
	from: z.union([fixtureId, z.literal('supply')]),
	to: fixtureId,
	via: maybe(z.array(pointSchema).check(z.minLength(1), z.maxLength(20)))
});
/** A run of cable as the person has it or wants it; what is absent is chosen by the plan. */
export const runChoiceSchema = z.strictObject({
	id,
	/** The lamps it feeds. Absent: all that no other run names. Ids of lamps that are no longer there are kept. */
	lamps: maybe(z.array(fixtureId).check(z.maxLength(limits.items))),
	/** Gauge or mm², by which sizes are sold here. */
	size: maybe(z.number().check(z.minimum(0.5), z.maximum(35))),
	tap: maybe(z.number().check(z.minimum(6), z.maximum(24))),
	feed: maybe(z.enum(['end', 'middle', 'hub'])),
	/** Its cables as drawn; lights of the run that no link reaches are joined on by the plan. */
	links: list(linkSchema)
});
/** The circuit as set by hand, on the circuit page or by an advice taken there. */
export const circuitChoiceSchema = z.strictObject({
	/** Rating of the transformer from the list of usual sizes. */
	transformerVoltAmps: maybe(z.number().check(z.minimum(20), z.maximum(2000))),
	runs: list(runChoiceSchema)
});
/** What the lights of the plan may come to. */
export const budgetSchema = z.strictObject({
	kind: orUnsure(z.enum(['none', 'fixtures', 'money', 'both'])),
	fixtures: maybe(z.number().check(z.multipleOf(1), z.minimum(1), z.maximum(limits.items))),
	/** In the currency of the prices. */
	money: maybe(z.number().check(z.minimum(1), z.maximum(100000)))
});
/** A real lamp, by the candela of its photometric file (type C), in place of lamps of the list. */
export const ownLampSchema = z.strictObject({
	id,
	name,
	/** Models of the list that it stands for. */
	for: z.array(z.string().check(z.maxLength(60))).check(z.minLength(1), z.maxLength(60)),
	/** As marked on it; absent: as the model. */
	watts: maybe(z.number().check(z.minimum(0.1), z.maximum(100))),
	/** Degrees off the axis, and planes round it, ascending; candela plane after plane. */
	vertical: z.array(z.number().check(z.minimum(0), z.maximum(180))).check(z.minLength(2), z.maxLength(181)),
	horizontal: z.array(z.number().check(z.minimum(0), z.maximum(360))).check(z.minLength(1), z.maxLength(73)),
	symmetry: z.enum(['rotational', 'quadrant', 'bilateral', 'bilateral-90', 'none']),
	candela: z.array(z.number().check(z.minimum(0), z.maximum(1e6))).check(z.maxLength(6000))
});
export const powerSchema = z.strictObject({
	receptacle: maybe(z.union([pointSchema, z.literal('none'), unsure])),
	gfci: orUnsure(z.boolean()),
	inUseCover: orUnsure(z.boolean()),
	transformer: maybe(z.union([spotSchema, z.literal('suggest')])),
	sensor: maybe(z.union([sensorSpotSchema, z.literal('suggest')])),
	hours: orUnsure(hoursSchema),
	season: maybe(seasonSchema),
	price: orUnsure(
		z.strictObject({
			perKwh: z.number().check(z.minimum(0), z.maximum(10)),
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
			cableLength: maybe(length(0, 1000))
		})
	),
	budget: maybe(budgetSchema),
	lamps: list(ownLampSchema),
	circuit: maybe(circuitChoiceSchema),
	/** Volts measured on the first night, by fixture id, or `terminals/` and the id of a run. */
	measured: maybe(
		z.record(z.string().check(z.minLength(1), z.maxLength(110)), z.number().check(z.minimum(0), z.maximum(60)))
	),
	/** Prices the person has changed, by catalogue id, in their currency. */
	prices: maybe(z.record(z.string(), z.number().check(z.minimum(0), z.maximum(100000))))
});

/** What a lamp shines at: a point, or a bearing and degrees from straight up (0 = up, 180 = down). */
const within = (min: number, max: number) => z.number().check(z.minimum(min), z.maximum(max));
const aimSchema = z.union([
	z.strictObject({ ...pointSchema.shape, height: within(0, 60) }),
	z.strictObject({ bearing: within(0, 360), tilt: within(0, 180) })
]);
const modelId = z.string().check(z.maxLength(60));
/** A fixture of the plan as changed by hand; what is absent stays the plan's own choice. */
export const fixtureEditSchema = z.strictObject({
	id: fixtureId,
	/** Where the plan had it when it was first changed: by this it is known again when the numbers beside it shift. */
	from: maybe(pointSchema),
	at: maybe(pointSchema),
	/** Kept where the plan had it, rather than moved. */
	pinned: maybe(z.boolean()),
	aim: maybe(aimSchema),
	model: maybe(modelId),
	removed: maybe(z.boolean())
});
/** A fixture that the person added. */
export const addedFixtureSchema = z.strictObject({
	id,
	/** What it lights; absent: nothing that the yard knows. */
	target: maybe(
		z.strictObject({ kind: z.enum(['tree', 'wall', 'walk', 'drive', 'steps', 'bed', 'seating', 'number']), id })
	),
	technique: z.enum(['uplight', 'wash', 'graze', 'path', 'step', 'drive', 'area', 'number']),
	at: pointSchema,
	model: maybe(modelId),
	aim: maybe(aimSchema)
});
/** The plan overruled by hand, on the layout page. */
export const fixturesSchema = z.strictObject({
	set: list(fixtureEditSchema),
	added: list(addedFixtureSchema)
});

/** Figures of rules as the person has them, by rule and figure: `path.spacing/spacing`. Which apply, and within what range, the plan says. */
export const ruleFiguresSchema = z.record(
	z.string().check(z.minLength(1), z.maxLength(60)),
	z.number().check(z.minimum(-1e6), z.maximum(1e6))
);

/** SHA-256 of a picture's bytes, in hexadecimal. */
const pictureId = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const pixels = z.number().check(z.minimum(0), z.maximum(20000));
/** A picture of the property under the drawing: a photo from above, a scan, a plat. The bytes lie beside the yard, under `picture`. */
export const underlaySchema = z.strictObject({
	name: maybe(name),
	picture: pictureId,
	/** Of the picture, in its own pixels. */
	width: z.number().check(z.multipleOf(1), z.minimum(1), z.maximum(20000)),
	height: z.number().check(z.multipleOf(1), z.minimum(1), z.maximum(20000)),
	opacity: within(0.05, 1),
	hidden: maybe(z.boolean()),
	/** Two places on the picture, in its pixels from its upper left corner, and how far apart they are in the yard: its scale. */
	from: maybe(z.strictObject({ x: pixels, y: pixels })),
	to: maybe(z.strictObject({ x: pixels, y: pixels })),
	apart: maybe(length(0.1, limits.reach)),
	/** Where `from` lies in the yard. */
	at: maybe(pointSchema),
	/** Degrees clockwise by which the picture is turned about `from`. */
	turn: maybe(within(0, 360))
});
/** Pictures that travel in a file with the yard, as data addresses. In hand they lie in the browser's store instead. */
export const picturesSchema = z.record(
	pictureId,
	z.string().check(z.regex(/^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/]+=*$/))
);

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
	power: powerSchema,
	fixtures: maybe(fixturesSchema),
	rules: maybe(ruleFiguresSchema),
	underlay: maybe(underlaySchema),
	/** Steps of the checklist that are done, by their ids. */
	done: maybe(z.array(z.string().check(z.minLength(1), z.maxLength(120))).check(z.maxLength(1000))),
	pictures: maybe(picturesSchema)
});

export type Yard = z.infer<typeof yardSchema>;
export type Underlay = z.infer<typeof underlaySchema>;
export type YardPoint = z.infer<typeof pointSchema>;
export type YardTree = z.infer<typeof treeSchema>;
export type YardWalk = z.infer<typeof walkSchema>;
export type YardDrive = z.infer<typeof driveSchema>;
export type RunChoice = z.infer<typeof runChoiceSchema>;
export type RunLink = z.infer<typeof linkSchema>;
export type CircuitChoice = z.infer<typeof circuitChoiceSchema>;
export type OwnLamp = z.infer<typeof ownLampSchema>;
export type FixtureEdit = z.infer<typeof fixtureEditSchema>;
export type AddedFixture = z.infer<typeof addedFixtureSchema>;
export type HandFixtures = z.infer<typeof fixturesSchema>;
export type YardSection = z.infer<typeof sectionSchema>;
export type YardOpening = z.infer<typeof openingSchema>;
/** Spelt out, since the plan's JSON Schema is made from types; the parts of `Yard` that use them hold them equal. */
export type Hours =
	| { kind: 'dusk-to-dawn' }
	| { kind: 'after-dusk'; hours: number }
	| { kind: 'until'; clock: string }
	| { kind: 'split'; evening: string; morning: string };
/** Months and days as `MM-DD`. */
export interface Season {
	from: string;
	to: string;
	hours: Hours;
}
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
