import { describe, expect, it } from 'vitest';
import { routeWords } from './route-figures';
import type { RouteLength } from './types';

const route = (over: Partial<RouteLength>): RouteLength => ({
	length: 41.2,
	bound: 40.6,
	gap: 41.2 / 40.6 - 1,
	links: [],
	trench: 38,
	trenchApart: 38,
	savedBySharing: 0,
	...over
});

describe('words on the length of the routes', () => {
	it('put the bound beside the length', () => {
		expect(routeWords(route({}), 2, 'metres')).toEqual([
			'The cables run 41.20 m over the ground. Any 2 runs by the cheapest ways, meeting only at lights, measure 40.60 m or more.',
			'To dig: 38.00 m, ways under paving left out.'
		]);
	});
	it('say when nothing can be shorter, and what is saved where cables share a trench', () => {
		expect(routeWords(route({ bound: 41.2, gap: 0, trench: 35.5, savedBySharing: 2.5 }), 1, 'metres')).toEqual([
			'The cables run 41.20 m over the ground. One run by the cheapest ways, branching only at lights, measures that or more.',
			'To dig: 35.50 m, ways under paving left out; 2.50 m is saved where cables share a trench.'
		]);
	});
	it('are in the yard’s own units', () => {
		expect(routeWords(route({ length: 3.048, bound: 3.048 }), 1, 'feet')[0]).toContain('10 ft');
	});
});
