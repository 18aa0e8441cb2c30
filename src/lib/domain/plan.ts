/**
 * The map of the domain, in pipeline order. `makePlan` is pure, deterministic and total: for any valid yard, finished
 * or not, it returns a plan, says what is missing, and never throws.
 */
import type { Assumption, Finding, Missing } from './shared/findings';
import { rankOrder } from './shared/findings';
import type { Yard } from './yard';
import { makeSite, type Site } from './site';
import { placeFixtures, type Fixture } from './placement';
import { layCable, type Run, type Supply } from './cable';
import { planLight, type PlanLight } from './light';
import { planDusk, type Dusk } from './dusk';
import { makeShopping, type Shopping } from './shopping';
import { makeChecklist, type Checklist } from './checklist';

export interface Plan {
	format: 'duskwright/plan';
	version: 1;
	site: Site;
	fixtures: Fixture[];
	supply: Supply | null;
	runs: Run[];
	light: PlanLight;
	dusk: Dusk;
	shopping: Shopping;
	checklist: Checklist;
	findings: Finding[];
	assumptions: Assumption[];
	missing: Missing[];
}

/** The plan for a yard. `yard` must have passed `yardSchema`; nothing else is required of it. */
export function makePlan(yard: Yard): Plan {
	const site = makeSite(yard);
	const placement = placeFixtures(site, yard);
	const cabling = layCable(site, placement.fixtures, yard);
	const dusk = planDusk(site, placement.fixtures, cabling.supply, yard, cabling.runs);
	// After dusk, which chooses where the sensor hangs: what falls on it is light too.
	const light = planLight(site, placement.fixtures, cabling, dusk.sensor);
	const shopping = makeShopping(site, placement.fixtures, cabling, dusk, yard);
	const checklist = makeChecklist(site, placement.fixtures, cabling, dusk, shopping);
	const stages = [site, placement, cabling, light, dusk];
	const findings = stages.flatMap((stage) => stage.findings);
	return {
		format: 'duskwright/plan',
		version: 1,
		site,
		fixtures: placement.fixtures,
		supply: cabling.supply,
		runs: cabling.runs,
		light,
		dusk,
		shopping,
		checklist,
		findings: findings.toSorted((a, b) => rankOrder[a.rank] - rankOrder[b.rank]),
		assumptions: stages.flatMap((stage) => stage.assumptions),
		missing: site.missing
	};
}
