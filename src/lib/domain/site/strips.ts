import type { Line, Point } from '../shared/geometry';
import {
	directionAt,
	lineLength,
	moved,
	offsetLine,
	pointAt,
	rightOf,
	smoothLine,
	withoutRepeats
} from '../shared/geometry';
import { calledThe, capital, postsPlace, stripWidth, treadGoing, type YardDrive, type YardWalk } from '../yard';
import { bendsOf } from './bends';
import { postSize } from './gates';
import { measure, report, type Survey } from './survey';
import type { Crossing, Steps, Strip } from './types';

/** How far the ends of a crossing lie outside the edges: room to bring the cable down. */
const clearOfEdge = 0.15;
/** Shorter than this a line is a slip of the finger. */
const shortest = 0.3;

/** Walks and drives as strips. One without a usable line is left out and said. Junctions and the street are found later. */
export function makeStrips(survey: Survey): Strip[] {
	const { yard, ledger } = survey;
	if (yard.walks === undefined)
		ledger.missing.push({ path: 'walks', message: 'Which walks lead to the house, if any.' });
	if (yard.drives === undefined)
		ledger.missing.push({ path: 'drives', message: 'Where the drive is, if there is one.' });
	const walks = (yard.walks ?? []).flatMap((walk) => makeWalk(survey, walk));
	const drives = (yard.drives ?? []).flatMap((drive) => makeDrive(survey, drive));
	return [...walks, ...drives];
}
function makeWalk(survey: Survey, walk: YardWalk): Strip[] {
	const ground = laidOut(survey, 'walk', walk);
	if (!ground) return [];
	if (walk.lights === undefined) {
		survey.ledger.missing.push({
			path: `walks.${walk.id}.lights`,
			message: `Which side of ${calledThe(walk.name, 'walk')} may take lights.`
		});
	}
	const strip: Strip = {
		...ground,
		lights: walk.lights ?? 'none',
		pattern: 'staggered',
		rail: walk.rail ?? 'none',
		posts: null,
		gates: gatesOf(survey, walk, ground),
		runOffs: []
	};
	const steps = flights(survey, walk, ground.length);
	gatesOnSteps(survey, walk, strip.gates, steps);
	return [{ ...strip, steps }];
}
function makeDrive(survey: Survey, drive: YardDrive): Strip[] {
	const ground = laidOut(survey, 'drive', drive);
	if (!ground) return [];
	const the = calledThe(drive.name, 'drive');
	if (drive.lights === undefined) {
		survey.ledger.missing.push({
			path: `drives.${drive.id}.lights`,
			message: `Which edges of ${the} may take lights.`
		});
	}
	if (ground.width < 2.4 && drive.width !== undefined) {
		const message = `${capital(the)} is ${measure(survey, ground.width)} wide; a car needs about ${measure(survey, 2.4)}. Check the width, edge to edge.`;
		report(survey, 'look', 'drive-narrow', { kind: 'drive', id: drive.id }, message);
	}
	const runOffs = (drive.runOffs ?? []).map(({ id, at, side }) => ({ id, side, at: Math.min(at, ground.length) }));
	return [
		{
			...ground,
			lights: drive.lights ?? 'none',
			pattern: drive.pattern ?? 'staggered',
			rail: 'none',
			posts: postsAlong(survey, drive, ground.length),
			gates: [],
			runOffs
		}
	];
}
type Ground = Omit<Strip, 'lights' | 'pattern' | 'rail' | 'posts' | 'gates' | 'runOffs'>;

