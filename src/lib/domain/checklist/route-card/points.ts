import { distance, type Point } from '../../shared/geometry';
import type { Run } from '../../cable';
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import { place } from '../words';
import { nearWords, type Landmarks } from './landmarks';
import { letterOf } from './letters';
import type { RoutePoint } from './types';

/** Nearer than this two stops are one stake, metres. */
const oneStake = 0.01;

/** The points of one card: places of the run by their names, bends and ends of crossings by letters in order of asking. */
export class Points {
	readonly all: RoutePoint[] = [];
	private readonly nodes = new Map<string, RoutePoint>();
	private readonly stakes: RoutePoint[] = [];
	private letters = 0;
	constructor(
		private readonly run: Run,
		private readonly fixtures: ReadonlyMap<string, Fixture>,
		private readonly landmarks: Landmarks,
		private readonly site: Site
	) {}
	private keep(point: Omit<RoutePoint, 'place'>): RoutePoint {
		const kept = { ...point, place: place(point.at, this.site) };
		this.all.push(kept);
		return kept;
	}
	private nextLetter(): string {
		this.letters += 1;
		return letterOf(this.letters - 1);
	}
	/** A node of the run. `at`: where its cable ends, should the run not name the node. */
	node(id: string, at: Point): RoutePoint {
		const known = this.nodes.get(id);
		if (known) return known;
		const index = this.run.nodes.findIndex((node) => node.id === id);
		const node = this.run.nodes[index];
		const cables = this.run.segments.filter(({ from, to }) => from === id || to === id).length;
		const fixture = node?.fixture ?? null;
		const kind = index === 0 ? 'transformer' : fixture === null ? 'hub' : 'light';
		const label =
			kind === 'transformer'
				? 'transformer'
				: fixture === null
					? this.nextLetter()
					: (this.fixtures.get(fixture)?.label ?? fixture);
		const where = node?.at ?? at;
		const near = kind === 'hub' ? nearWords(this.landmarks, where) : '';
		const point = this.keep({ label, kind, at: where, branches: index !== 0 && cables > 2, near });
		this.nodes.set(id, point);
		return point;
	}
	/** A stop between nodes. */
	stop(at: Point, kind: 'bend' | 'crossing'): RoutePoint {
		const known = this.stakes.find((stake) => distance(stake.at, at) < oneStake);
		if (known) {
			if (kind === 'crossing') known.kind = kind;
			return known;
		}
		const near = nearWords(this.landmarks, at);
		const point = this.keep({ label: this.nextLetter(), kind, at, branches: false, near });
		this.stakes.push(point);
		return point;
	}
}
