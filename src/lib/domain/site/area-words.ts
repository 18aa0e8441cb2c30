import type { Area } from './types';

/** What an area is called that has no name of its own. */
export const areaWords: Record<Area['kind'], string> = {
	bed: 'bed',
	paved: 'paving',
	seating: 'seating place',
	porch: 'porch',
	water: 'water'
};
