/** How a wall is lit, from its height and texture alone: rules wall.setback, wall.spacing, wall.openings. */
import type { FixtureModel } from '../shared/catalogue';
import { dot, subtract, towards } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Figures } from '../shared/settings';
import type { Area, Wall } from '../site';
import { endReach, lampOnWall, rowExtremes, rowOf, widestSpacing, type Row } from './evenness';
import type { Span } from './layout';
import { beforeLamps } from './wall-openings';

/** Lamps on one wall beyond which the plan asks instead of placing: our assumption. */
export const mostOnWall = 60;

export interface WallPlan {
	technique: 'wash' | 'graze';
	litHeight: number;
	/** Metres off the wall: the wanted one first, then others within the rule. */
	setbacks: number[];
	row: Row;
	spacing: number;
	end: number;
	light: { most: number; least: number; mean: number };
}

/** Metres off a wall for what is lit of it: the wanted one first, then others within the rule. */
export function wallSetbacks(
	technique: WallPlan['technique'],
	litHeight: number,
	model: FixtureModel,
	figures: Figures
): number[] {
	const { low, high, graze, grazeTaken } = figures['wall.setback'];
	if (technique === 'graze') return [grazeTaken, graze, 2 * grazeTaken - graze];
	const least = model.headDiameter / 2 + 0.1;
	return [(low + high) / 2, high, low].map((share) => Math.max(share * litHeight, least));
}

/** Setback, aim and widest spacing for a wall by its height and texture. */
export function planWall(wall: Pick<Wall, 'height' | 'texture'>, model: FixtureModel, figures: Figures): WallPlan {
	const { mostLit } = figures['wall.setback'];
	const { ratio } = figures['wall.spacing'];
	const litHeight = Math.min(wall.height, mostLit);
	const technique = wall.texture === 'rough' ? 'graze' : 'wash';
	const setbacks = wallSetbacks(technique, litHeight, model, figures);
	const row = rowOf(model.lamp, {
		setback: setbacks[0]!,
		lampHeight: model.lampHeight,
		// Grazing light runs up the face; a wash is spread over it.
		aimHeight: technique === 'graze' ? litHeight : litHeight / 2,
		middle: litHeight / 2
	});
	const one = lampOnWall(row);
	const reach = Math.hypot(row.setback, row.middle - row.lampHeight);
	const spacing = widestSpacing(one, reach, ratio);
	return {
		technique,
		litHeight,
		setbacks,
		row,
		spacing,
		end: endReach(one, spacing, ratio),
		light: rowExtremes(one, spacing)
	};
}

export interface Porch extends Span {
	/** Underside of its roof above the ground, metres; null: it has none. */
	under: number | null;
	/** Metres it reaches out from the wall. */
	depth: number;
}

/**
 * Metres beside a porch in which no lamp of a row stands: clear of its posts, and, where the beam passes the underside of
 * the roof on its way up the wall, so far off that half the beam's angle clears the roof's edge there (rule wall.porch).
 */
export function besidePorch({ under, depth }: Pick<Porch, 'under' | 'depth'>, row: Row, beamAngle: number): number {
	const { clear } = rules['wall.openings'].figures;
	const rise = row.aimHeight - row.lampHeight;
	if (under === null || under <= row.lampHeight || under >= row.aimHeight) return clear;
	const part = (under - row.lampHeight) / rise;
	// Where it passes that height it is already nearer to the wall than the lamp.
	if (row.setback * (1 - part) > depth) return clear;
	const along = part * Math.hypot(row.setback, rise);
	return Math.max(clear, along * Math.tan((beamAngle * Math.PI) / 360));
}

/** Parts of a wall in front of which no lamp stands: doors, garage doors, and windows it would shine into; and porches with `beside` metres either side. */
export function closedSpans(
	wall: Pick<Wall, 'openings'>,
	porches: readonly Porch[],
	beside: (porch: Porch) => number
): Span[] {
	const { clear } = rules['wall.openings'].figures;
	const widened = ({ start, end }: Span, by: number): Span => ({ start: start - by, end: end + by });
	return [
		...beforeLamps(wall).map((opening) => widened(opening, clear)),
		...porches.map((porch) => widened(porch, beside(porch)))
	];
}

/** Stretches of a wall with a porch before them: there is no ground to stand on, and a roof would catch the beam. */
export function porchSpans(wall: Wall, areas: readonly Area[]): Porch[] {
	if (wall.of !== 'house') return [];
	const along = towards(wall.from, wall.to);
	return areas.flatMap(({ kind, polygon, under }): Porch[] => {
		if (kind !== 'porch') return [];
		const places = polygon.map((p) => ({
			at: dot(subtract(p, wall.from), along),
			out: dot(subtract(p, wall.from), wall.outward)
		}));
		const depth = Math.max(...places.map(({ out }) => out));
		// A porch at another part of the front, or round the corner, is not before this wall.
		if (depth < 0.05 || Math.min(...places.map(({ out }) => out)) > 0.5) return [];
		const start = Math.max(0, Math.min(...places.map(({ at }) => at)));
		const end = Math.min(wall.length, Math.max(...places.map(({ at }) => at)));
		return end - start > 0.05 ? [{ start, end, depth, under: under ?? null }] : [];
	});
}
