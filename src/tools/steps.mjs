// Runs a row of commands, keeps going after a failure so that one run shows all that is wrong, and adds up the tests.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './setup.mjs';

const bin = (/** @type {string} */ name) => join(root, 'node_modules', '.bin', name);
const reports = join(root, '.cache', 'reports');

/**
 * A step is one check, or a row of tests with a report to count.
 * @typedef {{ name: string, command: string[], report?: string }} Step
 */

/** @param {string} project */
const vitest = (project) => {
	const report = join(reports, `${project}.json`);
	return {
		name: project,
		command: [
			bin('vitest'),
			'run',
			'--project',
			project,
			'--reporter=default',
			'--reporter=json',
			`--outputFile.json=${report}`
		],
		report
	};
};
/** @type {Record<string, Step>} */
export const steps = {
	sync: { name: 'sync', command: [bin('svelte-kit'), 'sync'] },
	types: {
		name: 'types',
		command: [bin('svelte-check'), '--tsconfig', './tsconfig.json', '--fail-on-warnings', '--output', 'human']
	},
	lint: { name: 'lint', command: [bin('oxlint'), '--deny-warnings', 'src', 'tests'] },
	layout: { name: 'layout', command: [bin('prettier'), '--check', '--log-level', 'warn', 'src', 'tests'] },
	schema: { name: 'schema', command: [process.execPath, join(root, 'src/tools/run.mjs'), 'schema.ts', '--check'] },
	unit: vitest('unit'),
	build: { name: 'build', command: [bin('vite'), 'build', '--logLevel', 'warn'] },
	bytes: { name: 'bytes', command: [process.execPath, join(root, 'src/tools/bytes.mjs')] },
	browser: vitest('browser'),
	speed: vitest('speed')
};

/** @param {string[]} command */
const spawned = (command) =>
	new Promise((done) => {
		const [file = '', ...args] = command;
		const child = spawn(file, args, {
			cwd: root,
			stdio: ['ignore', 'inherit', 'inherit'],
			env: { ...process.env, FORCE_COLOR: '0' }
		});
		child.on('close', (code) => done(code ?? 1));
		child.on('error', (error) => {
			console.error(error.message);
			done(1);
		});
	});

/** @param {Step[]} row */
export async function runSteps(row) {
	mkdirSync(reports, { recursive: true });
	let passed = 0;
	let failed = 0;
	for (const step of row) {
		if (step.report) rmSync(step.report, { force: true });
		const from = Date.now();
		console.log(`\n== ${step.name}`);
		const code = await spawned(step.command);
		let counted = false;
		if (step.report && existsSync(step.report)) {
			const report = JSON.parse(readFileSync(step.report, 'utf8'));
			passed += report.numPassedTests;
			failed += report.numFailedTests;
			// A file that does not load has no tests to fail, yet it is a failure.
			counted = code === 0 || report.numFailedTests > 0;
		}
		if (!counted) {
			if (code === 0) passed += 1;
			else failed += 1;
		}
		console.log(`== ${step.name}: ${code === 0 ? 'ok' : 'FAILED'} (${((Date.now() - from) / 1000).toFixed(1)} s)`);
	}
	console.log(`\n${passed} passed, ${failed} failed`);
	process.exit(failed > 0 ? 1 : 0);
}
