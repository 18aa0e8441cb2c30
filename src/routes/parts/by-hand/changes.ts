/** The answer `fixtures` that a change made by hand on the layout page makes. Undefined: nothing is left by hand. */
import type { Fixture, Technique } from '$lib/domain/placement';
import type { Plan } from '$lib/domain/plan';
import type { AddedFixture, FixtureEdit, HandFixtures, YardPoint } from '$lib/domain/yard';

export type Told = HandFixtures | undefined;
export type Aim = NonNullable<FixtureEdit['aim']>;
type Target = NonNullable<AddedFixture['target']>;

const addedStem = 'added/';
/** The person's own light behind a fixture of the plan; undefined for one that the plan placed. */
export const addedOf = (told: Told, id: string): AddedFixture | undefined =>
	told?.added?.find((one) => `${addedStem}${one.id}` === id);
export const editOf = (told: Told, id: string): FixtureEdit | undefined => told?.set?.find((one) => one.id === id);

/** A tenth of a millimetre: what a tape, a tap or a step can mean, without the dust of arithmetic. */
const tidy = (metres: number): number => Math.round(metres * 1e4) / 1e4;
const asTold = ({ x, y }: { x: number; y: number }): YardPoint => ({ along: tidy(x), out: tidy(y) });

/** What of a light its changes are made from. */
type Changeable = Pick<Fixture, 'id' | 'at'> & { planned?: Pick<Fixture, 'at'> | null };

/** Without what says nothing. */
function whole({ set = [], added = [] }: HandFixtures): Told {
	const says = ({ at, aim, model, removed }: FixtureEdit): boolean =>
		at !== undefined || aim !== undefined || model !== undefined || removed === true;
	const edits = set.filter(says);
	const next = { ...(edits.length > 0 ? { set: edits } : {}), ...(added.length > 0 ? { added } : {}) };
	return Object.keys(next).length > 0 ? next : undefined;
}
/** One thing of one light changed; what is given as undefined goes back to the plan. */
function changed(told: Told, fixture: Changeable, change: Partial<FixtureEdit>): Told {
	const own = addedOf(told, fixture.id);
	if (own) {
		const { at = own.at, ...rest } = { ...own, ...change };
		const { pinned: _, removed: __, from: ___, ...kept } = rest as FixtureEdit & AddedFixture;
		const next = withoutGaps({ ...kept, id: own.id, at });
		return whole({ ...told, added: told!.added!.map((one) => (one === own ? next : one)) });
	}
	const before = editOf(told, fixture.id) ?? { id: fixture.id, from: asTold(fixture.planned?.at ?? fixture.at) };
	const next = withoutGaps({ ...before, ...change });
	return whole({ ...told, set: [...(told?.set ?? []).filter(({ id }) => id !== fixture.id), next] });
}
const withoutGaps = <T extends object>(one: T): T =>
	Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined)) as T;

export const moved = (told: Told, fixture: Changeable, to: { x: number; y: number }): Told =>
	changed(told, fixture, { at: asTold(to), pinned: undefined });
export const turned = (told: Told, fixture: Fixture, aim: Aim | undefined): Told => changed(told, fixture, { aim });
export const withModel = (told: Told, fixture: Fixture, model: string | undefined): Told =>
	changed(told, fixture, { model });
/** Held where it stands and as it points. */
export const pinned = (told: Told, fixture: Fixture): Told =>
	changed(told, fixture, {
		at: { along: fixture.at.x, out: fixture.at.y },
		pinned: true,
		...(fixture.aim
			? {
					aim: { along: fixture.aim.point.x, out: fixture.aim.point.y, height: Math.max(0, fixture.aim.point.z) }
				}
			: {})
	});
/** Taken away: one of the plan's own stays away until it is put back, one that was added is gone. */
export function removed(told: Told, fixture: Changeable): Told {
	if (addedOf(told, fixture.id)) return forgotten(told, fixture.id);
	const from = editOf(told, fixture.id)?.from ?? asTold(fixture.planned?.at ?? fixture.at);
	return whole({
		...told,
		set: [...(told?.set ?? []).filter(({ id }) => id !== fixture.id), { id: fixture.id, from, removed: true }]
	});
}
/** Nothing of this light is left by hand. */
export const forgotten = (told: Told, id: string): Told =>
	told &&
	whole({
		set: told.set?.filter((one) => one.id !== id),
		added: told.added?.filter((one) => `${addedStem}${one.id}` !== id)
	});

