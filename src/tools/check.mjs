// `npm run check`: the fast half of `npm test`.
import { installForTests, installPackages } from './setup.mjs';

installPackages();
installForTests();
const { runSteps, steps } = await import('./steps.mjs');
await runSteps(['sync', 'types', 'lint', 'layout', 'schema', 'unit'].flatMap((name) => steps[name] ?? []));
