/**
 * Cable drawn by hand, as the answer `power.circuit` that it makes. A run that is touched first is held as it is laid, so that
 * one change changes one thing; what is set of other runs stays. Each returns the whole new answer, null where nothing is left
 * set. `runs` are those of the plan in hand; ids that name none of them change nothing.
 */
import type { CircuitChoice, RunChoice, RunLink, Yard, YardPoint } from '../yard';
import { freeId } from './changes';
import { handIds, runChoices } from './hand';
import type { Run } from './types';

type Ends = Pick<RunLink, 'from' | 'to'>;
/** A run as it is being changed: its choice, or the one that holds it as the plan has it. */
interface Editing {
	id: string;
	choice: RunChoice;
	/** Place among the choices; −1: new. */
	place: number;
}

export const lampsOfRun = ({ nodes }: Run): string[] => nodes.flatMap(({ fixture }) => fixture ?? []);

/** Without what is empty; null: nothing is set. */
function circuitWith(yard: Yard, choices: readonly RunChoice[]): CircuitChoice | null {
	const { runs: _, ...rest } = yard.power.circuit ?? {};
	const value = { ...rest, ...(choices.length > 0 ? { runs: [...choices] } : {}) };
	return Object.keys(value).length > 0 ? value : null;
}
const unchanged = (yard: Yard): CircuitChoice | null => yard.power.circuit ?? null;

/** The choice that a run of the plan is laid by; a new one names its lamps, unless it is the only run. */
function editing(yard: Yard, runs: readonly Run[], run: Run): Editing {
	const choices = runChoices(yard);
	const place = handIds(choices).indexOf(run.id);
	const own = { id: run.id, ...(runs.length > 1 ? { lamps: lampsOfRun(run) } : {}) };
	return { id: run.id, choice: choices[place] ?? own, place };
}
const withEdited = (choices: readonly RunChoice[], { place }: Editing, choice: RunChoice): RunChoice[] =>
	place < 0 ? [...choices, choice] : choices.with(place, choice);

function withLinks({ links: _, ...choice }: RunChoice, links: readonly RunLink[]): RunChoice {
	return links.length > 0 ? { ...choice, links: [...links] } : choice;
}
const joins = (a: Ends, b: Ends): boolean => a.from === b.from && a.to === b.to;
const turned = ({ from, to, via }: RunLink): RunLink | null =>
	from === 'supply' ? null : { from: to, to: from, ...(via && { via: via.toReversed() }) };

/** What a node of a run is called in links; a hub counts as the light it stands beside. */
function linkNames({ nodes }: Run): ReadonlyMap<string, string> {
	const lamps = nodes.filter(({ fixture }) => fixture !== null);
	return new Map(
		nodes.map(({ id, fixture, at }, k) => {
			const beside = lamps.find((lamp) => lamp.at.x === at.x && lamp.at.y === at.y);
			return [id, k === 0 ? 'supply' : (fixture ?? beside?.id ?? id)];
		})
	);
}

/** A run's cables as they are laid now, as links from light to light; bends are those told. Links told that are not laid come last. */
export function linksOfRun(run: Run, told: readonly RunLink[] = []): RunLink[] {
	const named = linkNames(run);
	const laid = run.segments.flatMap((segment): RunLink[] => {
		const ends = { from: named.get(segment.from)!, to: named.get(segment.to)! };
		if (ends.from === ends.to) return [];
		const known = told.flatMap((link) => [link, turned(link) ?? link]).find((link) => joins(link, ends));
		return [known ?? ends];
	});
	const isLaid = (link: RunLink) =>
		laid.some((one) => joins(one, link) || (one.from === link.to && one.to === link.from));
	return [...laid, ...told.filter((link) => !isLaid(link))];
}

/** The links without a light: what hung on it hangs where it hung. */
function linksWithout(links: readonly RunLink[], lamp: string): RunLink[] {
	const before = links.find(({ to }) => to === lamp)?.from;
	return links.flatMap((link): RunLink[] => {
		if (link.to === lamp) return [];
		if (link.from !== lamp) return [link];
		return before === undefined || before === link.to ? [] : [{ from: before, to: link.to }];
	});
}

/** The lights fed through a light, itself among them. */
function fedThrough(links: readonly RunLink[], lamp: string): Set<string> {
	const found = new Set([lamp]);
	for (const at of found) for (const { from, to } of links) if (from === at) found.add(to);
	return found;
}

/**
 * A light moved to another run of the plan, or (`'new'`) to one of its own. Both runs then name their lamps; what hung on the
 * light hangs where it hung, and the plan joins it on where it comes to.
 */
