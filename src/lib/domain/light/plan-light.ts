import type { Assumption } from '../shared/findings';
import { rules } from '../shared/rules';
import type { Cabling } from '../cable';
import { maintained } from '../photometry';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import { lightFindings } from './findings';
import { glareOf } from './glare';
import { probeOf } from './probe';
import { receiversOf, sensorReceiver, type SensorWindow } from './receivers';
import { shadowsOf } from './shadows';
import { sourcesOf } from './sources';
import type { PlanLight } from './types';
import { upwardOf } from './upward';

/**
 * The part `light` of the plan: what lands where against what should, bare lamps in eyes, light sent upwards. Lux, candela,
 * lumens, all maintained (rule light.maintained). Total: a yard without lamps has no receivers and nothing to say.
 * `sensor`: where the dusk sensor hangs and which way it looks; null while it has no place.
 */
export function planLight(
	site: Site,
	fixtures: readonly Fixture[],
	{ runs }: Pick<Cabling, 'runs'>,
	sensor: SensorWindow | null = null
): PlanLight {
	const sources = sourcesOf(site, fixtures, runs);
	const probe = probeOf({ sources, shadows: shadowsOf(site) });
	const { own, shadows } = probe;
	const upward = upwardOf(own, site, shadows);
	if (sources.length === 0) return { receivers: [], glare: [], upward, findings: [], assumptions: [] };
	const receivers = [...receiversOf(site, fixtures, probe), ...(sensor ? [sensorReceiver(probe, site, sensor)] : [])];
	const glare = glareOf(site, fixtures, own, shadows);
	// Lights that are there already are nobody's plan: without one of its own the plan has nothing to say of them.
	const isPlanned = fixtures.length > 0;
	return {
		receivers,
		glare,
		upward,
		findings: isPlanned ? lightFindings(site, fixtures, receivers, glare) : [],
		assumptions: isPlanned ? assumptionsOf(site) : []
	};
}

function assumptionsOf(site: Site): Assumption[] {
	const edge = rules['light.existing'].figures.edge;
	const taken = (path: string, message: string): Assumption => ({ path, message, about: null });
	return [
		taken(
			'power.lamp',
			`Light is counted at ${Math.round(maintained() * 100)} % of new, for age and dirt. Crowns are taken to let light through, the ground to be flat, and nothing to throw light back.`
		),
		taken(
			'lot.left',
			'Windows next door are supposed: just beyond the boundary on either side and across the street, on two floors.'
		),
		...(site.existing.length > 0
			? [
					taken(
						'spots.lights',
						`Lights that are there are taken to give ${edge} lx on the ground at the edge of their reach.`
					)
				]
			: [])
	];
}
