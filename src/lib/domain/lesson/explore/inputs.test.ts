import { describe, expect, test } from 'vitest';
import { makePlan } from '../../plan';
import { blankYard, examples, yardSchema, type Yard } from '../../yard';
import { randomYard } from '../../yard/random.testing';
import { inputsOf } from './inputs';
import { probesOf } from './movers';

/** `LONG=1` takes the full size. */
const count = process.env['LONG'] ? 300 : 24;
/** What no input may do to a yard, whatever it is moved to. */
function faultsOf(yard: Yard): string[] {
	const inputs = inputsOf(yard, makePlan(yard));
	const ids = new Set(inputs.map(({ id }) => id));
	const before = JSON.stringify(yard);
	const wrong = inputs.flatMap((input) => {
		const { id, start, stops, least, most } = input;
		const values = [least - 1, most + 1, ...probesOf(input).slice(0, 1)];
		const invalid = values.filter((value) => !yardSchema.safeParse(input.put(yard, value)).success);
		// Over a change of its own: what was told comes back, and what was not told is untold again.
		const back = values.slice(-1).some((value) => JSON.stringify(input.put(input.put(yard, value), start)) !== before);
		const ordered = stops.every((stop, k) => k === 0 || stop > stops[k - 1]!);
		return [
			...invalid.map((value) => `${id} = ${value} is no yard`),
			back ? `${id} does not come back` : '',
			ordered && stops.includes(start) && stops.length > 1 ? '' : `${id}: stops ${stops.join(' ')}, start ${start}`,
			stops[0]! < Math.min(least, start) || stops.at(-1)! > Math.max(most, start)
				? `${id}: stops beyond its range`
				: '',
			input.text(start).trim() === '' ? `${id} has no text` : ''
		].filter(Boolean);
	});
	return [
		...wrong,
		...(ids.size === inputs.length ? [] : ['an id twice']),
		...(JSON.stringify(yard) === before ? [] : ['changed the yard'])
	];
}

test.each([...examples.map(({ id, yard }) => [id, yard] as const), ['blank', blankYard()] as const])(
	'%s: every input gives a valid yard, and its start gives the yard back',
	(_, yard) => expect(faultsOf(yard)).toEqual([])
);
test.each(Array.from({ length: count }, (_, k) => k + 1))('so in random yard %i', (seed) =>
	expect(faultsOf(randomYard(seed))).toEqual([])
);

describe('ranges', () => {
	const { yard } = examples.find(({ id }) => id === 'suburban')!;
	const inputs = inputsOf(yard, makePlan(yard));
	const range = (id: string) => {
		const { least, most } = inputs.find((input) => input.id === id)!;
		return [least, most];
	};
	test('are those at which the schema turns a value down', () => {
		const asked = inputs.filter(({ kind, id }) => kind !== 'list' && !id.startsWith('rules.') && !id.endsWith('.line'));
		expect(asked.length).toBeGreaterThan(40);
		for (const { id, least, most } of asked) {
			const told = (value: number): unknown => {
				const next = JSON.parse(JSON.stringify(yard)) as Record<string, never>;
				const path = id.split('.');
				let at = next as Record<string, unknown>;
				for (const key of path.slice(0, -1))
					at = (Array.isArray(at) ? at.find((item: { id: string }) => item.id === key) : at[key]) as Record<
						string,
						unknown
					>;
				at[path.at(-1)!] = value;
				return next;
			};
			const takes = (value: number) => yardSchema.safeParse(told(value)).success;
			expect([id, takes(least), takes(most), takes(least - 1e-3), takes(most + 1e-3)]).toEqual([
				id,
				true,
				true,
				false,
				false
			]);
		}
	});
	// A bearing has 360 degrees, a latitude 90 either way; a price and a spread within what a home has.
	test('of a few, as one would say them', () => {
		expect(range('place.faces')).toEqual([0, 360]);
		expect(range('place.location.latitude')).toEqual([-90, 90]);
		expect(range('trees.linden.spread')).toEqual([0.3, 40]);
	});
	test('an input is named in the person’s units', () => {
		const spread = inputs.find(({ id }) => id === 'trees.linden.spread')!;
		expect(spread.text(spread.start)).toBe('21 ft');
		const metric = inputsOf(
			{ ...yard, place: { ...yard.place, units: 'metres' } },
			makePlan({ ...yard, place: { ...yard.place, units: 'metres' } })
		);
		expect(metric.find(({ id }) => id === 'trees.linden.spread')!.text(6.4)).toBe('6.40 m');
	});
});
