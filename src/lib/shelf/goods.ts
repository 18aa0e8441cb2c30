/** The transformer, the cable and the connectors in a row. */
import type { Contents, ShelfTransformer } from '../domain/kits/types';
import { rules } from '../domain/shared/rules';
import { cableField, cableSets, type CableSet, type Field } from './fields';
import type { Row } from './row';
import { readCableLength, readSize } from './values/cable';
import { readFigure } from './values/number';
import { quoted, refused, taken, type ReadValue } from './values/types';
import { readTaps } from './values/volts';

const usualTap = 12;

/** `5 %`, `0.05`: a share from 0 to 0.2. */
function readShare(text: string): ReadValue<number> {
	const isPercent = /%\s*$/.test(text);
	const read = readFigure(text.replace(/\s*%\s*$/, ''), { min: 0, max: 20, units: [] });
	if (!read.ok) return read;
	const share = isPercent || read.value >= 1 ? Number((read.value / 100).toFixed(6)) : read.value;
	return share <= 0.2 ? taken(share) : refused(`${quoted(text)} is no usual sag. Write it like 5 %.`);
}
function tapsOf(row: Row, field: Field): number[] {
	const text = row.text(field);
	const taps = text ? row.take(field, readTaps(text), 'look') : null;
	if (!taps) row.look(field, `Its taps are not told: one tap of ${usualTap} V was taken.`, 'none-told');
	return taps ?? [usualTap];
}
/** A transformer; `va` is the column that holds its rating. */
export function transformerIn(row: Row, va: Field = 'transformer va', taps: Field = 'taps'): ShelfTransformer | null {
	if (!row.has(va)) return row.stop('transformer va', 'The VA of the transformer are missing.');
	const rating = row.figure(va, { min: 5, max: 5000, units: ['VA', 'w', 'watt', 'watts'], isLarge: true });
	if (rating === null) return null;
	const sag = row.text('regulation');
	return {
		voltAmps: rating,
		taps: tapsOf(row, taps),
		secondaries: row.figure('secondaries', { min: 1, max: 12, units: [], isWhole: true }, 'look') ?? 1,
		regulation:
			(sag ? row.take('regulation', readShare(sag), 'look') : null) ?? rules['supply.regulation'].figures.taken
	};
}

/** One cable of a row; `pieces` is the column that counts it. */
export function cableIn(
	row: Row,
	set: CableSet,
	pieces: Field = cableField('cable pieces', set)
): Contents['cable'][number] | null {
	const [sizeField, lengthField] = [cableField('cable', set), cableField('cable length', set)];
	if (!row.has(sizeField))
		return row.stop(sizeField, 'The size of the cable is missing. Write it like 16 AWG or 2.5 mm².');
	const size = row.take(sizeField, readSize(row.text(sizeField), row.context.unitOf(sizeField).size));
	if (!row.has(lengthField))
		return row.stop(lengthField, 'The length of the cable is missing. Write it like 50 ft or 15 m.');
	if (!size) return null;
	const text = row.text(lengthField);
	const told = row.context.unitOf(lengthField).length ?? row.context.units;
	// Wire by gauge is sold by the foot, by cross-section by the metre (common practice, no source).
	const units = told ?? (size.system === 'awg' ? 'feet' : 'metres');
	const metres = row.take(lengthField, readCableLength(text, units));
	const count = row.figure(pieces, { min: 1, max: 1000, units: [], isWhole: true });
	if (metres === null || row.isStopped) return null;
	if (!told && /^[\d.,\s]+$/.test(text))
		row.look(
			lengthField,
			`${quoted(text)} has no unit: taken as ${units}, as the size is in ${size.system === 'awg' ? 'AWG' : 'mm²'}.`,
			'unit'
		);
	return { size, metres, count: count ?? 1 };
}
export const hasCable = (row: Row, set: CableSet = 1): boolean =>
	row.has(cableField('cable', set), cableField('cable length', set));
/** The cables of a kit. */
export const kitCables = (row: Row): Contents['cable'] =>
	cableSets
		.filter((set) => hasCable(row, set))
		.map((set) => cableIn(row, set))
		.filter((cable) => cable !== null);

/** How many connectors are in one; null where it is not told. */
export const connectorsIn = (row: Row, field: Field = 'connectors'): number | null =>
	row.figure(field, {
		min: 0,
		max: 10_000,
		units: ['connectors', 'pcs', 'pc', 'pieces', 'pack'],
		isWhole: true,
		isLarge: true
	});
