/**
 * Reads EULUMDAT files (.ldt): A. W. Stockmar, Licht '90, pp. 641–644, by the line lists of two stored web copies (seen); negative
 * numbers of lamps for absolute photometry from an agreement of 2009 (seen second-hand). One value a line.
 */
import type { CandelaTable } from '../table';
import { lampSetsOf, type LampSet } from './eulumdat-lamps';
import { Lines } from './eulumdat-lines';
import { planesOf } from './eulumdat-planes';
import { closed, finish } from './finish';
import { ascending, clean, limits, listOf, reading, type FileRead, type FileResult } from './reading';

/** What an EULUMDAT file says, or the line and field that are wrong. Never throws on bad input. Text of at most 2 MB, 400 × 400 angles. */
export const readEulumdat = (text: string): FileResult => reading(text, read);

function read(all: string[]): FileRead {
	const lines = new Lines(all);
	const notes: string[] = [];
	const maker = clean(lines.text('company'));
	lines.number('type indicator', { min: 0, max: 3, whole: true });
	const isym = lines.number('symmetry indicator', { min: 0, max: 4, whole: true });
	const mc = lines.number('number of C-planes', { min: 1, max: limits.angles, whole: true });
	lines.spare('distance between C-planes');
	const ng = lines.number('number of intensities in each C-plane', { min: 2, max: limits.angles, whole: true });
	lines.spare('distance between intensities in a C-plane');
	lines.text('measurement report');
	const name = clean(lines.text('luminaire name'));
	const number = clean(lines.text('luminaire number'));
	lines.text('file name');
	lines.text('date and user');
	const sizes = sizeFields.map((field) => lines.spare(field));
	lines.spare('downward flux fraction');
	const ratio = lines.spare('light output ratio');
	const conversion = lines.number('conversion factor for intensities', { min: 0, above: true });
	const tilt = lines.spare('tilt of the luminaire during measurement');
	const lamps = lampSetsOf(lines, notes);
	for (let i = 1; i <= 10; i++) lines.spare(`direct ratio ${i} of 10`);
	const factor = (conversion * lamps.lumens) / 1000;
	const { table, line } = tableOf(lines, isym, mc, ng, factor, notes);
	if (conversion !== 1) notes.push(`Its intensities were multiplied by its conversion factor, ${conversion}.`);
	if (tilt !== 0) notes.push(`It was measured tilted by ${tilt}°; its angles are taken as they stand.`);
	return finish(closed(table, notes), aboutOf(name || number, maker, lamps, ratio, sizes), notes, line);
}

const sizeFields = [
	'length of the luminaire',
	'width of the luminaire',
	'height of the luminaire',
	'length of the luminous area',
	'width of the luminous area',
	'height of the luminous area, C0',
	'height of the luminous area, C90',
	'height of the luminous area, C180',
	'height of the luminous area, C270'
];

function aboutOf(
	name: string,
	maker: string,
	set: LampSet,
	ratio: number,
	sizes: number[]
): Parameters<typeof finish>[1] {
	const absolute = set.lamps < 0;
	const [length, width, height] = [sizes[3]! / 1000, sizes[4]! / 1000, Math.max(...sizes.slice(5)) / 1000];
	return {
		format: 'EULUMDAT',
		edition: '',
		name,
		maker,
		lamp: set.type,
		statedLumens: ratio > 0 ? (set.lumens * ratio) / 100 : absolute ? set.lumens : null,
		lampLumens: absolute ? null : set.lumens,
		lamps: Math.max(1, Math.abs(set.lamps)),
		watts: set.watts > 0 ? set.watts : null,
		// Millimetres; a width of 0 says round, which LM-63 says by a negative diameter.
		opening: { width: width === 0 ? -length : width, length: width === 0 ? 0 : length, height }
	};
}

function tableOf(
	lines: Lines,
	isym: number,
	mc: number,
	ng: number,
	factor: number,
	notes: string[]
): { table: CandelaTable; line: number } {
	const c = listOf(lines, mc, 'C angles', { min: 0, max: 360 });
	ascending(c.values, c.lines, 'C angles');
	const g = listOf(lines, ng, 'vertical angles', { min: 0, max: 180 });
	ascending(g.values, g.lines, 'vertical angles');
	const end = g.values.at(-1)!;
	if (end !== 90 && end !== 180) notes.push(`Nothing was measured beyond ${end}°; it is taken as dark.`);
	if (g.values[0] !== 0) notes.push(`Nothing was measured within ${g.values[0]}° of its axis; it is taken as dark.`);
	const planes = planesOf(isym, c.values, c.lines, notes);
	const candela = new Float64Array(planes.stored.length * ng);
	const line = lines.line + 1;
	for (let k = 0; k < planes.stored.length; k++) {
		// `place` puts planes that the file lists against the order of the table where they belong.
		const at = planes.place[k]! * ng;
		for (let i = 0; i < ng; i++) {
			const field = (): string => `intensity at C ${planes.stored[k]}°, vertical ${g.values[i]}°`;
			candela[at + i] = lines.number(field, candelaRange) * factor;
		}
	}
	const left = lines.all.slice(lines.line).filter((text) => text.trim() !== '').length;
	if (left > 0) notes.push(`${left} ${left === 1 ? 'line' : 'lines'} after the last intensity were left unread.`);
	return { table: { vertical: g.values, horizontal: planes.horizontal, symmetry: planes.symmetry, candela }, line };
}
const candelaRange = { min: 0 } as const;
