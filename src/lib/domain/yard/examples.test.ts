import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { makeSite } from '../site';
import { awkward, examples, faulty, outlines, readYard, writeYard, yardSchema } from '.';

describe.each([
	...examples.map((example) => [example.id, 'examples', example] as const),
	...faulty.map((example) => [example.id, 'faults', example] as const),
	...awkward.map((example) => [example.id, 'awkward', example] as const)
])('demo yard %s', (id, folder, { yard }) => {
	test('is written as the program writes it, but for white space', () => {
		const text = readFileSync(join(import.meta.dirname, folder, `${id}.json`), 'utf8');
		expect(readYard(text)).toEqual({ ok: true, yard });
		expect(JSON.stringify(JSON.parse(text))).toBe(JSON.stringify(JSON.parse(writeYard(yard))));
	});
	test('leaves nothing open and nothing impossible', () => {
		const site = makeSite(yard);
		expect(site.missing).toEqual([]);
		expect(site.findings).toEqual([]);
		expect(site.receptacle).toMatchObject({ known: true, gfci: true, inUseCover: true });
	});
	test('lies in its time zone', () => {
		const place = yard.place.location;
		if (!place || place === 'unsure') throw new Error('no place');
		// Zone time by the platform's own IANA data against sun time at the longitude: within two hours in winter.
		const parts = new Intl.DateTimeFormat('en', {
			timeZone: place.timeZone,
			timeZoneName: 'longOffset'
		}).formatToParts(new Date('2026-01-15T12:00Z'));
		const offset = /GMT([+-]\d\d)/.exec(parts.find((part) => part.type === 'timeZoneName')!.value)!;
		expect(Math.abs(Number(offset[1]) - place.longitude / 15)).toBeLessThan(2);
		expect(place.latitude * 10).toBeCloseTo(Math.round(place.latitude * 10), 9);
	});
});
test('each reading of a demo is a fresh copy', () => {
	expect(examples[0]!.yard).not.toBe(examples[0]!.yard);
	expect(examples[0]!.yard).toEqual(examples[0]!.yard);
});
describe.each(outlines.map((outline) => [outline.id, outline] as const))('outline %s', (_, { yard }) => {
	test('is a valid yard that can be drawn, and whose measures are still asked', () => {
		expect(z.safeParse(yardSchema, yard).success).toBe(true);
		const site = makeSite(yard);
		expect(site.findings).toEqual([]);
		expect(site.house.length).toBeGreaterThanOrEqual(4);
		expect(site.strips.length).toBeGreaterThan(0);
		expect(site.trees.length).toBeGreaterThan(0);
		const open = site.missing.map((item) => item.path);
		expect(open).toContain('walks.front-walk.width');
		expect(open).toContain('trees.tree-1.light');
		expect(open).toContain('house.sections.front.light');
		expect(yard.trees?.every((tree) => tree.spread === undefined && tree.height === undefined)).toBe(true);
	});
});
