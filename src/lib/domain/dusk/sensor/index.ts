import type { Assumption, Finding } from '../../shared/findings';
import { distance, type Point } from '../../shared/geometry';
import { formatLength } from '../../shared/units';
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import type { Yard } from '../../yard/schema';
import type { Dusk, PowerPoint, SensorSpot } from '../types';
import { sensorHeight } from './candidates';
import { assumptionsFor } from './assumptions';
import { faultsOf, roofEdgeAt } from './faults';
import type { Runs } from './lamplight';
import { lightFindings } from './light-findings';
import { reasonsFor, whyOf } from './reasons';
import { search } from './search';
import { shadeFindings } from './shade-findings';
import { facingOf, type Spot } from './spot';
import { fairly } from './sky-share';
import { surroundingsOf, viewOf, weigh, type Surroundings, type Weighed } from './view';

export interface Siting {
	sensor: Dusk['sensor'];
	/** The spot chosen or told first, then the best others. */
	spots: SensorSpot[];
	findings: Finding[];
	assumptions: Assumption[];
}
/** A photocell sits on the transformer or on a short lead from it, metres. */
const usualLead = 1.5;

/** Height for a sensor at a place: below the edge of the roof there, at the walls of the house. */
const heightAt = (site: Site, at: Point): number => sensorHeight(roofEdgeAt(at, site.walls) ?? site.eaves);

type Told = Exclude<NonNullable<Yard['power']['sensor']>, 'suggest'>;
function toldSpot(told: Told, site: Site, latitude: number): Spot {
	const at = { x: told.at.along, y: told.at.out };
	const height = told.height ?? heightAt(site, at);
	return { at, on: told.on, height, faces: told.faces ?? facingOf({ at, on: told.on }, site, latitude) };
}
function spotOf(weighed: Weighed, lead: number, around: Surroundings, fixtures: readonly Fixture[]): SensorSpot {
	const { spot, sky, early, light, night } = weighed;
	return {
		...spot,
		lead,
		sky,
		early: early?.most ?? null,
		own: light.own,
		others: light.others,
		verdict: night.verdict,
		why: whyOf(weighed, lead, around.site, fixtures)
	};
}
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
	const about = told ? { x: told.at.along, y: told.at.out } : supply?.at;
	if (!about) return { sensor: null, spots: [], findings: [], assumptions: [] };
	const around = surroundingsOf(site, fixtures, runs, yard, about);
	const found = supply ? search(around, fixtures, supply) : [];
	const own: Spot = { at: about, on: supply?.on ?? 'post', height: heightAt(site, about), faces: 0 };
	const chosen = told
		? toldSpot(told, site, around.sky.latitude)
		: (found[0]?.weighed.spot ?? { ...own, faces: facingOf(own, site, around.sky.latitude) });
	const weighed = weigh(around, chosen);
	const lead = supply ? distance(chosen.at, supply.at) : 0;
	const faults = faultsOf(chosen, site, fixtures);
	const findings = [...shadeFindings(faults, weighed, site), ...lightFindings(weighed, site, fixtures)];
	if (lead > usualLead) findings.push(leadFinding(lead, site));
	const others = told ? found : found.slice(1);
	return {
		sensor: {
			...siteOf(chosen),
			suggested: !told,
			reasons: reasonsFor(weighed, faults, site, fixtures),
			view: viewOf(around, weighed)
		},
		spots: [
			spotOf(weighed, lead, around, fixtures),
			...others.map((one) => spotOf(weigh(around, one.weighed.spot, fairly), one.lead, around, fixtures))
		],
		findings,
		assumptions: assumptionsFor(weighed, told, site, yard)
	};
}
const siteOf = ({ at, on, height }: Spot): Pick<Spot, 'at' | 'on' | 'height'> => ({ at, on, height });
const leadFinding = (lead: number, site: Site): Finding => ({
	code: 'dusk.sensor-lead',
	rank: 'note',
	message: `The sensor hangs ${formatLength(lead, site.units)} from the transformer: take a photocell with a lead that long, or one that switches by radio.`,
	about: { kind: 'power', id: 'sensor' },
	rule: 'sensor.shade'
});
