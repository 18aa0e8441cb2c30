/** What a place for the transformer is, and what may be the matter with it. */
import { distanceToPolygon, type Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import type { Opening, Site, Wall } from '../site';
import type { SupplyReason } from './types';

/** Where the transformer hangs, before anything is known of its size. */
export interface SupplySpot {
	at: Point;
	on: 'wall' | 'post';
	/** Bottom edge above grade, metres. */
	mountHeight: number;
	suggested: boolean;
	because: SupplyReason[];
	findings: Finding[];
	assumptions: Assumption[];
}

/** Bottom edge when we choose it: above the least, still easy to reach kneeling (common practice, no source). */
export const suggestedHeight = 0.46;
/** Above this the dials are out of reach (from memory), metres. */
export const mostHeight = 1.8;
/** Stands this far out from the wall, metres. */
export const offWall = 0.1;
/** Room beside the receptacle for its cover and the plug. */
export const besideReceptacle = 0.4;
/** Metres that the transformer's own cord reaches, measured along the wall. */
export const cord = rules['supply.receptacle'].figures.cord;
/** Metres of paving or porch that may lie between the transformer's wall and the ground its cables go into. */
export const supplyReach = 2;
export const aboutTransformer = { kind: 'power', id: 'transformer' };

const openingClear = rules['wall.openings'].figures.clear;

export const houseWalls = (site: Site): Wall[] => site.walls.filter((wall) => wall.of === 'house' && wall.length > 0);

/** Metres to the nearest water, below zero inside it; Infinity without any. */
export const waterGap = (site: Site, p: Point): number =>
	site.areas.reduce(
		(gap, area) => (area.kind === 'water' ? Math.min(gap, distanceToPolygon(p, area.polygon)) : gap),
		Infinity
	);
/** Porches, paving and water under a place. */
export const standsIn = (site: Site, p: Point) =>
	[...site.areas.filter((area) => area.kind !== 'bed'), ...site.strips].filter(
		(place) => distanceToPolygon(p, place.polygon) < 0
	);
/** The door or window at which something hangs that is so far along the wall, metres; null where it is clear of them. */
export const atOpening = (wall: Wall, along: number): Opening | null =>
	wall.openings.find((opening) => along > opening.start - openingClear && along < opening.end + openingClear) ?? null;
