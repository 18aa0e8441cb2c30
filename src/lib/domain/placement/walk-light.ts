/**
 * The light of a row of path lights on its own walk, by the model of light: which head it takes (rule path.head), and what is
 * left midway between two of them (rule path.meet). Metres and lux, maintained (rule light.maintained).
 */
import type { Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import { candelaToward, maintained, photometryOf, sourceFrame, type Photometry } from '../photometry';
import type { Site, Strip } from '../site';
import type { Course } from './course';
import type { Drafting } from './drafting';
import { fill } from './firsts';
import type { Stretch } from './paved-spans';
import type { Standing } from './walk-words';

const down = sourceFrame({ x: 0, y: 0, z: -1 });
/** Lanes of a walk at which its average is taken, as shares of the width from the middle: as the light stage has them. */
const lanes = [-1 / 3, 0, 1 / 3] as const;
/** Metres either way over which the light of one head is added up, and between the places: a shaded head ends within 3 m. */
const summed = 6;
const step = 0.25;

const laws = new WeakMap<FixtureModel, Photometry>();
function lawOf(model: FixtureModel): Photometry {
	const law = laws.get(model) ?? photometryOf(model, model.lamp);
	laws.set(model, law);
	return law;
}

/** Candela, as new, that a head looking down sends to the ground `x` and `y` metres off its foot, and the distance there. */
export function towardsGround(model: FixtureModel): (x: number, y: number) => { candela: number; away: number } {
	const photometry = lawOf(model);
	const h = model.lampHeight;
	return (x, y) => {
		const away = Math.sqrt(x * x + y * y + h * h);
		return { candela: candelaToward(photometry, down, { x: x / away, y: y / away, z: -h / away }), away };
	};
}
/** Lux on level ground at `p` from a head at `at`: E = I · cos γ ÷ d², cos γ = h ÷ d. */
export function groundLux(model: FixtureModel): (at: Point, p: Point) => number {
	const toward = towardsGround(model);
	const scale = maintained() * model.lampHeight;
	return (at, p) => {
		const { candela, away } = toward(p.x - at.x, p.y - at.y);
		return (scale * candela) / away ** 3;
	};
}

/** What one head throws on each metre of width of a walk, lux × metres: kept by model, width and place of the stake. */
const thrown = new WeakMap<FixtureModel, Map<string, number>>();
const mostKept = 64;
function thrownOn(model: FixtureModel, width: number, out: number): number {
	const key = `${width} ${out}`;
	const kept = thrown.get(model) ?? new Map<string, number>();
	const known = kept.get(key);
	if (known !== undefined) return known;
	const lux = groundLux(model);
	const foot = { x: width / 2 + out, y: 0 };
	let sum = 0;
	for (const lane of lanes)
		for (let y = -summed + step / 2; y < summed; y += step) sum += lux(foot, { x: lane * width, y });
	if (kept.size >= mostKept) kept.clear();
	thrown.set(model, kept.set(key, (sum * step) / lanes.length));
	return kept.get(key)!;
}
/**
 * Average lux over the width of a long straight with one head every `apart` metres, its stake `out` metres outside an edge: all
 * that one head throws on the walk, spread over its own share of it.
 */
export const rowAverage = (model: FixtureModel, { width }: Pick<Strip, 'width'>, out: number, apart: number): number =>
	thrownOn(model, width, out) / apart;

/** Average wanted on a walk: rule path.level, and where street lamps have the eye rule path.head. */
export const walkWanted = ({ surroundings }: Pick<Site, 'surroundings'>): number =>
	surroundings === 'town' ? rules['path.head'].figures.town : rules['path.level'].figures.walk;
/** Lux midway between two lights at which their pools still meet. */
export const meetsAt = ({ surroundings }: Pick<Site, 'surroundings'>): number =>
	rules['path.meet'].figures[surroundings];

export interface RowHead {
	model: FixtureModel;
	/** What a straight gets of it on average, and what is wanted. */
	average: number;
	wanted: number;
	weakest: boolean;
}
/** The weakest head whose row gives what is wanted on average; the strongest where none does. `apart`: metres of walk to each light. */
export function headFor(
	d: Pick<Drafting, 'pick' | 'site'>,
	strip: Pick<Strip, 'width'>,
	outOf: (model: FixtureModel) => number,
	apart: number
): RowHead {
	const wanted = walkWanted(d.site);
	const listed = d.pick.all('path').toSorted((a, b) => a.lamp.lumens - b.lamp.lumens);
	const models = listed.length > 0 ? listed : [d.pick({ body: 'path', strength: 'soft' })];
	const heads = models.map((model, i) => ({
		model,
		average: rowAverage(model, strip, outOf(model), apart),
		wanted,
		weakest: i === 0
	}));
	return heads.find(({ average }) => average >= wanted) ?? heads.at(-1)!;
}

/** A straight to fill: `open` where nothing stands at its end. */
export interface Gap {
	from: number;
	to: number;
	open: boolean;
	spacing: number;
}
/**
 * Whether a row from side to side along a straight leaves its pools apart midway, and has room for one light more: rule
 * path.meet. `out`: of the stakes from the edges.
 */
export function wantsOneMore(
	{ site }: Pick<Drafting, 'site'>,
	model: FixtureModel,
	{ width }: Pick<Strip, 'width'>,
	out: number,
	{ from, to, open, spacing }: Gap
): boolean {
	const stepOf = (fewer: number): number => {
		const [first, second = open ? undefined : to] = fill(from, to, spacing, open, fewer, true);
		return first === undefined ? to - from : second === undefined ? first - from : second - first;
	};
	if (stepOf(-1) < rules['path.meet'].figures.across * spacing - 1e-9) return false;
	const midway = 2 * groundLux(model)({ x: width / 2 + out, y: stepOf(0) / 2 }, { x: 0, y: 0 });
	return midway < meetsAt(site);
}

/** The lights of a walk as they stand. */
export interface WalkRow {
	course: Course;
	/** From the street on. */
	standing: readonly Standing[];
	/** Stretches that are no straight of the walk: its flights, and other paving. */
	otherWays: readonly Stretch[];
}
/** Lights nearer than this to each other along the walk stand abreast, metres. */
const abreast = 0.3;

/** Lux on the ground at a place from all lights of the row that are near enough to count. */
export function rowLux({ standing }: WalkRow, model: FixtureModel, place: Point): number {
	const lux = groundLux(model);
	let sum = 0;
	for (const { p } of standing)
		if (Math.abs(p.x - place.x) < summed && Math.abs(p.y - place.y) < summed) sum += lux(p, place);
	return sum;
}

/** Metres along to the next lights with nothing but walk between, and those lights; null at the end of such a stretch. */
export function nextOn({ standing, otherWays }: WalkRow, from: number): { gap: number; lights: Standing[] } | null {
	const next = standing.find(({ at }) => at > from + abreast);
	if (!next || otherWays.some(({ start, end }) => start < next.at && end > from)) return null;
	const first = standing.indexOf(next);
	let last = first;
	while (last + 1 < standing.length && standing[last + 1]!.at <= next.at + abreast) last++;
	return { gap: next.at - from, lights: standing.slice(first, last + 1) };
}

/**
 * Metres of walk to each light of its straights, on average. Gaps of more than two spacings are no row: something else lights
 * them, or nothing can; where none is left, the spacing.
 */
export function apartOf(row: WalkRow, spacing: number): number {
	let metres = 0;
	let lights = 0;
	let last = -Infinity;
	for (const { at } of row.standing) {
		if (at <= last + abreast) continue;
		last = at;
		const next = nextOn(row, at);
		if (!next || next.gap > 2 * spacing + 1e-9) continue;
		metres += next.gap;
		lights += next.lights.length;
	}
	return lights > 0 ? metres / lights : spacing;
}
