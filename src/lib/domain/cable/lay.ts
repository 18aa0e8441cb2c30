import { distance, segmentMeeting, type Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import { chooseSupply, type TransformerOption } from '../circuit';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Yard } from '../yard';
import { assembleRuns } from './assemble';
import { layingCosts } from './costs';
import { supplyWorking } from './describe';
import { makeGround, type Ground, type Terminal } from './ground';
import { layOut, stops, type Layout } from './layout';
import { chooseOptions, ownedTransformer, systemOf } from './loads';
import { obstaclesOf, waterRings, type Obstacle } from './obstacles';
import { findRoutes, type Routes } from './paths';
import { siteSupply, type SupplySpot } from './supply';
import type { Cabling, Run } from './types';
import { wayFindings } from './ways';
import { listed, problemFinding, sizeName } from './words';

/** Metres of paving or porch that may lie between the transformer's wall and the ground its cables go into. */
const supplyReach = 2;

interface Ways {
	ground: Ground;
	terminals: Terminal[];
	routes: Routes;
	/** Terminals to which there is a way from the supply. */
	reached: number[];
	/** Garden walls were taken out of the way, because something lay behind them. */
	underWalls: boolean;
}

function waysFrom(site: Site, spot: SupplySpot, fixtures: readonly Fixture[], gardenWalls: boolean): Ways {
	const ground = makeGround(obstaclesOf(site, gardenWalls));
	const terminals = [ground.terminal(spot.at, supplyReach), ...fixtures.map((fixture) => ground.terminal(fixture.at))];
	const routes = findRoutes(site, ground, terminals, layingCosts, layingCosts.run);
	const reached = fixtures.flatMap((_, k) => (Number.isFinite(routes.costs[k + 1]!) ? [k + 1] : []));
	return { ground, terminals, routes, reached, underWalls: !gardenWalls };
}
function findWays(site: Site, spot: SupplySpot, fixtures: readonly Fixture[]): Ways {
	const ways = waysFrom(site, spot, fixtures, true);
	if (ways.reached.length === fixtures.length || !site.walls.some((wall) => wall.of === 'garden')) return ways;
	const under = waysFrom(site, spot, fixtures, false);
	return under.reached.length > ways.reached.length ? under : ways;
}

const crosses = (o: Obstacle, a: Point, b: Point): boolean =>
	o.ring.some((p, i) => segmentMeeting(a, b, p, o.ring[(i + 1) % o.ring.length]!) !== null);

const middleOf = (fixtures: readonly Fixture[]): Point => ({
	x: fixtures.reduce((sum, { at }) => sum + at.x, 0) / fixtures.length,
	y: fixtures.reduce((sum, { at }) => sum + at.y, 0) / fixtures.length
});

/**
 * Fixtures by distance from the transformer, to the micrometre, then from the front out: an order that a mirror keeps, so
 * that where two trees cost the same a yard and its mirror image get the same one.
 */
function nearestFirst(from: Point, fixtures: readonly Fixture[]): Fixture[] {
	const whole = (metres: number) => Math.round(metres * 1e6);
	const far = new Map(fixtures.map((one) => [one, whole(distance(one.at, from))]));
	return fixtures.toSorted((a, b) => far.get(a)! - far.get(b)! || whole(a.at.y) - whole(b.at.y));
}

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

/** The owned transformer where it is enough, otherwise one from the catalogue and a word about it. */
function layOutOwned(
	site: Site,
	yard: Yard,
	ways: Ways,
	fixtures: readonly Fixture[],
	mountHeight: number
): { layout: Layout | null; owned: boolean; findings: Finding[] } {
	const system = systemOf(site, yard);
	const owned = ownedTransformer(yard);
	const lay = (option: TransformerOption | null) =>
		layOut(ways.routes, fixtures, ways.reached, mountHeight, chooseOptions(system, yard, option));
	if (!owned) return { layout: lay(null), owned: false, findings: [] };
	const mine = lay(owned);
	if (!mine || stops(mine.choice) === 0) return { layout: mine, owned: true, findings: [] };
	const bought = lay(null);
	if (!bought || stops(bought.choice) >= stops(mine.choice)) return { layout: mine, owned: true, findings: [] };
	const limit = rules['supply.load'].figures.fraction * owned.voltAmps;
	const over = mine.choice.loadVoltAmps > limit;
	const why = over
		? `may carry ${Math.round(limit)} VA; this plan takes ${Math.round(mine.choice.loadVoltAmps)}`
		: 'cannot keep every lamp within its volts';
	const message = `Your ${owned.voltAmps} VA transformer ${why}. The plan goes on with one of ${bought.choice.transformer.voltAmps} VA. With fewer lights, yours may do.`;
	const about = { kind: 'power', id: 'transformer' };
	return {
		layout: bought,
		owned: false,
		findings: [{ code: 'cable.owned-transformer', rank: 'look', message, about, rule: 'supply.load' }]
	};
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

function assumed(site: Site, layout: Layout, owned: boolean): Assumption[] {
	const about = { kind: 'power', id: 'transformer' };
	const length = (metres: number) => formatLength(metres, site.units);
	const temperature = rules['cable.temperature'].figures.nominal;
	const regulation = Math.round(layout.choice.transformer.regulation * 100);
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
		found.push({
			path: 'power.owned.transformerVoltAmps',
			message: 'Your transformer is taken to have 12 V terminals and no other. Check its label.',
			about
		});
	}
	return found;
}

/**
 * Cable from the transformer to every fixture: where it hangs, the ways through the ground, the runs, and with the
 * circuit's help the cable size, the tap and the transformer. Metres, volts, amperes, volt-amperes. Total: what cannot be
 * done becomes a finding.
 */
export function layCable(site: Site, placed: readonly Fixture[], yard: Yard): Cabling {
	if (placed.length === 0) return { supply: null, runs: [], findings: [], assumptions: [] };
	const spot = siteSupply(site, yard, middleOf(placed));
	if (!spot) {
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
	const fixtures = nearestFirst(spot.at, placed);
	const ways = findWays(site, spot, fixtures);
	const { layout, owned, findings } = layOutOwned(site, yard, ways, fixtures, spot.mountHeight);
	const transformer =
		layout?.choice.transformer ??
		chooseSupply([], chooseOptions(systemOf(site, yard), yard, ownedTransformer(yard))).transformer;
	const runs = layout ? assembleRuns(layout, spot.at, fixtures) : [];
	const obstacles = ways.underWalls ? obstaclesOf(site, true) : ways.ground.obstacles;
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
			cost: layout?.choice.cost ?? 0,
			runnersUp: [],
			working: supplyWorking(loadVoltAmps, transformer)
		},
		runs,
		findings: [
			...spot.findings,
			...unreachedFindings(ways, fixtures),
			...findings,
			...ownedCableFindings(site, yard, runs),
			...(layout?.choice.problems ?? []).map((problem) =>
				problemFinding(problem, layout!.choice, fixtures, (id) => runs.find((run) => run.id === id)?.name ?? id)
			),
			...wayFindings(site, layout?.runs ?? [], {
				waters,
				waterRings: waterRings(waters),
				walls: ways.underWalls ? obstacles.filter((o) => o.kind === 'wall') : [],
				passes: crosses
			})
		],
		assumptions: [...spot.assumptions, ...(layout ? assumed(site, layout, owned) : [])]
	};
}
