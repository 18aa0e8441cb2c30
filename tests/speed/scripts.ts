import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';

/** Scripts that a page asks for, with their gzipped sizes, bytes: those of the page's own thread, and those of its workers. */
export interface Scripts {
	page: Map<string, number>;
	workers: Map<string, number>;
}
const total = (sizes: Map<string, number>): number => [...sizes.values()].reduce((sum, size) => sum + size, 0);
export const totals = ({ page, workers }: Scripts) => ({ page: total(page), workers: total(workers) });

/** Listens from now on; ask for the sizes once the page is idle. */
export function listenForScripts(page: Page): () => Promise<Scripts> {
	const asked = new Set<string>();
	page.context().on('response', (response) => {
		if (/\.js(\?|$)/.test(response.url())) asked.add(response.url());
	});
	return async () => {
		const scripts: Scripts = { page: new Map(), workers: new Map() };
		for (const url of asked) {
			const size = gzipSync(Buffer.from(await (await fetch(url)).arrayBuffer()), { level: 9 }).length;
			scripts[url.includes('/workers/') ? 'workers' : 'page'].set(new URL(url).pathname, size);
		}
		return scripts;
	};
}
