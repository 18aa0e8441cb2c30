/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
/// <reference types="@sveltejs/kit" />
/** Keeps the whole site on the device, so that it works in the yard with no signal. */
import { base, build, files, prerendered, version } from '$service-worker';

const self = globalThis.self as unknown as ServiceWorkerGlobalScope;
const name = `duskwright-${version}`;
const assets = new Set([...build, ...files]);
const pages = new Set(prerendered);
const ours = (cache: string) => cache.startsWith('duskwright-');

/** All or nothing: a worker that could not keep every file does not take over, and the browser tries again later. */
self.addEventListener('install', (event) => {
	event.waitUntil(caches.open(name).then((cache) => cache.addAll([...assets, ...pages])));
});

self.addEventListener('activate', (event) => {
	event.waitUntil(
		caches
			.keys()
			.then((names) => Promise.all(names.filter((one) => ours(one) && one !== name).map((one) => caches.delete(one))))
	);
});

/** The page made for an address; what is asked after `?` is read in the page itself. */
function pageFor(pathname: string): string | null {
	if (pages.has(pathname)) return pathname;
	const other = pathname.endsWith('/') ? pathname.slice(0, -1) : `${pathname}/`;
	return pages.has(other) ? other : null;
}

async function kept(path: string, request: Request): Promise<Response> {
	const cache = await caches.open(name);
	const found = await cache.match(path, { ignoreSearch: true });
	// A file of this version that the browser has thrown away is fetched again; without a signal that fails as any page would.
	return found ?? fetch(request);
}

self.addEventListener('fetch', (event) => {
	const { request } = event;
	const url = new URL(request.url);
	if (request.method !== 'GET' || url.origin !== self.location.origin || !url.pathname.startsWith(base)) return;
	if (assets.has(url.pathname)) event.respondWith(kept(url.pathname, request));
	else if (request.mode === 'navigate') {
		const page = pageFor(url.pathname);
		if (page !== null) event.respondWith(kept(page, request));
	}
});
