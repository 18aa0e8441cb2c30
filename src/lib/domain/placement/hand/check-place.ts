/** Which rules the place of a light set by hand breaks, each in a sentence. */
import { distance, distanceToPolygon, nearestOnSegment } from '../../shared/geometry';
import { fixtureModels } from '../../shared/catalogue';
import type { RuleId } from '../../shared/rules';
import type { Rank } from '../../shared/findings';
import { distanceToStrip, type Strip } from '../../site';
import { bedSides, ringOf } from '../bed-edges';
import { poolEdge, poolReach } from '../bed-pools';
import { ruleFor, type Cause, type Standing } from '../conflicts';
import type { Drafting } from '../drafting';
import type { Fixture } from '../types';
import { litGable } from '../wall-gable';
import { beforeLamps, shinesInto } from '../wall-openings';
import { called } from '../wording';
import { nearestOnEdge } from './spacing';

export interface Broken {
	/** After `placement.hand-`. */
	what: string;
	rank: Rank;
	rule: RuleId;
	/** The end of a sentence that begins with the light. */
	words: string;
}
type Check = (d: Drafting, fixture: Fixture, all: readonly Fixture[]) => (Broken | null)[];

const slack = 1e-4;
const radiusOf = ({ model }: Fixture): number => (fixtureModels.find(({ id }) => id === model)?.headDiameter ?? 0) / 2;
const standingOf = ({ technique }: Fixture): Standing => {
	if (technique === 'step' || technique === 'number') return 'mounted';
	if (technique === 'uplight') return 'up';
	return technique === 'wash' || technique === 'graze' ? 'ground' : 'path';
};

const water: Check = (d, fixture) =>
	d.site.areas.map((area) => {
		const away = distanceToPolygon(fixture.at, area.polygon) - radiusOf(fixture);
		const { clear } = d.figures['water.clear'];
		if (area.kind !== 'water' || away >= clear - slack) return null;
		const where =
			away <= 0 ? `stands in ${called(area.name, 'water')}` : `is ${d.len(away)} from ${called(area.name, 'water')}`;
		return {
			what: 'water',
			rank: 'stop',
			rule: 'water.clear',
			words: `${where}: ${d.len(clear)} is the least, because water and electricity meet in a person`
		};
	});

function besideStrip(d: Drafting, fixture: Fixture, strip: Strip): Broken | null {
	const off = distanceToStrip(fixture.at, strip) - radiusOf(fixture);
	const the = called(strip.name, strip.kind);
	const { low, high } = d.figures['path.setback'];
	const rule = strip.kind === 'drive' ? 'drive.setback' : 'path.setback';
	if (off < -slack) return { what: 'paving', rank: 'look', rule, words: `stands in the paving of ${the}` };
	// Beside a step or on a wall a lamp is in nobody's way.
	const least = strip.kind === 'drive' ? d.figures['drive.setback'].clear : standingOf(fixture) === 'path' ? low : 0.05;
	if (off < least - slack)
		return {
			what: 'setback',
			rank: 'look',
			rule,
			words: `is ${d.len(off)} from the edge of ${the}, nearer than ${d.len(least)}: ${strip.kind === 'drive' ? 'tyres' : 'shoes and mowers'} reach it there`
		};
	const own = fixture.target.kind === strip.kind && fixture.target.id === strip.id;
	if (own && fixture.technique === 'path' && off > high + slack)
		return {
			what: 'setback',
			rank: 'look',
			rule,
			words: `is ${d.len(off)} from the edge of ${the}, further than ${d.len(high)}: less of its light falls on the walk`
		};
	return null;
}
const strips: Check = (d, fixture) => d.site.strips.map((strip) => besideStrip(d, fixture, strip));

