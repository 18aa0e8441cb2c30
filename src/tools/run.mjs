// `node src/tools/run.mjs FILE.ts ARGS…`: sets up if need be, then runs one of the TypeScript tools beside this file.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { installPackages, root } from './setup.mjs';

installPackages();
const [tool = '', ...args] = process.argv.slice(2);

// What is timed is built first, as the site is: the runner for TypeScript wraps every function, which costs a fifth.
if (tool === 'bench.ts') {
	// The builder reads a configuration that the framework writes; on a fresh clone nothing has written it yet.
	spawnSync(join(root, 'node_modules', '.bin', 'svelte-kit'), ['sync'], { stdio: 'inherit', cwd: root });
	const { build } = await import('vite');
	await build({
		configFile: false,
		root,
		logLevel: 'error',
		build: {
			ssr: join(root, 'src', 'tools', tool),
			outDir: join(root, '.cache', 'bench'),
			emptyOutDir: true,
			target: 'node20'
		}
	});
	const timed = spawnSync(process.execPath, [join(root, '.cache', 'bench', 'bench.js'), ...args], {
		stdio: 'inherit',
		cwd: root
	});
	process.exit(timed.status ?? 1);
}
const tsx = join(root, 'node_modules', 'tsx', 'dist', 'cli.mjs');
const run = spawnSync(process.execPath, [tsx, join(root, 'src', 'tools', tool), ...args], { stdio: 'inherit' });
process.exit(run.status ?? 1);
