// `npm run bytes`: gzipped JavaScript that the built site loads up to the first question. Exit 1 over budget.
import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { root } from './setup.mjs';

const budget = 80_000;
const site = join(root, 'build');
const page = join(site, 'ask/place/units/index.html');
if (!existsSync(page)) {
	console.error(`There is no ${page}. Build the site first: npm run build`);
	process.exit(1);
}
const html = readFileSync(page, 'utf8');
const base = 'ask/place/units/';
/** @type {Set<string>} */
const seen = new Set();
const follow = (/** @type {string} */ path) => {
	if (seen.has(path)) return;
	seen.add(path);
	const code = readFileSync(join(site, path), 'utf8');
	// Static imports only: `import(…)` is loaded when asked for, and counted apart.
	for (const [, target] of code.matchAll(/(?:^|[;}\s])(?:import|export)\s*(?:[\w*{}\s,$]+from\s*)?["']([^"']+)["']/g))
		if (target?.startsWith('.')) follow(posix.join(posix.dirname(path), target));
};
for (const [, target] of html.matchAll(/["'(]((?:\.\.?\/|\/)?[\w./-]*_app\/immutable\/[\w./-]+\.js)["')]/g))
	if (target) follow(target.startsWith('/') ? target.slice(1) : posix.join(base, target));

let total = 0;
for (const path of [...seen].sort()) {
	const size = gzipSync(readFileSync(join(site, path)), { level: 9 }).length;
	total += size;
	console.log(`${String(size).padStart(8)}  ${path}`);
}
const inline = [...html.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map(([, code]) => code ?? '').join('');
total += gzipSync(inline, { level: 9 }).length;
console.log(`${String(total).padStart(8)}  bytes of gzipped JavaScript to the first question; budget ${budget}`);
if (total > budget || seen.size === 0) {
	console.error(seen.size === 0 ? 'No script was found on the page.' : 'Over budget.');
	process.exit(1);
}
