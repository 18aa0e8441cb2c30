/** Geometry that cannot be. It is kept as told; the finding says where to look. */
import type { Line, Polygon } from '../shared/geometry';
import { lengthInside, offsetRing, selfMeetings, turns } from '../shared/geometry';
import { calledThe, capital } from '../yard';
import { areaLies } from './impossible-areas';
import { treeStands } from './impossible-trees';
import { measure, report, tape, type Survey } from './survey';
import type { Site, Strip, Wall } from './types';

export type Told = Omit<Site, 'bounds'>;
/** Less than this through the house is a doormat, not a mistake. */
const doormat = 0.3;
/** A line that turns back by more than this lies on itself. */
const aboutTurn = 170;

/** Adds a finding for everything that stands where it cannot. */
export function impossible(survey: Survey, site: Told): void {
	// Walls measured with a tape: a walk that grazes the house by a hand's breadth runs along it.
	const within = site.house.length === 0 ? [] : offsetRing(site.house, -tape);
	for (const strip of site.strips) {
		throughHouse(survey, within, strip);
		overItself(survey, strip);
		throughWater(survey, site, strip);
		endsInStreet(survey, site, strip);
	}
	for (const tree of site.trees) treeStands(survey, site, tree);
	for (const area of site.areas) areaLies(survey, site, area);
	for (const wall of site.walls) if (wall.of === 'garden') wallStands(survey, site, within, wall);
	houseInStreet(survey, site);
}
function metresInside(line: Line, ring: Polygon): number {
	let sum = 0;
	for (let i = 1; i < line.length; i++) sum += lengthInside(line[i - 1]!, line[i]!, ring);
	return sum;
}
const named = (strip: Strip): string => capital(calledThe(strip.name, strip.kind));

function throughHouse(survey: Survey, within: Polygon, strip: Strip): void {
	const through = metresInside(strip.centre, within);
	// Where a strip comes to the wall at a slant one corner of its end lies in the wall; the mason cuts it off.
	const grazing = Math.max(metresInside(strip.left, within), metresInside(strip.right, within)) - strip.width;
	const inside = Math.max(through, grazing);
	if (inside <= doormat) return;
	const message = `${named(strip)} runs ${measure(survey, inside)} through the house. Check its points and its width: it should end at the wall, the door or the porch.`;
	report(survey, 'stop', `${strip.kind}-through-house`, { kind: strip.kind, id: strip.id }, message);
}
function overItself(survey: Survey, strip: Strip): void {
	const about = { kind: strip.kind, id: strip.id };
	const crossing = selfMeetings(strip.centre)[0];
	const turned = turns(strip.centre).find(({ turn }) => Math.abs(turn) > aboutTurn);
	if (crossing) {
		const message = `${named(strip)} crosses itself ${measure(survey, crossing.at)} from its start. Check the order of its points.`;
		report(survey, 'stop', `${strip.kind}-crosses-itself`, about, message);
	} else if (turned) {
		const message = `${named(strip)} turns back on itself ${measure(survey, turned.at)} from its start. Check the order of its points.`;
		report(survey, 'stop', `${strip.kind}-turns-back`, about, message);
	}
}
function throughWater(survey: Survey, site: Told, strip: Strip): void {
	for (const water of site.areas) {
		if (water.kind !== 'water' || metresInside(strip.centre, water.polygon) <= doormat) continue;
		const message = `${named(strip)} runs through ${calledThe(water.name, water.sort ?? 'water')}. Check where both are.`;
		report(survey, 'stop', `${strip.kind}-through-water`, { kind: strip.kind, id: strip.id }, message);
	}
}
function endsInStreet(survey: Survey, site: Told, strip: Strip): void {
	const beyond = strip.centre.at(-1)!.y - site.street;
	if (beyond <= doormat) return;
	const message = `${named(strip)} ends in the street, ${measure(survey, beyond)} beyond its edge. Give its points from the street to the house.`;
	report(survey, 'look', `${strip.kind}-ends-in-street`, { kind: strip.kind, id: strip.id }, message);
}
function wallStands(survey: Survey, site: Told, within: Polygon, wall: Wall): void {
	const the = capital(calledThe(wall.name, 'wall'));
	const about = { kind: 'wall', id: wall.id };
	const inHouse = lengthInside(wall.from, wall.to, within);
	if (inHouse > doormat) {
		report(
			survey,
			'look',
			'wall-through-house',
			about,
			`${the} runs ${measure(survey, inHouse)} through the house. Check where it begins and ends.`
		);
	}
	const strip = site.strips.find(({ polygon }) => lengthInside(wall.from, wall.to, polygon) > doormat);
	if (strip) {
		const message = `${the} stands across ${calledThe(strip.name, strip.kind)}. Check where both are; tell a wall with a gap as two walls.`;
		report(survey, 'look', 'wall-across-paving', about, message);
	}
}
function houseInStreet(survey: Survey, site: Told): void {
	for (const part of survey.yard.house.sections ?? []) {
		if ((part.out ?? 0) < site.street) continue;
		const message = 'Part of the house stands in the street. Check how far it stands out, and how far the street is.';
		report(survey, 'stop', 'house-in-street', { kind: 'section', id: part.id }, message);
	}
}
