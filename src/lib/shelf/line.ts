/** Cells to a line of the shelf. A typed line is read by the same words as a row of a file. */
import type { Contents, FixtureKind, LineKind, ShelfLine } from '../domain/kits/types';
import type { Field } from './fields';
import { cableIn, connectorsIn, hasCable, kitCables, transformerIn } from './goods';
import { hasLight, kitLights, looseLight } from './lights';
import { emptyContext, Row, type Cells, type Context, type Said } from './row';
import { isFormula } from './safe-cell';
import { readPrice, readStock } from './values/money';
import { quoted } from './values/types';
import { lightKindOf, lineKindOf } from './values/words';

export interface ReadLine {
	/** Null: it cannot be taken; `said` has why. */
	line: ShelfLine | null;
	said: Said[];
	/** As it stood by the price or in a column of its own. */
	currency: string | null;
}
const empty = (): Contents => ({ fixtures: [], transformer: null, cable: [], connectors: 0 });
/** Longest texts, letters; no cell of a line is longer than `any`, which also keeps reading quick. */
export const longest = { code: 60, name: 200, place: 100, currency: 12 } as const;
const any = 300;
const tooLong = (letters: number) =>
	`This is longer than ${letters} letters. A quotation mark may be missing further up.`;

function textOf(row: Row, field: keyof typeof longest): string {
	const text = row.text(field);
	if (text.length > longest[field]) row.stop(field, tooLong(longest[field]));
	if (isFormula(text))
		row.look(field, `${quoted(text)} begins like a formula. It was kept as text and never worked out.`);
	return text;
}
/** What a spreadsheet makes of a long code of digits, or of one like 1E5. */
const spoilt = /^\d(?:[.,]\d+)?E\+\d+$/i;
function codeOf(row: Row): string {
	const code = textOf(row, 'code');
	if (code === '') row.stop('code', 'The stock code is missing. Write it as it stands on the label.');
	if (spoilt.test(code))
		row.look(
			'code',
			`${quoted(code)} looks like a number that a spreadsheet made of the code. Compare it with the label.`
		);
	return code;
}

interface Kind {
	kind: LineKind;
	/** Where the type itself says what kind of light it is. */
	light: FixtureKind | null;
}
const kindWords = 'kit, fixture, transformer, cable or connectors';
/** What is in a row says what kind of line it is, where nothing else does. */
function kindByContents(row: Row): Kind | null {
	const has: Record<Exclude<LineKind, 'kit'>, boolean> = {
		fixture: hasLight(row),
		transformer: row.has('transformer va'),
		cable: hasCable(row),
		connectors: row.has('connectors')
	};
	const found = (Object.keys(has) as (keyof typeof has)[]).filter((kind) => has[kind]);
	const kind = found.length > 1 ? 'kit' : found[0];
	if (!kind) return row.stop('type', `What it is is missing. Write ${kindWords}.`);
	row.look('type', `The type is not told: taken as ${kind}, by what is in it.`, 'none-told');
	return { kind, light: null };
}
function kindOf(row: Row): Kind | null {
	const text = row.text('type');
	if (text === '') return kindByContents(row);
	const kind = lineKindOf(text);
	if (kind) return { kind, light: null };
	const light = lightKindOf(text);
	if (light) return { kind: 'fixture', light };
	return row.stop('type', `${quoted(text)} is nothing that is known here. Write ${kindWords}.`);
}

function kitContents(row: Row, code: string): Contents {
	const contents: Contents = {
		fixtures: kitLights(row, code),
		transformer: row.has('transformer va') ? transformerIn(row) : null,
		cable: kitCables(row),
		connectors: connectorsIn(row) ?? 0
	};
	const { fixtures, transformer, cable, connectors } = contents;
	if (row.isStopped) return contents;
	if (fixtures.length === 0 && !transformer && cable.length === 0 && connectors === 0)
		row.stop(null, 'This kit holds nothing. Write its lights, transformer, cable and connectors.');
	else if (fixtures.length === 0) row.look('light', 'This kit has no lights. See whether that is right.');
	if (!transformer)
		row.look('transformer va', 'This kit has no transformer: it is taken as one that adds to another.', 'none-told');
	return contents;
}
/** The column that has a figure under its own name, else under a plain one: `VA` of a transformer, `Count` of connectors. */
const either = (row: Row, own: Field, ...others: Field[]): Field =>
	[own, ...others].find((field) => row.has(field)) ?? own;

const contentsOf: Record<LineKind, (row: Row, code: string, light: FixtureKind | null) => Contents> = {
	kit: kitContents,
	fixture(row, code, kind) {
		const light = looseLight(row, code, kind);
		return { ...empty(), fixtures: light ? [light] : [] };
	},
	transformer: (row) => ({
		...empty(),
		transformer: transformerIn(row, either(row, 'transformer va', 'va', 'watts'), either(row, 'taps', 'volts'))
	}),
	cable(row) {
		const cable = cableIn(row, 1, either(row, 'cable pieces', 'count'));
		return { ...empty(), cable: cable ? [cable] : [] };
	},
	connectors(row) {
		const field = either(row, 'connectors', 'count');
		const connectors = connectorsIn(row, field);
		if (connectors === null || connectors === 0) row.stop('connectors', 'How many connectors are in one is missing.');
		return { ...empty(), connectors: connectors ?? 0 };
	}
};

/**
 * A line from its cells; `context` is what the rest of the list says (absent: nothing). Never throws. With nothing of rank `stop` said
 * there is a line. Lights that it defines are put into the context's products.
 */
export function lineFromCells(cells: Cells, context: Context = emptyContext()): ReadLine {
	const row = new Row(cells, context);
	for (const [field, { length }] of cells) if (length > any) row.stop(field, tooLong(any));
	if (row.isStopped) return { line: null, said: row.said, currency: null };
	const kind = kindOf(row);
	const code = codeOf(row);
	const name = textOf(row, 'name');
	if (name === '') row.look('name', 'The name is missing: the code stands for it.', 'none-told');
	const price = row.take('price', readPrice(row.text('price')));
	const stock = row.take('stock', readStock(row.text('stock')), 'look');
	const place = textOf(row, 'place');
	const currency = textOf(row, 'currency') || price?.currency || null;
	const contents = kind && code ? contentsOf[kind.kind](row, code, kind.light) : null;
	const isTaken = kind && price && contents && !row.isStopped;
	const line: ShelfLine | null = isTaken
		? { code, kind: kind.kind, name: name || code, cents: price.cents, stock, place: place || null, contents }
		: null;
	return { line, said: row.said, currency };
}
