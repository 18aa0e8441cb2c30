/**
 * Pictures beside the yard, in IndexedDB under the SHA-256 of their bytes: the yard holds only that name, so undo, links and the kept yard
 * stay small, and taking back "picture taken away" finds the bytes where they were.
 *
 * A picture is never deleted when it is taken away. The store is swept after a new one was put, and then only of pictures beyond the
 * `most` last used that neither the yard nor any step of undo or redo names: no other moment can know that nothing will ask for it again.
 */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

export const pictureTypes = ['image/jpeg', 'image/png', 'image/webp'] as const;
export type PictureType = (typeof pictureTypes)[number];
export interface Picture {
	type: PictureType;
	bytes: Uint8Array<ArrayBuffer>;
}
interface Kept extends Picture {
	id: string;
	/** Milliseconds since 1970: put or shown last. */
	usedAt: number;
}
interface Shelf extends DBSchema {
	pictures: { key: string; value: Kept };
}
export const shelfName = 'duskwright-pictures';
/** Pictures of at most 1.2 MB each. */
const most = 24;

/** SHA-256 in hexadecimal (FIPS 180-4). Throws where the browser offers no cryptography: pages that are not served over https. */
export async function hashOf(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
	const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
	return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

export class Pictures {
	#open: Promise<IDBPDatabase<Shelf> | null> | null = null;
	/** What the browser would not keep: there until the tab is closed. */
	#loose = new Map<string, Picture>();

	constructor(
		private readonly name: string = shelfName,
		private readonly now: () => number = Date.now
	) {}

	/** Null where the browser has no such store or bars it (a private window). */
	#shelf(): Promise<IDBPDatabase<Shelf> | null> {
		this.#open ??= (async () => {
			try {
				return await openDB<Shelf>(this.name, 1, {
					upgrade: (db) => void db.createObjectStore('pictures', { keyPath: 'id' }),
					// Another tab wipes or renews the store: let go, and open it anew when next asked.
					blocking: (_current, _blocked, event) => {
						(event.target as IDBDatabase).close();
						this.#open = null;
					},
					terminated: () => (this.#open = null)
				});
			} catch {
				// Said by `put`, which then keeps the picture in this tab only.
				return null;
			}
		})();
		return this.#open;
	}

	/** Takes a picture in. `kept`: false where it lasts only as long as this tab. */
	async put(picture: Picture): Promise<{ id: string; kept: boolean }> {
		const id = await hashOf(picture.bytes);
		try {
			const shelf = await this.#shelf();
			await shelf?.put('pictures', { ...picture, id, usedAt: this.now() });
			if (shelf) return { id, kept: true };
		} catch {
			// Full, or barred since: the picture still serves here, and the caller says so.
		}
		this.#loose.set(id, picture);
		return { id, kept: false };
	}
	/** The picture, or null where this device does not have it. */
	async get(id: string): Promise<Picture | null> {
		const loose = this.#loose.get(id);
		if (loose) return loose;
		const shelf = await this.#shelf();
		const found = await shelf?.get('pictures', id);
		if (!shelf || !found) return null;
		await shelf.put('pictures', { ...found, usedAt: this.now() });
		return { type: found.type, bytes: found.bytes };
	}
	async has(id: string): Promise<boolean> {
		if (this.#loose.has(id)) return true;
		const shelf = await this.#shelf();
		return shelf !== null && (await shelf.count('pictures', id)) > 0;
	}
	/**
	 * Drops the pictures used longest ago beyond the `most` last used, but none that is needed; asks for what is needed only when
	 * there are more. Returns what it dropped.
	 */
	async sweep(whatIsNeeded: () => Promise<ReadonlySet<string>>): Promise<string[]> {
		const shelf = await this.#shelf();
		if (!shelf || (await shelf.count('pictures')) <= most) return [];
		const needed = await whatIsNeeded();
		const transaction = shelf.transaction('pictures', 'readwrite');
		const all = (await transaction.store.getAll()).toSorted((a, b) => b.usedAt - a.usedAt || (a.id < b.id ? -1 : 1));
		const dropped = all.slice(most).filter(({ id }) => !needed.has(id));
		await Promise.all([...dropped.map(({ id }) => transaction.store.delete(id)), transaction.done]);
		return dropped.map(({ id }) => id);
	}
	/** Forgets every picture. */
	async wipe(): Promise<void> {
		this.#loose.clear();
		const shelf = await this.#shelf();
		await shelf?.clear('pictures');
	}
}
export const pictures = new Pictures();
/** For whatever clears this browser of everything the person has done here. */
export const wipePictures = (): Promise<void> => pictures.wipe();
