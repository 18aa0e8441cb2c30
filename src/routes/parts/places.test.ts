import { describe, expect, it } from 'vitest';
import { findPlaces, places, readCoordinates, writeCoordinates } from './places';

describe('places', () => {
	it('have coordinates on earth and a time zone that the runtime knows', () => {
		for (const place of places) {
			expect(Math.abs(place.latitude), place.name).toBeLessThanOrEqual(90);
			expect(Math.abs(place.longitude), place.name).toBeLessThanOrEqual(180);
			expect(() => new Intl.DateTimeFormat('en', { timeZone: place.timeZone }), place.name).not.toThrow();
		}
	});
	it('lie where their clock says: solar noon within two and a half hours of noon by the clock', () => {
		for (const { name, longitude, timeZone } of places) {
			const noon = new Date('2026-01-15T12:00:00Z');
			const parts = new Intl.DateTimeFormat('en', {
				timeZone,
				hour: 'numeric',
				minute: 'numeric',
				hourCycle: 'h23',
				day: 'numeric'
			}).formatToParts(noon);
			const part = (type: string) => Number(parts.find((each) => each.type === type)?.value);
			const ahead = (part('day') - 15) * 24 + part('hour') + part('minute') / 60 - 12;
			expect(Math.abs(ahead - longitude / 15), name).toBeLessThan(2.5);
		}
	});
	it('are found without accents, by any word, once each', () => {
		expect(findPlaces('zur')[0]?.name).toBe('Zürich, Switzerland');
		expect(findPlaces('portland').map(({ name }) => name)).toEqual(['Portland, Maine', 'Portland, Oregon']);
		expect(findPlaces('oregon').map(({ name }) => name)).toEqual(['Portland, Oregon']);
		expect(findPlaces('x')).toEqual([]);
		expect(new Set(places.map(({ name }) => name)).size).toBe(places.length);
	});
});

describe('readCoordinates', () => {
	it.each([
		['45.52, -122.68', 45.52, -122.68],
		['45.52 N 122.68 W', 45.52, -122.68],
		['33.87° S, 151.21° E', -33.87, 151.21],
		['0 0', 0, 0],
		['−36.85; 174.76', -36.85, 174.76]
	])('reads %s', (text, latitude, longitude) => {
		expect(readCoordinates(text)).toEqual({ latitude, longitude });
	});
	it.each(['', 'Portland', '95, 10', '45.5', '10, 200', '12 34 56'])('refuses %s', (text) => {
		expect(readCoordinates(text)).toBeNull();
	});
	it('is written as on a map, and read back', () => {
		expect(writeCoordinates(45.52, -122.68)).toBe('45.52° N, 122.68° W');
		expect(readCoordinates(writeCoordinates(-33.87, 151.21))).toEqual({ latitude: -33.87, longitude: 151.21 });
	});
});