function laidOut(survey: Survey, kind: 'walk' | 'drive', told: YardWalk | YardDrive): Ground | null {
	const the = calledThe(told.name, kind);
	const about = { kind, id: told.id };
	if (!told.line) {
		survey.ledger.missing.push({ path: `${kind}s.${told.id}.line`, message: `Where ${the} runs.` });
		return null;
	}
	const points = withoutRepeats(
		told.line.map((p): Point => ({ x: p.along, y: p.out })),
		1e-3
	);
	if (lineLength(points) < shortest) {
		const message = `${capital(the)} begins and ends at the same place. Tap where it leaves the street and where it ends at the house.`;
		report(survey, 'stop', `${kind}-no-length`, about, message);
		return null;
	}
	const curved = told.curved === true && points.length > 2;
	const centre = curved ? smoothLine(points) : points;
	const width = stripWidth(kind, told, survey.units, survey.ledger);
	const left = offsetLine(centre, -width / 2);
	const right = offsetLine(centre, width / 2);
	const length = lineLength(centre);
	return {
		id: told.id,
		name: told.name,
		kind,
		centre,
		width,
		length,
		left,
		right,
		polygon: [...left, ...right.toReversed()],
		bends: bendsOf(centre, curved),
		junctions: [],
		steps: [],
		crossings: crossingsOf(survey, kind, told, centre, width, length),
		meetsStreet: false
	};
}
const crossingNames = { sleeve: 'A sleeve', joint: 'An expansion joint', bore: 'A bore' } as const;
function crossingsOf(
	survey: Survey,
	kind: 'walk' | 'drive',
	told: YardWalk | YardDrive,
	centre: Line,
	width: number,
	length: number
): Crossing[] {
	return (told.crossings ?? []).flatMap((crossing): Crossing[] => {
		if (crossing.at > length + 0.05) {
			const message = `${crossingNames[crossing.kind]} is told at ${measure(survey, crossing.at)} along ${calledThe(told.name, kind)}, which is ${measure(survey, length)} long: there is nothing left to cross. It is not used; check where it is.`;
			report(survey, 'look', 'crossing-beyond-end', { kind, id: told.id }, message);
			return [];
		}
		const at = Math.min(crossing.at, length);
		const middle = pointAt(centre, at);
		const across = rightOf(directionAt(centre, at));
		const reach = width / 2 + clearOfEdge;
		return [
			{
				id: crossing.id,
				kind: crossing.kind,
				at,
				left: moved(middle, across, -reach),
				right: moved(middle, across, reach)
			}
		];
	});
}
function flights(survey: Survey, walk: YardWalk, length: number): Steps[] {
	const told = (walk.steps ?? []).map((flight) => {
		const going = treadGoing(walk, flight, survey.units, survey.ledger);
		const end = flight.at + flight.treads * going;
		if (end > length + 0.05) {
			const message = `A flight of steps reaches ${measure(survey, end)} along ${calledThe(walk.name, 'walk')}, which is ${measure(survey, length)} long. Check where it begins, and how many treads it has.`;
			report(survey, 'look', 'steps-beyond-end', { kind: 'walk', id: walk.id }, message);
		}
		return { id: flight.id, start: Math.min(flight.at, length), end: Math.min(end, length), treads: flight.treads };
	});
	return told.sort((a, b) => a.start - b.start);
}
/** Gates in order from the street. What they keep clear hangs on the way they swing, which is not asked: said once for each walk. */
function gatesOf(survey: Survey, walk: YardWalk, { length, width }: Ground): Strip['gates'] {
	const the = calledThe(walk.name, 'walk');
	const about = { kind: 'walk', id: walk.id };
	const told = walk.gates ?? [];
	if (told.length > 0) {
		const which = told.length === 1 ? 'The gate' : 'Each gate';
		const message = `${which} on ${the} is taken to swing either way, with a leaf as long as the walk is wide: the ground within ${measure(survey, width)} of it stays clear of lights.`;
		survey.ledger.assumptions.push({ path: `walks.${walk.id}.gates`, message, about });
	}
	return told
		.map(({ id, at }) => {
			if (at > length + 0.05) {
				const message = `A gate is told at ${measure(survey, at)} along ${the}, which is ${measure(survey, length)} long. It is taken at the end; check where it is.`;
				report(survey, 'look', 'gate-beyond-end', about, message);
			}
			return { id, at: Math.min(at, length) };
		})
		.sort((a, b) => a.at - b.at);
}
function gatesOnSteps(survey: Survey, walk: YardWalk, gates: Strip['gates'], steps: readonly Steps[]): void {
	const gate = gates.find(({ at }) => steps.some(({ start, end }) => at > start + 1e-6 && at < end - 1e-6));
	if (!gate) return;
	const message = `A gate on ${calledThe(walk.name, 'walk')}, ${measure(survey, gate.at)} along it, stands in a flight of steps. Check where both are: a leaf needs level ground to swing over.`;
	report(survey, 'look', 'gate-on-steps', { kind: 'walk', id: walk.id }, message);
}
/** Metres along the centre line at which gate posts stand; null: there are none. */
function postsAlong(survey: Survey, drive: YardDrive, length: number): number | null {
	if (drive.posts !== true) return null;
	const at = postsPlace(drive, postSize, survey.units, survey.ledger);
	if (at > length + 0.05) {
		const message = `The gate posts are told at ${measure(survey, at)} along ${calledThe(drive.name, 'drive')}, which is ${measure(survey, length)} long. They are taken at its end; check where they stand.`;
		report(survey, 'look', 'posts-beyond-end', { kind: 'drive', id: drive.id }, message);
	}
	return Math.min(at, length);
}
