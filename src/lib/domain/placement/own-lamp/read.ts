/** From the text of a photometric file to a lamp of the person's own. */
import { readEulumdat, readLm63, thinned, turned, type FileRead, type FileRefused } from '../../photometry';
import type { OwnLamp } from '../../yard';
import { faultOf } from './check';
import { ownName } from './models';

export type OwnLampRead =
	| {
			ok: true;
			/** Without the id, which the yard it goes into gives it. */
			lamp: Omit<OwnLamp, 'id'>;
			format: FileRead['about']['format'];
			/** What is odd in the file, or was done to it; whole sentences. */
			notes: string[];
	  }
	/** A whole sentence or two; of a bad file with its line and field. */
	| { ok: false; message: string };

/** What the yard holds of a table: `ownLampSchema`. */
const most = { vertical: 181, horizontal: 73, values: 6000, candela: 1e6 } as const;
const watts = { least: 0.1, most: 100 } as const;
const longestName = 60;
/** Off by less than this share of the greatest candela, a thinned table needs no word (our figure). */
const fine = 0.001;

/** By its content, whatever the name of the file; null where it is neither. */
function formatOf(text: string): 'LM-63' | 'EULUMDAT' | null {
	const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/, 400);
	const first = lines.find((line) => line.trim() !== '') ?? '';
	if (/^\s*IES(?:NA)?[:\d]/i.test(first) || lines.some((line) => /^\s*TILT\s*=/i.test(line))) return 'LM-63';
	const whole = (line: string | undefined, top: number): boolean =>
		/^\s*\d\s*$/.test(line ?? '') && Number(line) <= top;
	return whole(lines[1], 3) && whole(lines[2], 4) ? 'EULUMDAT' : null;
}

/**
 * The lamp of an LM-63 or EULUMDAT file, to stand for the models `forModels` (at least one), its axis along the beam; or what
 * is wrong with the file. `fallback`: its name where the file gives none. Candela are kept to four digits, and of a table
 * larger than a yard holds fewer directions with the same lumens. Never throws on bad text.
 */
export function ownLampOf(text: string, forModels: readonly string[], fallback = ''): OwnLampRead {
	if (text.trim() === '') return refused('This file is empty.');
	const format = formatOf(text);
	if (format === null)
		return refused(
			'This is no photometric file that can be read here. A file of LM-63 (.ies) has a line that begins with TILT=; one of EULUMDAT (.ldt) has a whole number from 0 to 3 on line 2 and from 0 to 4 on line 3.'
		);
	const read: FileRead | FileRefused = format === 'LM-63' ? readLm63(text) : readEulumdat(text);
	return read.ok ? lampOf(read, forModels, fallback) : refused(read.message);
}
const refused = (message: string): OwnLampRead => ({ ok: false, message });

function lampOf({ about, table, notes }: FileRead, forModels: readonly string[], fallback: string): OwnLampRead {
	if (about.peak.candela > most.candela)
		return refused(
			`Its candela come to ${about.peak.candela.toExponential(1)} at the most, more than a million: no garden lamp. Its multipliers may be wrong.`
		);
	if (about.watts !== null && about.watts > watts.most)
		return refused(
			`It draws ${about.watts} W. Lamps for a 12 V garden draw ${watts.most} W at the most: this is a mains floodlight, or the file of another lamp.`
		);
	const { table: fewer, off } = thinned(about.turned ? turned(table) : table, most);
	const { vertical, horizontal, symmetry } = fewer;
	const lamp: Omit<OwnLamp, 'id'> = {
		name: cut(about.name || about.lamp || fallback),
		for: [...forModels],
		...(about.watts === null || about.watts < watts.least ? {} : { watts: about.watts }),
		vertical: [...vertical],
		horizontal: [...horizontal],
		symmetry,
		candela: Array.from(fewer.candela, (value) => Math.min(most.candela, Number(value.toPrecision(4))))
	};
	const fault = faultOf({ ...lamp, id: 'own' });
	if (fault !== null) return refused(`“${ownName(lamp)}” ${fault}.`);
	const less =
		off > fine
			? [
					`Its ${table.vertical.length} × ${table.horizontal.length} directions are more than a yard keeps: ${vertical.length} × ${horizontal.length} of them are kept, with its lumens. At the others it is off by up to ${(100 * off).toFixed(1)} % of its greatest candela.`
				]
			: [];
	return { ok: true, lamp, format: about.format, notes: [...notes, ...less] };
}
const cut = (name: string): string =>
	name.length > longestName ? `${name.slice(0, longestName - 1).trimEnd()}…` : name;
