/** What the plan says about changes made by hand: every rule they break, what they leave dark, what is kept for later. */
import { distance, type Point } from '../../shared/geometry';
import type { Finding } from '../../shared/findings';
import { courseOf } from '../course';
import type { Drafting } from '../drafting';
import type { Sight } from '../sight';
import type { Fixture, HandMark } from '../types';
import { called } from '../wording';
import { brokenByBeam, brokenByLamp } from './check-beam';
import { brokenByPlace } from './check-place';
import type { Edit } from './edits';
import type { HandOutcome, HandSet } from './place';

const handWords: Readonly<Record<HandMark, string>> = {
	moved: 'moved by you',
	pinned: 'pinned by you',
	turned: 'turned by you',
	lamp: 'with the lamp you chose',
	added: 'added by you'
};
const kindWords: Readonly<Record<Fixture['technique'] | 'bed' | 'sign', string>> = {
	uplight: 'uplight',
	wash: 'wall light',
	graze: 'grazing light',
	path: 'path light',
	step: 'step light',
	drive: 'drive light',
	area: 'light for a seat',
	number: 'light for the number',
	bed: 'bed light',
	sign: 'sign light'
};
/** `a path light`, `an uplight`. */
function oneOf({ target, technique }: { target: Fixture['target'] | null; technique: Fixture['technique'] }): string {
	const sign = target?.kind === 'number' && technique === 'wash';
	const word = kindWords[target?.kind === 'bed' ? 'bed' : sign ? 'sign' : technique];
	return `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word}`;
}
const remedy = (marks: readonly HandMark[]): string =>
	marks.includes('added') ? 'Move it, or take it away.' : 'Change it, or put it back.';

/** All findings about what was set by hand. `fixtures`: labelled. `kind`: of the lamps that the others have. */
export function handFindings(
	outcome: HandOutcome,
	fixtures: readonly Fixture[],
	sight: Sight,
	kind: 'led' | 'halogen'
): Finding[] {
	const byId = new Map(fixtures.map((fixture) => [fixture.id, fixture]));
	const { d, sets, removed, idle } = outcome;
	return [
		...sets.flatMap((set) => {
			const fixture = byId.get(set.placed.fixture.id);
			return fixture ? ofSet(outcome, set, fixture, { fixtures, sight, kind }) : [];
		}),
		...removed.map((fixture) => ofRemoved(d, fixture)),
		...idle.flatMap((edit) => ofIdle(edit))
	].map((finding) => ({ ...finding, message: d.own.words(finding.rule, finding.message) }));
}

function ofSet(
	{ d }: HandOutcome,
	{ marks, moved, planned }: HandSet,
	fixture: Fixture,
	{ fixtures, sight, kind }: { fixtures: readonly Fixture[]; sight: Sight; kind: 'led' | 'halogen' }
): Finding[] {
	const who = `${fixture.label}, ${marks.map((mark) => handWords[mark]).join(' and ')},`;
	const about = { kind: 'fixture', id: fixture.id };
	const turned = marks.includes('turned') || (marks.includes('added') && fixture.aim !== null);
	const broken = [
		...(moved ? brokenByPlace(d, fixture, fixtures) : []),
		...(moved || turned ? brokenByBeam(d, fixture, turned, sight) : []),
		...(marks.includes('lamp') || marks.includes('added') ? brokenByLamp(d, fixture, kind) : [])
	];
	const findings = broken.map(({ what, rank, rule, words }): Finding => ({
		code: `placement.hand-${what}`,
		rank,
		message: `${who} ${words}. ${remedy(marks)}`,
		about,
		rule
	}));
	const left = planned && moved && leftDark(d, planned, fixture.at);
	if (left)
		findings.push({
			code: 'placement.hand-away',
			rank: 'look',
			message: `${who} no longer stands by ${left}, where a foot goes wrong in the dark. ${remedy(marks)}`,
			about,
			rule: 'path.first'
		});
	if (!planned && !marks.includes('added'))
		findings.push({
			code: 'placement.hand-kept',
			rank: 'note',
			message: `${who} stays where you set it, though the plan alone would put no light there now. Take it away if you do not want it.`,
			about,
			rule: 'hand.placed'
		});
	return findings;
}

/** The steps that a light of the plan served and that the place it has now does not; null when it served none, or still does. */
function leftDark({ site, figures }: Drafting, planned: Fixture, now: Point | null): string | null {
	const near = figures['path.spacing'].spacing / 2;
	for (const strip of site.strips) {
		const course = courseOf(strip);
		for (const flight of strip.steps) {
			const spots = [flight.start, flight.end].map((at) => course.centre(at));
			const own = planned.target.kind === 'steps' && planned.target.id === flight.id;
			const by = (p: Point): boolean => spots.some((spot) => distance(spot, p) < near + strip.width / 2);
			if ((own || (planned.technique === 'path' && by(planned.at))) && !(now && by(now)))
				return `the steps of ${called(strip.name, 'walk')}`;
		}
	}
	return null;
}

function ofRemoved(d: Drafting, planned: Fixture): Finding {
	const steps = leftDark(d, planned, null);
	const why = planned.reasons[0]?.because ?? '';
	return {
		code: 'placement.hand-removed',
		rank: steps ? 'look' : 'note',
		message: `You took away ${oneOf(planned)}.${steps ? ` It stood by ${steps}, where a foot goes wrong in the dark.` : ''} The plan had put it there for this: “${why}”`,
		about: { kind: planned.target.kind, id: planned.target.id },
		rule: planned.reasons[0]?.rule ?? 'hand.placed'
	};
}

function ofIdle({ id, told, target, technique }: Edit): Finding[] {
	// Nothing to take away, and nothing lost by it.
	if (told.removed && target) return [];
	return [
		{
			code: 'placement.hand-gone',
			rank: 'note',
			message: target
				? `You changed ${oneOf({ target, technique })} (${id}) that the plan does not place now. The change is kept and comes back with it.`
				: `What the light ${id} stood for is no longer in the yard. Your change to it is kept and comes back with it.`,
			about: null,
			rule: 'hand.placed'
		}
	];
}
