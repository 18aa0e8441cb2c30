import { segmentMeeting, type Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import { sizeName } from '../circuit';
import { placeFixtures, type Fixture } from '../placement';
import type { Site } from '../site';
import type { Yard } from '../yard';
import { adviceFor, type Attempt } from './advice';
import { assembleRuns } from './assemble';
import { circuitOf, type Circuit, type Wired } from './circuit-of';
import type { LayingCosts } from './costs';
import { supplyWorking } from './describe';
import { Bends } from './drawn-way';
import { drawnAssumptions, drawnFindings, type Calling } from './drawn-words';
import type { Ground, Terminal } from './ground';
import { handAssumptions, handFindings } from './hand';
import { systemOf } from './loads';
import { circuitNotes } from './notes';
import { nearestFirst } from './nearest-first';
import { waterRings, type Obstacle } from './obstacles';
import { findRoutes, type Routes } from './paths';
import { routeLength } from './route-length';
import { runnersUp } from './runners-up';
import { groundOf } from './standing';
import { costsIn, siteSupply } from './supply';
import { supplyReach, type SupplySpot } from './supply-spot';
import type { Cabling, Run } from './types';
import { wayFindings } from './ways';
import { listed } from './wording';
import { problemFinding, runNameOf } from './words';

interface Ways {
	ground: Ground;
	terminals: Terminal[];
	routes: Routes;
	/** Terminals to which there is a way from the supply. */
	reached: number[];
	/** Garden walls were taken out of the way, because something lay behind them. */
	underWalls: boolean;
}

/** Garden walls are in the way; ways that hardly fit are looked for too. */
interface Search {
	walls: boolean;
	isFine: boolean;
	costs: LayingCosts;
}
function waysFrom(site: Site, spot: SupplySpot, fixtures: readonly Fixture[], { walls, isFine, costs }: Search): Ways {
	const ground = groundOf(site, walls, isFine);
	const terminals = [ground.terminal(spot.at, supplyReach), ...fixtures.map((fixture) => ground.terminal(fixture.at))];
	const routes = findRoutes(site, ground, terminals, costs, costs.run);
	const reached = fixtures.flatMap((_, k) => (Number.isFinite(routes.costs[k + 1]!) ? [k + 1] : []));
	return { ground, terminals, routes, reached, underWalls: !walls };
}
/** With more and more effort, until every light is reached: last of all under garden walls. */
function findWays(site: Site, spot: SupplySpot, fixtures: readonly Fixture[], costs: LayingCosts): Ways {
	let best = waysFrom(site, spot, fixtures, { walls: true, isFine: false, costs });
	const tryOut = (search: Omit<Search, 'costs'>) => {
		const ways = waysFrom(site, spot, fixtures, { ...search, costs });
		if (ways.reached.length > best.reached.length) best = ways;
	};
	const unreached = () => fixtures.length - best.reached.length;
	// What stands in something is reached by no way, however fine.
	if (unreached() > best.terminals.filter(({ within }) => within).length) tryOut({ walls: true, isFine: true });
	if (unreached() > 0 && site.walls.some((wall) => wall.of === 'garden')) tryOut({ walls: false, isFine: false });
	return best;
}

const crosses = (o: Obstacle, a: Point, b: Point): boolean =>
	o.ring.some((p, i) => segmentMeeting(a, b, p, o.ring[(i + 1) % o.ring.length]!) !== null);

/** Fixtures without a way, by what lies between. */
function unreachedFindings({ ground, terminals, reached }: Ways, fixtures: readonly Fixture[]): Finding[] {
	const byBlock = new Map<string, Fixture[]>();
	fixtures.forEach((fixture, k) => {
		if (reached.includes(k + 1)) return;
		const [from, to] = [terminals[0]!, terminals[k + 1]!];
		const between = ground.obstacles.filter((o) => crosses(o, from.ground, to.at)).map((o) => o.name || o.kind);
		const block = from.within
			? `${from.within.name || from.within.kind} leaves the transformer no way into open ground`
			: to.within
				? `it stands in ${to.within.name || to.within.kind}`
				: between.length > 0
					? `${between.join(', ')} ${between.length > 1 ? 'lie' : 'lies'} in between, with no way round or under`
					: 'what stands round it leaves no gap';
		byBlock.set(block, [...(byBlock.get(block) ?? []), fixture]);
	});
	return [...byBlock].map(([block, list]): Finding => ({
		code: 'cable.unreachable',
		rank: 'stop',
		message: `No cable gets to ${list.map((fixture) => fixture.label).join(', ')}: ${block}. Move the light or the transformer, or declare a crossing.`,
		about: list.length === 1 ? { kind: 'fixture', id: list[0]!.id } : null,
		rule: 'cable.crossing'
	}));
}

/** A word on cable in hand of a size that no run takes; shopping counts in what is of the right size. */
function ownedCableFindings(site: Site, yard: Yard, runs: readonly Run[]): Finding[] {
	const { cableSize: size, cableLength = 0 } = yard.power.owned ?? {};
	if (size === undefined || runs.length === 0 || runs.some(({ cable }) => cable.size === size)) return [];
	const mine = sizeName({ system: systemOf(site, yard), size });
	const taken = [...new Set(runs.map(({ cable }) => sizeName(cable)))];
	const what = cableLength > 0 ? `${formatLength(cableLength, site.units)} of ${mine}` : `${mine} cable`;
	const message = `Your ${what} is not used: this plan takes ${listed(taken)}.`;
	return [
		{
			code: 'cable.owned-cable',
			rank: 'note',
			message,
			about: { kind: 'power', id: 'owned.cableSize' },
			rule: null
		}
	];
}

function assumed(site: Site, { layout, transformer, owned }: Circuit): Assumption[] {
	if (!layout) return [];
	const about = { kind: 'power', id: 'transformer' };
	const length = (metres: number) => formatLength(metres, site.units);
	const temperature = rules['cable.temperature'].figures.nominal;
	const regulation = Math.round(transformer.regulation * 100);
	const found: Assumption[] = [
		{
			path: 'power.transformer',
			message: `The transformer is taken to sag by ${regulation} % at full load (from memory; the figure of yours comes first).`,
			about
		},
		{
			path: 'power.cable',
			message: `The copper is taken to be at ${temperature} °C, ${length(rules['cable.depth'].figures.lawn)} down in lawn and beds, with ${length(rules['cable.slack'].figures.taken)} of slack at each light and at the transformer.`,
			about: null
		}
	];
	if (owned) {
		const taps = listed(transformer.taps.map((tap) => `${tap} V`));
		found.push({
			path: 'power.owned.transformerVoltAmps',
			message: `Your transformer is taken to have ${taps} terminals and no other. Check its label.`,
			about
		});
	}
	return found;
}

/** Where everything stands and what ways the cables may take: what stays while the answers about the circuit change. */
interface Grounds extends Wired {
	site: Site;
	spot: SupplySpot;
	ways: Ways;
}
function groundsOf(site: Site, placed: readonly Fixture[], yard: Yard): Grounds | null {
	const spot = siteSupply(site, yard, placed);
	if (!spot) return null;
	const fixtures = nearestFirst(spot.at, placed);
	const ways = findWays(site, spot, fixtures, costsIn(yard));
	const { routes, reached } = ways;
	const bending = new Bends(site, ways.ground, ways.terminals).way;
	const { mountHeight } = spot;
	return { site, spot, ways, fixtures, routes, reached, mountHeight, system: systemOf(site, yard), bending };
}

/** Lays the circuit out for changed answers: over the same ground, or from new where the lamps are others. */
const attemptOn =
	(grounds: Grounds, before: Yard): Attempt =>
	(yard) => {
		const isSame = yard.power.lamp === before.power.lamp;
		const placed = isSame ? grounds.fixtures : placeFixtures(grounds.site, yard).fixtures;
		if (placed.length === 0) return null;
		const there = isSame ? grounds : groundsOf(grounds.site, placed, yard);
		const layout = there && circuitOf(there, yard).layout;
		return layout && { layout, fixtures: there.fixtures };
	};

/** The circuit's problems, what cures them, and what else is to be said of it. */
function circuitFindings(grounds: Grounds, circuit: Circuit, yard: Yard): Finding[] {
	const { layout } = circuit;
	if (!layout) return [];
	const { fixtures, system } = grounds;
	const advice = adviceFor(yard, { layout, fixtures }, attemptOn(grounds, yard));
	const problems = layout.choice.problems.map((problem, k): Finding => {
		const cures = advice[k]!;
		const finding = problemFinding(problem, layout, fixtures, cures.length === 0);
		return cures.length > 0 ? { ...finding, advice: cures } : finding;
	});
	const feeds = new Map(layout.runs.map(({ shape }) => [shape.id, shape.feed ?? 'end']));
	const nameOf = (id: string) => runNameOf(layout.runs, id);
	return [
		...handFindings(yard, circuit.hand, system, feeds, nameOf),
		...drawnFindings(circuit.hand.runs, callingOf(grounds, layout)),
		...problems,
		...circuitNotes(layout, fixtures)
	];
}
const callingOf = ({ site, fixtures }: Grounds, layout: Circuit['layout']): Calling => ({
	fixtures,
	units: site.units,
	runName: (id) => runNameOf(layout?.runs ?? [], id)
});

/**
 * Cable from the transformer to every fixture: where it hangs, the ways through the ground, the runs, and with the
 * circuit's help the cable size, the tap and the transformer. Metres, volts, amperes, volt-amperes. Total: what cannot be
 * done becomes a finding.
 */
export function layCable(site: Site, placed: readonly Fixture[], yard: Yard): Cabling {
	if (placed.length === 0) return { supply: null, runs: [], findings: [], assumptions: [] };
	const grounds = groundsOf(site, placed, yard);
	if (!grounds) {
		const message =
			'The plan needs a place to hang the transformer. Tell it where the house front or the outdoor receptacle is.';
		const nowhere: Finding = {
			code: 'supply.nowhere',
			rank: 'stop',
			message,
			about: { kind: 'power', id: 'transformer' },
			rule: 'supply.receptacle'
		};
		return { supply: null, runs: [], findings: [nowhere], assumptions: [] };
	}
	const { spot, ways, fixtures } = grounds;
	const circuit = circuitOf(grounds, yard);
	const { layout, transformer } = circuit;
	const runs = layout ? assembleRuns(layout, spot.at, fixtures) : [];
	const { obstacles } = ways.underWalls ? groundOf(site, true) : ways.ground;
	const waters = obstacles.filter((o) => o.kind === 'water');
	const loadVoltAmps = layout?.choice.loadVoltAmps ?? 0;
	return {
		supply: {
			at: spot.at,
			on: spot.on,
			mountHeight: spot.mountHeight,
			model: transformer.id,
			ratedVoltAmps: transformer.voltAmps,
			loadVoltAmps,
			loadWatts: layout?.choice.loadWatts ?? 0,
			taps: transformer.taps,
			regulation: transformer.regulation,
			suggested: spot.suggested,
			because: spot.because,
			cost: layout?.choice.cost ?? 0,
			...(layout && { route: routeLength({ ...grounds, runs: layout.runs, supplyAt: spot.at }) }),
			runnersUp: layout ? runnersUp(layout, fixtures) : [],
			working: supplyWorking(loadVoltAmps, transformer)
		},
		runs,
		findings: [
			...spot.findings,
			...unreachedFindings(ways, fixtures),
			...circuit.findings,
			...ownedCableFindings(site, yard, runs),
			...circuitFindings(grounds, circuit, yard),
			...wayFindings(site, layout?.runs ?? [], {
				waters,
				waterRings: waterRings(waters),
				walls: ways.underWalls ? obstacles.filter((o) => o.kind === 'wall') : [],
				passes: crosses,
				ground: ways.ground,
				fixtures
			})
		],
		assumptions: [
			...spot.assumptions,
			...assumed(site, circuit),
			...handAssumptions(yard, placed, circuit.hand.runs, (id) => runNameOf(layout?.runs ?? [], id)),
			...drawnAssumptions(circuit.hand.runs, callingOf(grounds, layout))
		]
	};
}
