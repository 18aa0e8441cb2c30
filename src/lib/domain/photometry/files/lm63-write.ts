import type { CandelaTable } from '../table';

export interface Lm63Words {
	edition?: '1986' | '1991' | '1995' | '2002' | '2019';
	name: string;
	/** Lumens of one lamp; absent: absolute photometry. */
	lampLumens?: number;
	lamps?: number;
	watts?: number;
	/** Luminous opening, metres. */
	opening?: { width: number; length: number; height: number };
}

const versionLines = {
	'1986': [],
	'1991': ['IESNA91'],
	'1995': ['IESNA:LM-63-1995'],
	'2002': ['IESNA:LM-63-2002'],
	'2019': ['IES:LM-63-2019']
} as const;

/** A table as an LM-63 file, in metres, every digit kept. ASCII: other characters of the name become question marks. */
export function writeLm63(table: CandelaTable, words: Lm63Words): string {
	const { edition = '2002', lamps = 1, lampLumens = -1, watts = 0 } = words;
	const { width, length, height } = words.opening ?? { width: 0, length: 0, height: 0 };
	const name = words.name.replace(/[^\u0020-\u007E]/g, '?').slice(0, 70);
	const rings = table.vertical.length;
	const head = edition === '1986' ? [name] : ['[TEST] none', `[LUMINAIRE] ${name}`];
	return [
		...versionLines[edition],
		...head,
		'TILT=NONE',
		`${lamps} ${lampLumens} 1 ${rings} ${table.horizontal.length} 1 2 ${width} ${length} ${height}`,
		// 2019: 1.00001 says that nothing is known of how it was made.
		`1 ${edition === '2019' ? '1.00001' : 1} ${watts}`,
		...wrapped(table.vertical),
		...wrapped(table.horizontal),
		...table.horizontal.flatMap((_, plane) => wrapped([...table.candela.subarray(plane * rings, (plane + 1) * rings)])),
		''
	].join('\r\n');
}

/** Lines of at most 80 characters, the least that an edition allows (1986). */
function wrapped(values: readonly number[]): string[] {
	const lines: string[] = [];
	let line = '';
	for (const value of values) {
		const word = String(value);
		if (line !== '' && line.length + 1 + word.length > 80) {
			lines.push(line);
			line = '';
		}
		line = line === '' ? word : `${line} ${word}`;
	}
	return [...lines, line];
}
