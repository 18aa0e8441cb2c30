import { boundaryMeetings, between, lineLength, nearestOnLine, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import { placedCrossings, trenchLength, type Run, type RunSegment, type SegmentCrossing } from '../cable';
import type { Site, Tree } from '../site';
import { atPlace, ofCable, overGround } from './done/done-for';
import { tickId } from './done/entry';
import { walked, type Job } from './job';
import { turnsWorthSaying } from './route';
import type { ChecklistItem, ChecklistStep } from './types';
import { sizeName } from '../circuit';
import { defer, place, sentence, step } from './words';

const depth = rules['cable.depth'].figures;

/** A light that stands this near its hub has a lead of nothing but slack, metres. */
const besideIt = 0.005;

/** Trees within whose root zone a leg runs. */
const rootsOn = (path: readonly Point[], site: Site): Tree[] =>
	site.trees.filter((tree) => (nearestOnLine(tree.at, path)?.distance ?? Infinity) < tree.rootRadius);

/** The first place where a leg meets the edge of the paving. */
function meetsPaving(segment: RunSegment, stripId: string, site: Site): Point | null {
	const strip = site.strips.find((one) => one.id === stripId);
	if (!strip) return null;
	for (let i = 1; i < segment.path.length; i += 1) {
		const [a, b] = [segment.path[i - 1]!, segment.path[i]!];
		const first = boundaryMeetings(a, b, strip.polygon)[0];
		if (first !== undefined) return between(a, b, first);
	}
	return null;
}
function crossingStep(
	id: string,
	segment: RunSegment,
	crossing: SegmentCrossing,
	shared: boolean,
	site: Site
): ChecklistStep {
	const strip = site.strips.find((one) => one.id === crossing.strip);
	const name = strip?.name ?? 'the paving';
	const at = meetsPaving(segment, crossing.strip, site);
	const where = at ? `${name} at ${place(at, site)}` : name;
	const wide = formatLength(crossing.length, site.units);
	const under = formatLength(strip?.kind === 'drive' ? depth.drive : depth.lawn, site.units);
	const more = { rule: 'cable.crossing', ...(at ? { doneFor: atPlace(at) } : {}) };
	if (shared) return step(id, `Cross ${where} with this cable too, the way already made.`, more);
	if (crossing.kind === 'sleeve') {
		return step(
			id,
			`Cross ${where} through the sleeve that is there, ${wide}. Pull a draw cord in with the cable and leave it.`,
			{ ...more, defers: [defer.code] }
		);
	}
	if (crossing.kind === 'joint') {
		return step(
			id,
			`Cross ${where} in the expansion joint, ${wide}: lift the strip out, lay the cable on the bottom, put the strip back flush over it and fill the gaps with sand.`,
			{
				cautions: [`This is common practice and lies shallower than the ${under} that the table asks for.`],
				defers: [defer.authority, defer.maker],
				...more
			}
		);
	}
	return step(id, `Bore a sleeve under ${where}, ${wide}, at least ${under} deep, and draw the cable through it.`, {
		cautions: [
			'Bore only where the marks show nothing, from a pit on each side; keep your face and hands out of line with the bore.'
		],
		defers: [defer.dig, defer.code],
		...more
	});
}
/** Dug and laid at different times of the day; beside its hub there is nothing to dig. */
function legItems(segment: RunSegment, ground: number): ChecklistItem[] {
	const doneFor = overGround(ground);
	const item = (what: string): ChecklistItem => ({ id: tickId(what, segment.to), label: sentence(what), doneFor });
	return ground < besideIt ? [item('laid')] : [item('dug'), item('laid')];
}
function legStep(id: string, job: Job, run: Run, segment: RunSegment): ChecklistStep {
	const { site } = job;
	const turns = turnsWorthSaying(segment.path).map((point) => place(point, site));
	const by = turns.length > 0 ? `, by way of ${turns.join('; ')}` : '';
	const trees = rootsOn(segment.path, site);
	const names = `${job.nodeName(run, segment.from)} to ${job.nodeName(run, segment.to)}`;
	const ground = lineLength(segment.path);
	const text =
		ground < besideIt
			? `${sentence(names)}: right beside it, with ${formatLength(segment.length, site.units)} of cable coiled in the ground.`
			: `${sentence(names)}: ${formatLength(ground, site.units)} over the ground${by}.`;
	const items = legItems(segment, ground);
	if (trees.length === 0) return step(id, text, { items, rule: 'cable.depth' });
	return step(id, text, {
		items,
		cautions: trees.map(
			(tree) =>
				`Within ${formatLength(tree.rootRadius, site.units)} of the trunk of ${tree.name} dig by hand and go round roots over ${formatLength(rules['tree.roots'].figures.keepRoot, site.units)}.`
		),
		rule: 'tree.roots'
	});
}
interface DugFor {
	/** Metres to dig for a run when those before it lie open, and of its cables in open ground, each in a trench of its own. */
	fresh: number;
	apart: number;
}
function dugFor(runs: readonly Run[]): DugFor[] {
	let open = 0;
	return runs.map((run, k) => {
		const { trench } = trenchLength(runs.slice(0, k + 1).flatMap(({ segments }) => segments));
		const fresh = trench - open;
		open = trench;
		return { fresh, apart: trenchLength(run.segments).laid };
	});
}
/** Said where it is less than the cables measure. */
const diggingWords = ({ fresh, apart }: DugFor, length: (metres: number) => string): string =>
	apart - fresh < 0.05 ? '' : ` To dig for it: ${length(fresh)}; the rest shares trenches.`;

/** Per run in order: what it is, then leg by leg with the crossings on it. */
export function trenchSteps(job: Job): ChecklistStep[] {
	const { site, cabling } = job;
	const length = (metres: number): string => formatLength(metres, site.units);
	const done = new Set<string>();
	const dug = dugFor(cabling.runs);
	const steps = cabling.runs.flatMap((run, k) => {
		const laid = run.segments.reduce((sum, segment) => sum + segment.length, 0);
		const ground = run.segments.reduce((sum, segment) => sum + lineLength(segment.path), 0);
		const head = step(
			tickId('trench', run.id),
			`${sentence(run.name)}: ${sizeName(run.cable)}, ${length(laid)} of cable for ${length(ground)} over the ground.${diggingWords(dug[k]!, length)} Its route card shows where, stretch by stretch. Open the trench so that ${length(depth.lawn)} of cover lies over the cable.`,
			{
				cautions: ['Look for marks and private lines as you go, and stop at anything you did not expect.'],
				defers: [defer.dig, defer.code],
				doneFor: ofCable(run.cable, laid),
				rule: 'cable.depth'
			}
		);
		const legs = walked(run).segments.flatMap((segment) => [
			legStep(tickId('leg', segment.to), job, run, segment),
			...placedCrossings(segment.path, segment.crossings).map(({ crossing, place: made }, j, all) => {
				const shared = done.has(made);
				done.add(made);
				// Round a bend one cable may cross the same paving twice.
				const nth = all.slice(0, j).filter((one) => one.crossing.strip === crossing.strip).length;
				const id = tickId('cross', crossing.strip, segment.to, ...(nth > 0 ? [String(nth + 1)] : []));
				return crossingStep(id, segment, crossing, shared, site);
			})
		]);
		return [head, ...legs];
	});
	if (steps.length === 0) return [];
	const slack = rules['cable.slack'].figures;
	return [
		...steps,
		step(
			'slack',
			`Lay the cable without pulling it tight, and leave a loop of ${length(slack.low)} to ${length(slack.high)} at each fixture and at the transformer.`,
			{ rule: 'cable.slack' }
		),
		step(
			'record',
			'Before you fill, photograph the open trench with the tape in the picture, and mark any change on the plan.',
			{
				cautions: ['Keep the cable apart from mains wiring, and where the edger and the aerator do not reach.'],
				rule: 'cable.clear'
			}
		),
		step(
			'fill',
			'Fill half-way, lay the warning tape, fill the rest and tread it down. Leave the ground open at the joints until the first night is done.',
			{ rule: 'cable.depth' }
		)
	];
}
