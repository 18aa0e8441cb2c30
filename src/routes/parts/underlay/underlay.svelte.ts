/** The picture under the drawing: its bytes for the page, and its changes, each one step that undo takes back. */
import type { Point } from '$lib/domain/shared/geometry';
import type { Underlay, YardPoint } from '$lib/domain/yard';
import { bySecondPlace } from '$lib/drawing/underlay';
import { session } from '$lib/state';
import { pictures } from '$lib/state/pictures';
import { importPicture } from '$lib/state/pictures-import';
import { picturesNeeded } from '$lib/state/pictures-needed';

export type Mark = 'from' | 'to';
/** Who waits for a point on the drawing. */
export interface Asking {
	key: string;
	/** What to do, in a sentence. */
	words: string;
	/** Metres in the yard's frame. */
	take: (at: Point) => void;
}
type Shown = { id: string } & ({ state: 'coming' | 'missing' | 'failed' } | { state: 'here'; href: string });

const usualOpacity = 0.6;
const round = (value: number, places: number) => Number(value.toFixed(places));
export const markWords: Record<Mark, string> = { from: 'A', to: 'B' };

class UnderlayWork {
	#shown = $state.raw<Shown | null>(null);
	/** Addresses made so far, by picture: undo may bring one back, and an address that is taken back would leave a hole. */
	#hrefs = new Map<string, string>();
	/** While the drawing is to be pointed at. A board that sees it hands it the next point, and sets it to null. */
	asking = $state.raw<Asking | null>(null);
	/** While it is being slid; null: the yard's own. */
	sliding = $state<number | null>(null);
	/** Why a file was not taken. */
	problem = $state<string | null>(null);
	/** It lasts only as long as this tab. */
	isLoose = $state(false);
	isOpening = $state(false);
	said = $state('');

	readonly told: Underlay | null = $derived(session.yard.underlay ?? null);
	readonly #mine = $derived(this.told && this.#shown?.id === this.told.picture ? this.#shown : null);
	readonly state = $derived(this.told ? (this.#mine?.state ?? 'coming') : null);
	/** Address of the picture once it is here. */
	readonly href = $derived(this.#mine?.state === 'here' ? this.#mine.href : null);
	readonly isSeen = $derived(this.href !== null && !this.told?.hidden);

	/** Brings the bytes of the yard's picture to the page. Call it in an effect. */
	async fetch(id: string | null): Promise<void> {
		if (id === null || (this.#shown?.id === id && this.#shown.state !== 'failed')) return;
		const known = this.#hrefs.get(id);
		this.#shown = known ? { id, state: 'here', href: known } : { id, state: 'coming' };
		if (known) return;
		let next: Shown;
		try {
			const picture = await pictures.get(id);
			next = picture ? { id, state: 'here', href: this.#hrefOf(id, picture) } : { id, state: 'missing' };
		} catch {
			next = { id, state: 'failed' };
		}
		if (this.#shown?.id === id) this.#shown = next;
	}
	#hrefOf(id: string, { type, bytes }: { type: string; bytes: Uint8Array<ArrayBuffer> }): string {
		const href = URL.createObjectURL(new Blob([bytes], { type }));
		this.#hrefs.set(id, href);
		return href;
	}

	/** Takes a picture from a file. One of the same size in place of one that is missing keeps its marks. */
	async open(file: File): Promise<void> {
		this.isOpening = true;
		this.problem = null;
		try {
			const read = await importPicture(file);
			if (!read.ok) return void (this.problem = read.problem);
			const { id, kept } = await pictures.put(read.picture);
			this.isLoose = !kept;
			const { width, height } = read;
			const told = this.told;
			const again = told && this.state === 'missing' && told.width === width && told.height === height ? told : null;
			const name = file.name.slice(0, 60);
			this.#shown = { id, state: 'here', href: this.#hrefs.get(id) ?? this.#hrefOf(id, read.picture) };
			this.#change(
				{ opacity: usualOpacity, ...again, ...(name && { name }), picture: id, width, height },
				'a picture under the drawing'
			);
			await pictures.sweep(async () => picturesNeeded(await session.steps()));
		} catch {
			this.problem = `${file.name} could not be taken in: this browser does not let pages work on pictures here. Open the site over https, or in another browser.`;
		} finally {
			this.isOpening = false;
		}
	}
	#change(underlay: Underlay | null, label: string): void {
		const { underlay: _, ...rest } = session.yard;
		const done = session.change(underlay ? { ...rest, underlay } : rest, label);
		this.said = done ? `Done: ${label}.` : 'Nothing changed: that is further than a yard reaches.';
	}
	#part(part: Partial<Underlay>, label: string): void {
		if (this.told) this.#change({ ...this.told, ...part }, label);
	}
	/** Pixels of the picture, to a tenth. */
	mark(mark: Mark, { x, y }: Point): void {
		this.#part({ [mark]: { x: round(x, 1), y: round(y, 1) } }, `place ${markWords[mark]} marked on the picture`);
	}
	/** Metres between A and B. */
	setApart(apart: number): void {
		this.#part({ apart }, 'the distance from A to B');
	}
	/** Where A lies in the yard. */
	setPlace({ x, y }: Point): void {
		this.#part({ at: { along: round(x, 7), out: round(y, 7) } }, 'where A lies');
	}
	/** Degrees clockwise. */
	setTurn(turn: number): void {
		this.#part({ turn }, 'the picture turned');
	}
	/** Turns the picture so that B points to a place in the yard; sets the scale by it where none is told. False: it says no direction. */
	turnTo(second: YardPoint): boolean {
		const found = this.told && bySecondPlace(this.told, second);
		if (!this.told || !found) return false;
		const apart = this.told.apart ?? round(found.apart, 7);
		this.#part({ turn: round(found.turn, 6) % 360, apart }, 'the picture turned by B');
		return true;
	}
	slide(opacity: number): void {
		this.sliding = opacity;
	}
	setOpacity(opacity: number): void {
		this.sliding = null;
		if (opacity !== this.told?.opacity) this.#part({ opacity }, 'how strongly the picture shows');
	}
	turnHidden(): void {
		if (!this.told) return;
		const { hidden, ...shown } = this.told;
		this.#change(hidden ? shown : { ...shown, hidden: true }, hidden ? 'the picture shown' : 'the picture hidden');
	}
	takeAway(): void {
		this.asking = null;
		this.#change(null, 'the picture taken away');
	}
	ask(asking: Asking): void {
		this.asking = this.asking?.key === asking.key ? null : asking;
	}
	/** A point on the drawing was given. */
	answer(at: Point): void {
		const asking = this.asking;
		this.asking = null;
		asking?.take(at);
	}
}
export const underlay = new UnderlayWork();
