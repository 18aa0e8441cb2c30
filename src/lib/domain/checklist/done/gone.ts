/** Ticks whose step is no longer on the list, in words: all that is left of the step is its id. */
import type { Site } from '../../site';
import { calledThe } from '../../yard';
import { sentence } from '../words';
import { readEntry } from './entry';

/** Of steps without a thing in their id. */
const steps: Readonly<Record<string, string>> = {
	stops: 'What the plan marked as a stop',
	receptacle: 'A receptacle for the transformer',
	gfci: 'The GFCI of the receptacle',
	cover: 'The cover of the receptacle',
	post: 'The post for the transformer',
	sensor: 'The light sensor',
	lamps: 'Halogen lamps fitted',
	look: 'A look round for bare lamps'
};

function thing(id: string, site: Site): string {
	const all: readonly { id: string; name: string }[] = [...site.trees, ...site.walls, ...site.strips, ...site.areas];
	return calledThe(all.find((one) => one.id === id)?.name ?? '', id.replaceAll('-', ' '));
}
/** `oak/uplight-2` as `uplight 2 of the oak`; a hub as `the hub of run-1`. */
function light(id: string, site: Site): string {
	const hub = /^(.+)-hub$/.exec(id);
	if (hub) return `the hub of ${hub[1]!.replaceAll('-', ' ')}`;
	const [target = '', which = ''] = id.split('/');
	if (target === 'added') return `${which.replaceAll('-', ' ')}, a light of your own`;
	return which === '' ? id : `${which.replaceAll('-', ' ')} of ${thing(target, site)}`;
}
const kinds: Readonly<Record<string, (rest: string, site: Site) => string>> = {
	fixture: (id, site) => `Set ${light(id, site)}`,
	joint: (id, site) => `Joint at ${light(id, site)}`,
	aim: (id, site) => `Aim of ${light(id, site)}`,
	leg: (id, site) => `Cable to ${light(id, site)}`,
	dug: (id, site) => `Trench to ${light(id, site)}, dug`,
	laid: (id, site) => `Cable to ${light(id, site)}, laid`,
	cross: (id, site) => {
		const [strip = '', ...to] = id.split('/');
		return `Way under ${thing(strip, site)}, to ${light(to.join('/'), site)}`;
	},
	trench: (id) => `Trench of ${id.replaceAll('-', ' ')}`,
	terminal: (id) => `Terminals of ${id.replaceAll('-', ' ')}`
};

/** A tick of the list as it was. `entry`: as in the yard. */
export function goneWords(entry: string, site: Site): string {
	const { id } = readEntry(entry);
	if (id === '') return entry;
	const [kind = '', ...rest] = id.split('/');
	const words = rest.length > 0 && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
	if (words) return words(rest.join('/'), site);
	return Object.hasOwn(steps, id) ? steps[id]! : sentence(id).replaceAll(/[-/]/g, ' ');
}
