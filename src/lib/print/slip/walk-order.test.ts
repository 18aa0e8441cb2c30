import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Shelf, ShelfLine } from '../../domain/kits/types';
import { inWalkingOrder } from './walk-order';

const line = (code: string, place: string | null, cents = 100): ShelfLine => ({
	code,
	kind: 'connectors',
	name: `Connector ${code}`,
	cents,
	stock: null,
	place,
	contents: { fixtures: [], transformer: null, cable: [], connectors: 1 }
});
const shelf = (...lines: ShelfLine[]): Shelf => ({ name: 'Marrow Lane Hardware', currency: '$', lines });
const codesOf = (one: Shelf, counts: Record<string, number> = {}) =>
	inWalkingOrder(
		one.lines.map(({ code }) => ({ code, count: counts[code] ?? 1 })),
		one
	).map(({ line }) => line.code);

describe('the order of walking the shop', () => {
	it('goes by place, numbers by their size, then by code', () => {
		const one = shelf(
			line('0500', 'Aisle 10, bay 1'),
			line('0017', 'Aisle 4, bay 10'),
			line('0200', 'Aisle 4, bay 2'),
			line('0100', 'Aisle 4, bay 2')
		);
		expect(codesOf(one)).toEqual(['0100', '0200', '0017', '0500']);
	});
	it('puts what has no place last, and tells codes of one value apart', () => {
		expect(codesOf(shelf(line('17', null), line('0017', null), line('9', 'Yard')))).toEqual(['9', '0017', '17']);
	});
	it('leaves out what is not bought or not on the shelf, and multiplies prices', () => {
		const one = shelf(line('a', 'x', 1250), line('b', 'x'));
		const list = inWalkingOrder(
			[
				{ code: 'b', count: 0 },
				{ code: '__proto__', count: 1 },
				{ code: 'a', count: 3 }
			],
			one
		);
		expect(list.map(({ line: { code }, count, cents }) => ({ code, count, cents }))).toEqual([
			{ code: 'a', count: 3, cents: 3750 }
		]);
	});
	it('is the same whatever the order of buying', () => {
		const place = fc.option(fc.constantFrom('Aisle 1', 'Aisle 2, bay 3', 'Aisle 12', 'Shed'), { nil: null });
		fc.assert(
			fc.property(
				fc
					.uniqueArray(fc.string({ minLength: 1, maxLength: 6 }), { maxLength: 20 })
					.chain((codes) =>
						fc
							.tuple(...codes.map((code) => place.map((at) => line(code, at))))
							.chain((lines) =>
								fc.tuple(
									fc.constant(lines as ShelfLine[]),
									fc.shuffledSubarray(lines as ShelfLine[], { minLength: lines.length })
								)
							)
					),
				([lines, others]) => {
					expect(codesOf(shelf(...others))).toEqual(codesOf(shelf(...lines)));
				}
			)
		);
	});
});
