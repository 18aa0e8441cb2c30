/**
 * The plan with the person's own hand in it. The plan is made alone first, to know which of its lights each change speaks
 * of; then again with the hand-set lights in the way of all others, each in the place of the one it stands for.
 */
import { distance, type Point } from '../../shared/geometry';
import type { FixtureModel } from '../../shared/catalogue';
import type { Site } from '../../site';
import type { AddedFixture, HandFixtures } from '../../yard';
import type { Draft, Drafting, Placed } from '../drafting';
import type { Fixture, HandMark } from '../types';
import { aimFrom, aimTold, orderAt } from './aims';
import { claimed } from './claims';
import { bodyOf, canTurn, chosenModel, isThere, kinOf, marksOf, pointOf, readEdits, type Edit } from './edits';
import { Identity } from './identity';
import { keptReasons, placedReason } from './hand-reasons';

export interface HandJob {
	site: Site;
	told: HandFixtures;
	/** A drafting with nothing placed. */
	fresh: () => Drafting;
	/** Places what the plan wants. */
	placeAll: (d: Drafting) => void;
}
/** A light set by hand that stands. */
export interface HandSet {
	placed: Placed;
	marks: HandMark[];
	planned: Fixture | null;
	/** Its place was set by hand and is not where the plan has it. */
	moved: boolean;
}
export interface HandOutcome {
	d: Drafting;
	sets: HandSet[];
	edits: Edit[];
	/** The plan's own lights that were taken away. */
	removed: Fixture[];
	/** Changes for which there is nothing now: kept in the yard, not applied. */
	idle: Edit[];
}
/** Metres within which a place is the same. */
const same = 0.005;

export function placeByHand({ site, told, fresh, placeAll }: HandJob): HandOutcome {
	const alone = fresh();
	placeAll(alone);
	return new Hand(
		site,
		told,
		fresh(),
		alone.placed.map(({ fixture }) => fixture)
	).place(placeAll);
}

class Hand {
	readonly #edits: Edit[];
	readonly #claims: Map<string, Edit>;
	readonly #plannedOf = new Map<Edit, Fixture>();
	readonly #ids: Identity;
	readonly #sets: HandSet[] = [];
	readonly #removed: Fixture[] = [];
	readonly #done = new Set<Edit>();
	readonly #put: Drafting['place'];
	readonly #apart: number;

