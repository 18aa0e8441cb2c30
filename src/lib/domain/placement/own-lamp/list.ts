/** The list of the person's own lamps, changed. */
import type { OwnLamp } from '../../yard';

type Lamps = readonly OwnLamp[] | undefined;
/** An empty list is no list: nothing was told. */
const told = (lamps: OwnLamp[]): OwnLamp[] | undefined => (lamps.length > 0 ? lamps : undefined);

function freeId(lamps: Lamps): string {
	const taken = new Set((lamps ?? []).map(({ id }) => id));
	for (let n = 1; ; n++) if (!taken.has(`lamp-${n}`)) return `lamp-${n}`;
}
/** With one more: others no longer stand for its models, and go where they stand for nothing then. */
export function withOwnLamp(lamps: Lamps, lamp: Omit<OwnLamp, 'id'>): OwnLamp[] {
	const models = new Set(lamp.for);
	const others = (lamps ?? []).flatMap((one): OwnLamp[] => {
		const left = one.for.filter((id) => !models.has(id));
		if (left.length === one.for.length) return [one];
		return left.length > 0 ? [{ ...one, for: left }] : [];
	});
	return [...others, { id: freeId(lamps), ...lamp }];
}
export const withoutOwnLamp = (lamps: Lamps, id: string): OwnLamp[] | undefined =>
	told((lamps ?? []).filter((one) => one.id !== id));
