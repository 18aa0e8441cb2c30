import type { Assumption, Finding } from '../../shared/findings';
import { distance, distanceToPolygon, type Point } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import { formatLength } from '../../shared/units';
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import type { Yard } from '../../yard/schema';
import type { Dusk, PowerPoint } from '../types';
import { candidates, sensorHeight } from './candidates';
import { faultsOf, roofEdgeAt, shadeFindings, type Faults, type Spot } from './faults';
import { lamplightOf, type Lamplight, type Runs } from './lamplight';
import { dayFrom, lightFindings, luxWords } from './light-findings';

export interface Siting {
	sensor: Dusk['sensor'];
	findings: Finding[];
	assumptions: Assumption[];
}
/** A photocell sits on the transformer or on a short lead from it, metres. */
const usualLead = 1.5;

/** Metres of lead, and a new post counted as two. */
const leadCost = ({ at, on }: Spot, supply: PowerPoint): number => {
	const lead = distance(at, supply.at);
	return lead + (on === 'post' && lead > 0.01 ? 2 : 0);
};

/**
 * What a spot costs, in metres of lead one would lay to be rid of it: shade and light defeat the sensor, a post is one
 * more thing to buy and set, a window shines only now and then. Common practice, no source.
 */
function costOf(spot: Spot, faults: Faults, supply: PowerPoint): number {
	const clear = rules['sensor.light'].figures.clear;
	// A little room round it is better: lamps get moved.
	const close = faults.lamps[0] ? (3 * (clear - faults.lamps[0].distance)) / clear : 0;
	const shade = 20 * (faults.canopies.length + (faults.porch ? 1 : 0) + (faults.underEaves ? 1 : 0));
	return leadCost(spot, supply) + (faults.insideHouse ? 1000 : 0) + shade + close + (faults.window ? 3 : 0);
}
/** In lamplight that is day to it the sensor fails; short of that less is better. */
const lightCost = ({ lux }: Lamplight): number =>
	lux > dayFrom ? 20 + Math.min(10, lux / dayFrom) : (10 * lux) / dayFrom;

function suggest(
	site: Site,
	fixtures: readonly Fixture[],
	supply: PowerPoint,
	lightOn: (spot: Spot) => Lamplight
): Spot {
	let best: Spot = { at: supply.at, on: supply.on, height: heightAt(site, supply.at) };
	let least = Infinity;
	// Faults only add to the lead: a spot further off than the best so far needs no closer look.
	const isNear = (spot: Spot): boolean => leadCost(spot, supply) < least;
	for (const spot of candidates(site, supply, isNear)) {
		const inDark = costOf(spot, faultsOf(spot, site, fixtures), supply);
		if (inDark >= least - 1e-9) continue;
		const cost = inDark + lightCost(lightOn(spot));
		if (cost < least - 1e-9) [best, least] = [spot, cost];
	}
	return best;
}
function reasonsFor(spot: Spot, faults: Faults, light: Lamplight, site: Site, fixtures: readonly Fixture[]) {
	const length = (metres: number): string => formatLength(metres, site.units);
	const reasons: NonNullable<Dusk['sensor']>['reasons'] = [];
	const say = (rule: 'sensor.shade' | 'sensor.light', because: string): void => {
		reasons.push({ rule, because, source: rules[rule].source });
	};
	if (!faults.porch && !faults.underEaves && !faults.canopies.length && !faults.insideHouse) {
		const onHouse = distanceToPolygon(spot.at, site.house) <= 0.5;
		const edge = faults.roofEdge ?? site.eaves;
		const below = onHouse ? `, ${length(Math.max(0, edge - spot.height))} below the edge of the roof` : '';
		const nearest = site.trees
			.map((tree) => ({ tree, gap: distance(spot.at, tree.at) - tree.spread / 2 }))
			.sort((a, b) => a.gap - b.gap)[0];
		const trees = nearest ? `, ${length(Math.max(0, nearest.gap))} outside the canopy of ${nearest.tree.name}` : '';
		say('sensor.shade', `It sees the open sky ${length(spot.height)} above the ground${below}${trees}.`);
	}
	if (light.lux <= dayFrom) say('sensor.light', lightWords(spot, faults, light, site, fixtures));
	return reasons;
}
/** Short of the light at which it switches: how much lamplight there is, and the lamp that is nearest. */
function lightWords(spot: Spot, { lamps }: Faults, light: Lamplight, site: Site, fixtures: readonly Fixture[]): string {
	const length = (metres: number): string => formatLength(metres, site.units);
	const gets = light.lux < 0.05 ? 'No lamplight to speak of reaches it' : `Lamps throw ${luxWords(light.lux)} on it`;
	const nearest = fixtures
		.map((fixture) => ({ fixture, metres: distance(spot.at, fixture.at) }))
		.sort((a, b) => a.metres - b.metres)[0];
	const hidden =
		nearest && nearest.metres < rules['sensor.light'].figures.clear && lamps[0]?.fixture !== nearest.fixture;
	const which = !nearest
		? ''
		: hidden
			? ` The house stands between it and the nearest lamp, ${nearest.fixture.label}.`
			: ` The nearest lamp, ${nearest.fixture.label}, is ${length(nearest.metres)} off.`;
	return `${gets} at night, by the light model, whichever way it looks; it switches at ${dayFrom} lx.${which}`;
}
/** Height for a sensor at a place: below the edge of the roof there, at the walls of the house. */
const heightAt = (site: Site, at: Point): number => sensorHeight(roofEdgeAt(at, site.walls) ?? site.eaves);

/**
 * Where the sensor hangs: the person's spot with what speaks against it, or the best of the walls near the transformer
 * and posts round it. Null while there is neither a spot nor a transformer to start from.
 */
export function sensorOf(
	site: Site,
	fixtures: readonly Fixture[],
	supply: PowerPoint | null,
	yard: Yard,
	runs: Runs = []
): Siting {
	const told = yard.power.sensor && yard.power.sensor !== 'suggest' ? yard.power.sensor : null;
	if (!told && !supply) return { sensor: null, findings: [], assumptions: [] };
	const assumptions: Assumption[] = [];
	const about = told ? { x: told.at.along, y: told.at.out } : supply!.at;
	const lightOn = lamplightOf(site, fixtures, runs, about);
	let spot: Spot;
	if (told) {
		const height = told.height ?? heightAt(site, about);
		spot = { at: about, on: told.on, height };
		if (told.height === undefined) {
			assumptions.push({
				path: 'power.sensor.height',
				message: `The sensor is taken to hang ${formatLength(height, site.units)} above the ground.`,
				about: { kind: 'power', id: 'sensor' }
			});
		}
	} else spot = suggest(site, fixtures, supply!, lightOn);
	const faults = faultsOf(spot, site, fixtures);
	const light = lightOn(spot);
	const findings = [...shadeFindings(faults, site, yard), ...lightFindings(light, site, fixtures)];
	const lead = supply ? distance(spot.at, supply.at) : 0;
	if (lead > usualLead) {
		findings.push({
			code: 'dusk.sensor-lead',
			rank: 'note',
			message: `The sensor hangs ${formatLength(lead, site.units)} from the transformer: take a photocell with a lead that long, or one that switches by radio.`,
			about: { kind: 'power', id: 'sensor' },
			rule: 'sensor.shade'
		});
	}
	return {
		sensor: { ...spot, suggested: !told, reasons: reasonsFor(spot, faults, light, site, fixtures) },
		findings,
		assumptions
	};
}
