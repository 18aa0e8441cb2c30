/** The cables a person drew, held against the run they were drawn for (`power.circuit.runs[].links`). */
import type { RunLink } from '../yard';

/** Why a cable that was drawn is not laid; it stays in the yard. */
export type WhyUnused =
	/** One of its lights is no longer there. */
	| 'gone'
	/** One of its lights is fed by another run. */
	| 'elsewhere'
	/** No way leads to one of its lights, or from one to the other. */
	| 'unreached'
	/** Both ends are joined already: it would close a ring. */
	| 'ring';
export interface Unused {
	link: RunLink;
	why: WhyUnused;
}
/** A cable drawn between two terminals of its run. */
export interface Drawn {
	link: RunLink;
	from: number;
	to: number;
}
/** What is known of the lights when links are sorted: ids of all placed, and terminals by id of those that a way leads to. */
export interface Lights {
	placed: ReadonlySet<string>;
	terminal: ReadonlyMap<string, number>;
}

/** Lights named by links, each once, in their order. */
export function lampsOfLinks(links: readonly RunLink[] = []): string[] {
	return [...new Set(links.flatMap(({ from, to }) => (from === 'supply' ? [to] : [from, to])))];
}

/** Links between terminals of the run, in their order, and those that cannot be. */
export function sortLinks(
	links: readonly RunLink[] = [],
	members: readonly number[],
	{ placed, terminal }: Lights
): { drawn: Drawn[]; unused: Unused[] } {
	const own = new Set(members);
	const drawn: Drawn[] = [];
	const unused: Unused[] = [];
	for (const link of links) {
		const lamps = lampsOfLinks([link]);
		const why: WhyUnused | null = lamps.some((id) => !placed.has(id))
			? 'gone'
			: lamps.some((id) => !terminal.has(id))
				? 'unreached'
				: lamps.some((id) => !own.has(terminal.get(id)!))
					? 'elsewhere'
					: null;
		if (why) unused.push({ link, why });
		else {
			const from = link.from === 'supply' ? 0 : terminal.get(link.from)!;
			drawn.push({ link, from, to: terminal.get(link.to)! });
		}
	}
	return { drawn, unused };
}
