import { describe, expect, test } from 'vitest';
import { makePlan } from '$lib/domain/plan';
import { examples } from '$lib/domain/yard';
import { thingsOf } from '$lib/drawing/things';
import { applied } from './edits';
import { nameNow, pointsNow, pointsTaken, sizesNow, sortNow } from './edits-told';

const { yard } = examples.find((one) => one.yard.name === 'Alder Bend')!;
const plan = makePlan(yard);
const things = thingsOf(plan, yard);
const thing = (key: string) => things.find((one) => one.key === key)!;

describe('what stands in the fields of a thing', () => {
	test('points are the handles of the drawing, and those of a yard that its plan has not followed yet', () => {
		for (const one of things) expect(pointsNow(yard, one)).toEqual(one.handles.map(({ at }) => at));
		for (const key of ['tree/linden', 'walk/front-walk', 'transformer/transformer', 'fixture/front-walk/path-1']) {
			const edited = applied(yard, plan, { do: 'move', key, handle: 0, to: { x: 3.5, y: 8.25 } });
			expect(edited.ok && pointsNow(edited.yard, thing(key))[0]).toEqual({ x: 3.5, y: 8.25 });
		}
	});
	test('sizes with their labels and what their question takes; a number that is no sign has none', () => {
		expect(sizesNow(yard, thing('tree/linden')).map(({ what, value }) => [what, value])).toEqual([
			['spread', 6.4008],
			['height', 8.5344]
		]);
		expect(sizesNow(yard, thing('water/pond')).map(({ label }) => label)).toEqual([
			'Size along the front',
			'Size out towards the street'
		]);
		expect(sizesNow(yard, thing('number/number'))).toEqual([]);
		const sign = applied(yard, plan, { do: 'sort', key: 'number/number', to: 'sign' });
		expect(sign.ok && sizesNow(sign.yard, thing('number/number'))[0]).toMatchObject({ what: 'width', value: null });
	});
	test('names and kinds as told; null where there are none', () => {
		expect(nameNow(yard, thing('walk/front-walk'))).toBe('front walk');
		expect(nameNow(yard, thing('number/number'))).toBe('');
		expect(nameNow(yard, thing('transformer/transformer'))).toBe(null);
		expect(sortNow(yard, thing('water/pond'))?.value).toBe('pond');
		expect(sortNow(yard, thing('number/number'))?.value).toBe('number');
		expect(sortNow(yard, thing('tree/linden'))).toBe(null);
	});
	test('how many points a thing takes', () => {
		expect(pointsTaken(thing('walk/front-walk'))).toEqual({ bends: true, closed: false, least: 2, most: 60 });
		expect(pointsTaken(thing('bed/wing-bed'))).toMatchObject({ closed: true, least: 3 });
		expect(pointsTaken(thing('tree/linden'))).toMatchObject({ bends: false, least: 1, most: 1 });
	});
});
