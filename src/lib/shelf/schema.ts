/** What a kept shelf must look like: whatever was written by an older page, another program or a failing disk is looked at before it is used. */
import type { Shelf, ShelfLine } from '../domain/kits/types';
import { cableSets, lightSets } from './fields';
import { longest } from './line';
import { z } from '../domain/yard';
import type { LeftOut } from './types';
import { mostCents, mostStock } from './values/money';
import { mostVolts } from './values/volts';

const above = (max: number) => z.number().check(z.positive(), z.lte(max));
const whole = (min: number, max: number) => z.number().check(z.multipleOf(1), z.gte(min), z.lte(max));
const text = (max: number, min = 1) => z.string().check(z.minLength(min), z.maxLength(max));
const size = z.strictObject({ system: z.enum(['awg', 'mm2']), size: above(40) });
const lamp = z
	.strictObject({
		source: z.enum(['led', 'halogen']),
		watts: above(500),
		voltAmps: above(1000),
		lumens: above(20_000),
		beam: z.nullable(above(360)),
		minVolts: above(mostVolts),
		maxVolts: above(mostVolts),
		colour: z.nullable(above(10_000))
	})
	.check(z.refine(({ minVolts, maxVolts }) => minVolts < maxVolts));
const fixture = z.strictObject({ kind: z.enum(['spot', 'well', 'wash', 'path', 'marker', 'step']), lamp });
const isAscending = (list: number[]) => list.every((one, i) => i === 0 || one > list[i - 1]!);
const transformer = z.strictObject({
	voltAmps: above(5000),
	taps: z.array(above(mostVolts)).check(z.minLength(1), z.maxLength(12), z.refine(isAscending)),
	secondaries: whole(1, 12),
	regulation: z.number().check(z.gte(0), z.lte(0.2))
});
const contents = z.strictObject({
	fixtures: z
		.array(z.strictObject({ product: text(200), fixture, count: whole(1, 1000) }))
		.check(z.maxLength(lightSets.length)),
	transformer: z.nullable(transformer),
	cable: z
		.array(z.strictObject({ size, metres: above(2000), count: whole(1, 1000) }))
		.check(z.maxLength(cableSets.length)),
	connectors: whole(0, 10_000)
});
const line = z.strictObject({
	code: text(longest.code),
	kind: z.enum(['kit', 'fixture', 'transformer', 'cable', 'connectors']),
	name: text(longest.name),
	cents: whole(0, mostCents),
	stock: z.nullable(whole(0, mostStock)),
	place: z.nullable(text(longest.place)),
	contents
});
const outer = z.object({ name: text(100, 0), currency: text(longest.currency, 0), lines: z.array(z.unknown()) });
const leftOutRow = z.strictObject({
	row: whole(1, 10_000_000),
	cells: z.array(z.strictObject({ header: z.string(), text: z.string() })),
	why: z.array(z.string())
});

/** A line, checked; null where it is none. */
export function checkedLine(value: unknown): ShelfLine | null {
	const read = line.safeParse(value);
	return read.success ? read.data : null;
}
export interface CheckedShelf {
	shelf: Shelf;
	/** Lines that could not be read, or whose code was there already. */
	lost: number;
}
/** A shelf with the lines of it that hold; null where it is no shelf at all. Never throws. */
export function checkedShelf(value: unknown): CheckedShelf | null {
	const read = outer.safeParse(value);
	if (!read.success) return null;
	const { name, currency } = read.data;
	const lines = new Map<string, ShelfLine>();
	for (const one of read.data.lines) {
		const own = checkedLine(one);
		if (own && !lines.has(own.code)) lines.set(own.code, own);
	}
	return { shelf: { name, currency, lines: [...lines.values()] }, lost: read.data.lines.length - lines.size };
}
/** Rows left out, those of them that hold; null where it is no list. */
export function checkedLeftOut(value: unknown): LeftOut[] | null {
	if (!Array.isArray(value)) return null;
	const rows = value.map((one) => leftOutRow.safeParse(one));
	return rows.every(({ success }) => success) ? rows.flatMap(({ data }) => (data ? [data] : [])) : null;
}
