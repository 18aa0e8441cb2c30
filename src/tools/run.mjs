// `node src/tools/run.mjs FILE.ts ARGS…`: sets up if need be, then runs one of the TypeScript tools beside this file.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { installPackages, root } from './setup.mjs';

installPackages();
const [tool = '', ...args] = process.argv.slice(2);
const tsx = join(root, 'node_modules', 'tsx', 'dist', 'cli.mjs');
const run = spawnSync(process.execPath, [tsx, join(root, 'src', 'tools', tool), ...args], { stdio: 'inherit' });
process.exit(run.status ?? 1);
