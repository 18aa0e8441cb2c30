/**
 * The one file format of ours, and every name a column may have in it. A field's name is its heading in the file.
 *
 * One row is one line of the shelf. `type` is kit, fixture, transformer, cable or connectors. Of the other columns a row fills those
 * that say what is in it, and a kit fills several groups:
 *
 *   every row    type, code, name, price, currency, stock, place, shelf name
 *   lights       light (spot, well, wash, path, marker, step), count, same as, source, watts, va, lumens, beam, volts, colour
 *   transformer  transformer va, taps, secondaries, regulation
 *   cable        cable (16 AWG, 2.5 mm²), cable length (50 ft, 15 m), cable pieces
 *   connectors   connectors
 *
 * A second kind of light in a kit has the same columns with a 2 behind: `light 2`, `watts 2`; up to 6. A second cable: `cable 2`; up
 * to 3. `same as` holds the code of the loose line that is the same light; the other columns of that light may then be left empty.
 * In a loose line `count` is how many are in one pack.
 */
const plainFields = [
	'type',
	'code',
	'name',
	'price',
	'currency',
	'stock',
	'place',
	'shelf name',
	'transformer va',
	'taps',
	'secondaries',
	'regulation',
	'connectors'
] as const;
const lightFields = [
	'light',
	'count',
	'same as',
	'source',
	'watts',
	'va',
	'lumens',
	'beam',
	'volts',
	'colour'
] as const;
const cableFields = ['cable', 'cable length', 'cable pieces'] as const;

type Plain = (typeof plainFields)[number];
export type LightField = (typeof lightFields)[number];
export type CableField = (typeof cableFields)[number];
export type LightSet = 1 | 2 | 3 | 4 | 5 | 6;
export type CableSet = 1 | 2 | 3;
export type Field =
	Plain | LightField | CableField | `${LightField} ${Exclude<LightSet, 1>}` | `${CableField} ${Exclude<CableSet, 1>}`;

export const lightSets: readonly LightSet[] = [1, 2, 3, 4, 5, 6];
export const cableSets: readonly CableSet[] = [1, 2, 3];
export const lightField = (base: LightField, set: LightSet): Field => (set === 1 ? base : `${base} ${set}`);
export const cableField = (base: CableField, set: CableSet): Field => (set === 1 ? base : `${base} ${set}`);

/** Every field, in the order in which a file of ours has its columns. */
export const fields: readonly Field[] = [
	...plainFields.slice(0, 8),
	...lightSets.flatMap((set) => lightFields.map((base) => lightField(base, set))),
	...plainFields.slice(8, 12),
	...cableSets.flatMap((set) => cableFields.map((base) => cableField(base, set))),
	'connectors'
];
const known: ReadonlySet<string> = new Set(fields);
/** Whether a text is one of the fields' names. */
export const isField = (text: string): text is Field => known.has(text);

const words: Record<Plain | LightField | CableField, string> = {
	type: 'Type: kit, fixture, transformer, cable, connectors',
	code: 'Stock code',
	name: 'Name',
	price: 'Price of one',
	currency: 'Currency',
	stock: 'How many there are',
	place: 'Place in the shop',
	'shelf name': 'Name of the shelf',
	light: 'Kind of light',
	count: 'How many lights or pieces in one',
	'same as': 'Same light as (its code)',
	source: 'LED or halogen',
	watts: 'Watts of one light',
	va: 'VA of one light',
	lumens: 'Lumens of one light',
	beam: 'Beam angle',
	volts: 'Volts it works at',
	colour: 'Colour of the light, kelvin',
	'transformer va': 'VA of the transformer',
	taps: 'Taps of the transformer, volts',
	secondaries: 'Secondary circuits',
	regulation: 'Sag at full load',
	cable: 'Cable size',
	'cable length': 'Length of one cable',
	'cable pieces': 'How many cables',
	connectors: 'Connectors in one'
};
/** A field as it is offered to a person. */
export function fieldWords(field: Field): string {
	const [, base = field, set] = /^(.*?)(?: ([2-9]))?$/.exec(field) ?? [];
	const said = (words as Record<string, string>)[base] ?? base;
	if (!set) return said;
	return `${said} (${base.startsWith('cable') ? 'cable' : 'light'} ${set})`;
}
