/** From what a finding is about to the page on which that is answered. */
import type { About } from '$lib/domain/shared/findings';
import type { Yard } from '$lib/domain/yard';
import { stepForPath, type Step } from '$lib/flow';

const lists: Record<string, readonly string[]> = {
	tree: ['trees'],
	walk: ['walks'],
	drive: ['drives'],
	strip: ['walks', 'drives'],
	bed: ['spots.beds'],
	paved: ['spots.paved'],
	seating: ['spots.seating'],
	number: ['spots.numbers'],
	water: ['spots.water'],
	light: ['spots.lights'],
	wall: ['spots.walls', 'house.sections', 'house'],
	section: ['house.sections'],
	opening: ['house.openings'],
	porch: ['house.porches']
};
const single: Record<string, readonly string[]> = {
	house: ['house.sections'],
	lot: ['lot.street'],
	street: ['lot.street'],
	place: ['place.location'],
	power: ['power.transformer'],
	supply: ['power.transformer'],
	transformer: ['power.transformer'],
	receptacle: ['power.receptacle'],
	sensor: ['power.sensor'],
	run: ['power.cable']
};

/** Things that no question asks for and a page of the plan sets. */
interface PageOfPlan {
	path: '/light/' | '/circuit/draw/';
	title: string;
}
const elsewhere: Record<string, PageOfPlan> = {
	lamp: { path: '/light/', title: 'After dark' }
};
const drawing: PageOfPlan = { path: '/circuit/draw/', title: 'Lay the cable yourself' };
/** `code`: of the finding; what is said of cable that a person drew is put right where it was drawn. */
export const pageAbout = (about: About | null, code = ''): PageOfPlan | null =>
	code.startsWith('cable.drawn-') ? drawing : ((about && elsewhere[about.kind]) ?? null);

/** The page that answers it, or null when there is none. `targetOf` gives what a fixture lights, a flight its walk. */
export function stepAbout(
	yard: Yard,
	about: About | null,
	targetOf: (about: About) => About | null = () => null,
	rule: string | null = null
): Step | null {
	if (!about) return null;
	// Where a cable crosses has a page of its own for each walk and drive.
	if (rule === 'cable.crossing' && (about.kind === 'walk' || about.kind === 'drive')) {
		const crossings = stepForPath(yard, `${about.kind}s.${about.id}.crossings`);
		if (crossings) return crossings;
	}
	const own = (lists[about.kind] ?? [])
		.map((list) => stepForPath(yard, `${list}.${about.id}`))
		.find((step) => step !== null);
	if (own) return own;
	if (about.kind === 'power') {
		const named = stepForPath(yard, `power.${about.id}`);
		if (named) return named;
	}
	const fixed = (single[about.kind] ?? []).map((path) => stepForPath(yard, path)).find((step) => step !== null);
	if (fixed) return fixed;
	const target = targetOf(about);
	return target && (target.kind !== about.kind || target.id !== about.id) ? stepAbout(yard, target) : null;
}
