/** Uplights on trees: places round the trunk, clear of eyes, one light where two trees want it at the same place. */
import { distance, moved, rotated, towards, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import type { Tree } from '../site';
import type { Cause } from './conflicts';
import type { Drafting } from './drafting';
import { moved as movedReason, reason } from './reasons';
import { share } from './share';
import { clearestOf, sightOn, watcherWords, type Sight, type Watcher } from './sight';
import { bearingsRound, treeAim, uplightCount, type Aim } from './tree-aim';
import { treeFindings, treeReasons } from './tree-reasons';
import type { Fixture, Reason } from './types';

/** Turns tried when the wanted place is taken: first away from the side looked at. */
const turnsTried = [0, 15, 30, 45, 60, 90, 120, 150, 180];
/** A path or step light nearer than this crowds an uplight, metres; up to so many degrees round the trunk are worth going to be rid of it: our assumptions. */
const crowd = { within: 0.6, turn: 60 } as const;

export function placeTree(d: Drafting, tree: Tree, sight: Sight): void {
	if (tree.light === 'none') return;
	new TreeLights(d, tree, sight).place();
}

class TreeLights {
	readonly #d: Drafting;
	readonly #tree: Tree;
	readonly #sight: Sight;
	readonly #target: Fixture['target'];
	readonly #aim: Aim;
	readonly #model: FixtureModel;
	readonly #crown: { x: number; y: number; z: number };
	readonly #reasons: Reason[];
	readonly #stepLights: readonly Point[];
	readonly #count: number;
	readonly #inTheWay = new Set<Cause>();
	readonly #seenBy = new Set<Watcher>();

	constructor(d: Drafting, tree: Tree, sight: Sight) {
		this.#d = d;
		this.#tree = tree;
		this.#sight = sight;
		this.#target = { kind: 'tree', id: tree.id };
		const mount = tree.ground === 'lawn' ? 'flush' : 'stake';
		const base = d.pick({ body: 'spot', mount, strength: tree.light as 'soft' | 'bright' });
		this.#aim = treeAim(tree, base.lampHeight, base.headDiameter / 2, d.figures);
		this.#model = d.pick({ body: 'spot', mount, strength: base.strength, beam: this.#aim.beam });
		this.#crown = { x: tree.at.x, y: tree.at.y, z: this.#aim.aimHeight };
		this.#count = uplightCount(tree);
		const stepped = d.site.strips.some(({ steps }) => steps.length > 0);
		const stepLights = stepped ? d.placed.filter(({ fixture }) => fixture.technique === 'step') : [];
		this.#stepLights = stepLights.map(({ fixture }) => fixture.at);
		this.#reasons = treeReasons(d, tree, this.#aim, this.#model, this.#count);
	}

	place(): void {
		const { at, seenFrom } = this.#tree;
		const view = towards(at, seenFrom);
		const facing: Point = view.x === 0 && view.y === 0 ? { x: 0, y: 1 } : view;
		// The first of each pair on the side towards the house: so the mirror image of a yard is lit alike.
		const hand = this.#d.handed(at) * (facing.y >= -1e-9 ? 1 : -1);
		let placed = 0;
		let shared = 0;
		let dazzling = 0;
		for (const angle of bearingsRound(this.#count).map((degrees) => degrees * hand)) {
			const wanted = this.#round(facing, angle);
			if (share(this.#d, this.#tree, wanted, this.#crown, this.#sight)) {
				shared++;
				continue;
			}
			const clear = this.#stand(facing, angle, angle === 0 ? hand : Math.sign(angle), wanted);
			if (clear === null) continue;
			placed++;
			if (!clear) dazzling++;
		}
		treeFindings(this.#d, this.#tree, this.#target, {
			aim: this.#aim,
			count: this.#count,
			placed: placed + shared,
			own: placed,
			dazzling,
			seenBy: this.#seenBy,
			inTheWay: [...this.#inTheWay]
		});
	}

	/** The place so many degrees round the trunk from the side that is looked at. */
	#round(facing: Point, angle: number): Point {
		return moved(this.#tree.at, rotated(facing, angle), this.#tree.trunkDiameter / 2 + this.#aim.offset);
	}

	#blocked(at: Point): Cause | null {
		return this.#d.ground.blocked(at, this.#model.headDiameter / 2, 'up');
	}
	#crowded(at: Point): boolean {
		const near = (lamp: Point): boolean => distance(lamp, at) < crowd.within;
		return this.#stepLights.some(near) || this.#d.shared(at, crowd.within, this.#target);
	}

	/** Free places round the trunk, the wanted one first, then by how far they are turned from it; crowded ones after the rest. */
	*#places(facing: Point, angle: number, sense: number): Generator<Point> {
		for (const uncrowded of [true, false])
			for (const turn of turnsTried)
				for (const way of turn === 0 || turn === 180 ? [1] : [1, -1]) {
					const at = this.#round(facing, angle + sense * turn * way);
					if (uncrowded && (turn > crowd.turn || this.#crowded(at))) continue;
					const cause = this.#blocked(at);
					if (cause) this.#inTheWay.add(cause);
					else yield at;
				}
	}

	/** Puts one light; gives back whether it keeps clear of eyes, null when there is no room for it. */
	#stand(facing: Point, angle: number, sense: number, wanted: Point): boolean | null {
		const places = this.#places(facing, angle, sense);
		const best = clearestOf(this.#sight, places, this.#model.lampHeight, this.#crown);
		if (!best) return null;
		if (best.watcher) this.#seenBy.add(best.watcher);
		const notThere = this.#notThere(wanted, best.at);
		const placed = this.#d.place({
			target: this.#target,
			role: 'uplight',
			technique: 'uplight',
			at: best.at,
			model: this.#model,
			aim: this.#crown,
			reasons: [...this.#reasons, ...notThere]
		});
		this.#d.uplights.add(best.at, { placed, trees: [this.#tree], crowns: [this.#crown] });
		return best.watcher === null;
	}

	/** Why it does not stand where it was wanted. */
	#notThere(wanted: Point, at: Point): Reason[] {
		const aside = distance(wanted, at);
		if (aside < 1e-9) return [];
		const where = 'on the side first thought of';
		const taken = this.#blocked(wanted) ?? (this.#crowded(wanted) ? 'fixture' : null);
		if (taken) return [movedReason(this.#d, taken, aside, where)];
		const { watcher } = sightOn(this.#sight, wanted, this.#model.lampHeight, this.#crown);
		const who = watcher ? watcherWords[watcher] : 'close by';
		const because = `Not ${where}, ${this.#d.len(aside)} from here: the beam would come too near the eyes of someone ${who}.`;
		return [reason('tree.aim', aside, 'm', because, { notHere: true })];
	}
}
