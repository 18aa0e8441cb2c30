/** Light up into a gable: rule wall.gable. Metres along the wall from its `from` end and above the ground; lux. */
import type { FixtureModel } from '../shared/catalogue';
import type { Figures } from '../shared/settings';
import { rules } from '../shared/rules';
import { beam } from '../photometry';
import { wallTop, type Wall } from '../site';
import { lampOnWall } from './evenness';
import { stockBeamFor } from './models';
import { isOver, overWindows } from './wall-openings';
import { lampForWall, type Band } from './wall-level';
import type { WallPlan } from './wall-plan';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

export interface GableLamp {
	/** Where along the wall it stands, and where along and how high it is aimed. */
	station: number;
	along: number;
	height: number;
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
	/** At the point aimed at, from all lights that meet there. */
	lux: number;
	/** Straight in from one of them at the height at which the row is judged. */
	below: number;
}
/**
 * The lamp for a gable light at a setback: the narrowest stock beam that fills the gable where it is aimed, and of wider
 * ones the first that is not too bright there; failing that, the one that comes nearest to the aim.
 */
export function gableLight(
	{ station, along, height, width, meeting }: GableLamp,
	setback: number,
	models: readonly FixtureModel[],
	{ band, aim, middle }: { band: Band; aim: number; middle: number }
): GableLight {
	const lampHeight = models[0]!.lampHeight;
	const off = Math.hypot(setback, along - station, height - lampHeight);
	const needed = 2 * degrees(Math.atan2(width / 2, off));
	// Inverse square on the axis, on a face that the beam meets at a slant: E = I0 / d² · s / d.
	const perLumen = ({ lamp }: FixtureModel): number => (beam(1, lamp.beamAngle).centre * setback * meeting) / off ** 3;
	const luxOf = (model: FixtureModel): number => perLumen(model) * model.lamp.lumens;
	const least = stockBeamFor(needed);
	const beams = [...new Set(models.map(({ lamp }) => lamp.beamAngle))].filter((b) => b >= least).sort((a, b) => a - b);
	const best = (beams.length > 0 ? beams : [null]).map((angle) => {
		const list = models.filter(({ lamp }) => angle === null || lamp.beamAngle === angle);
		return lampForWall(list, perLumen(list[0]!), aim);
	});
	const far = (model: FixtureModel): number => Math.abs(Math.log(luxOf(model) / aim));
	const model =
		best.find((one) => luxOf(one) >= band.low && luxOf(one) <= band.high) ??
		best.reduce((a, b) => (far(b) < far(a) ? b : a));
	const { lumens, beamAngle } = model.lamp;
	const row = { distribution: beam(lumens, beamAngle), setback, lampHeight, aimHeight: height, middle };
	return { model, needed, lux: luxOf(model), below: lampOnWall(row)(0) };
}
