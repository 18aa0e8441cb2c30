/** Light up into a gable: rule wall.gable. Metres along the wall from its `from` end and above the ground; lux. */
import type { FixtureModel } from '../shared/catalogue';
import type { Figures } from '../shared/settings';
import { rules } from '../shared/rules';
import { candelaToward, photometryOf, sourceFrame, towards } from '../photometry';
import { wallTop, type Wall } from '../site';
import { lampOnWall, rowOf } from './evenness';
import { stockBeamFor } from './models';
import { isOver, overWindows } from './wall-openings';
import type { Band } from './wall-level';
import type { WallPlan } from './wall-plan';

/**
 * Grazing light falls with the cube of the height: what reaches the band up in a gable is a glaring stripe below. There a gable
 * may have this part of the least of the band: our assumption.
 */
const grazed = 1 / 3;

const degrees = (radians: number): number => (radians * 180) / Math.PI;

export interface GableLamp {
	/** Where along the wall it stands, and where along and how high it is aimed. */
	station: number;
	along: number;
	height: number;
	/** How high up, straight over that place, its light is judged. */
	judged: number;
	/** From the ground to the top of what it lights. */
	litHeight: number;
	/** What its beam has to fill: the width of the gable two thirds of the way up it; half of that where two go straight up. */
	width: number;
	/** One of two, either side of the middle. */
	pair: boolean;
	/** Lights that meet at the point aimed at. */
	meeting: number;
}

/** How far up a gable is lit: to its point, or as far as lamps reach; null where there is too little of it to light. */
export function litGable(wall: Pick<Wall, 'height' | 'peak'>, figures: Figures): number | null {
	const { least } = rules['wall.gable'].figures;
	const top = Math.min(wall.peak ?? 0, figures['wall.setback'].mostLit);
	return wall.peak !== null && top - wall.height >= least ? top : null;
}

/**
 * The lights of a row that are turned up to the gable: the one under its middle, or the two nearest on either side of it
 * that stand about as far off, so that the row stays even; within one spacing of the middle, and a wash not under a window
 * of the upper floor.
 */
function stationsUnder(
	wall: Wall,
	technique: WallPlan['technique'],
	stations: readonly number[],
	spacing: number
): number[] {
	const middle = wall.length / 2;
	// What the eye forgives in evenness, by our assumption: a quarter of the spacing, or of half the gable.
	const near = Math.min(spacing, middle) / 4 + 1e-6;
	const off = (at: number): number => Math.abs(at - middle);
	const able = stations
		.filter((at) => off(at) <= spacing + 1e-6 && (technique === 'graze' || !isOver(wall, at)))
		.toSorted((a, b) => off(a) - off(b));
	const [first] = able;
	if (first === undefined) return [];
	const other = able.find((at) => (at - middle) * (first - middle) < 0 && off(at) - off(first) <= near);
	const alone = other === undefined || (off(first) < near && off(other) - off(first) > 1e-6);
	return alone ? [first] : [first, other];
}

/** Which lights of a row shine up into the gable, and at what. None where no light stands near its middle. */
export function gableLamps(
	wall: Wall,
	{ technique }: Pick<WallPlan, 'technique'>,
	stations: readonly number[],
	spacing: number,
	figures: Figures
): GableLamp[] {
	if (litGable(wall, figures) === null || wall.peak === null) return [];
	const { up, least } = rules['wall.gable'].figures;
	const { height, peak, length } = wall;
	const middle = length / 2;
	const found = stationsUnder(wall, technique, stations, spacing);
	const pair = found.length > 1;
	const topOver = (places: readonly number[]): number =>
		Math.min(...places.map((at) => wallTop(wall, at)), figures['wall.setback'].mostLit);
	// A window in the gable: a light goes straight up beside it instead of across its glass. Two go straight up too, where
	// half the gable is over them: meeting, they would make one bright spot. Both by the lower top: they stand in one line.
	const across = overWindows(wall, Math.min(...found, middle), Math.max(...found, middle));
	const shut = technique === 'wash' && across.length > 0;
	const straight = shut || (pair && topOver(found) - height >= (topOver([middle]) - height) / 2 - 1e-9);
	const litHeight = topOver(straight ? found : [middle]);
	if (found.length === 0 || litHeight - height < least) return [];
	const filled = height + up * (litHeight - height);
	const width = ((length * (peak - filled)) / (peak - height)) * (straight && pair ? 0.5 : 1);
	return found.map((station) => ({
		station,
		along: straight ? station : middle,
		// A grazing light runs up the face to the top.
		height: technique === 'graze' ? litHeight : filled,
		judged: filled,
		litHeight,
		width,
		pair,
		meeting: straight ? 1 : found.length
	}));
}

export interface GableLight {
	model: FixtureModel;
	/** Full angle that fills the gable where it is aimed, degrees. */
	needed: number;
	/** Where it is judged, from all lights that meet there. */
	lux: number;
	/** Straight in from one of them at the height at which the row is judged. */
	below: number;
}
/**
 * The lamps for a gable light at a setback, the preferred one first: those that keep within the band where they are judged, the
 * narrowest stock beam that fills the gable there before wider ones, and of one beam what comes nearest to the aim. Failing
 * all, the one that comes nearest.
 */
export function gableLights(
	{ station, along, height, judged, width, meeting }: GableLamp,
	setback: number,
	models: readonly FixtureModel[],
	{ band, aim, middle }: { band: Band; aim: number; middle: number }
): GableLight[] {
	const lampHeight = models[0]!.lampHeight;
	const off = Math.hypot(setback, along - station, height - lampHeight);
	const needed = 2 * degrees(Math.atan2(width / 2, off));
	const lamp = { x: station, y: setback, z: lampHeight };
	const frame = sourceFrame(towards(lamp, { x: along, y: 0, z: height }));
	const way = towards(lamp, { x: along, y: 0, z: judged });
	// On a face that the light meets at a slant: E = I / d² · s / d.
	const away = Math.hypot(setback, along - station, judged - lampHeight);
	const luxOf = (model: FixtureModel): number =>
		(candelaToward(photometryOf(model, model.lamp), frame, way) * setback * meeting) / away ** 3;
	const least = stockBeamFor(needed);
	const fills = ({ lamp }: FixtureModel): boolean => lamp.beamAngle >= least;
	const filling = (models.some(fills) ? models.filter(fills) : models).map((model) => ({ model, lux: luxOf(model) }));
	const far = ({ lux }: { lux: number }): number => Math.abs(Math.log(lux / aim));
	const low = judged < height - 1e-9 ? grazed * band.low : band.low;
	const within = filling.filter(({ lux }) => lux >= low && lux <= band.high);
	const nearest = filling.reduce((best, one) => (far(one) < far(best) ? one : best));
	const listed = (within.length > 0 ? within : [nearest]).toSorted(
		(a, b) => a.model.lamp.beamAngle - b.model.lamp.beamAngle || far(a) - far(b)
	);
	return listed.map(({ model, lux }) => {
		const row = rowOf(model.lamp, { setback, lampHeight, aimHeight: height, middle });
		return { model, needed, lux, below: lampOnWall(row)(0) };
	});
}