const inTheWay: Readonly<Partial<Record<Cause, [rank: Rank, words: string]>>> = {
	house: ['stop', 'stands in the house or hard against it'],
	lot: ['look', 'stands outside your lot'],
	wall: ['look', 'stands in a wall'],
	porch: ['look', 'stands in the porch'],
	paved: ['look', 'stands in paving or hard against it'],
	cars: ['look', 'stands where cars drive or stand, or within reach of their tyres'],
	gate: ['look', 'stands where a gate may swing'],
	post: ['look', 'stands in a gate post'],
	seating: ['look', 'stands in the seating place'],
	door: ['look', 'stands in front of a door, underfoot'],
	garage: ['look', 'stands in front of the garage door, where a car goes'],
	receptacle: ['look', 'is in the way of the receptacle'],
	eaves: ['look', 'stands under the eaves, which catch its beam'],
	trunk: ['look', 'stands in a trunk or on its foot'],
	crown: ['look', 'stands in a tree that is clothed to the ground']
};
const ground: Check = (d, fixture) => {
	const cause = d.ground.blocked(fixture.at, radiusOf(fixture), standingOf(fixture));
	const found = cause ? inTheWay[cause] : undefined;
	return [cause && found ? { what: cause, rank: found[0], rule: ruleFor(cause), words: found[1] } : null];
};

const neighbours: Check = (d, fixture, all) => {
	const { apart } = d.figures['place.clear'];
	return all
		.filter((other) => other.id !== fixture.id && distance(other.at, fixture.at) < apart - slack)
		.map((other) => ({
			what: 'near',
			rank: 'look',
			rule: 'place.clear',
			words: `is ${d.len(distance(other.at, fixture.at))} from ${other.label}: ${d.len(apart)} leaves room for a spade`
		}));
};

const spacing: Check = (d, fixture, all) => {
	const rule = fixture.technique === 'drive' ? 'drive.spacing' : 'path.spacing';
	const least = d.figures[rule].spacing;
	const nearest = nearestOnEdge(d.site, fixture, all);
	if (!nearest || nearest.away >= least - slack) return [];
	return [
		{
			what: 'spacing',
			rank: 'look',
			rule,
			words: `is ${d.len(nearest.away)} from ${nearest.fixture.label} on the same edge: closer than ${d.len(least)} it looks like a runway`
		}
	];
};

const bark: Check = (d, { target, technique, at }) => {
	const tree = d.site.trees.find(({ id }) => target.kind === 'tree' && target.id === id);
	if (!tree || technique !== 'uplight') return [];
	const away = distance(at, tree.at) - tree.trunkDiameter / 2;
	const { nearOffset, farHigh, farOffset } = d.figures['tree.offset'];
	const most = Math.max(farHigh, farOffset);
	const the = called(tree.name, 'tree');
	if (away < nearOffset - slack)
		return [
			{
				what: 'bark',
				rank: 'look',
				rule: 'tree.offset',
				words: `is ${d.len(Math.max(0, away))} from the bark of ${the}, nearer than ${d.len(nearOffset)}: it lights little but the trunk`
			}
		];
	if (away > Math.max(most, tree.spread / 2) + slack)
		return [
			{
				what: 'bark',
				rank: 'look',
				rule: 'tree.offset',
				words: `is ${d.len(away)} from the bark of ${the}; ${d.len(most)} is usual at most: its beam may miss the trunk`
			}
		];
	return [];
};

