import type { Point } from '../shared/geometry';
import { distanceToPolygon, nearestOnPolygon } from '../shared/geometry';
import type { House } from './house';
import { measure, report, type Survey } from './survey';
import type { Site } from './types';

/** A tape that ends inside the wall: taken for the wall without a word, metres. */
const wallThickness = 0.3;
/** Where we suppose a receptacle when asked to: this far from the front's left corner. */
const supposed = 0.5;

/** The receptacle on the outside of the house. Null when there is none, or nowhere to suppose one yet. */
export function makeReceptacle(survey: Survey, house: House): Site['receptacle'] {
	const { receptacle, gfci, inUseCover } = survey.yard.power;
	const { ledger } = survey;
	const about = { kind: 'power', id: 'receptacle' };
	if (receptacle === undefined) {
		ledger.missing.push({ path: 'power.receptacle', message: 'Where the outdoor receptacle is, if there is one.' });
	}
	if (receptacle === 'none') return null;
	if (receptacle === undefined || receptacle === 'unsure') {
		const first = house.parts[0];
		if (!first) return null;
		const at = { x: Math.min(first.from + supposed, (first.from + first.to) / 2), y: first.out };
		const message = `A receptacle is supposed on the front of the house, ${measure(survey, at.x)} from its left corner. Find the real one before you buy.`;
		ledger.assumptions.push({ path: 'power.receptacle', message, about });
		return { at, known: false, gfci: gfci ?? 'unsure', inUseCover: inUseCover ?? 'unsure' };
	}
	for (const [path, given, needed] of [
		['power.gfci', gfci, 'Whether the receptacle is GFCI-protected.'],
		['power.inUseCover', inUseCover, 'Whether the receptacle has a cover that closes over the plug.']
	] as const) {
		if (given === undefined) ledger.missing.push({ path, message: needed });
	}
	const at = onTheWall(survey, house, { x: receptacle.along, y: receptacle.out });
	return { at, known: true, gfci: gfci ?? 'unsure', inUseCover: inUseCover ?? 'unsure' };
}
/** A receptacle told inside the house, or a hand's breadth in front of a wall, is on that wall. */
function onTheWall(survey: Survey, house: House, told: Point): Point {
	const depth = -distanceToPolygon(told, house.outline);
	const near = nearestOnPolygon(told, house.outline);
	if (!near || depth < -wallThickness) return told;
	if (depth > wallThickness) {
		const message = `The receptacle lies ${measure(survey, depth)} inside the house. It is taken on the nearest outside wall; check where it is.`;
		report(survey, 'look', 'receptacle-in-house', { kind: 'power', id: 'receptacle' }, message);
	}
	return near.point;
}
