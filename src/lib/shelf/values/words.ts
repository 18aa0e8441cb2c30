/** Words for kinds of line, kinds of light and lamps. Common practice, no source. */
import type { FixtureKind, LineKind } from '../../domain/kits/types';

const words = <T extends string>(said: Record<T, string>): ReadonlyMap<string, T> =>
	new Map(
		(Object.keys(said) as T[]).flatMap((key) => [key, ...said[key].split(', ')].map((one) => [one, key] as const))
	);

const lineWords = words<LineKind>({
	kit: 'set, bundle, package, lighting kit, light kit, starter kit, complete kit, extension kit',
	fixture: 'light, lamp, luminaire, light fixture, loose light, loose fixture',
	transformer: 'power supply, power pack, xfmr',
	cable: 'wire, low voltage cable, low voltage wire, cord',
	connectors: 'connector, splice, wire connector, cable connector'
});
const lightWords = words<FixtureKind>({
	spot: 'spotlight, spot light, uplight, up light, accent, accent light, bullet, bullet light',
	well: 'well light, in ground, inground, in ground light, recessed, buried',
	wash: 'wall wash, wall washer, washer, flood, floodlight, flood light, wash light',
	path: 'pathway, path light, pathlight, pathway light, walk, walkway, walk light, walkway light, area light',
	marker: 'drive, driveway, drive marker, drive light, driveway light, marker light, low path light',
	step: 'stair, deck, step light, steplight, stair light, deck light, riser'
});
const plainly = (text: string): string =>
	text
		.normalize('NFKC')
		.toLowerCase()
		.replace(/[^a-z]+/g, ' ')
		.trim();
const look = <T>(map: ReadonlyMap<string, T>, text: string): T | null => {
	const clean = plainly(text);
	return map.get(clean) ?? map.get(clean.replace(/s$/, '')) ?? null;
};
/** The kind of line that a word means; null: none that is known. */
export const lineKindOf = (text: string): LineKind | null => look(lineWords, text);
/** The kind of light that a word means; null: none that is known. */
export const lightKindOf = (text: string): FixtureKind | null => look(lightWords, text);
/** `LED`, `12 V halogen`; null: neither or both. */
export function sourceOf(text: string): 'led' | 'halogen' | null {
	const clean = ` ${plainly(text)} `;
	const isLed = /\s(?:leds?|integrated led)\s/.test(clean);
	const isHalogen = /\s(?:halogens?|incandescent|filament|xenon)\s/.test(clean);
	if (isLed === isHalogen) return null;
	return isLed ? 'led' : 'halogen';
}
