// `npm test`: sets up, then types, lint, unit, build and browser tests.
import { installForTests, installPackages } from './setup.mjs';

installPackages();
installForTests();
const { runSteps, steps } = await import('./steps.mjs');
await runSteps(
	['sync', 'types', 'lint', 'layout', 'schema', 'unit', 'build', 'bytes', 'browser', 'speed'].flatMap(
		(name) => steps[name] ?? []
	)
);