export function moveLamp(yard: Yard, runs: readonly Run[], lamp: string, to: string): CircuitChoice | null {
	const source = runs.find((run) => lampsOfRun(run).includes(lamp));
	const target = runs.find(({ id }) => id === to);
	if (!source || source === target || (!target && to !== 'new')) return unchanged(yard);
	const choices = runChoices(yard);
	const left = editing(yard, runs, source);
	const absent = (left.choice.lamps ?? []).filter((id) => !lampsOfRun(source).includes(id));
	const lamps = [...lampsOfRun(source).filter((id) => id !== lamp), ...absent];
	const kept = withLinks({ ...left.choice, lamps }, linksWithout(left.choice.links ?? [], lamp));
	// A run that held nothing but this light is gone with it.
	const isGone = lamps.length === 0 && Object.keys(kept).every((key) => key === 'id' || key === 'lamps');
	const taken = [...handIds(choices), ...runs.map(({ id }) => id)];
	const goal = target ? editing(yard, runs, target) : null;
	const gained: RunChoice = goal
		? { ...goal.choice, lamps: [...new Set([...(goal.choice.lamps ?? []), ...lampsOfRun(target!), lamp])] }
		: { id: freeId(taken), lamps: [lamp] };
	const others = choices.flatMap((choice, k): RunChoice[] => {
		if (k === left.place) return isGone ? [] : [kept];
		if (k === goal?.place) return [gained];
		return [choice];
	});
	return circuitWith(yard, [
		...others,
		...(left.place < 0 && !isGone ? [kept] : []),
		...(goal && goal.place >= 0 ? [] : [gained])
	]);
}

/**
 * Cable drawn from one light of a run, or `'supply'`, to the next. The light it leads to is fed by it from then on, and brings
 * what hangs on it; where it would feed itself so, the light it is drawn from is let go where it was fed, for the plan to join
 * on or the next cable drawn. A light of another run comes over to this one. How the run is fed follows from its cables.
 */
export function drawLink(yard: Yard, runs: readonly Run[], runId: string, link: RunLink): CircuitChoice | null {
	const run = runs.find(({ id }) => id === runId);
	if (!run || link.from === link.to) return unchanged(yard);
	const stranger = [link.from, link.to].find((id) => id !== 'supply' && !lampsOfRun(run).includes(id));
	if (stranger !== undefined) return drawnFor(yard, runs, run, stranger, link);
	const edit = editing(yard, runs, run);
	const now = linksOfRun(run, edit.choice.links);
	const before = now.filter(({ to }) => to !== link.to);
	const isRing = fedThrough(before, link.to).has(link.from);
	const kept = isRing ? before.filter(({ to }) => to !== link.from) : before;
	const { feed: _, ...choice } = edit.choice;
	return circuitWith(yard, withEdited(runChoices(yard), edit, withLinks(choice, [...kept, link])));
}
/** The same once a light of another run has come over. */
function drawnFor(yard: Yard, runs: readonly Run[], run: Run, stranger: string, link: RunLink): CircuitChoice | null {
	const circuit = moveLamp(yard, runs, stranger, run.id);
	if (circuit === unchanged(yard)) return circuit;
	const node = runs.flatMap(({ nodes }) => nodes).find(({ fixture }) => fixture === stranger)!;
	const moved = runs.flatMap((one): Run[] => {
		if (one === run) return [{ ...one, nodes: [...one.nodes, node] }];
		const nodes = one.nodes.filter(({ fixture }) => fixture !== stranger);
		return [{ ...one, nodes }];
	});
	const after: Yard = { ...yard, power: { ...yard.power, ...(circuit && { circuit }) } };
	return drawLink(after, moved, run.id, link);
}

/** The link of a run changed by `change`, the others as they are laid; null: taken out. Nothing where there is no such cable. */
function changedLink(
	yard: Yard,
	runs: readonly Run[],
	runId: string,
	ends: Ends,
	change: (link: RunLink) => RunLink | null
): CircuitChoice | null {
	const run = runs.find(({ id }) => id === runId);
	if (!run) return unchanged(yard);
	const edit = editing(yard, runs, run);
	const links = linksOfRun(run, edit.choice.links);
	const named = linkNames(run);
	const wanted = { from: named.get(ends.from) ?? ends.from, to: named.get(ends.to) ?? ends.to };
	const found = links.find((link) => joins(link, wanted));
	if (!found) return unchanged(yard);
	const next = links.flatMap((link) => (link === found ? (change(link) ?? []) : [link]));
	const { feed: _, ...choice } = edit.choice;
	return circuitWith(yard, withEdited(runChoices(yard), edit, withLinks(choice, next)));
}

/** A cable of a run led straight from bend to bend; `ends` as its segment has them. Without bends it is straightened. */
export const bendLink = (yard: Yard, runs: readonly Run[], runId: string, ends: Ends, via: readonly YardPoint[]) =>
	changedLink(yard, runs, runId, ends, ({ from, to }) => ({ from, to, ...(via.length > 0 ? { via: [...via] } : {}) }));

/** The bends of a cable taken out: it stays drawn between its lights, and the plan finds its way. */
export const straighten = (yard: Yard, runs: readonly Run[], runId: string, ends: Ends) =>
	changedLink(yard, runs, runId, ends, ({ from, to }) => ({ from, to }));

/** A cable rubbed out: the plan joins on what it fed. */
export const eraseLink = (yard: Yard, runs: readonly Run[], runId: string, ends: Ends) =>
	changedLink(yard, runs, runId, ends, () => null);

/** A run left to the plan again: its cables, and its lamps to share out, size, tap and feed. */
export function releaseRun(yard: Yard, runId: string): CircuitChoice | null {
	const choices = runChoices(yard);
	const place = handIds(choices).indexOf(runId);
	return place < 0 ? unchanged(yard) : circuitWith(yard, choices.toSpliced(place, 1));
}