	constructor(
		readonly site: Site,
		readonly told: HandFixtures,
		readonly d: Drafting,
		own: readonly Fixture[]
	) {
		this.#edits = readEdits(told.set ?? [], site);
		// Half the least spacing of two lights tells one from the next.
		this.#claims = claimed(this.#edits, own, d.figures['path.spacing'].spacing / 2);
		for (const fixture of own) {
			const edit = this.#claims.get(fixture.id);
			if (edit) this.#plannedOf.set(edit, fixture);
		}
		this.#ids = new Identity(
			own,
			this.#edits.map(({ id }) => id)
		);
		this.#put = d.place;
		this.#apart = d.figures['place.clear'].apart;
	}

	place(placeAll: (d: Drafting) => void): HandOutcome {
		this.#keepClear();
		this.d.place = (draft) => this.#instead(draft);
		placeAll(this.d);
		this.d.place = this.#put;
		this.#withoutDoubles();
		for (const edit of this.#edits) if (!this.#done.has(edit) && this.#stays(edit)) this.#survive(edit);
		for (const added of this.told.added ?? []) this.#add(added);
		return {
			d: this.d,
			sets: this.#sets,
			edits: this.#edits,
			removed: this.#removed,
			idle: this.#edits.filter((edit) => !this.#done.has(edit))
		};
	}

	/** A place set by hand holds as long as what is lit is there. */
	#stays({ told, target }: Edit): boolean {
		return told.at !== undefined && told.removed !== true && target !== null;
	}

	/** No other light stands where hand-set ones will; what takes the place of a light is not in that light's own way. */
	#keepClear(): void {
		const waiting: { at: Point; own: Point | null }[] = [
			...this.#edits
				.filter((edit) => this.#stays(edit))
				.map((edit) => ({ at: pointOf(edit.told.at!), own: this.#plannedOf.get(edit)?.at ?? null })),
			...(this.told.added ?? []).map(({ at }) => ({ at: pointOf(at), own: null }))
		];
		// Lights that stay where the plan has them push nobody, so nobody is pushed into their places.
		if (waiting.every(({ at, own }) => own && distance(at, own) < same)) return;
		const { blocked, occupy } = this.d.ground;
		const inTheWay = (p: Point): boolean =>
			waiting.some(({ at, own }) => distance(at, p) < this.#apart - 1e-6 && !(own && distance(own, p) < 1e-9));
		this.d.ground = {
			occupy,
			blocked: (p, radius, standing) => blocked(p, radius, standing) ?? (inTheWay(p) ? 'fixture' : null)
		};
	}

	/** Where a row was laid out anew, a light of it may have come to stand beside the hand-set one that does its work. */
	#withoutDoubles(): void {
		const { placed } = this.d;
		const byHand = new Set(this.#sets.map((set) => set.placed));
		const doubles = placed.filter(
			(one) =>
				!byHand.has(one) &&
				this.#sets.some(
					({ placed: { fixture }, moved, marks }) =>
						(moved || marks.includes('pinned')) &&
						kinOf(fixture.id) === kinOf(one.fixture.id) &&
						distance(fixture.at, one.fixture.at) < this.#apart - 1e-6
				)
		);
		for (const one of doubles) placed.splice(placed.indexOf(one), 1);
	}

	/** What the plan places, as the hand has it. */
	#instead(draft: Draft): Placed {
		const own = this.#ids.of(draft);
		const edit = own ? this.#claims.get(own.id) : undefined;
		if (own && edit?.told.removed) {
			this.#done.add(edit);
			this.#removed.push(own);
			// Off the edge of the world, so that no other tree shares its light.
			return { fixture: { ...own, at: { x: 1e6, y: 1e6 } }, order: draft.order };
		}
		if (own && edit) return this.#set(edit, draft, own);
		const placed = this.#put(draft);
		placed.fixture = { ...placed.fixture, id: this.#ids.free(own?.id ?? placed.fixture.id) };
		return placed;
	}

	#set(edit: Edit, draft: Draft, planned: Fixture | null): Placed {
		const { told, id } = edit;
		const at = told.at ? pointOf(told.at) : draft.at;
		const moved = told.at !== undefined && !(planned && distance(at, planned.at) < same);
		const order = moved ? (orderAt(this.site, draft.target, at) ?? draft.order) : draft.order;
		const placed = this.#put({ ...draft, at, order });
		placed.fixture = { ...placed.fixture, id };
		this.#done.add(edit);
		this.#sets.push({ placed, marks: marksOf(this.d.pick, told, draft.technique), planned, moved });
		return placed;
	}

	/** One that the plan would not place now: it stays by hand. */
	#survive(edit: Edit): void {
		const planned = this.#plannedOf.get(edit) ?? null;
		const technique = planned?.technique ?? edit.technique;
		const target = planned?.target ?? edit.target!;
		const at = pointOf(edit.told.at!);
		const aim = planned?.aim?.point ?? aimFrom(this.d, target, technique, at);
		this.#set(
			edit,
			{
				target,
				role: edit.role,
				technique,
				at,
				model: (planned && this.d.pick.model(planned.model)) ?? this.#usual(target, technique),
				...(planned ? { height: planned.height } : {}),
				...(aim ? { aim } : {}),
				reasons: planned?.reasons.filter(({ rule }) => rule !== 'warm.colour') ?? [],
				order: orderAt(this.site, target, at)
			},
			planned
		);
	}

	#add({ id, target: told, technique, at: place, model, aim: toldAim }: AddedFixture): void {
		const at = pointOf(place);
		const target = told && isThere(this.site, told) ? told : ({ kind: 'added', id } as const);
		const chosen = chosenModel(this.d.pick, model, technique) ?? this.#usual(target, technique);
		const aim =
			toldAim && canTurn(technique)
				? aimTold(toldAim, at, chosen.lampHeight, this.site.faces)
				: aimFrom(this.d, target, technique, at);
		const placed = this.#put({
			target,
			role: 'added',
			technique,
			at,
			model: chosen,
			...(aim ? { aim } : {}),
			reasons: [placedReason(['added'])],
			order: orderAt(this.site, target, at)
		});
		placed.fixture = { ...placed.fixture, id: this.#ids.free(`added/${id}`) };
		this.#sets.push({ placed, marks: ['added'], planned: null, moved: true });
	}

	#usual(target: Fixture['target'], technique: Fixture['technique']): FixtureModel {
		const body = bodyOf(technique);
		const tree = this.site.trees.find(({ id }) => target.kind === 'tree' && target.id === id);
		return this.d.pick({
			body,
			strength: 'soft',
			...(body === 'spot' ? { mount: tree?.ground === 'lawn' ? 'flush' : 'stake', beam: 36 } : {})
		});
	}
}

/** The hand-set lights as they stand in the end: trees that share a light may have turned it after it was placed. */
export function finish({ d, sets, edits }: HandOutcome): void {
	const toldOf = new Map(edits.map(({ id, told }) => [id, told]));
	for (const set of sets) {
		const { fixture } = set.placed;
		const { technique, target, at } = fixture;
		const told = toldOf.get(fixture.id);
		const model = set.marks.includes('lamp') ? chosenModel(d.pick, told?.model, technique) : null;
		// A lamp on the wall keeps its height; one that stands has that of its model.
		const stands = d.pick.model(fixture.model)?.lampHeight === fixture.height;
		const height = model && stands ? model.lampHeight : fixture.height;
		const added = set.marks.includes('added');
		const across =
			set.moved && !added && technique !== 'uplight' ? aimFrom(d, target, technique, at, fixture.aim?.point) : null;
		const aim =
			told?.aim && canTurn(technique)
				? aimTold(told.aim, at, height, d.site.faces)
				: (across ?? fixture.aim?.point ?? null);
		set.placed.fixture = {
			...fixture,
			height,
			...(model ? { model: model.id, mount: model.mount, lamp: model.lamp } : {}),
			aim: aim ? d.aimed(at, height, aim) : null,
			reasons: added ? fixture.reasons : [placedReason(set.marks), ...keptReasons(fixture.reasons, set)],
			byHand: set.marks,
			planned: set.planned && { at: set.planned.at, aim: set.planned.aim, model: set.planned.model }
		};
	}
}
