/** Path lights along walks: rules path.first, path.spacing, path.setback, existing.light. */
import { distance, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import type { Figures } from '../shared/settings';
import { distanceToStrip, type Strip } from '../site';
import type { Cause } from './conflicts';
import { courseOf, edgeOf, leadSide, other, outerSide, type Course, type Edge, type Side } from './course';
import { middleOf, type Drafting, type Placed } from './drafting';
import { fill, firstsOf, type First, type Stop } from './firsts';
import { pavedStretches, type Stretch } from './paved-spans';
import { Skips } from './skips';
import { stepLightsOf } from './steps';
import type { Fixture } from './types';
import { apartOf, headFor, wantsOneMore } from './walk-light';
import { lightReasons, lit } from './walk-light-words';
import { sayNoRoom, walkReasons, type Spot, type Standing } from './walk-words';
import { called } from './wording';

/** Clear distances tried between edge and head, to the millimetre: the working value, a third of the way out, first. */
function clearsOf({ low, high }: Figures['path.setback']): readonly number[] {
	const held = (clear: number): number => Math.min(high, Math.max(low, Math.round(clear * 1000) / 1000));
	const thirds = [1, 2].map((n) => held(low + ((high - low) * n) / 3));
	return [...new Set([...thirds, low, high])];
}
/** Steps tried along the walk when a place is taken, metres. */
const slides = [0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1, -1];
/** At the entry a walk may still lie in the drive or the pavement it starts from: further in. */
const slidesIn = [0, 0.25, 0.5, 0.75, 1, 1.5, 2, 2.5, 3, 3.5, 4];

export function placeWalk(d: Drafting, strip: Strip, order: number): void {
	if (strip.lights === 'none' || strip.lights === 'mouth' || strip.length <= 0) return;
	new WalkLights(d, strip, order).place();
}

class WalkLights {
	readonly #d: Drafting;
	readonly #strip: Strip;
	readonly #course: Course;
	/** All of its lights as they stand, in the order in which they were put. */
	readonly #lights: { stood: Standing; placed: Placed }[] = [];
	/** Least metres along an edge, and clear distances tried from it: the working value first. */
	readonly #spacing: number;
	readonly #clears: readonly number[];
	readonly #order: number;
	readonly #model: FixtureModel;
	readonly #target: Fixture['target'];
	readonly #lead: Side;
	/** The one edge that takes the lights; null where both may. */
	readonly #edge: Edge | null;
	/** Lights go from side to side. */
	readonly #alternates: boolean;
	readonly #standing: Standing[] = [];
	readonly #skips: Skips;
	readonly #stepLights: readonly Point[];
	/** Where it runs over a patio or an apron. */
	readonly #paved: readonly Stretch[];
	/** First places that got no light, with what was in the way. */
	readonly #failed = new Map<First | 'straight', Set<Cause>>();

	constructor(d: Drafting, strip: Strip, order: number) {
		this.#d = d;
		this.#strip = strip;
		this.#order = order;
		this.#course = courseOf(strip);
		this.#spacing = d.figures['path.spacing'].spacing;
		this.#clears = clearsOf(d.figures['path.setback']);
		// All heads are alike in size: the one that is needed is known when the row stands.
		this.#model = headFor(d, strip, (model) => this.#outOf(model), this.#spacing).model;
		this.#target = { kind: 'walk', id: strip.id };
		this.#lead = this.#freeOfRail(leadSide(this.#course, middleOf(d.site)));
		this.#skips = new Skips(d, this.#target, called(strip.name, 'walk'));
		const { lights, rail } = strip;
		this.#alternates = lights === 'either' && rail !== 'left' && rail !== 'right';
		const only: Side | null = lights === 'left' || lights === 'right' ? lights : null;
		this.#edge = only && edgeOf(this.#course, only, this.#outOf(this.#model));
		this.#paved = pavedStretches(d.site, strip);
		this.#stepLights = stepLightsOf(d, strip);
	}

	/** Stake to edge, with nothing in the way. */
	#outOf({ headDiameter }: FixtureModel): number {
		return this.#clears[0]! + headDiameter / 2;
	}

	/** A rail takes the room of a path light: with a rail on one side only, the other side leads. */
	#freeOfRail(side: Side): Side {
		return this.#strip.rail === side ? other(side) : side;
	}

	place(): void {
		const { length, steps } = this.#strip;
		const firsts = firstsOf(this.#strip, this.#spacing, this.#paved);
		if (firsts.length === 0) {
			this.#fail('straight', new Set(['paved']));
			return this.#report();
		}
		let last: Side | null = null;
		const stood: number[] = [];
		for (const stop of firsts) {
			const light = this.#stand(stop, last);
			last = light?.side ?? last;
			stood.push(light?.at ?? stop.at);
		}
		const edges = this.#paved.flatMap(({ start, end }) => [start, end]).filter((at) => at > stood[0]! && at < length);
		const stations = [...(edges.length > 0 ? [...stood, ...edges].sort((a, b) => a - b) : stood), length];
		for (let i = 1; i < stations.length; i++) {
			const from = stations[i - 1]!;
			const to = stations[i]!;
			const middle = (from + to) / 2;
			// The treads have lights of their own; other paving has no edge of the walk's.
			const onOther = [...steps, ...this.#paved].some(({ start, end }) => start <= middle && end >= middle);
			const open = to === length || this.#paved.some(({ start }) => start === to);
			if (!onOther) this.#fill(from, to, open);
		}
		this.#light();
		this.#report();
	}

	/** Sides that take a light at a stop, given the side of the light before. */
	#sidesAt(stop: Stop, last: Side | null): Side[] {
		const { lights, rail } = this.#strip;
		if (lights === 'left' || lights === 'right') return [lights];
		if (lights === 'both') return [this.#lead, other(this.#lead)];
		if (rail === 'left' || rail === 'right') return [other(rail)];
		const outer = stop.first === 'bend' ? outerSide(this.#course, stop.at) : null;
		return [outer ?? this.#offSteps(stop) ?? (last ? other(last) : this.#lead)];
	}

	/** At the foot and head of steps: the side that has no step light close by, so that both sides of the flight show. */
	#offSteps({ at, first }: Stop): Side | null {
		if (first !== 'foot' && first !== 'head') return null;
		const out = this.#outOf(this.#model);
		const nearest = (side: Side): number => {
			const p = this.#course.beside(at, side, out);
			return Math.min(Infinity, ...this.#stepLights.map((lamp) => distance(lamp, p)));
		};
		const [left, right] = [nearest('left'), nearest('right')];
		if (!Number.isFinite(left) || Math.abs(left - right) < 0.3) return null;
		return left > right ? 'left' : 'right';
	}

	/** Puts the lights of one stop; gives back the last of them, null when none was needed or found. */
	#stand(stop: Stop, last: Side | null): Standing | null {
		const middle = this.#course.centre(stop.at);
		const lamp = this.#d.servedBy(middle);
		if (lamp) {
			this.#skips.existing(lamp);
			return null;
		}
		if (this.#d.shared(middle, this.#spacing / 2, this.#target, stop.first !== null)) {
			this.#skips.shared();
			return null;
		}
		let stood: Standing | null = null;
		for (const side of this.#sidesAt(stop, last)) {
			const causes = new Set<Cause>();
			const spot =
				this.#find(stop, side, causes) ??
				(this.#strip.lights === 'either' ? this.#find(stop, other(side), causes) : null);
			// Beside the edge it may come close to a light of another way, as where a walk leaves a drive.
			if (spot && this.#beside(spot, stop.first !== null)) this.#skips.shared();
			else if (spot) stood = this.#put(stop, spot);
			else this.#fail(stop.first ?? 'straight', causes);
		}
		return stood;
	}

	#beside({ at, p }: Spot, first: boolean): boolean {
		return [p, this.#course.centre(at)].some((place) => this.#d.shared(place, this.#spacing / 2, this.#target, first));
	}

	#fail(place: First | 'straight', causes: ReadonlySet<Cause>): void {
		const all = this.#failed.get(place) ?? new Set();
		for (const cause of causes) all.add(cause);
		this.#failed.set(place, all);
	}

	#find(stop: Stop, side: Side, causes: Set<Cause>): Spot | null {
		const radius = this.#model.headDiameter / 2;
		const wanted = this.#course.beside(stop.at, side, this.#clears[0]! + radius);
		let first: Cause | null = null;
		for (const slide of stop.first === 'entry' ? slidesIn : slides) {
			const at = stop.at + slide;
			if (at < 0 || at > this.#strip.length) continue;
			for (const clear of this.#clears) {
				const p = this.#course.beside(at, side, clear + radius);
				const cause = this.#d.ground.blocked(p, radius, 'path');
				if (cause) {
					first ??= cause;
					causes.add(cause);
				} else if (this.#folded(p)) causes.add('walk');
				else if (stop.first || this.#spaced(p, side)) return { at, side, p, clear, wanted, first };
			}
		}
		return null;
	}

	/** Where the inside of a tight bend folds over itself, a place beside one stretch may lie off every edge. */
	#folded(p: Point): boolean {
		return distanceToStrip(p, this.#strip) > this.#d.figures['path.setback'].high + this.#model.headDiameter / 2 + 1e-6;
	}

	/** A light that fills a straight is never nearer than the spacing to one on its own edge. */
	#spaced(p: Point, side: Side): boolean {
		return this.#standing.every((s) => s.side !== side || distance(s.p, p) >= this.#spacing - 1e-6);
	}

	#fill(from: number, to: number, open: boolean): void {
		const start = this.#standing.filter((s) => s.at <= from + 1e-9).at(-1)?.side ?? null;
		const gap = { from, to, open, spacing: this.#spacing };
		const more = this.#alternates && wantsOneMore(this.#d, this.#model, this.#strip, this.#outOf(this.#model), gap);
		for (let fewer = more ? -1 : 0; ; fewer++) {
			const stations = this.#stations(from, to, open, fewer);
			if (stations.length === 0) return;
			if (fewer < 20 && !this.#even(stations, start)) continue;
			let last = start;
			for (const at of stations) last = this.#stand({ at, first: null, also: [] }, last)?.side ?? last;
			return;
		}
	}

	/** Even along the edge that takes the lights; along the centre line where both do. */
	#stations(from: number, to: number, open: boolean, fewer: number): number[] {
		const edge = this.#edge;
		if (!edge) return fill(from, to, this.#spacing, open, fewer, this.#alternates);
		return fill(edge.along(from), edge.along(to), this.#spacing, open, fewer).map(edge.abreast);
	}

	/** Whether lights at these stations keep the spacing along each edge that they use: an inner edge is shorter than the middle. */
	#even(stations: readonly number[], start: Side | null): boolean {
		const { lights } = this.#strip;
		const out = this.#outOf(this.#model);
		if (lights === 'either') {
			let side = start;
			return stations.every((at) => {
				const [next] = this.#sidesAt({ at, first: null, also: [] }, side);
				// A light may move along a little, so that a straight is not left dark for the sake of a hand's breadth.
				const fits = (s: Side): boolean =>
					slides.some((slide) => Math.abs(slide) <= 0.5 && this.#spaced(this.#course.beside(at + slide, s, out), s));
				const free = [next!, other(next!)].find(fits);
				side = free ?? next!;
				return free !== undefined;
			});
		}
		return (lights === 'both' ? (['left', 'right'] as const) : [lights as Side]).every((side) => {
			const row = stations.map((at) => this.#course.beside(at, side, out));
			return (
				row.every((p, i) => i === 0 || distance(p, row[i - 1]!) >= this.#spacing - 1e-6) &&
				row.every((p) => this.#spaced(p, side))
			);
		});
	}

	#put(stop: Stop, spot: Spot): Standing {
		const { at, side, p } = spot;
		const beside = this.#standing.filter((s) => s.side === side);
		const nearest = Math.min(Infinity, ...beside.map((s) => distance(s.p, p)));
		const stood = { at, side, p };
		this.#standing.push(stood);
		this.#standing.sort((a, b) => a.at - b.at);
		const placed = this.#d.place({
			target: this.#target,
			role: 'path',
			technique: 'path',
			at: p,
			model: this.#model,
			reasons: walkReasons(this.#d, this.#course, this.#model, stop, spot, nearest),
			order: { strip: this.#order, at },
			...(stop.first ? {} : { fills: stop.at })
		});
		this.#lights.push({ stood, placed });
		return stood;
	}

	/** The head that the row as it stands needs, and what each light says of the light on the walk: rules path.head, path.meet. */
	#light(): void {
		const row = { course: this.#course, standing: this.#standing, otherWays: [...this.#strip.steps, ...this.#paved] };
		const apart = apartOf(row, this.#spacing);
		const head = headFor(this.#d, this.#strip, (model) => this.#outOf(model), apart);
		for (const { stood, placed } of this.#lights) {
			const said = lightReasons(this.#d, row, head, apart, stood);
			placed.fixture = lit(this.#d, placed.fixture, this.#model, head.model, said);
		}
	}

	#report(): void {
		for (const [place, causes] of this.#failed)
			sayNoRoom(this.#d, this.#strip, this.#target, place, causes, this.#standing.length > 0);
		this.#skips.report();
	}
}
