/** Whatever the text, a reader gives a result: 600 files each in `npm test`, 20,000 with LONG=1. */
import { describe, expect, it } from 'vitest';
import { readEulumdat, readLm63, writeEulumdat, writeLm63, type FileResult } from '../index';
import { seeded, steps, tableOf } from '../photometry.testing';

const runs = process.env.LONG ? 20_000 : 600;
const table = tableOf((g, c) => 200 - g + c / 10, steps(0, 180, 30), steps(0, 180, 45), 'bilateral');
const formats = [
	['LM-63', readLm63, writeLm63(table, { name: 'Fuzz', lampLumens: 800 })],
	['EULUMDAT', readEulumdat, writeEulumdat(table, { name: 'Fuzz' })]
] as const;

/** What may be asked of any result. */
function holds(result: FileResult, text: string): void {
	if (!result.ok) {
		expect(result.line).toBeGreaterThanOrEqual(1);
		expect(result.line).toBeLessThanOrEqual(text.split(/\r\n|\r|\n/).length);
		expect(result.message.startsWith(`Line ${result.line}, ${result.field}: `)).toBe(true);
		return;
	}
	const { photometry, about } = result;
	expect(Number.isFinite(photometry.lumens) && photometry.lumens > 0).toBe(true);
	expect(Object.values(about).every((value) => typeof value !== 'number' || Number.isFinite(value))).toBe(true);
	for (const [x, c] of [
		[1, 0],
		[0, 90],
		[-1, 359],
		[0.3, 200]
	] as const) {
		const candela = photometry.candela(x, c);
		expect(candela >= 0 && candela <= about.peak.candela * (1 + 1e-9)).toBe(true);
	}
}

const words = [
	'0',
	'-1',
	'1e9',
	'1e-9',
	'9'.repeat(40),
	'NaN',
	'Infinity',
	'0x10',
	'',
	',',
	'.',
	'1,5',
	'400',
	'401',
	'\u0000',
	'[MORE]',
	'TILT=NONE',
	'90',
	'180',
	'360'
];

describe.each(formats)('%s', (_, read, good) => {
	it('random bytes', () => {
		const next = seeded(11);
		for (let run = 0; run < runs; run++) {
			const bytes = Array.from({ length: Math.floor(400 * next()) }, () =>
				String.fromCharCode(Math.floor(256 * next()))
			);
			const text = bytes.join('');
			holds(read(text), text);
		}
	});
	it('random numbers after a good beginning', () => {
		const next = seeded(12);
		const lines = good.split('\r\n');
		for (let run = 0; run < runs; run++) {
			const keep = Math.floor(lines.length * next());
			const rest = Array.from({ length: 60 }, () => words[Math.floor(words.length * next())]!);
			const text = [...lines.slice(0, keep), ...rest].join('\n');
			holds(read(text), text);
		}
	});
	it('good files with words put for others, letters changed, lines lost and doubled, the end cut off', () => {
		const next = seeded(13);
		const pick = (length: number): number => Math.floor(length * next());
		let taken = 0;
		for (let run = 0; run < runs; run++) {
			const lines = good.split('\r\n');
			for (let change = 1 + pick(4); change > 0; change--) {
				const at = pick(lines.length);
				const kind = pick(5);
				if (kind === 0) lines.splice(at, 1);
				else if (kind === 1) lines.splice(at, 0, lines[at]!);
				else if (kind === 2) lines.length = Math.max(1, at);
				else if (kind === 3) {
					const parts = lines[at]!.split(' ');
					parts[pick(parts.length)] = words[pick(words.length)]!;
					lines[at] = parts.join(' ');
				} else {
					const letter = pick(lines[at]!.length + 1);
					lines[at] = lines[at]!.slice(0, letter) + String.fromCharCode(32 + pick(96)) + lines[at]!.slice(letter + 1);
				}
				if (lines.length === 0) lines.push('');
			}
			const text = lines.join('\r\n');
			const result = read(text);
			if (result.ok) taken++;
			holds(result, text);
		}
		// Some changes hit names and counts that may be anything: the run exercises both ends.
		expect(taken).toBeGreaterThan(runs / 100);
		expect(taken).toBeLessThan(runs);
	});
	it('two million characters are read or refused in good time', () => {
		for (const unit of ['1 ', '\n', '[MORE] x\n', '[A] ', ',', '“', 'TILT=', '0\n']) {
			const text = good + unit.repeat(Math.floor((1_990_000 - good.length) / unit.length));
			const start = performance.now();
			holds(read(text), text);
			const before = unit.repeat(Math.floor((1_990_000 - good.length) / unit.length)) + good;
			holds(read(before), before);
			expect(performance.now() - start).toBeLessThan(5000);
		}
	});
});
