/** From the table of a file to what the rest of the house uses. */
import { tableLumens, tablePhotometry, turned, type CandelaTable } from '../table';
import { limits, Refusal, type FileAbout, type FileRead } from './reading';

/** Less than this share of the lumens goes below the horizontal: the file is of a light that looks up (our figure). */
const looksUp = 0.01;
/** Apart by more than this, lumens stated and integrated are worth a word (our figure). */
const apart = 0.02;
/** A brightest direction further than this off the axis, degrees, is (our figure). */
const offAxis = 20;

export type Known = Omit<FileAbout, 'lumens' | 'centre' | 'peak' | 'turned'>;

/** `line` is that of the first candela value. */
export function finish(table: CandelaTable, known: Known, notes: string[], line: number): FileRead {
	const peak = peakOf(table);
	if (peak.candela <= 0) throw new Refusal(line, 'candela', 'all values are zero: the file describes no light.');
	if (peak.candela > limits.value)
		throw new Refusal(line, 'candela', `with its multipliers it comes to more than ${limits.value} cd.`);
	const lumens = tableLumens(table);
	const up = tableLumens(table, 0, 90) < looksUp * lumens;
	const used = up ? turned(table) : table;
	const photometry = tablePhotometry(used);
	const about: FileAbout = {
		...known,
		lumens,
		centre: photometry.candela(1, 0),
		peak: up ? { ...peak, vertical: 180 - peak.vertical, horizontal: (360 - peak.horizontal) % 360 } : peak,
		turned: up
	};
	return { ok: true, photometry, table, about, notes: [...notes, ...remarks(about)] };
}

function peakOf({ vertical, horizontal, candela }: CandelaTable): FileAbout['peak'] {
	let best = 0;
	for (let i = 1; i < candela.length; i++) if (candela[i]! > candela[best]!) best = i;
	const plane = Math.floor(best / vertical.length);
	return {
		candela: candela[best]!,
		vertical: vertical[best - plane * vertical.length]!,
		horizontal: horizontal[plane]! % 360
	};
}

function remarks({ lumens, statedLumens, lampLumens, turned, peak, centre }: FileAbout): string[] {
	const notes: string[] = [];
	const whole = Math.round(lumens);
	if (turned) notes.push('Its light goes up, so straight up is taken as the axis of the beam.');
	if (peak.vertical > offAxis && peak.candela > centre * 1.02)
		notes.push(`It is brightest ${peak.vertical}° off its axis, not along it: aim it by that.`);
	if (statedLumens !== null && statedLumens > 0 && Math.abs(lumens / statedLumens - 1) > apart) {
		const percent = Math.round(Math.abs(lumens / statedLumens - 1) * 100);
		notes.push(
			`Its candela add up to ${whole} lm, ${percent} % ${lumens > statedLumens ? 'more' : 'less'} than the ${Math.round(statedLumens)} lm it states. The candela are used.`
		);
	}
	if (lampLumens !== null && lumens > lampLumens * (1 + apart))
		notes.push(
			`Its candela add up to ${whole} lm, more than the ${Math.round(lampLumens)} lm of its lamps: its multipliers may be wrong.`
		);
	return notes;
}

/** A plane at 360 degrees closes the circle: the one at 0 where the file does not list it. */
export function closed(table: CandelaTable, notes: string[]): CandelaTable {
	const { vertical, horizontal, candela } = table;
	if (table.symmetry !== 'none') return table;
	const rings = vertical.length;
	if (horizontal.at(-1) === 360) {
		const last = candela.subarray(candela.length - rings);
		const most = candela.reduce((a, b) => Math.max(a, b), 0);
		if (last.some((value, i) => Math.abs(value - candela[i]!) > 0.01 * most))
			notes.push('Its planes at 0° and 360° are the same plane, yet differ by more than 1 %.');
		return table;
	}
	const whole = new Float64Array(candela.length + rings);
	whole.set(candela);
	whole.set(candela.subarray(0, rings), candela.length);
	return { ...table, horizontal: [...horizontal, 360], candela: whole };
}