/** A light more. Its id in the plan comes with it. */
export function added(
	told: Told,
	technique: Technique,
	at: YardPoint,
	target: Target | null
): { told: Told; id: string } {
	const taken = new Set(told?.added?.map(({ id }) => id));
	let number = taken.size + 1;
	while (taken.has(`light-${number}`)) number++;
	const id = `light-${number}`;
	const one: AddedFixture = { id, technique, at: asTold({ x: at.along, y: at.out }), ...(target ? { target } : {}) };
	return { told: whole({ ...told, added: [...(told?.added ?? []), one] }), id: `${addedStem}${id}` };
}

/** What a light of a kind may be for, by name. */
export function targetsFor({ site }: Plan, technique: Technique): { target: Target; name: string }[] {
	const named = (kind: Target['kind'], list: readonly { id: string; name?: string }[], word: string) =>
		list.map(({ id, name }, index) => ({
			target: { kind, id },
			name: name?.trim() || (list.length > 1 ? `${word} ${index + 1}` : word)
		}));
	switch (technique) {
		case 'uplight':
			return named('tree', site.trees, 'Tree');
		case 'wash':
		case 'graze':
			return [
				...named('wall', site.walls, 'Wall'),
				...named(
					'number',
					site.houseNumber.filter(({ kind }) => kind === 'sign' && technique === 'wash'),
					'Sign'
				)
			];
		case 'path':
			return named(
				'walk',
				site.strips.filter(({ kind }) => kind === 'walk'),
				'Walk'
			);
		case 'drive':
			return named(
				'drive',
				site.strips.filter(({ kind }) => kind === 'drive'),
				'Drive'
			);
		case 'step':
			return site.strips.flatMap(({ steps, name }) =>
				steps.map(({ id }) => ({ target: { kind: 'steps' as const, id }, name: `Steps of ${name || 'the walk'}` }))
			);
		case 'area':
			return [
				...named(
					'seating',
					site.areas.filter(({ kind }) => kind === 'seating'),
					'Seating place'
				),
				...named(
					'bed',
					site.areas.filter(({ kind }) => kind === 'bed'),
					'Bed'
				)
			];
		case 'number':
			return named(
				'number',
				site.houseNumber.filter(({ kind }) => kind === 'number'),
				'House number'
			);
	}
}
const roleNames: Readonly<Record<string, string>> = {
	uplight: 'uplight',
	wash: 'wall wash',
	graze: 'grazing light',
	path: 'path light',
	step: 'step light',
	mouth: 'light at the mouth',
	runoff: 'light where wheels run off',
	edge: 'drive light',
	area: 'light for a seat',
	bed: 'bed light',
	number: 'light for the number',
	sign: 'sign light'
};
/** A light that is not on the plan, by its id: `path light 3, Front walk`. */
export function nameOfAbsent({ site }: Plan, id: string): string {
	const [, stem = '', role = '', number = ''] = /^(.*)\/(.*?)(?:-(\d+))?$/.exec(id) ?? [];
	const things: { id: string; name?: string }[] = [
		...site.trees,
		...site.walls,
		...site.strips,
		...site.areas,
		...site.houseNumber,
		...site.strips.flatMap(({ steps, name }) => steps.map((flight) => ({ id: flight.id, name: `steps of ${name}` })))
	];
	const name = things.find((one) => one.id === stem)?.name || stem;
	return `${roleNames[role] ?? 'light'} ${number}, ${name}`;
}
/** Changes with nothing to show on the plan: lights taken away, and what waits for its light to come back. */
export function absent({ fixtures }: Plan, told: Told): { id: string; removed: boolean }[] {
	return (told?.set ?? [])
		.filter(({ id }) => !fixtures.some((fixture) => fixture.id === id))
		.map(({ id, removed }) => ({ id, removed: removed === true }));
}
