import { preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
	export interface ProvidedContext {
		site: string;
	}
}

/** Serves the built site for the browser tests. Build first: `npm run build`. */
export default async function setup(project: TestProject) {
	const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'error' });
	const address = server.httpServer.address();
	if (!address || typeof address === 'string') throw new Error('The preview server has no address.');
	project.provide('site', `http://127.0.0.1:${address.port}`);
	return () => server.close();
}
