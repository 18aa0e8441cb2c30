/** For tests: what must hold of any plan, checked with geometry of its own. */
import { distance, distanceToPolygon, nearestOnLine } from '../shared/geometry';
import { fixtureModels } from '../shared/catalogue';
import type { Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import { tradeFigures, type Figures } from '../shared/settings';
import { sources } from '../shared/sources';
import { distanceToStrip, type Site, type Strip } from '../site';
import { evaluate } from '../shared/evaluate';
import { isSkirted } from './conflicts';
import type { Fixture } from './index';

const modelOf = new Map(fixtureModels.map((m) => [m.id, m]));
const slack = 1e-5;

/** A line that doubles back on itself: its edges are cut across the turn, "3 m along one edge" and "off the edge" mean nothing there. */
const doublesBack = (strip: Strip): boolean => strip.bends.some(({ turn }) => Math.abs(turn) > 120);

/** Everything wrong with one plan, in words, by the figures in force. */
export function faults(
	site: Site,
	fixtures: readonly Fixture[],
	findings: readonly Finding[],
	figures: Figures = tradeFigures.figures
): string[] {
	const wrong: string[] = [];
	for (const f of fixtures) {
		const model = modelOf.get(f.model);
		const radius = (model?.headDiameter ?? NaN) / 2;
		const clear = (ring: readonly { x: number; y: number }[]): number =>
			ring.length < 3 ? Infinity : distanceToPolygon(f.at, ring) - radius;
		const numbers = [
			f.at.x,
			f.at.y,
			f.height,
			radius,
			...(f.aim ? [f.aim.bearing, f.aim.tilt, f.aim.point.x, f.aim.point.y, f.aim.point.z] : [])
		];
		if (!numbers.every(Number.isFinite)) wrong.push(`${f.id} has a figure that is none`);
		if (clear(site.house) < -slack) wrong.push(`${f.id} in the house`);
		for (const area of site.areas) {
			if (area.kind === 'bed') continue;
			const need = area.kind === 'water' ? figures['water.clear'].clear : 0;
			if (clear(area.polygon) < need - slack) wrong.push(`${f.id} in or too near ${area.kind} ${area.id}`);
		}
		for (const strip of site.strips) {
			const off = distanceToStrip(f.at, strip) - radius;
			if (off < -slack) wrong.push(`${f.id} in ${strip.kind} ${strip.id}`);
			if (strip.kind === 'drive' && off < 0.15 - slack) wrong.push(`${f.id} too near the drive ${strip.id}`);
			const least = strip.kind === 'walk' ? figures['path.setback'].low : 0.15;
			if (f.technique === 'path' && off < least - slack) wrong.push(`${f.id} too near ${strip.id}`);
			if (
				f.technique === 'path' &&
				strip.id === f.target.id &&
				strip.kind === 'walk' &&
				off > figures['path.setback'].high + slack
			)
				wrong.push(`${f.id} too far from its walk: ${off}`);
		}
		if (f.at.y > site.street || f.at.x < site.leftBoundary || f.at.x > site.rightBoundary)
			wrong.push(`${f.id} outside the lot`);
		for (const tree of site.trees) {
			const off = distance(f.at, tree.at) - radius;
			const foot = tree.trunkDiameter * (0.5 + figures['place.clear'].flare);
			if (off < foot - slack) wrong.push(`${f.id} on the foot of ${tree.id}`);
			if (isSkirted(tree) && off < tree.spread / 2 - slack) wrong.push(`${f.id} in the branches of ${tree.id}`);
		}
		if (f.technique === 'uplight' && clear(site.house) < figures['place.clear'].eaves - slack)
			wrong.push(`${f.id} under the eaves`);
		if (site.receptacle?.known && f.height < 1 && f.technique !== 'step') {
			if (distance(f.at, site.receptacle.at) - radius < figures['place.clear'].receptacle - slack)
				wrong.push(`${f.id} in the way of the receptacle`);
		}
		if (inFrontOfDoor(site, f, figures)) wrong.push(`${f.id} in front of a door`);
		if (f.target.kind === 'drive' && f.height > figures['drive.sight'].head) wrong.push(`${f.id} is too high`);
		if (f.technique === 'uplight' && f.aim!.tilt > figures['tree.aim'].maxLean + slack)
			wrong.push(`${f.id} leans ${f.aim!.tilt}`);
		if (f.reasons.length === 0) wrong.push(`${f.id} says no reason`);
		for (const reason of f.reasons) {
			if (!(reason.rule in rules) || !(reason.source in sources))
				wrong.push(`${f.id}: ${reason.rule} or ${reason.source} is unknown`);
			if (/NaN|undefined|Infinity/.test(reason.because)) wrong.push(`${f.id}: ${reason.because}`);
			const working = reason.working;
			if (!working) continue;
			const values = Object.fromEntries(working.inputs.map(({ symbol, value }) => [symbol, value]));
			if (
				!(Math.abs(evaluate(working.expression, values) - working.value) <= 1e-9 * Math.max(1, Math.abs(working.value)))
			)
				wrong.push(`${f.id}: ${working.label} does not come to ${working.value}`);
		}
	}
	for (let i = 0; i < fixtures.length; i++)
		for (let j = i + 1; j < fixtures.length; j++)
			if (distance(fixtures[i]!.at, fixtures[j]!.at) < figures['place.clear'].apart - slack)
				wrong.push(`${fixtures[i]!.id} and ${fixtures[j]!.id} share a place`);
	if (new Set(fixtures.map((f) => f.id)).size !== fixtures.length) wrong.push('two fixtures with one id');
	if (new Set(fixtures.map((f) => f.label)).size !== fixtures.length) wrong.push('two fixtures with one label');
	for (const { message, rule } of findings) {
		if (/NaN|undefined|Infinity|: \.| {2}/.test(message)) wrong.push(message);
		if (rule !== null && !(rule in rules)) wrong.push(`${rule} is no rule`);
	}
	return [...wrong, ...spacingFaults(site, fixtures, figures), ...unlit(site, fixtures, findings)];
}

/** Doors by a metre, garage doors by a car's length; what hangs on a wall or a step's cheek is in nobody's way. */
function inFrontOfDoor(site: Site, { at, technique }: Fixture, figures: Figures): boolean {
	if (technique === 'step' || technique === 'number') return false;
	const { doorFront, garageFront } = figures['place.clear'];
	return site.walls.some(({ from, to, outward, length, openings }) => {
		const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
		const s = (at.x - from.x) * along.x + (at.y - from.y) * along.y;
		const out = (at.x - from.x) * outward.x + (at.y - from.y) * outward.y;
		return openings.some(
			({ kind, start, end }) =>
				kind !== 'window' &&
				s > start &&
				s < end &&
				out > -slack &&
				out < (kind === 'door' ? doorFront : garageFront) - slack
		);
	});
}

/** Along one edge nothing that fills a straight is nearer than the spacing; what comes first may be, and says so. */
function spacingFaults(site: Site, fixtures: readonly Fixture[], figures: Figures): string[] {
	const wrong: string[] = [];
	for (const strip of site.strips.filter((s) => !doublesBack(s))) {
		const least = figures[strip.kind === 'drive' ? 'drive.spacing' : 'path.spacing'].spacing;
		const own = fixtures
			.filter((f) => f.target.id === strip.id && f.target.kind === strip.kind)
			.map((f) => ({ f, side: nearestOnLine(f.at, strip.centre)?.side }));
		const spacing = (f: Fixture): string => f.reasons.find((r) => r.rule.endsWith('.spacing'))?.because ?? '';
		for (let i = 0; i < own.length; i++)
			for (let j = i + 1; j < own.length; j++) {
				const [a, b] = [own[i]!, own[j]!];
				if (a.side !== b.side || distance(a.f.at, b.f.at) >= least - slack) continue;
				if (!spacing(a.f).includes(', closer than') && !spacing(b.f).includes(', closer than'))
					wrong.push(`${a.f.id} and ${b.f.id} too close, unsaid`);
				if ([a, b].some(({ f }) => f.reasons[0]!.because.startsWith('Fills')))
					wrong.push(`${a.f.id} or ${b.f.id} crowds a straight`);
			}
	}
	return wrong;
}

/** What was asked for is lit, or a finding about it says why not. */
function unlit(site: Site, fixtures: readonly Fixture[], findings: readonly Finding[]): string[] {
	const asked: { kind: string; id: string }[] = [
		...site.trees.filter((t) => t.light !== 'none').map(({ id }) => ({ kind: 'tree', id })),
		...site.walls.filter((w) => w.light !== 'none' && w.length > 0).map(({ id }) => ({ kind: 'wall', id })),
		...site.strips.filter((s) => s.lights !== 'none').map(({ kind, id }) => ({ kind, id })),
		...site.strips.flatMap((s) => s.steps.map(({ id }) => ({ kind: 'steps', id }))),
		...site.areas
			.filter(({ kind, light }) => (kind === 'seating' || kind === 'bed') && light !== 'none')
			.map(({ kind, id }) => ({ kind: kind as string, id })),
		...site.houseNumber.map(({ id }) => ({ kind: 'number', id }))
	];
	return asked
		.filter(
			({ kind, id }) =>
				!fixtures.some((f) => [f.target, ...(f.also ?? [])].some((target) => target.kind === kind && target.id === id))
		)
		.filter(
			({ kind, id }) =>
				!findings.some((f) => f.about?.kind === kind && f.about.id === id && f.code.startsWith('placement.'))
		)
		.map(({ kind, id }) => `${kind} ${id} is neither lit nor said`);
}
