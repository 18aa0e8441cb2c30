/** The fields of a line's form, by its kind: the file's own columns, so that what is typed and what is read agree. */
import type { Field } from '$lib/shelf';
import {
	cableField,
	cableSets,
	lightField,
	lightSets,
	type CableField,
	type CableSet,
	type LightField,
	type LightSet
} from '$lib/shelf/fields';
import type { LineKind } from '$lib/domain/kits/types';
import type { ChoiceOption } from '$lib/ui/types';
import { fixtureKinds, fixtureName } from './contents-words';

/** What is typed in a line, by the name of its column. A field that is absent is empty. */
export type Cells = Partial<Record<Field, string>>;

export interface FormField {
	field: Field;
	label: string;
	kind: 'text' | 'number' | 'count' | 'choice';
	example?: string;
	help?: string;
	unit?: string;
	options?: ChoiceOption[];
	isLong?: boolean;
}
export interface FormGroup {
	id: string;
	title: string;
	help?: string;
	fields: FormField[];
}
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const lightOptions = fixtureKinds.map((value) => ({ value, label: capital(fixtureName(value)) }));
const sourceOptions = [
	{ value: 'led', label: 'LED' },
	{ value: 'halogen', label: 'Halogen' }
];

const basics: FormField[] = [
	{ field: 'code', label: 'Stock code', kind: 'text', example: '0017' },
	{ field: 'name', label: 'Name', kind: 'text', isLong: true },
	{ field: 'price', label: 'Price of one', kind: 'number', example: '24.90' },
	{ field: 'stock', label: 'How many are there', kind: 'number', help: 'Empty: as many as are wanted.' },
	{ field: 'place', label: 'Place in the shop', kind: 'text', example: 'Aisle 4, bay 2' }
];
type Described<Base> = Omit<FormField, 'field'> & { base: Base };
const lamp: Described<LightField>[] = [
	{ base: 'light', label: 'Kind of light', kind: 'choice', options: lightOptions },
	{ base: 'source', label: 'Kind of lamp', kind: 'choice', options: sourceOptions },
	{ base: 'watts', label: 'Power of one', unit: 'W', kind: 'number', example: '4' },
	{ base: 'lumens', label: 'Light of one', unit: 'lm', kind: 'number', example: '280' },
	{ base: 'va', label: 'Drawn by one', unit: 'VA', kind: 'number', help: 'Empty: worked out from the watts.' },
	{ base: 'beam', label: 'Beam angle', kind: 'number', example: '36°', help: 'Empty: not told.' },
	{ base: 'volts', label: 'Volts it works at', kind: 'text', example: '9-15', help: 'Empty: usual for its lamp.' },
	{ base: 'colour', label: 'Colour', unit: 'K', kind: 'number', example: '2700', help: 'Empty: not told.' }
];
const inKit: Described<LightField>[] = [
	{ base: 'count', label: 'How many in the kit', kind: 'count' },
	{
		base: 'same as',
		label: 'Same light as',
		kind: 'text',
		help: 'Code of the loose fixture that is the same light. Its figures then hold, and the rest may stay empty.'
	}
];
const cable: Described<CableField>[] = [
	{ base: 'cable', label: 'Size', kind: 'text', example: '16 AWG' },
	{ base: 'cable length', label: 'Length of one piece', kind: 'text', example: '50 ft' },
	{ base: 'cable pieces', label: 'Pieces', kind: 'count' }
];
const lights = (set: LightSet, described: Described<LightField>[]): FormField[] =>
	described.map(({ base, ...rest }) => ({ ...rest, field: lightField(base, set) }));
const cables = (set: CableSet): FormField[] =>
	cable.map(({ base, ...rest }) => ({ ...rest, field: cableField(base, set) }));

const transformer: FormField[] = [
	{ field: 'transformer va', label: 'Rating', unit: 'VA', kind: 'number', example: '150' },
	{ field: 'taps', label: 'Taps', unit: 'V', kind: 'text', example: '12, 13, 14, 15' },
	{ field: 'secondaries', label: 'Secondary circuits', kind: 'number', help: 'Empty: one.' },
	{ field: 'regulation', label: 'Sag at full load', kind: 'text', example: '5 %', help: 'Empty: usual.' }
];
const connectors: FormField = { field: 'connectors', label: 'Connectors in one', kind: 'count' };

/** How much of a kit's form there is. */
export interface FormSize {
	lightKinds: number;
	cableKinds: number;
	/** Whether a loose line tells the figures of a kind of light: then they are not asked. */
	isKnown: (set: LightSet) => boolean;
}
/** Groups of a line's form. What a kit does not hold stays empty. */
export function formGroups(kind: LineKind, { lightKinds, cableKinds, isKnown }: FormSize): FormGroup[] {
	const base: FormGroup = { id: 'line', title: 'The line', fields: basics };
	switch (kind) {
		case 'fixture':
			return [
				base,
				{
					id: 'light',
					title: 'The light',
					fields: [...lights(1, lamp), { field: 'count', label: 'How many in a pack', kind: 'count' }]
				}
			];
		case 'transformer':
			return [base, { id: 'transformer', title: 'The transformer', fields: transformer }];
		case 'cable':
			return [base, { id: 'cable', title: 'The cable', fields: cables(1) }];
		case 'connectors':
			return [base, { id: 'connectors', title: 'The connectors', fields: [connectors] }];
		case 'kit':
			return [
				base,
				...lightSets.slice(0, lightKinds).map((set) => ({
					id: `light-${set}`,
					title: lightKinds === 1 ? 'Its lights' : `Its lights, kind ${set}`,
					fields: lights(set, isKnown(set) ? inKit : [...inKit, ...lamp])
				})),
				{
					id: 'transformer',
					title: 'Its transformer',
					help: 'All empty: there is none in it.',
					fields: transformer
				},
				...cableSets.slice(0, cableKinds).map((set) => ({
					id: `cable-${set}`,
					title: cableKinds === 1 ? 'Its cable' : `Its cable, kind ${set}`,
					help: 'All empty: there is none in it.',
					fields: cables(set)
				})),
				{ id: 'connectors', title: 'Its connectors', fields: [connectors] }
			];
	}
}
/** How many groups of a kit's cells are begun, at least one. */
const setsUsed = (cells: Cells, bases: RegExp): number =>
	Object.entries(cells).reduce((most, [field, text]) => {
		const [, set] = bases.exec(field) ?? [];
		return text?.trim() && bases.test(field) ? Math.max(most, Number(set ?? 1)) : most;
	}, 1);
export const lightKindsIn = (cells: Cells): number =>
	setsUsed(cells, /^(?:light|count|same as|source|watts|va|lumens|beam|volts|colour)(?: (\d))?$/);
export const cableKindsIn = (cells: Cells): number =>
	setsUsed(cells, /^(?:cable|cable length|cable pieces)(?: (\d))?$/);
