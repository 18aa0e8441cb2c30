/** How even a row leaves a wall with a light in it that shines up into its gable: rule wall.spacing. Metres along the wall and above the ground, lux. */
import type { FixtureModel } from '../shared/catalogue';
import type { GableLamp, GableLight } from './wall-gable';
import type { WallLevel } from './wall-words';
import { candelaToward, photometryOf, sourceFrame, towards } from '../photometry';

/** A lamp of a row as it is aimed. */
interface AimedLamp {
	station: number;
	setback: number;
	/** Where along the wall and how high it is aimed. */
	along: number;
	height: number;
	model: FixtureModel;
}
/** Metres between the places looked at. */
const step = 0.25;

/** Lux on the face of the wall at a height, by the place along it. */
function onWall({ station, setback, along, height, model }: AimedLamp, at: number): (x: number) => number {
	const lamp = { x: station, y: setback, z: model.lampHeight };
	const frame = sourceFrame(towards(lamp, { x: along, y: 0, z: height }));
	const photometry = photometryOf(model, model.lamp);
	return (x) => {
		const square = (x - station) ** 2 + setback ** 2 + (at - lamp.z) ** 2;
		return (candelaToward(photometry, frame, towards(lamp, { x, y: 0, z: at })) * setback) / square ** 1.5;
	};
}

/**
 * Brightest and darkest along a row with a gable's lights in it, at the height at which the row is judged. Gaps
 * wider than `spacing`, where something is in the way, are another matter and left out, as is what is open (`isWall`). Null
 * where no two lamps stand so near.
 */
function rowWithGable(
	row: readonly AimedLamp[],
	{ middle, spacing, isWall }: { middle: number; spacing: number; isWall: (x: number) => boolean }
): { most: number; least: number } | null {
	const sorted = row.toSorted((a, b) => a.station - b.station);
	const lit = sorted.map((lamp) => onWall(lamp, middle));
	let [most, least] = [0, Infinity];
	for (let i = 1; i < sorted.length; i++) {
		const [before, after] = [sorted[i - 1]!, sorted[i]!];
		const gap = after.station - before.station;
		if (gap > spacing * 1.05) continue;
		const parts = Math.max(1, Math.ceil(gap / step));
		for (let k = 0; k <= parts; k++) {
			const x = before.station + (gap * k) / parts;
			if (!isWall(x)) continue;
			const lux = lit.reduce((sum, one) => sum + one(x), 0);
			most = Math.max(most, lux);
			least = Math.min(least, lux);
		}
	}
	return least === Infinity ? null : { most, least };
}

interface RowSpot {
	station: number;
	setback: number;
	gable: GableLamp | null;
}
export interface Settled<S> {
	up: ReadonlyMap<S, GableLight>;
	level: WallLevel;
	/** Brightest to darkest along the row beside the gable's lights; null where none shines up into a gable. */
	uneven: number | null;
}
/** How a wall's row comes out with some lights up into its gable. */
export interface GableRow<S> {
	lightsOf: (gable: GableLamp, spot: S) => GableLight[];
	levelOf: (up: readonly GableLight[]) => WallLevel;
	/** How high the lamp of the row at a spot is aimed. */
	aimOf: (spot: S, model: FixtureModel) => number;
	ratio: number;
	middle: number;
	spacing: number;
	isWall: (x: number) => boolean;
}
/** Lamps tried under a gable, and how many spacings off the row is looked at. */
const mostTried = 20;
const beside = 3;

/**
 * The lamps under the gable, and the row's beside them: the first that leave the wall as even as `ratio` asks, else those that
 * leave it most even.
 */
export function settle<S extends RowSpot>(spots: readonly S[], row: GableRow<S>): Settled<S> {
	const gables = spots.flatMap((spot) => (spot.gable ? [{ spot, lights: row.lightsOf(spot.gable, spot) }] : []));
	if (!gables[0]) return { up: new Map(), level: row.levelOf([]), uneven: null };
	const { station } = gables[0].spot;
	const near = spots.filter((spot) => Math.abs(spot.station - station) <= beside * row.spacing);
	let best: (Settled<S> & { uneven: number }) | null = null;
	for (const { model } of gables[0].lights.slice(0, mostTried)) {
		const up = new Map(
			gables.map(({ spot, lights }) => [spot, lights.find((one) => one.model.id === model.id) ?? lights[0]!])
		);
		const level = row.levelOf([...up.values()]);
		const lamps = near.map((spot) => lampAt(spot, up.get(spot), level.model, row));
		const found = rowWithGable(lamps, row);
		const uneven = found ? found.most / found.least : 1;
		if (best === null || uneven < best.uneven - 1e-9) best = { up, level, uneven };
		if (uneven <= row.ratio + 1e-9) break;
	}
	return best!;
}
function lampAt<S extends RowSpot>(
	spot: S,
	light: GableLight | undefined,
	model: FixtureModel,
	{ aimOf }: GableRow<S>
): AimedLamp {
	const { station, setback, gable } = spot;
	return gable && light
		? { station, setback, along: gable.along, height: gable.height, model: light.model }
		: { station, setback, along: station, height: aimOf(spot, model), model };
}
