import type { Cabling } from '../cable';
import type { Dusk } from '../dusk';
import type { Fixture } from '../placement';
import type { Shopping } from '../shopping';
import type { Site } from '../site';
import { beforeSteps } from './before';
import { connectionSteps } from './connections';
import { firstNightRows, firstNightSteps } from './first-night';
import { fixtureSteps } from './fixtures';
import { makeJob } from './job';
import { supplySteps } from './supply';
import { trenchSteps } from './trench';
import type { Checklist } from './types';
import { upkeepSteps } from './upkeep';

/**
 * The order of the work, from the call before digging to the upkeep of later years: only the steps that this plan needs,
 * each with its cautions and whom it defers to. Parts without steps are left out.
 */
export function makeChecklist(
	site: Site,
	fixtures: readonly Fixture[],
	cabling: Cabling,
	dusk: Dusk,
	shopping: Shopping
): Checklist {
	const job = makeJob(site, fixtures, cabling, dusk, shopping);
	const parts: Checklist['parts'] = [
		{ id: 'before', title: 'Before you dig', steps: beforeSteps(job) },
		{ id: 'supply', title: 'Transformer and sensor', steps: supplySteps(job) },
		{ id: 'trench', title: 'Trench and cable', steps: trenchSteps(job) },
		{ id: 'fixtures', title: 'Fixtures', steps: fixtureSteps(job) },
		{ id: 'connections', title: 'Connections', steps: connectionSteps(job) },
		{ id: 'first-night', title: 'First night', steps: firstNightSteps(job) },
		{ id: 'upkeep', title: 'Upkeep', steps: upkeepSteps(job) }
	];
	return { parts: parts.filter((part) => part.steps.length > 0), firstNight: firstNightRows(job) };
}
