/** The cables of one run as links from a light to the next: a tree that starts at the transformer. Pure; metres. */
import { linksOfRun, type Run, type RunSegment } from '$lib/domain/cable';
import type { RunLink } from '$lib/domain/yard';

/** What a link may start at, beside the lights. */
export const transformer = 'supply';
/** So many bends a link may have. */
export const mostBends = 20;

/** The fixture id that a node of a run stands for: a hub stands at one of its lights, and is drawn as that light. */
function standsFor(run: Run): Map<string, string> {
	const lights = run.nodes.flatMap(({ fixture, at }) => (fixture ? [{ fixture, at }] : []));
	return new Map(
		run.nodes.map(({ id, fixture, at }, index) => {
			if (index === 0) return [id, transformer];
			const there = lights.find((light) => light.at.x === at.x && light.at.y === at.y) ?? lights[0];
			return [id, fixture ?? there?.fixture ?? transformer];
		})
	);
}

/** A run as it is laid, as links from the transformer outwards; bends are kept from the links told. */
export function linksOf(run: Run, told: readonly RunLink[] = []): RunLink[] {
	const named = standsFor(run);
	return linksOfRun(run, told).filter(({ from, to }) => {
		const segment = segmentOf(run, to);
		return segment !== undefined && named.get(segment.from) === from;
	});
}

export interface Step {
	link: RunLink;
	/** Another cable goes on from the place before: a branch, which starts at `from`. */
	branch: boolean;
}
/** The lights in the order in which the cable passes them: each branch to its end before the next. */
export function inOrder(links: readonly RunLink[]): Step[] {
	const steps: Step[] = [];
	const seen = new Set<string>();
	const go = (from: string) => {
		links
			.filter((link) => link.from === from && !seen.has(link.to))
			.forEach((link, index) => {
				seen.add(link.to);
				steps.push({ link, branch: index > 0 || (from !== transformer && steps.at(-1)?.link.to !== from) });
				go(link.to);
			});
	};
	go(transformer);
	return steps;
}

/** The segment of a laid run that carries a link, or undefined while it is not laid. */
export function segmentOf(run: Run, to: string): RunSegment | undefined {
	const named = standsFor(run);
	return run.segments.find((segment) => named.get(segment.to) === to && named.get(segment.from) !== to);
}
