/** How a wall is lit, from its height and texture alone: rules wall.setback, wall.spacing, wall.openings. */
import type { FixtureModel } from '../shared/catalogue';
import { dot, subtract, towards } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Figures } from '../shared/settings';
import { beam } from '../photometry';
import type { Area, Wall } from '../site';
import { endReach, lampOnWall, rowExtremes, widestSpacing, type Row } from './evenness';
import type { Span } from './layout';

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

/** Setback, aim and widest spacing for a wall by its height and texture. */
export function planWall(wall: Pick<Wall, 'height' | 'texture'>, model: FixtureModel, figures: Figures): WallPlan {
	const { low, high, graze, grazeTaken, mostLit } = figures['wall.setback'];
	const { ratio } = figures['wall.spacing'];
	const litHeight = Math.min(wall.height, mostLit);
	const technique = wall.texture === 'rough' ? 'graze' : 'wash';
	const radius = model.headDiameter / 2;
	const setbacks =
		technique === 'graze'
			? [grazeTaken, graze, 2 * grazeTaken - graze]
			: [(low + high) / 2, high, low].map((share) => Math.max(share * litHeight, radius + 0.1));
	const row: Row = {
		distribution: beam(model.lamp.lumens, model.lamp.beamAngle),
		setback: setbacks[0]!,
		lampHeight: model.lampHeight,
		// Grazing light runs up the face; a wash is spread over it.
		aimHeight: technique === 'graze' ? litHeight : litHeight / 2,
		middle: litHeight / 2
	};
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

/** Parts of a wall in front of which no lamp stands: doors, garage doors, and windows it would shine into; and porches. */
export function closedSpans(wall: Pick<Wall, 'openings'>, porches: readonly Span[]): Span[] {
	const { clear } = rules['wall.openings'].figures;
	return [...wall.openings, ...porches].map(({ start, end }) => ({ start: start - clear, end: end + clear }));
}

/** Stretches of a wall with a porch before them: there is no ground to stand on, and a roof would catch the beam. */
export function porchSpans(wall: Wall, areas: readonly Area[]): Span[] {
	if (wall.of !== 'house') return [];
	const along = towards(wall.from, wall.to);
	return areas.flatMap(({ kind, polygon }): Span[] => {
		if (kind !== 'porch') return [];
		const places = polygon.map((p) => ({
			at: dot(subtract(p, wall.from), along),
			out: dot(subtract(p, wall.from), wall.outward)
		}));
		// A porch at another part of the front, or round the corner, is not before this wall.
		if (Math.max(...places.map(({ out }) => out)) < 0.05 || Math.min(...places.map(({ out }) => out)) > 0.5) return [];
		const start = Math.max(0, Math.min(...places.map(({ at }) => at)));
		const end = Math.min(wall.length, Math.max(...places.map(({ at }) => at)));
		return end - start > 0.05 ? [{ start, end }] : [];
	});
}
