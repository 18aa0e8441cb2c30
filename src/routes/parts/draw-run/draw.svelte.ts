/** Cable laid by hand: what is in hand on the page, and the quick answer while a bend is dragged. */
import { tick } from 'svelte';
import { bendLink, drawLink, layCable, moveLamp, releaseRun, type Cabling, type Run } from '$lib/domain/cable';
import type { Plan } from '$lib/domain/plan';
import type { CircuitChoice, RunChoice, RunLink, Yard, YardPoint } from '$lib/domain/yard';
import { session } from '$lib/state';
import { entryOf } from '../hand';
import { taken } from '../taken.svelte';
import { asBend, asPoint, bendsOf, bentAt, movedBend, withoutBend } from './bends';
import { linksOf, mostBends, segmentOf, transformer } from './links';
import { namer } from './targets';
import { inSentence } from './words';

type Circuit = CircuitChoice | null;
const withCircuit = (yard: Yard, circuit: Circuit): Yard => {
	const { circuit: _, ...power } = yard.power;
	return { ...yard, power: circuit ? { ...power, circuit } : power };
};
/** As long as this, ms, and the circuit is worked out when the hand rests rather than on the way. */
const slow = 150;
const restMs = 120;

export class Draw {
	#runId = $state<string | null>(null);
	/** Where the next cable starts. */
	from = $state<string | null>(null);
	/** The cable in hand, by the light that it leads to. */
	cable = $state<string | null>(null);
	/** The bend in hand. */
	bend = $state<number | null>(null);
	/** Why nothing was done. */
	refused = $state<string | null>(null);
	/** Where the bend in hand is dragged to just now. */
	dragged = $state.raw<YardPoint | null>(null);
	#quick = $state.raw<Cabling | null>(null);
	#asked: { cancel: () => void } | null = null;
	#took = 0;
	#alone: { key: string; cabling: Cabling } | null = null;

