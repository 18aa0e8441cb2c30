// Sets the project up on a machine that has nothing but Node: packages first, and a browser and circuit simulator for
// the tests. Everything it says goes to stderr, so that commands which print JSON stay clean.
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const stamp = join(root, 'node_modules', '.duskwright-installed');

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
	console.error(`Duskwright needs Node 20.19 or newer; this is ${process.versions.node}.`);
	process.exit(1);
}

/** Installs the packages of package-lock.json unless that was done for this very lock file. */
export function installPackages() {
	const lock = createHash('sha256')
		.update(readFileSync(join(root, 'package-lock.json')))
		.digest('hex');
	if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return;
	console.error('Setting up: installing packages (once)…');
	const run = spawnSync('npm', ['ci', '--no-fund', '--no-audit', '--loglevel=error'], {
		cwd: root,
		stdio: ['ignore', 2, 2],
		shell: process.platform === 'win32'
	});
	if (run.status !== 0) {
		console.error('Installing the packages failed. Check the network, then run the command again.');
		process.exit(run.status ?? 1);
	}
	mkdirSync(dirname(stamp), { recursive: true });
	writeFileSync(stamp, lock);
}

const onPath = (/** @type {string} */ name) =>
	spawnSync(process.platform === 'win32' ? 'where' : 'which', [name], { encoding: 'utf8' })
		.stdout?.trim()
		.split('\n')[0] || null;

/** Path of an installed Chromium, Chrome or Edge, or null. `DUSKWRIGHT_BROWSER` names one that lies elsewhere. */
export function findBrowser() {
	const named = process.env.DUSKWRIGHT_BROWSER;
	if (named) return named;
	const places = [
		'/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
		'/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
		'C:/Program Files/Google/Chrome/Application/chrome.exe',
		'C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe'
	];
	for (const name of ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge']) {
		const path = onPath(name);
		if (path) return path;
	}
	return places.find((place) => existsSync(place)) ?? null;
}

/** Installs from the system's packages what the tests need and is not there; says the one command where it may not. */
export function installForTests() {
	/** @type {string[]} */
	const wanted = [];
	if (!findBrowser()) wanted.push('chromium');
	if (!onPath('ngspice')) wanted.push('ngspice');
	if (!onPath('pdftotext')) wanted.push('poppler-utils');
	if (wanted.length === 0) return;
	const command = `apt-get update && apt-get install -y --no-install-recommends ${wanted.join(' ')}`;
	const isRoot = process.getuid?.() === 0;
	if (!onPath('apt-get') || (!isRoot && !onPath('sudo'))) {
		console.error(`The tests need ${wanted.join(', ')}. Install them; on Debian: sudo sh -c '${command}'`);
		process.exit(1);
	}
	console.error(`Setting up: installing ${wanted.join(', ')} from the system's packages (once)…`);
	try {
		const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
		if (isRoot) execFileSync('sh', ['-c', command], { stdio: ['ignore', 'ignore', 2], env });
		else execFileSync('sudo', ['-n', 'sh', '-c', command], { stdio: ['ignore', 'ignore', 2], env });
	} catch {
		console.error(`Installing failed. Run this yourself, then the tests again: sudo sh -c '${command}'`);
		process.exit(1);
	}
}