const wall: Check = (d, { target, technique, at, aim, height, lamp }) => {
	const found = d.site.walls.find(({ id }) => target.kind === 'wall' && target.id === id);
	if (!found || found.length <= 0) return [];
	const near = nearestOnSegment(at, found.from, found.to);
	const { low, high, graze, mostLit } = d.figures['wall.setback'];
	const lit = Math.min(found.height, mostLit);
	// Under a gable a lamp may stand off as its point asks.
	const [least, most] = technique === 'graze' ? [0, graze] : [low * lit, high * (litGable(found, d.figures) ?? lit)];
	const { clear } = d.figures['wall.openings'];
	const s = near.t * found.length;
	const opening = beforeLamps(found).find(
		({ kind, start, end }) => kind === 'window' && s > start - clear && s < end + clear
	);
	const beam = aim && { tilt: aim.tilt, setback: near.distance, lampHeight: height, beamAngle: lamp.beamAngle };
	const upstairs = technique === 'wash' && beam !== null && shinesInto(found, s, beam);
	const the = called(found.name, 'wall');
	return [
		near.distance < least - slack || near.distance > most + slack
			? {
					what: 'setback',
					rank: 'look',
					rule: 'wall.setback',
					words: `is ${d.len(near.distance)} off ${the}: ${technique === 'graze' ? `within ${d.len(most)}` : `${d.len(least)} to ${d.len(most)}`} is usual, so that the light ${near.distance < least ? 'does not pile up at its foot' : 'reaches it'}`
				}
			: null,
		opening
			? {
					what: 'window',
					rank: 'look',
					rule: 'wall.openings',
					words: `stands before a window of ${the} and would shine into it`
				}
			: null,
		upstairs
			? {
					what: 'window',
					rank: 'look',
					rule: 'wall.openings',
					words: `stands under a window of the upper floor of ${the} and shines into it: aim it lower, or move it aside`
				}
			: null
	];
};

const bed: Check = (d, fixture) => {
	const found = d.site.areas.find(
		({ kind, id }) => kind === 'bed' && fixture.target.kind === 'bed' && fixture.target.id === id
	);
	if (!found) return [];
	const ring = ringOf(found.polygon);
	const the = called(found.name, 'bed');
	const { clear } = d.figures['bed.inset'];
	if (distanceToPolygon(fixture.at, ring) > slack)
		return [{ what: 'bed', rank: 'look', rule: 'bed.inset', words: `stands outside ${the}` }];
	const near = bedSides(d.site, found, ring)
		.map((side) => ({ side, off: nearestOnSegment(fixture.at, side.from, side.to).distance - radiusOf(fixture) }))
		.find(({ side, off }) => off < side.clear - slack);
	return [
		near
			? {
					what: 'bed',
					rank: 'look',
					rule: 'bed.inset',
					words: `is ${d.len(Math.max(0, near.off))} from the edge of ${the}, nearer than ${d.len(Math.min(clear, near.side.clear))}: edger and mower reach it there`
				}
			: null
	];
};
/** Two low lights in a bed nearer than the reach of a pool do the work of one. */
const bedNeighbours: Check = (d, fixture, all) => {
	const level = d.site.areas.find(({ kind, id }) => kind === 'bed' && id === fixture.target.id)?.light;
	if (fixture.target.kind !== 'bed') return [];
	const least = poolReach(fixture.lamp, fixture.height, poolEdge(level === 'bright' ? 'bright' : 'soft'));
	const near = all
		.filter(({ id, technique }) => id !== fixture.id && ['path', 'drive', 'area'].includes(technique))
		.map((other) => ({ other, away: distance(other.at, fixture.at) }))
		.filter(({ away }) => away < least - slack && away >= d.figures['place.clear'].apart - slack)
		.toSorted((a, b) => a.away - b.away)[0];
	return [
		near
			? {
					what: 'spacing',
					rank: 'look',
					rule: 'bed.spacing',
					words: `is ${d.len(near.away)} from ${near.other.label}: nearer than ${d.len(least)} two lights do the work of one`
				}
			: null
	];
};

const checks: readonly Check[] = [water, strips, ground, neighbours, spacing, bark, wall, bed, bedNeighbours];
/** What a place breaks; nothing when it keeps every rule. `all`: every light of the plan, labelled. */
export const brokenByPlace: (d: Drafting, fixture: Fixture, all: readonly Fixture[]) => Broken[] = (d, fixture, all) =>
	checks.flatMap((check) => check(d, fixture, all)).filter((one) => one !== null);
