import { expect, it } from 'vitest';
import published from './sun.published.json';
import { altitudeAt, offAltitude, offLux, onAltitude, onLux, skyLux } from './twilight';

it(`goes through the published points: ${published.twilight.source}`, () => {
	for (const { altitude, lux } of published.twilight.rows) expect(altitudeAt(lux)).toBeCloseTo(altitude, 9);
});
it('turns the sensor on at 16 lx with the sun 4.32° down, and off at 48 lx, worked by hand', () => {
	// ln(400/16) ÷ ln(400/3.4) = 3.21888 ÷ 4.76769 = 0.67514 of the 5.167° between the points.
	expect(onLux).toBe(16);
	expect(onAltitude).toBeCloseTo(-0.833 - 0.67514 * 5.167, 3);
	expect(offLux).toBeCloseTo(48, 9);
	expect(offAltitude).toBeCloseTo(-0.833 - (Math.log(400 / 48) / Math.log(400 / 3.4)) * 5.167, 9);
});
/**
 * Explanatory Supplement to the Astronomical Almanac (Seidelmann 1992), light of the sun on level ground: log10 lux a cubic
 * in altitude ÷ 90°. Coefficients from memory; they give 454, 3.4 and 0.008 lx at the published points.
 */
const bands = [
	{ from: -5, to: -0.8, c: [2.88, 21.81, -258.11, -858.36] },
	{ from: -12, to: -5, c: [2.7, 12.17, -431.69, -1899.83] }
] as const;
it('stays within 0.45° of the Explanatory Supplement’s curve (under three minutes of dusk at middle latitudes)', () => {
	for (let altitude = -11.9; altitude < -0.9; altitude += 0.1) {
		const band = bands.find(({ from, to }) => altitude >= from && altitude <= to)!;
		const x = altitude / 90;
		const lux = 10 ** band.c.reduce((sum, c, power) => sum + c * x ** power, 0);
		expect(Math.abs(altitudeAt(lux) - altitude), `at ${altitude}°`).toBeLessThan(0.45);
	}
});
/** The same law above the horizon, from memory: the points of the curve over sunset lie on it. */
const daylight = [
	{ altitude: 5, c: [2.88, 22.26, -207.64, 1034.3] },
	{ altitude: 20, c: [3.74, 3.97, -4.07, 1.47] },
	{ altitude: 90, c: [3.74, 3.97, -4.07, 1.47] }
] as const;
it('above sunset goes through the Explanatory Supplement’s law at 5°, 20° and straight up, within 2 %', () => {
	for (const { altitude, c } of daylight) {
		const lux = 10 ** c.reduce((sum, one, power) => sum + one * (altitude / 90) ** power, 0);
		expect(Math.abs(skyLux(altitude) / lux - 1), `at ${altitude}°`).toBeLessThan(0.02);
	}
});
it('turned round gives the light back, from the depth of night to what no sun gives', () => {
	for (let lux = 1e-5; lux < 1e7; lux *= 1.7) expect(skyLux(altitudeAt(lux)) / lux).toBeCloseTo(1, 9);
	expect(altitudeAt(1e6)).toBeGreaterThan(90);
});
it('falls with the light', () => {
	for (let lux = 400; lux > 0.008; lux *= 0.9) expect(altitudeAt(lux * 0.9)).toBeLessThan(altitudeAt(lux));
});
