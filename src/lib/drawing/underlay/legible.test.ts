import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** Colours as the pages have them. */
const read = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');
const [page, over] = [read('../../../app.css'), read('./underlay.css')];

type Colour = [number, number, number];
const ofHex = (hex: string): Colour => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)) as Colour;
/** By day and by night, the later style sheet over the earlier. */
function token(name: string): [Colour, Colour] {
	const found = new RegExp(`--${name}:\\s*light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)`);
	const match = found.exec(over) ?? found.exec(page);
	if (!match) throw new Error(`No colour ${name}`);
	return [ofHex(match[1]!), ofHex(match[2]!)];
}
const veils = [...over.matchAll(/rgb\((\d+) (\d+) (\d+) \/ ([\d.]+)\)/g)].map(([, ...parts]) => parts.map(Number));

// WCAG 2.2, definitions of relative luminance and of contrast ratio (W3C Recommendation, 12 December 2024).
const linear = (channel: number) => {
	const c = channel / 255;
	return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
};
const luminance = ([r, g, b]: Colour) => 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
function contrast(a: Colour, b: Colour): number {
	const [low, high] = [luminance(a), luminance(b)].toSorted((x, y) => x - y) as [number, number];
	return (high + 0.05) / (low + 0.05);
}

describe.each([
	['day', 0],
	['night', 1]
] as const)('lines over a picture at full strength, by %s', (_, theme) => {
	const [r = 0, g = 0, b = 0, alpha = 0] = veils[theme] ?? [];
	/** Blending is channel by channel, so no pixel comes out darker than black does, or lighter than white. */
	const veiled = (pixel: Colour): Colour =>
		pixel.map((channel, i) => channel * (1 - alpha) + [r, g, b][i]! * alpha) as Colour;

	it('the veil has the colour of the sheet', () => expect([r, g, b]).toEqual(token('sheet')[theme]));
	it.each(['ink', 'soft-ink', 'action', 'stop', 'note', 'planting', 'paving', 'line'])(
		'%s keeps 3 to 1 over black and over white',
		(name) => {
			for (const grey of [0, 64, 128, 192, 255])
				expect(contrast(token(name)[theme], veiled([grey, grey, grey]))).toBeGreaterThanOrEqual(3);
		}
	);
	it('a picture still shows: black and white on it can be told apart', () =>
		expect(contrast(veiled([0, 0, 0]), veiled([255, 255, 255]))).toBeGreaterThan(2));
});
