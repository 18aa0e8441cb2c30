/** What the answers about one thing change in the plan: its fixtures, and what the plan has to say about it. */
import type { Finding } from '$lib/domain/shared/findings';
import type { Fixture } from '$lib/domain/placement';
import type { Plan } from '$lib/domain/plan';
import type { ChapterId, Place } from '$lib/flow';
import { currencyWords } from './words';

export interface Effect {
	/** Fixtures that throw light the same way, together. */
	groups: { technique: Fixture['technique']; fixtures: Fixture[] }[];
	findings: Finding[];
	/** What the whole plan comes to, where an answer moves all of it: a year's hours and cost, the supply. */
	sums: string[];
}
const kindsOf: Record<ChapterId, readonly string[]> = {
	place: [],
	house: ['house', 'wall', 'section', 'opening', 'porch', 'lot', 'street'],
	trees: ['tree'],
	walks: ['walk', 'steps'],
	drive: ['drive'],
	spots: ['bed', 'paved', 'seating', 'number', 'water', 'light', 'wall'],
	power: ['supply', 'transformer', 'sensor', 'receptacle', 'run', 'power', 'dusk']
};
function sumsOf({ dusk, supply, runs, fixtures }: Plan, chapter: ChapterId): string[] {
	if (fixtures.length === 0 || (chapter !== 'place' && chapter !== 'power')) return [];
	const year = `On for ${Math.round(dusk.hoursPerYear)} hours a year: ${dusk.energy.toFixed(0)} kWh, ${currencyWords(dusk.cost, dusk.currency)}.`;
	if (chapter === 'place' || !supply) return [year];
	const share = Math.round((100 * supply.loadVoltAmps) / supply.ratedVoltAmps);
	const feeds = `${runs.length} ${runs.length === 1 ? 'run' : 'runs'} of cable`;
	return [`A ${supply.ratedVoltAmps} VA transformer, loaded to ${share} %, feeds ${feeds}.`, year];
}

export function effectOf(plan: Plan, place: Place): Effect {
	const { question, item } = place;
	const kinds = kindsOf[question.chapter];
	const flights = new Set(
		item === null
			? []
			: plan.site.strips.filter((strip) => strip.id === item).flatMap((strip) => strip.steps.map(({ id }) => id))
	);
	const gardenWalls = new Set(plan.site.walls.filter((wall) => wall.of === 'garden').map(({ id }) => id));
	const lit = (fixture: Fixture): boolean => {
		const { kind, id } = fixture.target;
		if (item !== null) return id === item || (kind === 'steps' && flights.has(id));
		if (kind === 'wall') return gardenWalls.has(id) ? question.chapter === 'spots' : question.chapter === 'house';
		return kinds.includes(kind);
	};
	const fixtures = plan.fixtures.filter(lit);
	const ids = new Set(fixtures.map(({ id }) => id));
	const said = (finding: Finding): boolean => {
		if (!finding.about) return false;
		const { kind, id } = finding.about;
		if (kind === 'fixture') return ids.has(id);
		return item === null ? kinds.includes(kind) : id === item || flights.has(id);
	};
	const techniques = [...new Set(fixtures.map(({ technique }) => technique))];
	return {
		groups: techniques.map((technique) => ({
			technique,
			fixtures: fixtures.filter((fixture) => fixture.technique === technique)
		})),
		findings: plan.findings.filter(said),
		sums: sumsOf(plan, question.chapter)
	};
}
