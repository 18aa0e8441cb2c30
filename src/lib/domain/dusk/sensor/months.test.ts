/** Minutes that shade makes, against the sun by hand at the equator; and when trees are in leaf. */
import { expect, it } from 'vitest';
import { placeOf } from '../place';
import { blankYard } from '../../yard';
import { inLeaf, keepsLeaves } from './leaves';
import { monthsOf, spanOf } from './months';
import { skyOfPlace } from './place-sky';

const skyAt = (latitude: number) =>
	skyOfPlace(placeOf({ ...blankYard(), place: { location: { latitude, longitude: 0, timeZone: 'UTC' } } }));
const early = (latitude: number, share: number) =>
	spanOf(monthsOf(skyAt(latitude), { leafOn: share, leafOff: share }), 'early')!;

it('shade makes the sensor early by minutes that grow with the latitude', () => {
	// By hand at the equator: ln 4 ÷ ln(400/3.4) × 5.167° = 1.502°, at 15° an hour, six minutes and a little at the solstices.
	expect(early(0, 0.25).least).toBeCloseTo((1.502 / 15) * 60, 1);
	expect(early(0, 0.25).most).toBeLessThan(((1.502 / 15) * 60) / Math.cos((23.5 * Math.PI) / 180) + 0.1);
	expect(early(60, 0.25).least).toBeGreaterThan(early(40, 0.25).least);
});
it('no shade makes no minutes, less sky makes more of them, and no sky counts from noon', () => {
	expect(early(42, 1)).toEqual({ least: 0, most: 0 });
	let last = 0;
	for (const share of [0.9, 0.5, 0.2, 0.05, 0.01, 0.005]) {
		expect(early(42, share).least).toBeGreaterThan(last);
		last = early(42, share).least;
	}
	const noon = early(42, 0);
	expect(early(42, 1e-6)).toEqual(noon);
	expect(noon.most).toBeLessThan(12 * 60);
	expect(noon.least).toBeGreaterThan(4 * 60);
});
it('in the morning it is late: by the stretch from 48 lx to what of the open sky gives it 48', () => {
	const sky = skyAt(0);
	// ln 4 lower on the curve as in the evening: both ends lie on the same stretch.
	expect(spanOf(monthsOf(sky, { leafOn: 0.25, leafOff: 0.25 }), 'late')!.least).toBeCloseTo((1.502 / 15) * 60, 1);
});
it('bare crowns count from November to April in the north, the other half of the year in the south', () => {
	const bare = (latitude: number) =>
		skyAt(latitude)
			.days.filter(({ leaves }) => !leaves)
			.map(({ month }) => month);
	expect(bare(42)).toEqual([1, 2, 3, 4, 11, 12]);
	expect(bare(-42)).toEqual([5, 6, 7, 8, 9, 10]);
	expect(bare(5)).toEqual([]);
	expect(inLeaf(7, 51)).toBe(true);
	const months = monthsOf(skyAt(42), { leafOn: 0.2, leafOff: 0.8 });
	expect(months[6]!.early!).toBeGreaterThan(2 * months[0]!.early!);
});
it('a cone keeps its leaves unless it is told to shed them', () => {
	const tree = { id: 'one', form: 'conical' as const };
	expect(keepsLeaves(tree, {})).toBe(true);
	expect(keepsLeaves({ ...tree, form: 'round' }, {})).toBe(false);
	const told = (leaf: 'sheds' | 'keeps') => ({
		trees: [{ id: 'one', name: 'larch', leaf }] as unknown as NonNullable<ReturnType<typeof blankYard>['trees']>
	});
	expect(keepsLeaves(tree, told('sheds'))).toBe(false);
	expect(keepsLeaves({ ...tree, form: 'round' }, told('keeps'))).toBe(true);
});
it('where no dusk or dawn happens there are no minutes', () => {
	const months = monthsOf(skyAt(70), { leafOn: 0.5, leafOff: 0.5 });
	expect(months[5]).toMatchObject({ early: null, late: null });
	expect(months[2]!.early).not.toBeNull();
});
