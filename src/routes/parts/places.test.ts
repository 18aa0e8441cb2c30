import { describe, expect, it } from 'vitest';
import {
	findPlaces,
	guessZone,
	isZone,
	offEarth,
	places,
	placesInZone,
	readCoordinates,
	writeCoordinates
} from './places';

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

describe('a first guess', () => {
	it('by the device’s clock: places that keep that time', () => {
		const found = placesInZone('Europe/Oslo');
		expect(found.map(({ name }) => name)).toEqual(['Oslo, Norway', 'Tromsø, Norway']);
		expect(placesInZone('Antarctica/Troll')).toEqual([]);
	});
	it('of the zone: the device’s own where it fits the sun there, else that of the nearest place', () => {
		expect(guessZone({ latitude: 40.4, longitude: -75 }, 'America/New_York')).toBe('America/New_York');
		expect(guessZone({ latitude: 35.6, longitude: 139.6 }, 'America/New_York')).toBe('Asia/Tokyo');
		expect(guessZone({ latitude: 59.9, longitude: 10.7 }, 'Nowhere/Land')).toBe('Europe/Oslo');
		// Across the date line a zone a day ahead fits the sun as well.
		expect(guessZone({ latitude: -13.8, longitude: -171.8 }, 'Pacific/Apia')).toBe('Pacific/Apia');
	});
	it('a zone that this device does not know is told from one it does', () => {
		expect(isZone('America/Chicago')).toBe(true);
		expect(isZone('Mars/Olympus')).toBe(false);
		expect(places.every(({ timeZone }) => isZone(timeZone))).toBe(true);
	});
});

describe('readCoordinates', () => {
	it.each([
		['45.52, -122.68', 45.52, -122.68],
		['45.52 N 122.68 W', 45.52, -122.68],
		['33.87° S, 151.21° E', -33.87, 151.21],
		['0 0', 0, 0],
		['−36.85; 174.76', -36.85, 174.76],
		['45,52; -122,68', 45.52, -122.68],
		['45,52 -122,68', 45.52, -122.68],
		['45,52, -122,68', 45.52, -122.68],
		['45,52° N 122,68° W', 45.52, -122.68]
	])('reads %s', (text, latitude, longitude) => {
		expect(readCoordinates(text)).toEqual({ latitude, longitude });
	});
	it.each(['', 'Portland', '95, 10', '45.5', '10, 200', '12 34 56'])('refuses %s', (text) => {
		expect(readCoordinates(text)).toBeNull();
	});
	it('says of a pair off the earth what the range is, and when the two may be the wrong way round', () => {
		expect(offEarth('91, 10')).toBe(
			'Latitude goes from −90 to 90 degrees, longitude from −180 to 180. Latitude comes first: the two may have changed places.'
		);
		expect(offEarth('-122.68, 45.52')).toMatch(/changed places/);
		expect(offEarth('95, 200')).not.toMatch(/changed places/);
		for (const text of ['45.52, -122.68', 'Portland', '']) expect(offEarth(text)).toBeNull();
	});
	it('is written as on a map, and read back', () => {
		expect(writeCoordinates(45.52, -122.68)).toBe('45.52° N, 122.68° W');
		expect(readCoordinates(writeCoordinates(-33.87, 151.21))).toEqual({ latitude: -33.87, longitude: 151.21 });
	});
});
