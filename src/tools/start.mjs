// `npm start`: sets up, builds, serves the built site.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { installPackages, root } from './setup.mjs';

installPackages();
const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
const build = spawnSync(process.execPath, [vite, 'build', '--logLevel', 'warn'], { cwd: root, stdio: 'inherit' });
if (build.status !== 0) {
	console.error('The site did not build: see above.');
	process.exit(build.status ?? 1);
}
const port = process.env.PORT ?? '4173';
console.log(`\nDuskwright: open http://localhost:${port}/ (Ctrl+C stops it)\n`);
const serve = spawnSync(process.execPath, [vite, 'preview', '--port', port, '--strictPort'], {
	cwd: root,
	stdio: 'inherit'
});
process.exit(serve.status ?? 0);
