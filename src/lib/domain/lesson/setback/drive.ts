/** The lesson's drive, and the corner that a turning car cuts at its mouth. Metres; places beside it are `out` from its right edge and `back` from the street. */
import { makePlan, type Plan } from '../../plan';
import { fixtureModels } from '../../shared/catalogue';
import { hypot } from '../../shared/geometry';
import type { UnitSystem } from '../../shared/units';
import { inSweep, placeFixtures, type Fixture } from '../../placement';
import { makeSite, type Site, type Strip } from '../../site';
import { blankYard, type Yard } from '../../yard';
import type { XY } from '../pictures';

export interface Drive {
	width: number;
	length: number;
	/** Radius of the arc that a turning car cuts (rule drive.mouth). */
	flare: number;
	/** Least between two lights of an edge (rule drive.spacing); absent: the trade's. */
	spacing?: number;
}
function yardOf({ width, length, flare, spacing }: Drive, units: UnitSystem): Yard {
	return {
		...blankYard(),
		place: { units, faces: 180, surroundings: 'suburb', location: 'unsure' },
		lot: { street: length, left: 10, right: 10 },
		trees: [],
		walks: [],
		drives: [
			{
				id: 'drive',
				name: 'drive',
				line: [
					{ along: 0, out: length },
					{ along: 0, out: 0 }
				],
				width,
				lights: 'both',
				pattern: 'paired'
			}
		],
		rules: { 'drive.mouth/flare': flare, ...(spacing === undefined ? {} : { 'drive.spacing/spacing': spacing }) }
	};
}
/** All that is planned for the drive alone. */
export const planOf = (drive: Drive, units: UnitSystem): Plan => makePlan(yardOf(drive, units));
export interface Lit {
	site: Site;
	strip: Strip;
	lights: Fixture[];
}
/** The drive with its lights, as in any plan. */
export function litDrive(drive: Drive, units: UnitSystem): Lit {
	const yard = yardOf(drive, units);
	const site = makeSite(yard);
	return { site, strip: site.strips[0]!, lights: placeFixtures(site, yard).fixtures };
}
/** Across the head of the low light that a plan puts beside drives. */
export const headDiameter = fixtureModels.find(({ body }) => body === 'marker')!.headDiameter;

export interface Beside {
	out: number;
	back: number;
	/** Diameter of the head. */
	head: number;
}
/** Whether a turning car strikes the lamp: whether the corner of its head nearest to the mouth's corner lies in the sweep. */
export const isStruck = ({ out, back, head }: Beside, flare: number): boolean =>
	inSweep(out - head / 2, back - head / 2, flare);

/**
 * Between that corner of the head and the arc, less than nothing where it is struck; null beyond the corner's square, where the
 * arc has run out into street or edge.
 */
export function gapOf({ out, back, head }: Beside, flare: number): number | null {
	const [x, y] = [flare - (out - head / 2), flare - (back - head / 2)];
	return x <= 0 || y <= 0 ? null : flare - hypot(x, y);
}

/** Where a place beside the right edge lies in the yard. */
export const placeOf = (
	{ strip, site }: Pick<Lit, 'strip' | 'site'>,
	{ out, back }: Pick<Beside, 'out' | 'back'>
): XY => ({
	x: strip.right[0]!.x + out,
	y: site.street - back
});
/** The ground that the car cuts, from the corner round the arc. */
export function sweptOf(lit: Pick<Lit, 'strip' | 'site'>, flare: number): XY[] {
	const parts = 24;
	const arc = Array.from({ length: parts + 1 }, (_, k) => {
		const turn = (k / parts) * (Math.PI / 2);
		return placeOf(lit, { out: flare * (1 - Math.cos(turn)), back: flare * (1 - Math.sin(turn)) });
	});
	return [placeOf(lit, { out: 0, back: 0 }), ...arc];
}
