/** The changes made by hand, read against the site: what each is about, and whether that is still in the yard. */
import type { Point } from '../../shared/geometry';
import type { FixtureModel } from '../../shared/catalogue';
import type { Site } from '../../site';
import type { FixtureEdit, YardPoint } from '../../yard';
import type { Pick as Picker } from '../models';
import type { Fixture, HandMark, Technique } from '../types';

type Target = Fixture['target'];
export interface Edit {
	id: string;
	told: FixtureEdit;
	/** Null: nothing of that name is in the yard now. */
	target: Target | null;
	role: string;
	technique: Technique;
}
const roles: Readonly<Record<string, { kind: Target['kind']; technique: Technique }>> = {
	uplight: { kind: 'tree', technique: 'uplight' },
	wash: { kind: 'wall', technique: 'wash' },
	graze: { kind: 'wall', technique: 'graze' },
	path: { kind: 'walk', technique: 'path' },
	step: { kind: 'steps', technique: 'step' },
	mouth: { kind: 'drive', technique: 'drive' },
	runoff: { kind: 'drive', technique: 'drive' },
	edge: { kind: 'drive', technique: 'drive' },
	area: { kind: 'seating', technique: 'area' },
	bed: { kind: 'bed', technique: 'area' },
	number: { kind: 'number', technique: 'number' },
	sign: { kind: 'number', technique: 'wash' }
};

/** `oak/uplight-2` in its parts; a part that is not there is empty. */
export function partsOf(id: string): { stem: string; role: string; number: number } {
	const [, stem = id, role = '', number = '0'] = /^(.*)\/(.*?)(?:-(\d+))?$/.exec(id) ?? [];
	return { stem, role, number: Number(number) };
}
/** Lights that stand for each other when answers change: a rough wall that becomes smooth is washed instead of grazed. */
export function kinOf(id: string): string {
	const { stem, role } = partsOf(id);
	return `${stem}/${role === 'graze' ? 'wash' : role}`;
}
export const pointOf = ({ along, out }: YardPoint): Point => ({ x: along, y: out });

/** Whether what a fixture lights is in the yard. */
export function isThere(site: Site, { kind, id }: Target): boolean {
	const named = (list: readonly { id: string }[]): boolean => list.some((one) => one.id === id);
	switch (kind) {
		case 'tree':
			return named(site.trees);
		case 'wall':
			return named(site.walls);
		case 'walk':
		case 'drive':
			return named(site.strips.filter((strip) => strip.kind === kind));
		case 'steps':
			return site.strips.some(({ steps }) => named(steps));
		case 'bed':
		case 'seating':
			return named(site.areas.filter((area) => area.kind === kind));
		case 'number':
			return named(site.houseNumber);
		case 'added':
			return true;
	}
}

/** Of two edits of one fixture the later holds. */
export function readEdits(told: readonly FixtureEdit[], site: Site): Edit[] {
	const byId = new Map(told.map((edit) => [edit.id, edit]));
	return [...byId.values()].map((edit) => {
		const { stem, role } = partsOf(edit.id);
		const known = roles[role];
		if (!known) return { id: edit.id, told: edit, target: null, role, technique: 'path' };
		const { kind, technique } = known;
		// An id that two kinds share has the kind before it (see `drafting`).
		const names = stem.startsWith(`${kind}-`) ? [stem, stem.slice(kind.length + 1)] : [stem];
		const target = names.map((id): Target => ({ kind, id })).find((one) => isThere(site, one)) ?? null;
		return { id: edit.id, told: edit, target, role, technique };
	});
}

const bodies: Readonly<Record<Technique, FixtureModel['body']>> = {
	uplight: 'spot',
	wash: 'wash',
	graze: 'wash',
	path: 'path',
	area: 'path',
	step: 'step',
	number: 'step',
	drive: 'marker'
};
export const bodyOf = (technique: Technique): FixtureModel['body'] => bodies[technique];
/** Whether its head can be turned; the others throw their light down all round. */
export const canTurn = (technique: Technique): boolean =>
	technique !== 'path' && bodies[technique] !== 'marker' && technique !== 'area';
/** The model chosen by hand; null when the catalogue has no such model of the kind that the technique needs. */
export function chosenModel(pick: Picker, id: string | undefined, technique: Technique): FixtureModel | null {
	const model = id === undefined ? null : pick.model(id);
	return model && serves(model.body, technique) ? model : null;
}
/** A narrow beam up into a gable comes from a spot. */
const serves = (body: FixtureModel['body'], technique: Technique): boolean =>
	body === bodies[technique] || (bodies[technique] === 'wash' && body === 'spot');

/** What an edit changes, in a fixed order. */
export function marksOf(pick: Picker, { at, pinned, aim, model }: FixtureEdit, technique: Technique): HandMark[] {
	const held = at !== undefined && pinned === true;
	return [
		...(at ? [held ? ('pinned' as const) : ('moved' as const)] : []),
		...(aim && !held && canTurn(technique) ? ['turned' as const] : []),
		...(chosenModel(pick, model, technique) ? ['lamp' as const] : [])
	];
}