	/** The plan as it is, or as it would be with the bend where it is dragged to. */
	readonly plan: Plan | null = $derived.by(() => {
		const plan = session.plan;
		if (!plan || !this.#quick) return plan;
		const { supply, runs, findings } = this.#quick;
		return { ...plan, supply, runs, findings };
	});
	readonly run: Run | null = $derived(
		this.plan?.runs.find(({ id }) => id === this.#runId) ?? this.plan?.runs[0] ?? null
	);
	/** The run as it was before the drag, on which changes are made. */
	readonly #settled: Run | null = $derived(
		session.plan?.runs.find(({ id }) => id === this.#runId) ?? session.plan?.runs[0] ?? null
	);
	/** What is set of the run by hand. */
	readonly #entry: RunChoice | null = $derived(
		this.#settled ? entryOf(session.yard.power.circuit, session.plan!.runs, this.#settled) : null
	);
	readonly links: RunLink[] = $derived(this.#settled ? linksOf(this.#settled, this.#entry?.links) : []);
	readonly link: RunLink | null = $derived(this.links.find(({ to }) => to === this.cable) ?? null);
	/** Bends of the cable in hand, the dragged one where the hand has it. */
	readonly bends: YardPoint[] = $derived.by(() => {
		if (!this.link || !this.#settled) return [];
		const bends = bendsOf(this.link, segmentOf(this.#settled, this.link.to));
		const { bend, dragged } = this;
		return bend !== null && dragged && bend < bends.length ? movedBend(bends, bend, dragged) : bends;
	});
	readonly isTold: boolean = $derived(this.#entry !== null);

	name(id: string): string {
		return session.plan ? namer(session.plan)(id) : id;
	}
	choose(runId: string): void {
		if (runId !== this.#runId) this.letGo();
		this.#runId = runId;
	}
	letGo(): void {
		this.from = this.cable = this.bend = this.refused = null;
	}
	takeCable(to: string | null): void {
		this.letGo();
		this.cable = to;
	}
	takeBend(index: number | null): void {
		this.refused = null;
		this.bend = index;
	}

	/** Does what is worked out from the plan: at once, or when the plan of the last change has come. */
	#onPlan(change: () => void): void {
		if (session.isPlanCurrent) change();
		else void session.settled().then(tick).then(change);
	}
	#write(choice: Circuit, label: string): void {
		this.refused = null;
		void taken.set(choice ?? undefined, label);
	}
	/** Cable from one place to a light. */
	draw(from: string, to: string): void {
		if (to === transformer)
			this.refused = 'Cable starts at the transformer. Take the transformer first, then the light.';
		else if (from !== to) this.#onPlan(() => this.#draw(from, to));
	}
	#draw(from: string, to: string): void {
		const [plan, run] = [session.plan, this.#settled];
		if (!plan || !run) return;
		const [a, b] = [inSentence(from, this.name.bind(this)), inSentence(to, this.name.bind(this))];
		const over = plan.runs.find((one) => one !== run && one.nodes.some(({ fixture }) => fixture === to));
		const moved = over ? `, moved from ${over.name} to ${run.name}` : '';
		this.#write(drawLink(session.yard, plan.runs, run.id, { from, to }), `${b} fed from ${a}${moved}`);
	}
	/** A tap on a light: the start of a cable, or where it goes to. */
	tapLight(id: string): void {
		this.refused = null;
		const home = session.plan?.runs.find(({ nodes }) => nodes.some(({ fixture }) => fixture === id));
		if (this.from === id) this.from = null;
		else if (this.from !== null) {
			this.draw(this.from, id);
			// The next cable goes on from there.
			if (this.refused === null) this.from = id;
		} else {
			if (home && id !== transformer) this.choose(home.id);
			this.from = id;
		}
	}
	/** The answer with these bends in the cable in hand; undefined: none is in hand. */
	#bent(bends: readonly YardPoint[]): Circuit | undefined {
		const [plan, run, link] = [session.plan, this.#settled, this.link];
		return plan && run && link ? bendLink(session.yard, plan.runs, run.id, link, bends) : undefined;
	}
	#bend(bends: readonly YardPoint[], label: string): void {
		this.#onPlan(() => {
			const circuit = this.#bent(bends.map((bend) => asBend(asPoint(bend))));
			if (circuit !== undefined) this.#write(circuit, label);
		});
	}
	addBend(at: YardPoint): void {
		const { link } = this;
		const segment = link && this.#settled && segmentOf(this.#settled, link.to);
		if (!segment) return;
		if (this.bends.length >= mostBends) {
			this.refused = `A cable may have ${mostBends} bends. Take one away first.`;
			return;
		}
		const ends = [segment.path[0]!, segment.path.at(-1)!] as const;
		this.#bend(bentAt(this.bends, ends, at), `a bend in the cable to ${this.name(link.to)}`);
	}
	moveBend(index: number, at: YardPoint): void {
		this.#bend(
			movedBend(this.bends, index, at),
			`bend ${index + 1} of the cable to ${this.name(this.cable ?? '')} moved`
		);
	}
	removeBend(index: number): void {
		this.bend = null;
		this.#bend(withoutBend(this.bends, index), `bend ${index + 1} taken out`);
	}
	/** The cable in hand takes the plan's way again. */
	straighten(): void {
		this.bend = null;
		this.#bend([], `the plan finds the way to ${this.name(this.cable ?? '')}`);
	}
	moveLight(light: string, to: string): void {
		this.#onPlan(() => this.#moveLight(light, to));
	}
	#moveLight(light: string, to: string): void {
		const plan = session.plan;
		if (!plan) return;
		const target = plan.runs.find(({ id }) => id === to);
		this.letGo();
		this.#write(
			moveLamp(session.yard, plan.runs, light, target?.id ?? 'new'),
			`${this.name(light)} on ${target?.name ?? 'a run of its own'}`
		);
	}
	giveBack(): void {
		this.#onPlan(() => this.#giveBack());
	}
	#giveBack(): void {
		const run = this.#settled;
		if (!run || !this.#entry) return;
		this.letGo();
		this.#write(releaseRun(session.yard, this.#entry.id), `${run.name} given back to the plan`);
	}

	/** The bend in hand dragged on. The circuit follows each frame while half of the time is enough for it, or when the hand rests. */
	drag(at: YardPoint): void {
		this.dragged = at;
		const atRest = this.#took > slow;
		if (atRest) this.#asked?.cancel();
		else if (this.#asked) return;
		const answer = () => {
			this.#asked = null;
			this.#answer();
		};
		const id = window.setTimeout(() => requestAnimationFrame(answer), atRest ? restMs : this.#took);
		this.#asked = { cancel: () => window.clearTimeout(id) };
	}
	#answer(): void {
		const circuit = this.#bent(this.bends);
		const plan = session.plan;
		// The hand may have let go between the asking and the frame.
		if (!plan || circuit === undefined || !this.dragged) return;
		const started = performance.now();
		this.#quick = layCable(plan.site, plan.fixtures, withCircuit(session.yard, circuit));
		this.#took = performance.now() - started;
	}
	/** Let go of where it is dragged to; null: the drag is given up. */
	drop(at: YardPoint | null): void {
		this.#asked?.cancel();
		this.#asked = null;
		this.dragged = null;
		if (at && this.bend !== null) {
			this.moveBend(this.bend, at);
			// What the drag worked out stands until the whole plan follows.
			void session.settled().then(() => {
				if (!this.dragged) this.#quick = null;
			});
		} else this.#quick = null;
	}

	/** The circuit that the plan lays by itself, in the same yard; null while no run is set by hand. */
	alone(plan: Plan, yard: Yard): Cabling | null {
		const { runs = [], ...rest } = yard.power.circuit ?? {};
		if (runs.length === 0) return null;
		const bare = withCircuit(yard, Object.keys(rest).length > 0 ? rest : null);
		const key = JSON.stringify(bare);
		if (this.#alone?.key !== key) this.#alone = { key, cabling: layCable(plan.site, plan.fixtures, bare) };
		return this.#alone.cabling;
	}
}
