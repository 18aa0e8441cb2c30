import type { Box } from '../shared/geometry';
import { LightGrid } from './light-grid';
import type { LightField, LightMap } from './types';

/**
 * Horizontal light on the ground over a box, from all sources of a field, cells `step` metres apart. Each source's share
 * ends where it falls below 0.01 lx. For a map that changes with a fixture take `LightGrid`.
 */
export function lightMap(field: LightField, box: Box, step: number): LightMap {
	const grid = new LightGrid(field.shadows, box, step);
	grid.set(field.sources);
	return grid.map;
}
